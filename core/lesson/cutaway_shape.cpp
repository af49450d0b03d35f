#include "core/lesson/cutaway_shape.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

// Drawing figures, nothing measured: they make a gap readable beside a ball that would be far larger.
constexpr double kUsualUnitsPerMm = 7;
constexpr double kShownLocked = 0.6;   // mm, drawn where no reading is
constexpr double kShownSmaller = 0.45; // of the locked gap, drawn where part-seated was never shown
constexpr double kShownWider = 1.2;    // mm
constexpr double kNoDifference = 0.03; // mm: finer than leaves tell
constexpr double kLeastTravel = 3.5;
constexpr double kMostTravel = 7.1; // the nose stays clear of the ball's stem
constexpr double kWidestShown = 17; // units
constexpr double kReach = kBallRadius + kNoseRadius;

GapSide sideOf(double lockedMm, double partMm)
{
    if (std::abs(partMm - lockedMm) < kNoDifference)
        return GapSide::NoDifference;
    return partMm < lockedMm ? GapSide::Smaller : GapSide::Larger;
}

Layout layoutFor(Layout entered, GapSide side, bool hasSleeve)
{
    if (side == GapSide::Smaller)
        return Layout::A;
    if (side == GapSide::NoDifference)
        return hasSleeve ? Layout::C : Layout::B;
    if (!hasSleeve)
        return Layout::B; // nothing rides over the tab, and nothing gives way to it
    return entered == Layout::Unknown ? Layout::C : entered;
}

void measure(CutawayShape& shape, const CutawayJoint& joint, bool hasSleeve)
{
    shape.lockedMm = std::max(0.0, joint.lockedMm.value_or(kShownLocked));
    if (joint.partSeatedMm)
        shape.partMm = std::max(0.0, *joint.partSeatedMm);
    else if (joint.layout == Layout::A)
        shape.partMm = kShownSmaller * shape.lockedMm;
    else
        shape.partMm = shape.lockedMm + kShownWider;
    shape.side = sideOf(shape.lockedMm, shape.partMm);
    shape.layout = layoutFor(joint.layout, shape.side, hasSleeve);
    shape.pushesSleeve = shape.layout == Layout::A && shape.side == GapSide::Larger;
}

// One scale for the gap such that the plunger's way moves the gap by what was read.
void scale(CutawayShape& shape)
{
    const double widest = std::max({shape.lockedMm, shape.partMm, 0.1});
    double moved = std::abs(shape.partMm - shape.lockedMm);
    double gain = 1;
    if (shape.layout == Layout::C)
        gain = kCutawaySlantGain;
    if (shape.pushesSleeve)
        moved = shape.partMm;
    const double most = kWidestShown / widest;
    if (shape.side == GapSide::NoDifference) {
        shape.unitsPerMm = std::min(kUsualUnitsPerMm, most);
        shape.travel = kLeastTravel;
        return;
    }
    const double travel = std::clamp(kUsualUnitsPerMm * moved / gain, kLeastTravel, kMostTravel);
    shape.unitsPerMm = std::min(travel * gain / moved, most);
    shape.travel = shape.unitsPerMm * moved / gain;
}

} // namespace

CutawayShape cutawayShape(const CutawayJoint& joint)
{
    CutawayShape shape;
    measure(shape, joint, joint.kind != CouplingKind::Pin);
    scale(shape);
    shape.sign = shape.layout == Layout::B ? -1 : 1;
    shape.slant = shape.layout == Layout::C ? kCutawaySlant : 0;
    shape.angle = std::acos(1 - shape.travel * std::cos(shape.slant) / kReach);
    shape.noseHome = {shape.sign * kReach * std::cos(shape.angle), -kReach * std::sin(shape.angle)};
    shape.ballTop = shape.noseHome.y - shape.travel * std::sin(shape.slant);
    return shape;
}

DrawnLayout drawnLayout(const CutawayJoint& joint)
{
    const CutawayShape shape = cutawayShape(joint);
    const bool isRead = joint.partSeatedMm && joint.lockedMm; // layout A can do both
    return {shape.layout, joint.layout != Layout::Unknown,
            isRead && shape.side == GapSide::Smaller &&
                (joint.layout == Layout::B || joint.layout == Layout::C),
            shape.side};
}

CutawayJoint schematicJoint(const DrawnLayout& drawn, CouplingKind kind)
{
    switch (drawn.partSeatedSide) {
    case GapSide::Smaller:
        return {drawn.layout, kind, kShownLocked, kShownSmaller * kShownLocked};
    case GapSide::Larger:
        return {drawn.layout, kind, kShownLocked, kShownLocked + kShownWider};
    case GapSide::NoDifference:
        break;
    }
    return {drawn.layout, kind, kShownLocked, kShownLocked};
}

double heldBack(const CutawayShape& shape, double ballY)
{
    const double ex = shape.sign * std::cos(shape.slant);
    const double ey = -std::sin(shape.slant);
    const double wx = shape.noseHome.x;
    const double wy = shape.noseHome.y - ballY;
    const double along = wx * ex + wy * ey;
    const double under = along * along - (wx * wx + wy * wy) + kReach * kReach;
    return std::clamp(-along + std::sqrt(std::max(0.0, under)), 0.0, shape.travel);
}

} // namespace rig
