#include "core/lesson/hatch_view.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;

namespace {

const CutawayJoint kRidesOver{Layout::C, CouplingKind::Sleeve, 0.63, 1.95};
const CutawayJoint kBarBelow{Layout::B, CouplingKind::SleeveAndPin, 0.55, 1.5};

bool isTold(const CutawayJoint& joint, JointState state, const HatchSight& sight)
{
    return tellable(joint, poseOf(state), sight);
}

bool holds(const std::vector<JointPart>& parts, JointPart part)
{
    return std::ranges::find(parts, part) != parts.end();
}

} // namespace

TEST(HatchSight, EveryPartIsSeenOrDarkOrHiddenAndOnlyOnce)
{
    for (const CutawayJoint& joint : {kRidesOver, kBarBelow})
        for (const AccessSide side : kAccessSides)
            for (const bool torch : {false, true}) {
                const HatchParts parts = hatchParts(cutawayOf(joint, {}), {side, std::nullopt, torch});
                EXPECT_EQ(parts.seen.size() + parts.dark.size() + parts.hidden.size(), 7U);
                EXPECT_TRUE(!torch || parts.dark.empty());
            }
}

TEST(HatchSight, BallLiesInTheDarkFromAboveWithoutALight)
{
    const Cutaway made = cutawayOf(kRidesOver, {});
    EXPECT_EQ(sightOf(JointPart::Ball, made, {AccessSide::Above, std::nullopt, false}), PartSight::Dark);
    EXPECT_EQ(sightOf(JointPart::Ball, made, {AccessSide::Above, std::nullopt, true}), PartSight::Seen);
    EXPECT_EQ(sightOf(JointPart::Ball, made, {AccessSide::Left, std::nullopt, true}), PartSight::Hidden);
}

TEST(HatchSight, MirrorBringsWhatIsOnTheFarSideAndNeedsALight)
{
    const Cutaway made = cutawayOf(kBarBelow, {});
    const auto tab = [&](std::optional<AccessSide> mirror, bool torch) {
        return sightOf(JointPart::Tab, made, {AccessSide::Above, mirror, torch});
    };
    EXPECT_EQ(tab(std::nullopt, true), PartSight::Hidden);
    EXPECT_EQ(tab(AccessSide::Below, false), PartSight::Dark);
    EXPECT_EQ(tab(AccessSide::Below, true), PartSight::Seen);
}

TEST(HatchSight, AlongTheRodNothingIsSeenThatTellsAnything)
{
    for (const AccessSide side : {AccessSide::Front, AccessSide::Rear}) {
        EXPECT_TRUE(hatchParts(cutawayOf(kRidesOver, {}), {side, std::nullopt, true}).seen.empty());
        for (const JointState state :
             {JointState::Locked, JointState::PartSeated, JointState::NotSecured, JointState::NotConnected})
            EXPECT_FALSE(isTold(kRidesOver, state, {side, std::nullopt, true}));
    }
}

TEST(HatchSight, EmptySocketIsToldOnlyWhereTheBallIsSeen)
{
    for (const CutawayJoint& joint : {kRidesOver, kBarBelow})
        for (const AccessSide side : kAccessSides)
            for (const bool torch : {false, true}) {
                const HatchSight sight{side, std::nullopt, torch};
                const Cutaway made = cutawayOf(joint, poseOf(JointState::NotConnected));
                const bool isSeen = sightOf(JointPart::Ball, made, sight) == PartSight::Seen;
                const bool pinTells =
                    made.hasPin && sightOf(JointPart::WitnessHole, made, sight) == PartSight::Seen;
                EXPECT_EQ(isTold(joint, JointState::NotConnected, sight), isSeen || pinTells);
            }
}

TEST(HatchSight, StateIsToldOnlyByAPartThatLooksOtherThanLocked)
{
    for (const CutawayJoint& joint : {kRidesOver, kBarBelow}) {
        const Cutaway locked = cutawayOf(joint, poseOf(JointState::Locked));
        for (const AccessSide side : kAccessSides)
            for (const std::optional<AccessSide> mirror :
                 {std::optional<AccessSide>{}, std::optional{usualMirror(side)}})
                for (const JointState state :
                     {JointState::PartSeated, JointState::NotSecured, JointState::NotConnected}) {
                    const HatchSight sight{side, mirror, true};
                    const Cutaway shown = cutawayOf(joint, poseOf(state));
                    bool differs = false;
                    for (const JointPart part : hatchParts(shown, sight).seen)
                        differs = differs || looksDifferent(part, shown, locked);
                    EXPECT_EQ(isTold(joint, state, sight), differs);
                }
    }
}

TEST(HatchSight, BallHardlyOutOfItsPlaceIsNotToldByEye)
{
    EXPECT_FALSE(tellable(kRidesOver, {0.99, true, true}, {AccessSide::Left, std::nullopt, true}));
    EXPECT_TRUE(tellable(kRidesOver, {0.0, true, true}, {AccessSide::Left, std::nullopt, true}));
}

TEST(HatchSight, LockedIsToldOnlyWhereEachOtherStateWouldShow)
{
    EXPECT_TRUE(isTold(kRidesOver, JointState::Locked, {AccessSide::Above, std::nullopt, true}));
    EXPECT_FALSE(isTold(kRidesOver, JointState::Locked, {AccessSide::Above, std::nullopt, false}));
    EXPECT_FALSE(isTold(kRidesOver, JointState::Locked, {AccessSide::Below, std::nullopt, true}));
    EXPECT_TRUE(isTold(kRidesOver, JointState::Locked, {AccessSide::Below, AccessSide::Above, true}));
}

TEST(HatchSight, JointWithAPinAloneHasNoSleeveToLookAt)
{
    const Cutaway made = cutawayOf({Layout::B, CouplingKind::Pin, 0.5, 1.2}, {});
    const HatchParts parts = hatchParts(made, {AccessSide::Below, std::nullopt, true});
    for (const auto* list : {&parts.seen, &parts.dark, &parts.hidden}) {
        EXPECT_FALSE(holds(*list, JointPart::SleeveStop));
        EXPECT_FALSE(holds(*list, JointPart::Thread));
    }
}
