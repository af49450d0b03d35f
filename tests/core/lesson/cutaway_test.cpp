#include "core/lesson/cutaway.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <string>

using namespace rig;

namespace {

constexpr double kTouch = 1e-6;
constexpr int kSteps = 100;

constexpr std::array kLayouts{Layout::Unknown, Layout::A, Layout::B, Layout::C};
constexpr std::array kBallJoints{CouplingKind::Sleeve, CouplingKind::Pin, CouplingKind::SleeveAndPin};

// Locked and part-seated gaps: never shown, wide apart, close, smaller, down to nothing, alike, never read.
struct KnownGaps
{
    std::optional<double> locked;
    std::optional<double> partSeated;
};

const std::array kGaps{
    KnownGaps{0.63, std::nullopt}, KnownGaps{0.63, 1.95}, KnownGaps{0.47, 0.60},
    KnownGaps{0.55, 0.14},         KnownGaps{0.20, 0.0},  KnownGaps{0.69, 0.70},
    KnownGaps{1.40, 9.5},          KnownGaps{3.0, 0.1},   KnownGaps{std::nullopt, std::nullopt},
    KnownGaps{std::nullopt, 1.3},  KnownGaps{0.0, 0.4},   KnownGaps{0.0, std::nullopt}};

struct AnyJoint
{
    CutawayJoint joint;
    std::string name;
};

std::vector<AnyJoint> everyJoint()
{
    std::vector<AnyJoint> all;
    for (const Layout layout : kLayouts)
        for (const CouplingKind kind : kBallJoints)
            for (const KnownGaps& gaps : kGaps)
                all.push_back({{layout, kind, gaps.locked, gaps.partSeated},
                               "layout " + std::to_string(static_cast<int>(layout)) + " kind " +
                                   std::to_string(static_cast<int>(kind)) + " locked " +
                                   std::to_string(gaps.locked.value_or(-1)) + " part " +
                                   std::to_string(gaps.partSeated.value_or(-1))});
    return all;
}

template <typename Each> void alongTheSlider(const CutawayJoint& joint, Each each)
{
    for (int i = 0; i <= kSteps; ++i) {
        CutawayPose pose;
        pose.seating = static_cast<double>(i) / kSteps;
        each(cutawayOf(joint, pose), *pose.seating);
    }
}

double fromSegment(LessonPoint at, LessonPoint a, LessonPoint b)
{
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double length = dx * dx + dy * dy;
    const double t = length > 0 ? std::clamp(((at.x - a.x) * dx + (at.y - a.y) * dy) / length, 0.0, 1.0) : 0;
    return std::hypot(at.x - a.x - t * dx, at.y - a.y - t * dy);
}

bool isInside(LessonPoint at, const LessonOutline& outline)
{
    bool inside = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const LessonPoint& a = outline[i];
        const LessonPoint& b = outline[j];
        if ((a.y > at.y) != (b.y > at.y) && at.x < (b.x - a.x) * (at.y - a.y) / (b.y - a.y) + a.x)
            inside = !inside;
    }
    return inside;
}

double fromOutline(LessonPoint at, const LessonOutline& outline)
{
    if (isInside(at, outline))
        return 0;
    double nearest = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i)
        nearest = std::min(nearest, fromSegment(at, outline[i], outline[(i + 1) % outline.size()]));
    return nearest;
}

bool boxesMeet(const LessonOutline& outline, double left, double top, double right, double bottom)
{
    double l = 1e9, r = -1e9, t = 1e9, b = -1e9;
    for (const LessonPoint& one : outline) {
        l = std::min(l, one.x);
        r = std::max(r, one.x);
        t = std::min(t, one.y);
        b = std::max(b, one.y);
    }
    return l < right - kTouch && r > left + kTouch && t < bottom - kTouch && b > top + kTouch;
}

LessonOutline boxOf(double left, double top, double right, double bottom)
{
    return {{left, top}, {right, top}, {right, bottom}, {left, bottom}};
}

bool meet(const LessonOutline& one, const LessonOutline& other)
{
    const auto reaches = [](const LessonOutline& from, const LessonOutline& into) {
        return std::ranges::any_of(from, [&](LessonPoint corner) { return isInside(corner, into); });
    };
    return reaches(one, other) || reaches(other, one);
}

// The sleeve's two walls and its finger.
std::vector<LessonOutline> whatHolds(const CutawaySleeve& sleeve)
{
    return {boxOf(sleeve.front, -kSleeveOuter, sleeve.back, -kSleeveBore),
            boxOf(sleeve.front, kSleeveBore, sleeve.back, kSleeveOuter), sleeve.finger};
}

} // namespace

TEST(Cutaway, LockedByItsSleeveSomethingKeepsThePlungerFromGoingBack)
{
    for (const AnyJoint& one : everyJoint()) {
        const Cutaway home = cutawayOf(one.joint, poseOf(JointState::Locked));
        const Cutaway away = cutawayOf(one.joint, {0, true, false});
        if (!home.hasSleeve)
            continue;
        const bool isCaught = !home.sleeve.finger.empty();
        const double share = isCaught ? 1 / home.plungerTravel : 0.9; // a finger catches it at once
        bool isHeld = false;
        for (std::size_t i = 0; i < home.plunger.size(); ++i) {
            LessonOutline moved = home.plunger[i];
            for (std::size_t k = 0; k < moved.size(); ++k) {
                moved[k].x = std::lerp(moved[k].x, away.plunger[i][k].x, share);
                moved[k].y = std::lerp(moved[k].y, away.plunger[i][k].y, share);
            }
            for (const LessonOutline& part : whatHolds(home.sleeve))
                isHeld = isHeld || (!part.empty() && meet(moved, part));
        }
        EXPECT_TRUE(isHeld) << one.name;
    }
}

TEST(Cutaway, TheSleevesFingerRidesOnATabThatIsNotHomeAndLiesInNothing)
{
    int fingers = 0;
    for (const AnyJoint& one : everyJoint())
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            const LessonOutline& finger = made.sleeve.finger;
            if (finger.empty())
                return;
            ++fingers;
            EXPECT_EQ(made.sleeve.fingerRides, made.plungerBack > 0.3) << one.name << " " << seating;
            for (const LessonOutline& piece : made.plunger)
                EXPECT_FALSE(meet(finger, piece)) << one.name << " " << seating;
            EXPECT_FALSE(meet(finger, boxOf(made.housingEnd - 1, -kRodHalf, made.rodEnd, kRodHalf)))
                << one.name << " " << seating;
            for (const LessonPoint& corner : finger)
                EXPECT_GT(corner.x, made.housingEnd) << one.name << " " << seating;
        });
    EXPECT_GT(fingers, 0);
    const CutawayJoint joint{Layout::B, CouplingKind::Sleeve, 0.6, 1.6};
    const Cutaway back = cutawayOf(joint, poseOf(JointState::NotSecured));
    for (const LessonPoint& corner : back.sleeve.finger)
        EXPECT_GT(corner.x, back.plunger.back()[1].x) << "drawn back it is clear of the tab";
}

TEST(Cutaway, OneFunctionSaysAsWhichLayoutACouplingIsDrawn)
{
    for (const AnyJoint& one : everyJoint())
        EXPECT_EQ(cutawayOf(one.joint, {}).drawn, drawnLayout(one.joint)) << one.name;
    EXPECT_EQ(drawnLayout({Layout::C, CouplingKind::Sleeve, 0.6, 0.2}),
              (DrawnLayout{Layout::A, true, true, GapSide::Smaller}));
    EXPECT_EQ(drawnLayout({Layout::Unknown, CouplingKind::Sleeve, 0.6, 0.2}),
              (DrawnLayout{Layout::A, false, false, GapSide::Smaller}));
    for (const AnyJoint& one : everyJoint()) {
        const DrawnLayout drawn = drawnLayout(one.joint);
        const DrawnLayout again = drawnLayout(schematicJoint(drawn, one.joint.kind));
        EXPECT_EQ(again.layout, drawn.layout) << one.name;
        EXPECT_EQ(again.partSeatedSide, drawn.partSeatedSide) << one.name;
    }
}

TEST(Cutaway, TheLeafGoesInAtTheSocketsEdgeWhereTheSleeveStopsOverTheTab)
{
    const auto isAtSocket = [](const CutawayJoint& joint) { return cutawayOf(joint, {}).gap.fromHousing; };
    EXPECT_FALSE(isAtSocket({Layout::A, CouplingKind::Sleeve, 0.6, 0.2}));
    EXPECT_FALSE(isAtSocket({Layout::B, CouplingKind::Sleeve, 0.6, 1.2}));
    EXPECT_TRUE(isAtSocket({Layout::C, CouplingKind::Sleeve, 0.6, 1.2}));
    EXPECT_TRUE(isAtSocket({Layout::A, CouplingKind::Sleeve, 0.6, 1.2})) << "the tab takes the sleeve along";
}

TEST(Cutaway, BallNeverLiesInTheSocketsWall)
{
    for (const AnyJoint& one : everyJoint())
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            ASSERT_TRUE(made.ball) << one.name;
            EXPECT_GE(fromOutline(*made.ball, made.housing), kBallRadius - kTouch) << one.name << seating;
        });
}

TEST(Cutaway, BallAndItsStemNeverLieInThePlunger)
{
    for (const AnyJoint& one : everyJoint())
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            for (const LessonOutline& piece : made.plunger) {
                ASSERT_GE(fromOutline(*made.ball, piece), kBallRadius - kTouch) << one.name << " " << seating;
                ASSERT_FALSE(boxesMeet(piece, -kStemHalf, made.ball->y - kBallRadius - kStemLength, kStemHalf,
                                       made.ball->y - kBallRadius))
                    << one.name << " " << seating;
            }
            ASSERT_GE(std::abs(made.nose.centre.x) - kNoseRadius, kStemHalf) << one.name << " " << seating;
        });
}

TEST(Cutaway, NoseTouchesTheBallWhileTheBallHoldsItBack)
{
    for (const AnyJoint& one : everyJoint())
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            EXPECT_NEAR(std::hypot(made.nose.centre.x - made.ball->x, made.nose.centre.y - made.ball->y),
                        kBallRadius + kNoseRadius, kTouch)
                << one.name << " " << seating;
        });
}

TEST(Cutaway, HomeTheNoseLiesAboveTheBallsWidestLine)
{
    for (const AnyJoint& one : everyJoint()) {
        const Cutaway made = cutawayOf(one.joint, {});
        EXPECT_NEAR(made.ball->y, 0, kTouch);
        EXPECT_LT(made.nose.centre.y, -2) << one.name;
        EXPECT_EQ(made.plungerBack, 0);
    }
}

TEST(Cutaway, PlungerOnlyComesForwardWhileTheBallGoesHome)
{
    for (const AnyJoint& one : everyJoint()) {
        double last = 1e9;
        alongTheSlider(one.joint, [&](const Cutaway& made, double) {
            EXPECT_LE(made.plungerBack, last + kTouch) << one.name;
            last = made.plungerBack;
        });
        EXPECT_GT(cutawayOf(one.joint, {0, true, false}).plungerBack, 0.4) << one.name;
    }
}

TEST(Cutaway, WitnessHoleIsClearOnlyWhenThePlungerIsHome)
{
    for (const AnyJoint& one : everyJoint()) {
        double last = 0;
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            EXPECT_EQ(made.holeClear == 1, seating == 1) << one.name << " " << seating;
            EXPECT_GE(made.holeClear, last - kTouch) << one.name << " " << seating;
            last = made.holeClear;
        });
    }
}

TEST(Cutaway, SleeveNeverPassesATabThatStandsInItsWay)
{
    for (const AnyJoint& one : everyJoint())
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            for (const LessonOutline& piece : made.plunger) {
                const CutawaySleeve& sleeve = made.sleeve;
                for (const double sign : {-1.0, 1.0}) {
                    const double top = sign < 0 ? -kSleeveOuter : kSleeveBore;
                    const double bottom = sign < 0 ? -kSleeveBore : kSleeveOuter;
                    for (const LessonPoint& corner : piece) // no corner of it in the sleeve's wall
                        EXPECT_FALSE(corner.x > sleeve.front + kTouch && corner.x < sleeve.back &&
                                     corner.y > top + kTouch && corner.y < bottom - kTouch)
                            << one.name << " " << seating;
                }
                // nor the corner of the sleeve's bore in it
                EXPECT_TRUE(!isInside({sleeve.front + kTouch, -kSleeveBore - 10 * kTouch}, piece))
                    << one.name << " " << seating;
            }
            EXPECT_GE(made.sleeve.front, made.sleeve.stop - kTouch) << one.name;
            EXPECT_EQ(made.sleeve.heldByTab, !made.sleeve.atStop) << one.name;
            EXPECT_EQ(made.sleeve.threadShowing > 0, made.sleeve.front > made.sleeve.stop) << one.name;
        });
}

TEST(Cutaway, GapMeetsTheCouplingsOwnReadingsAtBothEnds)
{
    for (const AnyJoint& one : everyJoint()) {
        const CutawayGap locked = cutawayOf(one.joint, {1, true, true}).gap;
        EXPECT_EQ(locked.mm.has_value(), one.joint.lockedMm.has_value()) << one.name;
        if (locked.mm) {
            EXPECT_NEAR(*locked.mm, *one.joint.lockedMm, 1e-9) << one.name;
            EXPECT_EQ(locked.ground, GapGround::Own);
        }
        const CutawayGap part = cutawayOf(one.joint, {0, true, false}).gap;
        EXPECT_EQ(part.mm.has_value(), one.joint.partSeatedMm.has_value()) << one.name;
        if (part.mm) {
            EXPECT_NEAR(*part.mm, *one.joint.partSeatedMm, 1e-9) << one.name;
            EXPECT_EQ(part.ground, GapGround::Own);
        }
    }
}

TEST(Cutaway, GapIsDrawnToItsScaleAndMovesWithoutAJump)
{
    for (const AnyJoint& one : everyJoint()) {
        std::optional<double> last;
        double lastFront = 0;
        alongTheSlider(one.joint, [&](const Cutaway& made, double seating) {
            const double drawn = made.gap.to - made.gap.from;
            EXPECT_GE(drawn, -kTouch) << one.name << " " << seating;
            if (made.gap.mm) {
                EXPECT_NEAR(drawn, *made.gap.mm * made.unitsPerMm, 1e-6) << one.name << " " << seating;
            }
            if (last) {
                EXPECT_LT(std::abs(drawn - *last), 0.8) << one.name << " " << seating;
                EXPECT_LT(std::abs(made.sleeve.front - lastFront), 0.8) << one.name << " " << seating;
            }
            last = drawn;
            lastFront = made.sleeve.front;
        });
    }
}

TEST(Cutaway, PartSeatedMovesTheGapToTheSideThatWasSeenOrElseThatItsLayoutSays)
{
    const auto drawn = [](const CutawayJoint& joint, double seating) {
        const CutawayGap gap = cutawayOf(joint, {seating, true, false}).gap;
        return gap.to - gap.from;
    };
    for (const AnyJoint& one : everyJoint()) {
        const GapSide side = cutawayOf(one.joint, {}).drawn.partSeatedSide;
        const double change = drawn(one.joint, 0) - drawn(one.joint, 1);
        if (side == GapSide::Larger) {
            EXPECT_GT(change, 0) << one.name;
        } else if (side == GapSide::Smaller) {
            EXPECT_LT(change, 0) << one.name;
        }
    }
    const auto expected = [](Layout layout) {
        return cutawayOf({layout, CouplingKind::Sleeve, 0.6, std::nullopt}, {}).drawn.partSeatedSide;
    };
    EXPECT_EQ(expected(Layout::A), GapSide::Smaller);
    EXPECT_EQ(expected(Layout::B), GapSide::Larger);
    EXPECT_EQ(expected(Layout::C), GapSide::Larger);
}

TEST(Cutaway, OfLayoutAWithAWiderGapKeepsTheSleeveFromItsStop)
{
    const CutawayJoint joint{Layout::A, CouplingKind::Sleeve, 0.5, 1.2};
    const Cutaway made = cutawayOf(joint, {0, true, false});
    EXPECT_EQ(made.drawn.layout, Layout::A);
    EXPECT_FALSE(made.sleeve.atStop);
    EXPECT_TRUE(made.sleeve.heldByTab);
    EXPECT_GT(made.sleeve.threadShowing, 1);
    EXPECT_FALSE(made.drawn.unlikeEntered);
}

TEST(Cutaway, SaysWhenItsReadingsLieOnTheOtherSideThanItsLayout)
{
    const Cutaway made = cutawayOf({Layout::B, CouplingKind::Sleeve, 0.6, 0.2}, {});
    EXPECT_TRUE(made.drawn.unlikeEntered);
    EXPECT_EQ(made.drawn.layout, Layout::A);
    EXPECT_FALSE(cutawayOf({Layout::A, CouplingKind::Sleeve, 0.6, 0.2}, {}).drawn.unlikeEntered);
}

TEST(Cutaway, NeverShownHasNoFigureForAPartSeatedBall)
{
    for (const Layout layout : kLayouts) {
        const CutawayJoint joint{layout, CouplingKind::Sleeve, 0.6, std::nullopt};
        for (const double seating : {0.0, 0.4, 0.99}) {
            const CutawayGap gap = cutawayOf(joint, {seating, true, false}).gap;
            EXPECT_EQ(gap.ground, GapGround::NeverShown);
            EXPECT_FALSE(gap.mm);
        }
    }
    EXPECT_EQ(cutawayOf({Layout::C, CouplingKind::Sleeve, 0.6, 1.2}, {0.5, true, false}).gap.ground,
              GapGround::Between);
}

TEST(Cutaway, WithoutABallLooksLockedAndMayReadAsIfItWere)
{
    for (const AnyJoint& one : everyJoint()) {
        const Cutaway made = cutawayOf(one.joint, poseOf(JointState::NotConnected));
        EXPECT_EQ(made.state, JointState::NotConnected) << one.name;
        EXPECT_FALSE(made.ball);
        EXPECT_EQ(made.plungerBack, 0);
        EXPECT_EQ(made.holeClear, 1);
        EXPECT_TRUE(made.sleeve.atStop) << one.name;
        EXPECT_EQ(made.gap.ground, one.joint.lockedMm ? GapGround::LooksOwn : GapGround::NoReadings);
    }
}

TEST(Cutaway, HomeWithItsSleeveBackOrItsPinOutIsNotSecured)
{
    const auto stateOf = [](CouplingKind kind, const CutawayPose& pose) {
        return cutawayOf({Layout::C, kind, 0.6, 1.6}, pose).state;
    };
    EXPECT_EQ(stateOf(CouplingKind::Sleeve, {1, true, false}), JointState::Locked);
    EXPECT_EQ(stateOf(CouplingKind::Sleeve, {1, false, true}), JointState::NotSecured);
    EXPECT_EQ(stateOf(CouplingKind::Pin, {1, true, false}), JointState::NotSecured);
    EXPECT_EQ(stateOf(CouplingKind::Pin, {1, false, true}), JointState::Locked);
    EXPECT_EQ(stateOf(CouplingKind::SleeveAndPin, {1, true, false}), JointState::NotSecured);
    EXPECT_EQ(stateOf(CouplingKind::SleeveAndPin, {1, false, true}), JointState::NotSecured);
    EXPECT_EQ(stateOf(CouplingKind::SleeveAndPin, {1, true, true}), JointState::Locked);
    for (const AnyJoint& one : everyJoint()) {
        const Cutaway made = cutawayOf(one.joint, poseOf(JointState::NotSecured));
        EXPECT_EQ(made.state, JointState::NotSecured) << one.name;
        EXPECT_FALSE(made.gap.mm) << one.name;
        EXPECT_EQ(made.sleeve.threadShowing > 0, made.hasSleeve) << one.name;
    }
}

TEST(Cutaway, PinDoesNotGoInBeforeThePlungerIsHome)
{
    const CutawayJoint joint{Layout::B, CouplingKind::SleeveAndPin, 0.6, 1.6};
    EXPECT_FALSE(cutawayOf(joint, {0.8, true, true}).pinIn);
    EXPECT_TRUE(cutawayOf(joint, {1, true, true}).pinIn);
}

TEST(Cutaway, EveryStateHasAPoseThatShowsIt)
{
    for (const AnyJoint& one : everyJoint())
        for (const JointState state :
             {JointState::Locked, JointState::PartSeated, JointState::NotSecured, JointState::NotConnected})
            EXPECT_EQ(cutawayOf(one.joint, poseOf(state)).state, state) << one.name;
}
