#include "core/lesson/cutaway.h"

#include "core/lesson/cutaway_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rig {

namespace {

constexpr double kTabThick = 4.5;
constexpr double kTabWide = 3;
constexpr double kTabThin = 1.6; // of one that goes back below the sleeve, with room for a finger under it
constexpr double kHoleRadius = 1.5;
constexpr double kSmallHole = 1.2; // in the hook's bar
constexpr double kSleeveDrawnBack = 14;
constexpr double kPocketRoom = 0.7;
constexpr double kFingerPlay = 0.3; // between the finger and a tab that is home
constexpr double kFingerBar = 1.1;
constexpr double kFingerWide = 2;
constexpr double kFingerGrip = 1.4; // how far it reaches over the foot of the tab
constexpr double kFingerRoot = 8;   // behind the sleeve's near edge

LessonOutline box(double left, double top, double right, double bottom)
{
    return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

// Of a disc cut by a straight edge, with `hidden` of its diameter behind the edge.
double clearShare(double radius, double hidden)
{
    const double t = std::clamp(1 - hidden / radius, -1.0, 1.0);
    return 1 - (std::acos(t) - t * std::sqrt(1 - t * t)) / std::numbers::pi;
}

class Joint
{
public:
    Joint(const CutawayJoint& joint, const CutawayPose& pose) : m_joint{joint}, m_pose{pose}
    {
        m_made.hasSleeve = joint.kind != CouplingKind::Pin;
        m_made.hasPin = joint.kind == CouplingKind::Pin || joint.kind == CouplingKind::SleeveAndPin;
        m_shape = cutawayShape(joint);
        const double seating = std::clamp(pose.seating.value_or(1), 0.0, 1.0);
        m_isHome = !pose.seating || seating >= 1;
        const double ballY = m_shape.ballTop * (1 - seating);
        if (pose.seating)
            m_made.ball = LessonPoint{0, ballY};
        m_back = m_isHome ? 0 : heldBack(m_shape, ballY);
    }

    Cutaway make()
    {
        m_made.drawn = drawnLayout(m_joint);
        m_made.partSeatedShown = m_joint.partSeatedMm.has_value();
        m_made.unitsPerMm = m_shape.unitsPerMm;
        m_made.plungerBack = m_back;
        m_made.plungerTravel = m_shape.travel;
        m_made.housingEnd = m_shape.housingEnd;
        addHousing();
        addPlunger();
        addSleeve();
        m_made.pinIn = m_made.hasPin && m_pose.pinIn && m_isHome;
        m_made.state = state();
        addGap();
        return std::move(m_made);
    }

private:
    double backX() const { return m_shape.sign * m_back * std::cos(m_shape.slant); }
    double backY() const { return -m_back * std::sin(m_shape.slant); }
    LessonPoint moved(LessonPoint home) const { return {home.x + backX(), home.y + backY()}; }

    LessonOutline moved(LessonOutline home) const
    {
        for (LessonPoint& one : home)
            one = moved(one);
        return home;
    }

    double left() const
    {
        return m_shape.layout == Layout::B ? -(kSocketRadius + m_shape.travel + 12.5) : -(kSocketRadius + 6);
    }

    void addHousing()
    {
        LessonOutline& outline = m_made.housing;
        const double from = left();
        constexpr int kSteps = 24;
        for (int i = 0; i <= kSteps; ++i) { // a rounded far end
            const double angle = std::numbers::pi * (0.5 + static_cast<double>(i) / kSteps);
            outline.push_back({from + 5 + 5 * std::cos(angle), kHousingHalf * std::sin(angle)});
        }
        outline.push_back({-kSocketRadius, -kHousingHalf});
        const double deep = kBallRadius - kSocketRadius; // the ball rests on the ground of the socket
        const double around =
            kSocketRadius / std::cos(std::numbers::pi / (2 * kSteps)); // chords stay outside
        for (int i = 0; i < kSteps; ++i) {
            const double angle = std::numbers::pi * (1 - (i + 0.5) / kSteps);
            outline.push_back({around * std::cos(angle), deep + around * std::sin(angle)});
        }
        outline.push_back({kSocketRadius, -kHousingHalf});
        outline.push_back({m_shape.housingEnd, -kHousingHalf});
        outline.push_back({m_shape.housingEnd, kHousingHalf});
    }

    void addPlunger()
    {
        m_made.nose = {moved(m_shape.noseHome), kNoseRadius};
        switch (m_shape.layout) {
        case Layout::B:
            addHook();
            return;
        case Layout::C:
            addSlanting();
            return;
        case Layout::A:
        case Layout::Unknown:
            break;
        }
        addStraight();
    }

    static double tabFoot(double noseY) { return std::max(noseY + 3, -kSleeveBore + 1.5); }

    // A flag above the block with the witness hole in it, and a hood behind which it goes.
    void addFlag(double tall)
    {
        const LessonPoint nose = m_shape.noseHome;
        const double top = -kHousingHalf - 4.6;
        m_made.plunger.push_back(moved(box(nose.x + 3.6, top, nose.x + 8, nose.y)));
        m_made.hole = {moved({nose.x + 5.8, top + 2.3}), kHoleRadius};
        const double edge = nose.x + 5.8 + kHoleRadius;
        const double away = m_shape.travel * std::cos(m_shape.slant);
        m_made.cover = box(edge, top - tall - 1.2, edge + away + 4, -kHousingHalf);
        m_made.pockets.push_back(
            box(kSocketRadius - 1, -kHousingHalf, nose.x + 8 + away + kPocketRoom, nose.y));
        m_made.holeClear = clearShare(kHoleRadius, std::max(0.0, backX()));
    }

    void addStraight()
    {
        const LessonPoint nose = m_shape.noseHome;
        const double end = m_shape.housingEnd;
        const double inner = end - (m_shape.pushesSleeve ? kTabWide + 2.5 : 2.5);
        const double right = nose.x + 8;
        m_made.pockets.push_back(box(kSocketRadius - 1, nose.y - kNoseRadius - kPocketRoom, inner,
                                     nose.y + kNoseRadius + kPocketRoom));
        m_made.pockets.push_back(box(inner, nose.y - 1.3 - kPocketRoom, end, nose.y + 1.3 + kPocketRoom));
        if (m_shape.pushesSleeve)
            m_made.pockets.push_back(box(end - kTabWide - kPocketRoom, -kHousingHalf, end, tabFoot(nose.y)));
        m_made.plunger.push_back(moved(box(nose.x, nose.y - kNoseRadius, right, nose.y + kNoseRadius)));
        addFlag(0);
        const double tab = m_shape.pushesSleeve ? end - kTabWide : end + 0.5;
        m_made.plunger.push_back(moved(box(right, nose.y - 1.3, tab, nose.y + 1.3)));
        m_made.plunger.push_back(moved(box(tab, -kHousingHalf + 2.5, tab + kTabWide, tabFoot(nose.y))));
        m_tabFace = tab + kTabWide + backX();
        m_tabHome = tab;
        m_tabFoot = -tabFoot(nose.y);
        m_made.tab = moved({tab + kTabWide / 2, -kHousingHalf + 6});
        m_made.spring = {moved({right, nose.y}), {inner, nose.y}};
    }

    // Far enough from the housing to stay outside it when the plunger is back.
    double hookTab() const
    {
        return m_shape.housingEnd + std::max(2 * kSmallHole + 1.4, m_shape.travel + 0.6);
    }

    // Its nose lies beyond the ball; a bar below the socket joins it to the tab.
    void addHook()
    {
        const LessonPoint nose = m_shape.noseHome;
        const double end = m_shape.housingEnd;
        const double post = -(kSocketRadius + 1);
        const double inner = left() + 3;
        const double barTop = kBallRadius + 1.6;
        const double barBottom = barTop + 3;
        m_made.pockets.push_back({{inner, nose.y - kNoseRadius - kPocketRoom},
                                  {-kSocketRadius + 1, nose.y - kNoseRadius - kPocketRoom},
                                  {-kSocketRadius + 1, nose.y + kNoseRadius + kPocketRoom},
                                  {post + kPocketRoom, nose.y + kNoseRadius + kPocketRoom},
                                  {post + kPocketRoom, barTop - kPocketRoom},
                                  {end, barTop - kPocketRoom},
                                  {end, barBottom + kPocketRoom},
                                  {inner, barBottom + kPocketRoom}});
        m_made.plunger.push_back(moved(box(post - 4, nose.y - kNoseRadius, nose.x, nose.y + kNoseRadius)));
        m_made.plunger.push_back(moved(box(post - 4, nose.y, post, barBottom)));
        const double tab = hookTab();
        m_made.plunger.push_back(moved(box(post - 4, barTop, tab, barBottom)));
        m_made.plunger.push_back(moved(box(tab, kSleeveBore - 1, tab + kTabWide, kHousingHalf - 2)));
        m_tabFace = tab + kTabWide + backX();
        m_tabHome = tab;
        m_tabFoot = kSleeveBore - 1;
        m_made.tab = moved({tab + kTabWide / 2, kHousingHalf - 4});
        m_made.hole = {moved({end + kSmallHole, (barTop + barBottom) / 2}), kSmallHole};
        m_made.holeClear = clearShare(kSmallHole, std::max(0.0, -backX()));
        m_made.cover = box(end - m_shape.travel - 4, barTop - 1.4, end, barBottom + 1.4);
        m_made.spring = {moved({post - 4, 1}), {inner, 1}};
    }

    // Backs away upwards on a slant, so that its tab comes up before the sleeve.
    void addSlanting()
    {
        const LessonPoint nose = m_shape.noseHome;
        const double end = m_shape.housingEnd;
        const double rise = m_shape.travel * std::sin(m_shape.slant);
        const bool rises = m_shape.side != GapSide::NoDifference;
        const double top = -kSleeveBore + (rises ? 0 : rise);
        const double right = nose.x + 8;
        m_made.pockets.push_back({{kSocketRadius - 1, nose.y - kNoseRadius - rise - kPocketRoom},
                                  {end - 2.5, nose.y - kNoseRadius - rise - kPocketRoom},
                                  {end - 2.5, top - rise - kPocketRoom},
                                  {end, top - rise - kPocketRoom},
                                  {end, top + kTabThick + kPocketRoom},
                                  {kSocketRadius - 1, top + kTabThick + kPocketRoom}});
        m_made.plunger.push_back(moved(box(nose.x, nose.y - kNoseRadius, right, nose.y + kNoseRadius)));
        addFlag(rise);
        const double thick = rises ? kTabThick : kTabThin;
        const double bevel = (kCutawaySlantGain - std::cos(m_shape.slant)) / std::sin(m_shape.slant);
        const double corner = stopEdge();
        m_made.plunger.push_back(moved(LessonOutline{{nose.x + 5, top},
                                                     {corner, top},
                                                     {corner + bevel * thick, top + thick},
                                                     {nose.x + 5, top + thick}}));
        m_tabHome = corner + bevel * thick - kTabWide;
        m_tabFoot = -(top + thick);
        m_made.tab = moved({corner, top + thick / 2});
        m_made.spring = {moved({right, nose.y - 0.5}), {end - 2.5, nose.y - rise / 2 - 0.5}};
    }

    // Where the sleeve's near edge stands at its stop.
    double stopEdge() const
    {
        const double locked = m_shape.lockedMm * m_shape.unitsPerMm;
        const double end = m_shape.housingEnd;
        switch (m_shape.layout) {
        case Layout::A:
            return (m_shape.pushesSleeve ? end : end + 0.5 + kTabWide) + locked;
        case Layout::B:
            return hookTab() + kTabWide + locked;
        case Layout::C:
        case Layout::Unknown:
            break;
        }
        return end + locked;
    }

    // The furthest forward that the tab lets the sleeve come.
    double tabLets() const
    {
        if (m_shape.layout == Layout::C) {
            if (m_shape.side == GapSide::NoDifference)
                return -1e9;
            return m_shape.housingEnd + m_shape.lockedMm * m_shape.unitsPerMm + kCutawaySlantGain * m_back;
        }
        return m_tabFace;
    }

    void addSleeve()
    {
        CutawaySleeve& sleeve = m_made.sleeve;
        sleeve.stop = stopEdge();
        sleeve.front = sleeve.stop;
        if (m_made.hasSleeve) {
            sleeve.front = std::max(sleeve.stop, tabLets());
            sleeve.heldByTab = sleeve.front > sleeve.stop + 1e-9;
            if (!m_pose.sleeveForward) {
                sleeve.front = std::max(sleeve.stop + kSleeveDrawnBack, tabLets() + 1);
                sleeve.heldByTab = false;
            }
        }
        sleeve.back = sleeve.front + kSleeveLength;
        sleeve.atStop = sleeve.front <= sleeve.stop + 1e-9;
        if (hasFinger())
            addFinger(sleeve);
        sleeve.threadShowing = sleeve.front - sleeve.stop;
        m_made.rodEnd = sleeve.stop + kSleeveLength + kSleeveDrawnBack + 6;
    }

    // Its edge stands off the tab by the whole gap, which lets a tab go that backs away from it, and one
    // that backs towards it by less than the gap. Nor does it hold a tab that goes back below it.
    bool hasFinger() const
    {
        const bool isBelow = m_shape.layout == Layout::C && m_shape.side == GapSide::NoDifference;
        const bool standsOff =
            (m_shape.layout == Layout::A || m_shape.layout == Layout::B) && !m_shape.pushesSleeve;
        return m_made.hasSleeve && (isBelow || standsOff);
    }

    void addFinger(CutawaySleeve& sleeve) const
    {
        const double side = m_shape.layout == Layout::B ? 1 : -1; // of the rod on which the tab stands
        const double foot = m_tabFoot;                            // how far from the rod's middle it begins
        sleeve.fingerRides = sleeve.atStop && m_back > kFingerPlay;
        const double bar = sleeve.fingerRides ? kRodHalf + 0.2 : foot - kFingerBar - 0.3;
        const double inner = bar + kFingerBar;
        const double tip = sleeve.fingerRides ? foot - 0.1 : foot + kFingerGrip;
        // Wide enough to stand under a tab that is all the way back.
        const double wide = std::max(kFingerWide, m_shape.travel - kTabWide + kFingerWide / 2);
        const double home = sleeve.front - sleeve.stop + m_tabHome;
        const double left = side > 0 ? home - kFingerPlay - wide : home + kTabWide + kFingerPlay;
        const double root = sleeve.front + kFingerRoot;
        sleeve.finger = {{left, side * bar},
                         {root + kFingerBar, side * bar},
                         {root + kFingerBar, side * kSleeveBore},
                         {root, side * kSleeveBore},
                         {root, side * inner},
                         {left + wide, side * inner},
                         {left + wide, side * tip},
                         {left, side * tip}};
    }

    JointState state() const
    {
        if (!m_pose.seating)
            return JointState::NotConnected;
        if (!m_isHome)
            return JointState::PartSeated;
        const bool sleeveHolds = !m_made.hasSleeve || m_made.sleeve.atStop;
        const bool pinHolds = !m_made.hasPin || m_made.pinIn;
        return sleeveHolds && pinHolds ? JointState::Locked : JointState::NotSecured;
    }

    bool isFromHousing() const { return m_shape.layout == Layout::C || m_shape.pushesSleeve; }

    void addGap()
    {
        CutawayGap& gap = m_made.gap;
        gap.fromHousing = isFromHousing();
        gap.from = gap.fromHousing ? m_shape.housingEnd : m_tabFace;
        gap.to = m_made.sleeve.front;
        gap.above = m_shape.layout != Layout::B;
        gap.y = (gap.above ? -1 : 1) * (kSleeveBore + kSleeveOuter) / 2;
        gap.ground = groundOf();
        if (gap.ground != GapGround::Own && gap.ground != GapGround::Between &&
            gap.ground != GapGround::LooksOwn)
            return;
        gap.mm = (gap.to - gap.from) / m_shape.unitsPerMm;
        if (m_shape.side != GapSide::NoDifference)
            return;
        gap.mm = std::lerp(m_shape.lockedMm, m_shape.partMm, m_back / m_shape.travel);
        gap.from = gap.to - *gap.mm * m_shape.unitsPerMm;
    }

    GapGround groundOf() const
    {
        if (m_made.state == JointState::NotSecured || (m_made.hasSleeve && !m_pose.sleeveForward))
            return GapGround::NoReading;
        if (m_made.state == JointState::PartSeated) {
            if (!m_joint.partSeatedMm)
                return GapGround::NeverShown;
            if (*m_pose.seating <= 0)
                return GapGround::Own;
            return m_joint.lockedMm ? GapGround::Between : GapGround::NoReadings;
        }
        if (!m_joint.lockedMm)
            return GapGround::NoReadings;
        return m_made.state == JointState::NotConnected ? GapGround::LooksOwn : GapGround::Own;
    }

    const CutawayJoint& m_joint;
    const CutawayPose& m_pose;
    CutawayShape m_shape;
    Cutaway m_made;
    bool m_isHome = true;
    double m_back = 0;
    double m_tabFace = 0;
    double m_tabHome = 0; // x of its face towards the socket, when the plunger is home
    double m_tabFoot = 0; // how far from the rod's middle it begins
};

} // namespace

CutawayPose poseOf(JointState state)
{
    switch (state) {
    case JointState::PartSeated:
        return {0, true, false};
    case JointState::NotSecured:
        return {1, false, false};
    case JointState::NotConnected:
        return {std::nullopt, true, false};
    case JointState::Locked:
        break;
    }
    return {1, true, true};
}

CutawayPose withoutBall(CutawayPose pose)
{
    pose.seating = std::nullopt;
    return pose;
}

Cutaway cutawayOf(const CutawayJoint& joint, const CutawayPose& pose)
{
    return Joint{joint, pose}.make();
}

} // namespace rig
