#include "core/judgement/judge.h"
#include "tests/support/gaps.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using namespace rig::tests;

namespace {

// 0.05 to 2.00 in steps of 0.05, as in the oracle's discrimination cases.
std::vector<GaugeStep> wideLeafSteps()
{
    std::vector<GaugeStep> steps;
    for (int um = 50; um <= 2000; um += 50)
        steps.push_back({Gap::micrometres(um), Gap{}});
    return steps;
}

// The oracle's case clear.
std::vector<GapInterval> farPartSeated()
{
    return {aGap(1000, 1050), aGap(950, 1000), aGap(1050, 1100), aGap(1000, 1050), aGap(950, 1000)};
}

// The oracle's case near.
std::vector<GapInterval> nearPartSeated()
{
    return {aGap(700, 750), aGap(650, 700), aGap(750, 800), aGap(650, 700), aGap(700, 750), aGap(700, 750)};
}

WitnessFinding found(const std::vector<GapInterval>& partSeated, const std::vector<GaugeStep>& steps,
                     int days = 2)
{
    return findWitness(Baseline::from(tenLeafReadings()), {partSeated, days}, steps);
}

std::vector<GapInterval> farAway(int times)
{
    return repeated(aGap(1900, 1950), times);
}

} // namespace

TEST(Witness, IsNeverShownWithoutPartSeatedReadings)
{
    const WitnessFinding finding = found({}, wideLeafSteps());
    EXPECT_EQ(finding.witness, Witness::NeverShown);
    EXPECT_FALSE(finding.miss);
}

TEST(Witness, IsGoodWherePartSeatedLiesFarAway)
{
    const WitnessFinding byLeaves = found(farPartSeated(), wideLeafSteps());
    EXPECT_EQ(byLeaves.witness, Witness::Good);
    ASSERT_TRUE(byLeaves.miss);
    EXPECT_NEAR(*byLeaves.miss, 0.0002263438412243661, 1e-6);
    const WitnessFinding continuous = found(farPartSeated(), {});
    ASSERT_TRUE(continuous.miss);
    EXPECT_NEAR(*continuous.miss, 0.00020957167511470291, 1e-6);
}

TEST(Witness, IsWeakWherePartSeatedComesNear)
{
    const WitnessFinding finding = found(nearPartSeated(), wideLeafSteps());
    EXPECT_EQ(finding.witness, Witness::Weak);
    ASSERT_TRUE(finding.miss);
    EXPECT_NEAR(*finding.miss, 0.013951429780495506, 0.00001395);
}

TEST(Witness, IsNoneWherePartSeatedSharesTheBand)
{
    const WitnessFinding finding = found(tenLeafReadings(), wideLeafSteps());
    EXPECT_EQ(finding.witness, Witness::None);
    ASSERT_TRUE(finding.miss);
    EXPECT_GT(*finding.miss, 0.9);
}

TEST(Witness, IsNoneWhenTheThickestLeafEndsBelowTheBandsUpperEdge)
{
    // Leaves up to 0.55 cannot show any gap as outside above: the open cell begins inside the band.
    std::vector<GaugeStep> steps = wideLeafSteps();
    steps.resize(11);
    const WitnessFinding finding = found(farPartSeated(), steps);
    EXPECT_EQ(finding.witness, Witness::None);
    ASSERT_TRUE(finding.miss);
    EXPECT_GT(*finding.miss, 0.99);
}

TEST(Witness, CountsGapsWithinAStacksFilmAsMissed)
{
    const std::vector<GaugeStep> single{{400_um, 0_um}, {600_um, 0_um}};
    const std::vector<GaugeStep> stacked{{400_um, 100_um}, {600_um, 200_um}};
    const WitnessFinding bySingle = found(nearPartSeated(), single);
    const WitnessFinding byStack = found(nearPartSeated(), stacked);
    ASSERT_TRUE(bySingle.miss);
    ASSERT_TRUE(byStack.miss);
    EXPECT_GT(*byStack.miss, *bySingle.miss);
}

TEST(Witness, IsNotKnownWhenPartSeatedWasOnlyEverWiderThanTheLeaves)
{
    const WitnessFinding finding = found(repeated(anOpenGap(1000), 5), wideLeafSteps());
    EXPECT_EQ(finding.witness, Witness::NotKnown);
    EXPECT_FALSE(finding.miss);
}

TEST(Witness, IsNotKnownBeforeThereIsABand)
{
    const Baseline few = Baseline::from(repeated(aGap(500, 550), 4));
    const WitnessFinding finding = findWitness(few, {farPartSeated(), 2}, wideLeafSteps());
    EXPECT_EQ(finding.witness, Witness::NotKnown);
    EXPECT_FALSE(finding.miss);
}

TEST(Witness, FewDemonstrationsLeaveTheMissLarger)
{
    const WitnessFinding one = found({aGap(700, 750)}, wideLeafSteps());
    const WitnessFinding six = found(nearPartSeated(), wideLeafSteps());
    ASSERT_TRUE(one.miss);
    ASSERT_TRUE(six.miss);
    EXPECT_GT(*one.miss, 3 * *six.miss);
    EXPECT_EQ(one.witness, Witness::TooRare);
}

// One demonstration far away has a miss of some ten thousandths, which is the prior's and nobody's finding.
TEST(Witness, WasShownTooRarelyBelowThreeHoweverFarAway)
{
    for (const int times : {1, 2}) {
        const WitnessFinding finding = found(farAway(times), wideLeafSteps());
        ASSERT_TRUE(finding.miss);
        EXPECT_LT(*finding.miss, kMissOfWeakWitness) << times;
        EXPECT_EQ(finding.witness, Witness::TooRare) << times;
    }
}

TEST(Witness, IsWeakFromThreeAndGoodOnlyFromFiveOnTwoDays)
{
    EXPECT_EQ(found(farAway(3), wideLeafSteps()).witness, Witness::Weak);
    EXPECT_EQ(found(farAway(4), wideLeafSteps()).witness, Witness::Weak);
    EXPECT_EQ(found(farAway(5), wideLeafSteps(), 1).witness, Witness::Weak) << "all on one day";
    EXPECT_EQ(found(farAway(5), wideLeafSteps(), 2).witness, Witness::Good);
}

TEST(Witness, IsNoneAsSoonAsOneThatWasShownLayNotOutside)
{
    std::vector<GapInterval> shown = farAway(30);
    shown.push_back(aGap(500, 550));
    const WitnessFinding finding = found(shown, wideLeafSteps());
    EXPECT_EQ(finding.witness, Witness::None);
    EXPECT_EQ(finding.shown, 31);
    EXPECT_EQ(finding.outside(), 30);
}

TEST(Witness, CountsOnWhichSideOfTheBandItWasShown)
{
    const WitnessFinding finding =
        found({aGap(50, 100), aGap(1900, 1950), aGap(1850, 1900), aGap(100, 150)}, wideLeafSteps());
    EXPECT_EQ(finding.above, 2);
    EXPECT_EQ(finding.below, 2);
}
