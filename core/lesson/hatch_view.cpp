#include "core/lesson/hatch_view.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr std::array kJointParts{JointPart::Ball,        JointPart::PlungerNose, JointPart::Tab,
                                 JointPart::WitnessHole, JointPart::SleeveStop,  JointPart::Thread,
                                 JointPart::Gap};
constexpr double kSeenMove = 1.0;  // units: less is not noticed by eye
constexpr double kSeenGap = 0.3;   // mm
constexpr double kSeenShare = 0.1; // of the witness hole

bool isAcross(AccessSide side)
{
    return side == AccessSide::Left || side == AccessSide::Right;
}

// Along the rod, where its own end or the sleeve stands before everything.
bool isAlong(AccessSide side)
{
    return side == AccessSide::Front || side == AccessSide::Rear;
}

bool isThere(JointPart part, const Cutaway& cutaway)
{
    return cutaway.hasSleeve || (part != JointPart::SleeveStop && part != JointPart::Thread);
}

bool standsOut(const Cutaway& cutaway)
{
    return cutaway.ball && cutaway.ball->y - kBallRadius < -kHousingHalf - kSeenMove;
}

// Nothing is in the way from there.
bool isInLine(JointPart part, const Cutaway& cutaway, AccessSide side)
{
    if (isAlong(side))
        return false;
    const AccessSide tabSide = cutaway.gap.above ? AccessSide::Above : AccessSide::Below;
    switch (part) {
    case JointPart::Ball: // through the mouth of the socket, or where it stands out of it
        return side == AccessSide::Above || (isAcross(side) && standsOut(cutaway));
    case JointPart::PlungerNose:
        return side == AccessSide::Above;
    case JointPart::WitnessHole:
        return isAcross(side); // its axis lies across
    case JointPart::Tab:
        return side == tabSide || isAcross(side);
    case JointPart::Gap: // the leaf's place; at the housing's edge it goes all round
        return side == tabSide || isAcross(side) || cutaway.drawn.layout == Layout::C;
    case JointPart::SleeveStop:
    case JointPart::Thread:
        return true;
    }
    return false;
}

bool isDeep(JointPart part)
{
    return part == JointPart::Ball || part == JointPart::PlungerNose;
}

bool differByState(const CutawayJoint& joint, const Cutaway& shown, const HatchSight& sight)
{
    const Cutaway locked = cutawayOf(joint, poseOf(JointState::Locked));
    return std::ranges::any_of(hatchParts(shown, sight).seen,
                               [&](JointPart part) { return looksDifferent(part, shown, locked); });
}

} // namespace

AccessSide usualMirror(AccessSide side)
{
    return side == AccessSide::Above ? AccessSide::Below : AccessSide::Above;
}

PartSight sightOf(JointPart part, const Cutaway& cutaway, const HatchSight& sight)
{
    if (!isThere(part, cutaway))
        return PartSight::Hidden;
    if (isInLine(part, cutaway, sight.side))
        return isDeep(part) && sight.side == AccessSide::Above && !sight.torch ? PartSight::Dark
                                                                               : PartSight::Seen;
    if (sight.mirror && isInLine(part, cutaway, *sight.mirror))
        return sight.torch ? PartSight::Seen : PartSight::Dark;
    return PartSight::Hidden;
}

HatchParts hatchParts(const Cutaway& cutaway, const HatchSight& sight)
{
    HatchParts parts;
    for (const JointPart part : kJointParts) {
        if (!isThere(part, cutaway))
            continue;
        switch (sightOf(part, cutaway, sight)) {
        case PartSight::Seen:
            parts.seen.push_back(part);
            break;
        case PartSight::Dark:
            parts.dark.push_back(part);
            break;
        case PartSight::Hidden:
            parts.hidden.push_back(part);
            break;
        }
    }
    return parts;
}

bool looksDifferent(JointPart part, const Cutaway& one, const Cutaway& other)
{
    switch (part) {
    case JointPart::Ball:
        if (one.ball.has_value() != other.ball.has_value())
            return true;
        return one.ball && std::abs(one.ball->y - other.ball->y) >= kSeenMove;
    case JointPart::PlungerNose:
    case JointPart::Tab:
        return std::abs(one.plungerBack - other.plungerBack) >= kSeenMove;
    case JointPart::WitnessHole:
        return one.pinIn != other.pinIn || std::abs(one.holeClear - other.holeClear) >= kSeenShare;
    case JointPart::SleeveStop:
        return std::abs((one.sleeve.front - one.sleeve.stop) - (other.sleeve.front - other.sleeve.stop)) >=
               kSeenMove;
    case JointPart::Thread:
        return std::abs(one.sleeve.threadShowing - other.sleeve.threadShowing) >= kSeenMove;
    case JointPart::Gap:
        return one.gap.mm && other.gap.mm && std::abs(*one.gap.mm - *other.gap.mm) >= kSeenGap;
    }
    return false;
}

bool tellable(const CutawayJoint& joint, const CutawayPose& pose, const HatchSight& sight)
{
    const Cutaway shown = cutawayOf(joint, pose);
    if (shown.state != JointState::Locked)
        return differByState(joint, shown, sight);
    constexpr std::array kOthers{JointState::PartSeated, JointState::NotSecured, JointState::NotConnected};
    return std::ranges::all_of(kOthers, [&](JointState state) {
        return differByState(joint, cutawayOf(joint, poseOf(state)), sight);
    });
}

} // namespace rig
