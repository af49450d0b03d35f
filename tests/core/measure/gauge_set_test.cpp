#include "core/measure/gauge_set.h"
#include "tests/support/leaves.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using rig::tests::twentyLeaves;

namespace {

GaugeReading readingOf(const GaugeOutcome& outcome)
{
    EXPECT_TRUE(std::holds_alternative<GaugeReading>(outcome));
    return std::holds_alternative<GaugeReading>(outcome) ? std::get<GaugeReading>(outcome) : GaugeReading{};
}

GaugeRefusal refusalOf(const GaugeOutcome& outcome)
{
    EXPECT_TRUE(std::holds_alternative<GaugeRefusal>(outcome));
    return std::holds_alternative<GaugeRefusal>(outcome) ? std::get<GaugeRefusal>(outcome) : GaugeRefusal{};
}

} // namespace

TEST(GaugeSet, ReadsFromTheLeafThatEntersToTheNextThatDoesNot)
{
    const GaugeReading reading = readingOf(twentyLeaves().enters(600_um));
    EXPECT_EQ(reading.interval, (GapInterval{600_um, 650_um}));
    EXPECT_EQ(reading.technique, Technique::Leaf);
}

TEST(GaugeSet, NamesTheNeighboursOfALeafItDoesNotHave)
{
    const GaugeRefusal refusal = refusalOf(twentyLeaves().enters(620_um));
    EXPECT_EQ(refusal.problem, GaugeProblem::NotASize);
    EXPECT_EQ(refusal.below, 600_um);
    EXPECT_EQ(refusal.above, 650_um);
}

TEST(GaugeSet, WidensAStackedReadingByTheFilmBetweenTheLeaves)
{
    const GaugeReading reading = readingOf(twentyLeaves().enters(1200_um));
    EXPECT_EQ(reading.interval, (GapInterval{1200_um, 1250_um + kStackFilm}));
    EXPECT_EQ(reading.technique, Technique::Stack);
}

TEST(GaugeSet, CallsItAStackWhenOnlyTheRefusingOneIsStacked)
{
    EXPECT_EQ(readingOf(twentyLeaves().enters(1000_um)).technique, Technique::Stack);
}

TEST(GaugeSet, NeverStacksALeafOnItself)
{
    const std::vector<GaugeStep> steps = twentyLeaves().steps();
    EXPECT_EQ(std::ranges::count_if(steps, &GaugeStep::isStacked), 19) << "on each of the others";
    for (const GaugeStep& step : steps)
        EXPECT_NE(step.second, 1000_um);
}

TEST(GaugeSet, KnowsNoLeafEntersAndThickestStillLoose)
{
    EXPECT_EQ(readingOf(twentyLeaves().noLeafEnters()).interval, (GapInterval{0_um, 50_um}));
    EXPECT_EQ(readingOf(twentyLeaves().thickestLoose()).interval, (GapInterval{1000_um, std::nullopt}));
}

TEST(GaugeSet, RefusesToInventAnUpperBoundAboveItsThickestStack)
{
    EXPECT_EQ(refusalOf(twentyLeaves().enters(1950_um)).problem, GaugeProblem::NoNextSize);
}

TEST(GaugeSet, MeasuresNothingWithoutLeaves)
{
    const GaugeSet none{GaugeKind::Leaves, {}};
    EXPECT_TRUE(none.isEmpty());
    EXPECT_EQ(refusalOf(none.enters(600_um)).problem, GaugeProblem::NoSizes);
    EXPECT_EQ(refusalOf(none.noLeafEnters()).problem, GaugeProblem::NoSizes);
    EXPECT_EQ(refusalOf(none.thickestLoose()).problem, GaugeProblem::NoSizes);
}

TEST(GaugeSet, DoesNotStackPins)
{
    const GaugeSet pins{GaugeKind::Pins, {1200_um, 1250_um}};
    EXPECT_EQ(readingOf(pins.enters(1200_um)).technique, Technique::Pin);
    EXPECT_EQ(refusalOf(pins.enters(1250_um)).problem, GaugeProblem::NoNextSize);
}

TEST(GaugeSet, ReadsATaperHalfItsResolutionEachWayRoundedOutwards)
{
    EXPECT_EQ(readingOf(GaugeSet::taper(20_um).enters(630_um)).interval, (GapInterval{620_um, 640_um}));
    EXPECT_EQ(readingOf(GaugeSet::taper(25_um).enters(630_um)).interval, (GapInterval{617_um, 643_um}));
}

TEST(GaugeSet, SortsItsLeavesAndDropsRepeats)
{
    const GaugeSet set{GaugeKind::Leaves, {300_um, 100_um, 300_um, 200_um}};
    EXPECT_EQ(set.sizes(), (std::vector<Gap>{100_um, 200_um, 300_um}));
}
