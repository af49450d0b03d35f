// False alarms of the drift chart on steady couplings, and what holds for the date of any flag. Baselines are
// exact readings, whose score against an unbounded range of sigma has a closed form: the t distribution of
// the next reading.

#include "core/numbers/distributions.h"
#include "core/numbers/drift.h"
#include "tests/property/drawn.h"

#include <algorithm>
#include <cmath>

namespace bench = rig::bench;
using namespace rig::numbers;
using namespace rig::tests;

namespace {

constexpr int kHorizon = 100; // readings, what the limits were made for

// A hundred later scores of a coupling that does not move, against a baseline of so many readings.
std::vector<double> steadyScores(int baselineReadings, bench::Draws& draws)
{
    std::vector<double> baseline;
    double mean = 0;
    for (int i = 0; i < baselineReadings; ++i) {
        baseline.push_back(draws.normal());
        mean += baseline.back() / baselineReadings;
    }
    double squares = 0;
    for (const double reading : baseline)
        squares += (reading - mean) * (reading - mean);
    const double df = baselineReadings - 1;
    const double spread = std::sqrt(squares / df * (1 + 1.0 / baselineReadings));
    std::vector<double> scores;
    for (int i = 0; i < kHorizon; ++i) {
        const double t = (draws.normal() - mean) / spread;
        const double z = -normalQuantile(studentBelow(-std::abs(t), df)); // from the smaller tail
        scores.push_back(std::min(z, 4.0) * (t < 0 ? -1 : 1));
    }
    return scores;
}

struct AlarmShares
{
    double ewma = 0;
    double cusum = 0;
};

AlarmShares falseAlarms(int baselineReadings, const ChartLimits& limits)
{
    bench::Draws draws{20240317};
    AlarmShares shares;
    for (int i = 0; i < kDraws; ++i) {
        const Chart chart = chartOf(steadyScores(baselineReadings, draws), limits);
        shares.ewma += (chart.ewmaSignal ? 1.0 : 0.0) / kDraws;
        shares.cusum += (chart.cusumSignal ? 1.0 : 0.0) / kDraws;
    }
    return shares;
}

} // namespace

// Four standard errors of a share of 0.175, and 0.01 for limits given in three digits and lines between them.
TEST(DriftCharts, AlarmFalselyOnOneSteadyCouplingInSixWithinAHundredReadings)
{
    const double allowed = 0.01 + 4 * std::sqrt(0.175 * 0.825 / kDraws);
    for (const int readings : {5, 7, 10, 20, 50, 400}) {
        const AlarmShares shares = falseAlarms(readings, *chartLimitsFor(readings));
        EXPECT_NEAR(shares.ewma, 0.175, allowed) << readings;
        EXPECT_NEAR(shares.cusum, 0.175, allowed) << readings;
    }
}

TEST(DriftCharts, WouldAlarmTwiceAsOftenWithTheLimitsOfAKnownMean)
{
    const AlarmShares shares = falseAlarms(10, kSequentialLimits);
    EXPECT_GT(shares.ewma, 0.27);
    EXPECT_GT(shares.cusum, 0.27);
}

TEST(DriftCharts, DateAFlagByTheSideThatGrewUpToIt)
{
    bench::Draws draws{20240317};
    int flags = 0;
    for (int i = 0; i < kDraws; ++i) {
        const Chart chart = chartOf(steadyScores(6, draws), *chartLimitsFor(6));
        ASSERT_EQ(chart.onset.has_value(), chart.ewmaSignal.has_value());
        if (!chart.ewmaSignal)
            continue;
        ++flags;
        ASSERT_LE(*chart.onset, *chart.ewmaSignal);
        const bool isUp = chart.ewma[*chart.ewmaSignal] > 0;
        const std::vector<double>& side = isUp ? chart.cusumUp : chart.cusumDown;
        for (std::size_t place = *chart.onset; place <= *chart.ewmaSignal; ++place)
            ASSERT_GT(side[place], 0) << place;
        if (*chart.onset > 0) {
            ASSERT_EQ(side[*chart.onset - 1], 0);
        }
    }
    EXPECT_GT(flags, 0);
}
