#include "core/numbers/drift.h"
#include "tests/support/odd_numbers.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

std::vector<double> steadyThenShifted(std::size_t steady, std::size_t shifted, double shift)
{
    std::vector<double> scores(steady, 0.0);
    scores.resize(steady + shifted, shift);
    return scores;
}

std::vector<Interval> alternatingLeaves(int count)
{
    std::vector<Interval> readings;
    for (int i = 0; i < count; ++i)
        readings.push_back({0.5 + 0.05 * (i % 2), 0.55 + 0.05 * (i % 2)});
    return readings;
}

} // namespace

TEST(ChartLimits, AreThoseOfTheTable)
{
    EXPECT_EQ(chartLimitsFor(5)->ewma, 3.71);
    EXPECT_EQ(chartLimitsFor(5)->cusum, 12.6);
    EXPECT_EQ(chartLimitsFor(10)->ewma, 3.52);
    EXPECT_EQ(chartLimitsFor(10)->cusum, 8.48);
    EXPECT_EQ(chartLimitsFor(200)->ewma, 3.02);
    EXPECT_EQ(chartLimitsFor(200)->cusum, 5.23);
}

TEST(ChartLimits, LieBetweenTheRowsInOneOverTheReadings)
{
    // 1/7 lies 4/7 of the way from 1/6 to 1/8; 1/400 halfway from 1/200 to 0.
    EXPECT_NEAR(chartLimitsFor(7)->ewma, 3.66 - 0.08 * 4 / 7, 1e-12);
    EXPECT_NEAR(chartLimitsFor(7)->cusum, 11.1 - 1.68 * 4 / 7, 1e-12);
    EXPECT_NEAR(chartLimitsFor(400)->ewma, 2.991, 1e-12);
    EXPECT_NEAR(chartLimitsFor(400)->cusum, 5.15, 1e-12);
}

TEST(ChartLimits, OnlyNarrowAsReadingsAreAdded)
{
    for (int readings = 5; readings < 500; ++readings) {
        EXPECT_LT(chartLimitsFor(readings + 1)->ewma, chartLimitsFor(readings)->ewma) << readings;
        EXPECT_LT(chartLimitsFor(readings + 1)->cusum, chartLimitsFor(readings)->cusum) << readings;
    }
    EXPECT_NEAR(chartLimitsFor(std::numeric_limits<int>::max())->ewma, kSequentialLimits.ewma, 1e-6);
}

TEST(ChartLimits, DoNotExistBelowFiveReadings)
{
    for (const int readings : {4, 3, 1, 0, -1})
        EXPECT_FALSE(chartLimitsFor(readings)) << readings;
}

TEST(ChartLimits, AreAThirdOfLForTheUsualWeight)
{
    EXPECT_NEAR((ChartLimits{2.962, 5.07}.ewmaLimit()), 2.962 / 3, 1e-15);
}

TEST(Chart, FollowsItsTwoRecursions)
{
    const Chart chart = chartOf(std::vector<double>{1, 2, -1}, kSequentialLimits);
    const std::vector<double> ewma{0.2, 0.56, 0.248};
    ASSERT_EQ(chart.ewma.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_NEAR(chart.ewma[i], ewma[i], 1e-15) << i;
    EXPECT_EQ(chart.cusumUp, (std::vector<double>{0.5, 2, 0.5}));
    EXPECT_EQ(chart.cusumDown, (std::vector<double>{0, 0, 0.5}));
}

TEST(Chart, FlagsAStepAndDatesItsBeginning)
{
    // 2 (1 - 0.8^k) passes 0.987 and 1.5 k passes 5.07 at the fourth shifted score.
    const Chart chart = chartOf(steadyThenShifted(10, 6, 2), kSequentialLimits);
    EXPECT_EQ(chart.ewmaSignal, 13U);
    EXPECT_EQ(chart.onset, 10U);
    EXPECT_EQ(chart.cusumSignal, 13U);
    EXPECT_EQ(chart.cusumOnset, 10U);
}

TEST(Chart, DatesTheFlagAlsoWhereTheCusumHasNotSignalled)
{
    // Limits of ten readings: EWMA 1.18 at the fourth, CUSUM 6 of 8.48.
    const Chart chart = chartOf(steadyThenShifted(10, 4, 2), *chartLimitsFor(10));
    EXPECT_EQ(chart.ewmaSignal, 13U);
    EXPECT_EQ(chart.onset, 10U);
    EXPECT_FALSE(chart.cusumSignal);
    EXPECT_FALSE(chart.cusumOnset);
}

TEST(Chart, HasNoDateWithoutAFlag)
{
    // A slow creep trips the CUSUM long before the EWMA: no flag, so nothing to date.
    const Chart chart = chartOf(steadyThenShifted(3, 40, 0.7), kSequentialLimits);
    EXPECT_FALSE(chart.ewmaSignal);
    EXPECT_FALSE(chart.onset);
    EXPECT_EQ(chart.cusumSignal, 28U); // 0.2 k passes 5.07 at the 26th
    EXPECT_EQ(chart.cusumOnset, 3U);
}

TEST(Chart, SeesAFallAsItSeesARise)
{
    std::vector<double> scores;
    for (int i = 0; i < 60; ++i)
        scores.push_back(std::sin(1.7 * i * i) + 0.02 * i);
    const Chart up = chartOf(scores, kSequentialLimits);
    for (double& score : scores)
        score = -score;
    const Chart down = chartOf(scores, kSequentialLimits);
    ASSERT_TRUE(up.ewmaSignal);
    EXPECT_EQ(up.ewmaSignal, down.ewmaSignal);
    EXPECT_EQ(up.onset, down.onset);
    EXPECT_EQ(up.cusumSignal, down.cusumSignal);
    EXPECT_EQ(up.cusumOnset, down.cusumOnset);
    EXPECT_EQ(up.cusumUp, down.cusumDown);
}

TEST(Chart, DatesTheFlagOnItsOwnSideAlsoAfterAnAlarmOnTheOther)
{
    // A rise, undone by a fall.
    std::vector<double> scores = steadyThenShifted(5, 10, 2);
    scores.resize(40, -2);
    const Chart chart = chartOf(scores, {100, 5.07});
    EXPECT_EQ(chart.cusumOnset, 5U);
    const Chart flagged = chartOf(scores, {5, 100}); // 5/3: reached on the way up, 2 (1 - 0.8^9)
    EXPECT_EQ(flagged.ewmaSignal, 13U);
    EXPECT_EQ(flagged.onset, 5U);
    const Chart fallen = chartOf(std::span{scores}.subspan(12), {5, 5.07});
    EXPECT_EQ(fallen.onset, 3U);
}

TEST(Chart, IsNotTrippedByOneWildScore)
{
    for (const int readings : {5, 10, 100, 1000}) {
        const Chart chart = chartOf(std::vector<double>{0, 0, 4, 0, 0}, *chartLimitsFor(readings));
        EXPECT_FALSE(chart.ewmaSignal) << readings;
        EXPECT_FALSE(chart.cusumSignal) << readings;
    }
}

TEST(Chart, StaysANumberForTheLargestScores)
{
    const double huge = std::numeric_limits<double>::max();
    const Chart chart = chartOf(std::vector<double>{huge, -huge, huge, huge}, kSequentialLimits);
    ASSERT_EQ(chart.ewma.size(), 4U);
    ASSERT_EQ(chart.cusumUp.size(), 4U);
    for (const double value : chart.ewma)
        EXPECT_FALSE(std::isnan(value));
    for (const double value : chart.cusumUp)
        EXPECT_FALSE(std::isnan(value));
}

TEST(Chart, OfNothingIsEmpty)
{
    const Chart chart = chartOf({}, kSequentialLimits);
    EXPECT_TRUE(chart.ewma.empty());
    EXPECT_FALSE(chart.ewmaSignal || chart.cusumSignal || chart.onset || chart.cusumOnset);
}

TEST(Drift, IsFoundInLeafReadingsThatMoveOneLeafUp)
{
    const auto baseline = IntervalPosterior::of(intervalSetOf(alternatingLeaves(10)));
    std::vector<Interval> later = alternatingLeaves(6);
    later.resize(26, {0.6, 0.65});
    const auto drift = driftOf(*baseline, later);
    ASSERT_TRUE(drift);
    EXPECT_EQ(drift->limits.ewma, 3.52);
    ASSERT_TRUE(drift->chart.ewmaSignal);
    EXPECT_GE(*drift->chart.ewmaSignal, 6U);
    EXPECT_EQ(drift->chart.onset, 5U); // the reading before was already on the high side
}

TEST(Drift, TakesAReadingThatSaysNothingAsNoEvidence)
{
    const auto baseline = IntervalPosterior::of(intervalSetOf(alternatingLeaves(10)));
    const auto drift = driftOf(*baseline, std::vector<Interval>{{-kInfinity, kInfinity}});
    ASSERT_TRUE(drift);
    EXPECT_NEAR(drift->scores[0], 0, 1e-12);
}

TEST(Drift, HasNoChartForAThinBaselineOrAnImpossibleReading)
{
    const auto thin = IntervalPosterior::of(intervalSetOf(alternatingLeaves(4)));
    EXPECT_FALSE(driftOf(*thin, alternatingLeaves(3)));
    const auto baseline = IntervalPosterior::of(intervalSetOf(alternatingLeaves(5)));
    EXPECT_TRUE(driftOf(*baseline, alternatingLeaves(3)));
    EXPECT_TRUE(driftOf(*baseline, {}));
    EXPECT_FALSE(driftOf(*baseline, std::vector<Interval>{{0.6, 0.5}}));
    EXPECT_FALSE(driftOf(*baseline, std::vector<Interval>{{kNotANumber, 0.5}}));
}

TEST(SequentialDrift, BeginsWithTheThirdReading)
{
    const std::vector<Interval> readings = alternatingLeaves(8);
    const std::span all{readings};
    EXPECT_FALSE(sequentialDriftOf(all.first(1), all.subspan(1)));
    const auto drift = sequentialDriftOf(all.first(2), all.subspan(2));
    ASSERT_TRUE(drift);
    EXPECT_EQ(drift->scores.size(), 6U);
    EXPECT_EQ(drift->limits.ewma, kSequentialLimits.ewma);
}

TEST(SequentialDrift, ScoresEachReadingAgainstAllBeforeIt)
{
    const std::vector<Interval> readings = alternatingLeaves(8);
    const std::span all{readings};
    const auto whole = sequentialDriftOf(all.first(5), all.subspan(5));
    ASSERT_TRUE(whole);
    SigmaPrior sameRange;
    sameRange.sMin = resolutionFloor(0.05);
    const auto last = sequentialDriftOf(all.first(7), all.subspan(7), sameRange);
    ASSERT_TRUE(last);
    EXPECT_NEAR(whole->scores.back(), last->scores.back(), 1e-9);
}

TEST(SequentialDrift, RefusesWhatHasNoPosterior)
{
    const std::vector<Interval> open(4, {2, kInfinity});
    EXPECT_FALSE(sequentialDriftOf(open, alternatingLeaves(2)));
    EXPECT_FALSE(sequentialDriftOf(alternatingLeaves(4), std::vector<Interval>{{0.6, 0.5}}));
    SigmaPrior impossible;
    impossible.sMin = -1;
    EXPECT_FALSE(sequentialDriftOf(alternatingLeaves(4), alternatingLeaves(2), impossible));
}
