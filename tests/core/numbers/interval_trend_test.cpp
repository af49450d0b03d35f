// Corners and properties of the trend; figures are checked against independent results in tests/reference.

#include "core/numbers/interval_set.h"
#include "core/numbers/interval_trend.h"
#include "tests/support/odd_numbers.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numeric>
#include <random>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

struct Series
{
    std::vector<double> days;
    std::vector<Interval> readings;

    void add(double day, const Interval& reading)
    {
        days.push_back(day);
        readings.push_back(reading);
    }
    std::optional<IntervalTrend> trend() const { return intervalTrendOf(days, readings); }
};

// Leaf readings of a gap that widens by `perYear` from 0.5 mm and scatters by `sigma`, about every 20 days.
Series leafSeries(int count, double perYear, double sigma, unsigned seed = 5)
{
    std::mt19937 random{seed};
    Series series;
    for (int i = 0; i < count; ++i) {
        const double day = 20.0 * i + std::floor(10 * uniform(random));
        const double around = uniform(random) + uniform(random) + uniform(random) + uniform(random) - 2;
        const double gap = 0.5 + perYear * day / kDaysPerYear + 1.73 * sigma * around;
        const double leaf = std::floor(gap / 0.05) * 0.05;
        series.add(day, {leaf, leaf + 0.05});
    }
    return series;
}

std::vector<double> trendFigures(const IntervalTrend& trend)
{
    std::vector<double> figures{trend.meanDay,
                                trend.lastDay,
                                trend.level,
                                trend.slope,
                                trend.sigmaMl,
                                trend.sigma,
                                trend.covariance.level,
                                trend.covariance.levelAndSlope,
                                trend.covariance.slope,
                                trend.logLikelihood,
                                trend.slope95.lower,
                                trend.slope95.upper,
                                trend.slopeP};
    if (const auto ahead = trend.predictionAt(trend.lastDay + 365))
        figures.insert(figures.end(), {ahead->fit, ahead->meanError, ahead->readingError, ahead->mean95.lower,
                                       ahead->reading95.upper});
    return figures;
}

} // namespace

TEST(IntervalTrend, RefusesReadingsWithoutALine)
{
    const std::vector<double> days{1, 2, 3, 4};
    const auto trendOf = [&](const std::vector<Interval>& readings) {
        return intervalTrendOf(days, readings);
    };
    const Interval leaf{0.5, 0.55};
    const Interval openBothWays{-kInfinity, kInfinity};
    ASSERT_TRUE(trendOf({leaf, leaf, leaf, leaf}));
    EXPECT_FALSE(trendOf({leaf, leaf, leaf})) << "a day without a reading";
    EXPECT_FALSE(trendOf({leaf, leaf, leaf, {0.5, kNotANumber}}));
    EXPECT_FALSE(trendOf({leaf, leaf, leaf, {0.6, 0.5}}));
    EXPECT_FALSE(trendOf({leaf, leaf, openBothWays, openBothWays})) << "two left";
    EXPECT_FALSE(trendOf(std::vector<Interval>(4, {0.5, kInfinity})));
    EXPECT_FALSE(trendOf(std::vector<Interval>(4, {-kInfinity, 0.5})));
    EXPECT_FALSE(trendOf({leaf, {0.5, kInfinity}, {0.5, kInfinity}, {0.5, kInfinity}}))
        << "closed on one day";
    EXPECT_FALSE(intervalTrendOf({}, {}));
    const std::vector<Interval> leaves(4, leaf);
    EXPECT_FALSE(intervalTrendOf(std::vector<double>{1, 1, 1, 1}, leaves)) << "one day";
    EXPECT_FALSE(intervalTrendOf(std::vector<double>{1, 2, 3, kNotANumber}, leaves));
    EXPECT_FALSE(intervalTrendOf(std::vector<double>{1, 2, 3, kInfinity}, leaves));
    EXPECT_FALSE(intervalTrendOf(days, leaves, 0)) << "no unit for the slope";
    EXPECT_FALSE(intervalTrendOf(days, leaves, kNotANumber));
}

TEST(IntervalTrend, DoesNotDependOnTheOrderOfReadingsBitForBit)
{
    Series series = leafSeries(24, 0.05, 0.03);
    series.add(100, {0.6, kInfinity});
    series.add(100, {-kInfinity, 0.55});
    const auto trend = series.trend();
    std::vector<std::size_t> order(series.days.size());
    std::iota(order.begin(), order.end(), 0u);
    std::ranges::reverse(order);
    std::swap(order[3], order[17]);
    Series mixed;
    for (const std::size_t i : order)
        mixed.add(series.days[i], series.readings[i]);
    const auto again = mixed.trend();
    ASSERT_TRUE(trend && again);
    EXPECT_EQ(trendFigures(*again), trendFigures(*trend));
}

TEST(IntervalTrend, FollowsAShiftOfDaysAndOfReadings)
{
    const Series series = leafSeries(24, 0.05, 0.03);
    Series moved = series;
    for (double& day : moved.days)
        day += 20000; // day numbers of this century
    for (Interval& reading : moved.readings)
        reading = {reading.lower - 0.45, reading.upper - 0.45}; // gaps near zero
    const auto a = series.trend();
    const auto b = moved.trend();
    ASSERT_TRUE(a && b);
    EXPECT_NEAR(b->meanDay, a->meanDay + 20000, 1e-8);
    EXPECT_NEAR(b->level, a->level - 0.45, 1e-9);
    EXPECT_NEAR(b->slope, a->slope, 1e-9);
    EXPECT_NEAR(b->sigma, a->sigma, 1e-9);
    EXPECT_NEAR(b->slopeP, a->slopeP, 1e-9);
}

TEST(IntervalTrend, FollowsTheUnitOfTheSlope)
{
    const Series series = leafSeries(24, 0.05, 0.03);
    const auto perYear = series.trend();
    const auto perDay = intervalTrendOf(series.days, series.readings, 1);
    ASSERT_TRUE(perYear && perDay);
    EXPECT_NEAR(perDay->slope * kDaysPerYear, perYear->slope, 1e-9);
    EXPECT_NEAR(perDay->slopeP, perYear->slopeP, 1e-9);
    EXPECT_NEAR(perDay->predictionAt(700)->reading95.upper, perYear->predictionAt(700)->reading95.upper,
                1e-9);
}

TEST(IntervalTrend, TurnsOverWithTheReadings)
{
    const Series series = leafSeries(24, 0.05, 0.03);
    Series mirrored = series;
    for (Interval& reading : mirrored.readings)
        reading = {1 - reading.upper, 1 - reading.lower};
    const auto a = series.trend();
    const auto b = mirrored.trend();
    ASSERT_TRUE(a && b);
    EXPECT_NEAR(b->slope, -a->slope, 1e-9);
    EXPECT_NEAR(b->sigma, a->sigma, 1e-9);
    const auto rises = a->firstDayReaching({-kInfinity, 0.7}, TrendEdge::Reading95);
    const auto falls = b->firstDayReaching({0.3, kInfinity}, TrendEdge::Reading95);
    ASSERT_TRUE(rises && falls);
    EXPECT_NEAR(*falls, *rises, 1e-6);
}

TEST(IntervalTrend, IsFlooredAndLevelWhenAllReadingsAreOneStep)
{
    Series series;
    for (int i = 0; i < 10; ++i)
        series.add(30 * i, {0.5, 0.55});
    const auto trend = series.trend();
    ASSERT_TRUE(trend);
    EXPECT_TRUE(trend->isFloored);
    EXPECT_NEAR(trend->sigmaMl, 0.0125, 1e-15);
    EXPECT_NEAR(trend->slope, 0, 1e-9);
    EXPECT_GT(trend->slopeP, 0.99);
    EXPECT_FALSE(trend->firstDayReaching({0.3, 0.75}, TrendEdge::Line));
}

TEST(IntervalTrend, DoesNotClaimLessScatterThanTheFloorForMicroscopicScatter)
{
    Series series;
    for (int i = 0; i < 10; ++i)
        series.add(30 * i, {0.5 + 1e-7 * (i % 3), 0.5 + 1e-7 * (i % 3)});
    const auto trend = series.trend();
    ASSERT_TRUE(trend);
    EXPECT_TRUE(trend->isFloored);
    EXPECT_NEAR(trend->sigmaMl, 0.005, 1e-15);
}

TEST(IntervalTrend, FollowsHugeScatter)
{
    Series series;
    for (int i = 0; i < 12; ++i)
        series.add(30 * i, {i % 2 == 0 ? 0.0 : 900.0, i % 2 == 0 ? 0.05 : 900.05});
    const auto trend = series.trend();
    ASSERT_TRUE(trend);
    EXPECT_NEAR(trend->sigmaMl, 450, 10);
    EXPECT_FALSE(trend->isFloored);
}

TEST(IntervalTrend, DrawsALineThroughTwoDaysOnly)
{
    Series series;
    for (int i = 0; i < 5; ++i) {
        series.add(0, {0.5, 0.55});
        series.add(365.25, {0.6, 0.65});
    }
    const auto trend = series.trend();
    ASSERT_TRUE(trend);
    EXPECT_NEAR(trend->slope, 0.1, 1e-9);
    EXPECT_EQ(trend->differentDays, 2);
    EXPECT_FALSE(trend->isShown());
}

TEST(IntervalTrend, IsShownFromSixReadingsOnFourDays)
{
    const Interval leaf{0.5, 0.55};
    const auto isShown = [&](const std::vector<double>& days) {
        const auto trend = intervalTrendOf(days, std::vector<Interval>(days.size(), leaf));
        return trend && trend->isShown();
    };
    EXPECT_FALSE(isShown({1, 2, 3, 4, 5}));
    EXPECT_FALSE(isShown({1, 1, 1, 2, 2, 3, 3}));
    EXPECT_TRUE(isShown({1, 1, 1, 2, 3, 4}));
    Series series = leafSeries(5, 0, 0.02);
    series.add(500, {-kInfinity, kInfinity});
    EXPECT_FALSE(series.trend()->isShown()) << "a reading open both ways is none";
}

TEST(IntervalTrend, TakesAReadingOpenUpwardsAsBeyondItsLeaf)
{
    Series series = leafSeries(20, 0.0, 0.02);
    const auto before = series.trend();
    for (int i = 0; i < 4; ++i)
        series.add(420 + i, {0.7, kInfinity});
    const auto after = series.trend();
    ASSERT_TRUE(before && after);
    EXPECT_GT(after->slope, before->slope + 0.05);
    EXPECT_EQ(after->readings, 24);
}

TEST(IntervalTrend, HasChancesThatAddUp)
{
    const auto trend = leafSeries(24, 0.05, 0.03).trend();
    ASSERT_TRUE(trend);
    const Interval band{0.45, 0.65};
    for (const double day : {0.0, 480.0, 900.0, 3000.0}) {
        const double low = *trend->chanceReadingOutside({band.lower, kInfinity}, day);
        const double high = *trend->chanceReadingOutside({-kInfinity, band.upper}, day);
        EXPECT_NEAR(*trend->chanceReadingOutside(band, day), low + high, 1e-12);
        EXPECT_NEAR(*trend->chanceReadingOutside(trend->predictionAt(day)->reading95, day), 0.05, 1e-9);
        EXPECT_NEAR(*trend->chanceLineOutside(trend->predictionAt(day)->mean95, day), 0.05, 1e-9);
    }
    EXPECT_EQ(*trend->chanceReadingOutside({-kInfinity, kInfinity}, 900), 0);
}

TEST(IntervalTrend, ReachesALimitOnTheDayItsEdgeIsThere)
{
    const auto trend = leafSeries(24, 0.05, 0.03).trend();
    ASSERT_TRUE(trend);
    const Interval limits{0.2, 0.75};
    const auto line = trend->firstDayReaching(limits, TrendEdge::Line);
    const auto mean = trend->firstDayReaching(limits, TrendEdge::Mean95);
    const auto reading = trend->firstDayReaching(limits, TrendEdge::Reading95);
    ASSERT_TRUE(line && mean && reading);
    EXPECT_NEAR(trend->predictionAt(*line)->fit, 0.75, 1e-9);
    EXPECT_NEAR(trend->predictionAt(*mean)->mean95.upper, 0.75, 1e-9);
    EXPECT_NEAR(trend->predictionAt(*reading)->reading95.upper, 0.75, 1e-9);
    EXPECT_LT(*reading, *mean);
    EXPECT_LT(*mean, *line);
}

TEST(IntervalTrend, NamesTheLastReadingsDayWhereALimitIsAlreadyReached)
{
    const auto trend = leafSeries(24, 0.05, 0.03).trend();
    ASSERT_TRUE(trend);
    EXPECT_EQ(trend->firstDayReaching({0.2, 0.4}, TrendEdge::Line), trend->lastDay);
    EXPECT_EQ(trend->firstDayReaching({0.6, 0.9}, TrendEdge::Line), trend->lastDay);
}

TEST(IntervalTrend, LooksNoFurtherThanItsHorizon)
{
    const auto trend = leafSeries(24, 0.05, 0.03).trend();
    ASSERT_TRUE(trend);
    const auto at = [&](double ahead) { return trend->predictionAt(trend->lastDay + ahead)->fit; };
    const Interval justWithin{-kInfinity, at(kTenYearsInDays - 0.01)};
    const Interval justBeyond{-kInfinity, at(kTenYearsInDays + 0.01)};
    EXPECT_TRUE(trend->firstDayReaching(justWithin, TrendEdge::Line));
    EXPECT_FALSE(trend->firstDayReaching(justBeyond, TrendEdge::Line));
    EXPECT_FALSE(trend->firstDayReaching({-kInfinity, at(101)}, TrendEdge::Line, 100));
    EXPECT_FALSE(trend->firstDayReaching({-kInfinity, kInfinity}, TrendEdge::Reading95));
}

TEST(IntervalTrend, ForeseesNothingTooFarAwayForDoubles)
{
    const auto trend = leafSeries(24, 0.05, 0.03).trend();
    ASSERT_TRUE(trend);
    for (const double day : {1e308, -1e308, kInfinity, kNotANumber}) {
        EXPECT_FALSE(trend->predictionAt(day));
        EXPECT_FALSE(trend->chanceReadingOutside({0.4, 0.6}, day));
        EXPECT_FALSE(trend->chanceLineOutside({0.4, 0.6}, day));
    }
}

TEST(IntervalTrend, TakesTwoThousandReadings)
{
    const auto trend = leafSeries(2000, 0.05, 0.03).trend();
    ASSERT_TRUE(trend);
    EXPECT_EQ(trend->readings, 2000);
    EXPECT_NEAR(trend->slope, 0.05, 4 * std::sqrt(trend->covariance.slope));
    EXPECT_NEAR(trend->sigma, 0.03, 0.003); // the sum of four has a little less scatter than 1.73 says
}

TEST(IntervalTrend, CoversTheTrueSlopeInMostSeries)
{
    int covered = 0;
    for (unsigned seed = 0; seed < 200; ++seed) {
        const auto trend = leafSeries(20, 0.06, 0.03, seed).trend();
        ASSERT_TRUE(trend) << seed;
        covered += trend->slope95.lower < 0.06 && 0.06 < trend->slope95.upper ? 1 : 0;
    }
    EXPECT_GE(covered, 181); // 95 % of 200 less three standard errors
}

TEST(IntervalTrend, GivesFiniteFiguresOrNoneForAnyFiniteReadings)
{
    std::mt19937 random{99};
    const auto wild = [&] {
        return (uniform(random) - 0.5) * std::pow(10.0, std::floor(uniform(random) * 600 - 300));
    };
    int trends = 0;
    for (int i = 0; i < 1500; ++i) {
        SCOPED_TRACE(i);
        const auto value = [&](int kind) {
            return kind == 0 ? wild() : kind == 1 ? std::floor(20 * uniform(random)) : uniform(random);
        };
        Series series;
        const int kind = i % 3;
        for (std::size_t k = 0; k < 3 + random() % 10; ++k) {
            const double a = value(kind);
            const double b = random() % 3 == 0 ? a : value(kind);
            series.add(value(kind), {random() % 6 == 0 ? -kInfinity : std::min(a, b),
                                     random() % 6 == 0 ? kInfinity : std::max(a, b)});
        }
        const auto trend = series.trend();
        if (!trend)
            continue;
        ++trends;
        for (const double figure : trendFigures(*trend))
            EXPECT_TRUE(std::isfinite(figure));
        const Interval band{std::min(0.0, value(kind)), 1};
        const auto chance = trend->chanceReadingOutside(band, trend->lastDay + 100);
        EXPECT_TRUE(!chance || (*chance >= 0 && *chance <= 1));
        const auto day = trend->firstDayReaching(band, TrendEdge::Reading95, 50);
        EXPECT_TRUE(!day || std::isfinite(*day));
    }
    EXPECT_GT(trends, 600);
}
