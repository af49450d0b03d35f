// The fit itself, on corners: what is held, what is refused, what does not matter. Figures are checked
// against independent results in tests/reference.

#include "core/numbers/distributions.h"
#include "core/numbers/interval_regression.h"
#include "tests/support/odd_numbers.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

constexpr double kFloor = 0.0125;

using LineReadings = std::vector<RegressionReading>;

std::optional<IntervalFit> lineThrough(const LineReadings& readings, double floor = kFloor)
{
    return intervalFitOf(readings, Predictor::Line, floor);
}

std::optional<IntervalFit> levelOf(const LineReadings& readings, double floor = kFloor)
{
    return intervalFitOf(readings, Predictor::Level, floor);
}

// ln likelihood written out, for readings near the line.
double logLikelihoodAt(const LineReadings& readings, double level, double slope, double sigma)
{
    double sum = 0;
    for (const auto& [x, interval, count] : readings) {
        const double mean = level + slope * x;
        const double below = normalBelow((interval.upper - mean) / sigma);
        sum += count * std::log(interval.isExact() ? normalDensity((interval.lower - mean) / sigma) / sigma
                                                   : below - normalBelow((interval.lower - mean) / sigma));
    }
    return sum;
}

// Leaf readings of a slowly widening gap, one of them open.
LineReadings wideningReadings()
{
    return {{-3, {0.45, 0.5}, 2}, {-2, {0.4, 0.45}},     {-1, {0.5, 0.55}},
            {0, {0.45, 0.5}},     {1, {0.55, 0.6}},      {2, {0.5, 0.55}, 3},
            {3, {0.6, 0.65}},     {3, {0.6, kInfinity}}, {4, {-kInfinity, 0.7}}};
}

} // namespace

TEST(IntervalRegression, IsOrdinaryLeastSquaresOnExactReadings)
{
    // By hand: means 2 and 4, sums of products 12 and of squares 10.
    const LineReadings readings{{0, {1, 1}}, {1, {3, 3}}, {2, {5, 5}}, {3, {5, 5}}, {4, {6, 6}}};
    const auto fit = lineThrough(readings, 0);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->slope, 12.0 / 10, 1e-12);
    EXPECT_NEAR(fit->level, 4 - 2 * 1.2, 1e-12);
    const double squares = 0.36 + 0.04 + 1 + 0.04 + 0.16; // rests -0.6, 0.2, 1, -0.2, -0.4
    EXPECT_NEAR(fit->sigma, std::sqrt(squares / 5), 1e-12);
    EXPECT_NEAR(fit->covariance.slope, squares / 5 / 10, 1e-12);
    EXPECT_NEAR(fit->covariance.level, squares / 5 * (1.0 / 5 + 4.0 / 10), 1e-12);
    EXPECT_NEAR(fit->covariance.levelAndSlope, squares / 5 * (-2.0 / 10), 1e-12);
    EXPECT_FALSE(fit->isFloored);
    EXPECT_NEAR(fit->logLikelihood, logLikelihoodAt(readings, fit->level, fit->slope, fit->sigma), 1e-12);
}

TEST(IntervalRegression, GivesTheMeanAndDeviationForALevelAlone)
{
    const auto fit = levelOf({{7, {1, 1}}, {9, {2, 2}, 2}, {7, {3, 3}}}, 0);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->level, 2, 1e-12);
    EXPECT_NEAR(fit->sigma, std::sqrt(0.5), 1e-12);
    EXPECT_NEAR(fit->covariance.level, 0.5 / 4, 1e-12);
    EXPECT_EQ(fit->slope, 0);
    EXPECT_EQ(fit->covariance.slope, 0);
}

TEST(IntervalRegression, FindsNothingHigherAroundItsMaximum)
{
    const LineReadings readings = wideningReadings();
    const auto fit = lineThrough(readings);
    ASSERT_TRUE(fit);
    EXPECT_FALSE(fit->isFloored);
    EXPECT_NEAR(fit->logLikelihood, logLikelihoodAt(readings, fit->level, fit->slope, fit->sigma), 1e-10);
    for (const double step : {1e-2, 1e-3, 1e-4})
        for (const double sign : {-1.0, 1.0}) {
            EXPECT_LT(logLikelihoodAt(readings, fit->level + sign * step, fit->slope, fit->sigma),
                      fit->logLikelihood);
            EXPECT_LT(logLikelihoodAt(readings, fit->level, fit->slope + sign * step, fit->sigma),
                      fit->logLikelihood);
            EXPECT_LT(logLikelihoodAt(readings, fit->level, fit->slope, fit->sigma + sign * step),
                      fit->logLikelihood);
        }
}

TEST(IntervalRegression, HasTheCovarianceOfTheCurvatureAtItsMaximum)
{
    // Variance of the level with slope and sigma free: -1 over the curvature of the profile likelihood.
    const LineReadings readings = wideningReadings();
    const auto fit = lineThrough(readings);
    ASSERT_TRUE(fit);
    const auto profileAt = [&](double level) {
        double slope = fit->slope;
        double sigma = fit->sigma;
        for (int round = 0; round < 60; ++round)
            for (double step = 1e-3; step > 1e-9; step *= 0.5)
                for (const double sign : {-1.0, 1.0}) {
                    const double now = logLikelihoodAt(readings, level, slope, sigma);
                    if (logLikelihoodAt(readings, level, slope + sign * step, sigma) > now)
                        slope += sign * step;
                    else if (logLikelihoodAt(readings, level, slope, sigma + sign * step) > now)
                        sigma += sign * step;
                }
        return logLikelihoodAt(readings, level, slope, sigma);
    };
    const double h = 2e-3;
    const double curvature =
        (profileAt(fit->level + h) - 2 * fit->logLikelihood + profileAt(fit->level - h)) / (h * h);
    EXPECT_NEAR(fit->covariance.level, -1 / curvature, 0.01 / -curvature);
}

TEST(IntervalRegression, HoldsSigmaAtTheFloorWhenAllReadingsAreOneStep)
{
    const auto fit = lineThrough({{-1, {0.5, 0.55}}, {0, {0.5, 0.55}}, {1, {0.5, 0.55}}});
    ASSERT_TRUE(fit);
    EXPECT_TRUE(fit->isFloored);
    EXPECT_EQ(fit->sigma, kFloor);
    EXPECT_NEAR(fit->level, 0.525, 1e-9);
    EXPECT_NEAR(fit->slope, 0, 1e-9);
}

TEST(IntervalRegression, HoldsSigmaAtTheFloorWhenTwoStepsLieOnALine)
{
    const auto fit = lineThrough({{0, {0.5, 0.55}, 5}, {1, {0.6, 0.65}, 5}});
    ASSERT_TRUE(fit);
    EXPECT_TRUE(fit->isFloored);
    EXPECT_NEAR(fit->level, 0.525, 1e-9);
    EXPECT_NEAR(fit->slope, 0.1, 1e-9);
}

TEST(IntervalRegression, IsFlooredJustWhereTheFloorPassesTheFreeSigma)
{
    const LineReadings readings = wideningReadings();
    const auto free = lineThrough(readings, 0.001);
    ASSERT_TRUE(free);
    ASSERT_FALSE(free->isFloored);
    for (const double share : {0.2, 0.9, 0.999}) {
        const auto fit = lineThrough(readings, share * free->sigma);
        ASSERT_TRUE(fit) << share;
        EXPECT_FALSE(fit->isFloored) << share;
        EXPECT_NEAR(fit->sigma, free->sigma, 1e-9);
    }
    for (const double share : {1.001, 1.1, 3.0, 100.0}) {
        const auto fit = lineThrough(readings, share * free->sigma);
        ASSERT_TRUE(fit) << share;
        EXPECT_TRUE(fit->isFloored) << share;
        EXPECT_NEAR(fit->sigma, share * free->sigma, 1e-12 * share);
        EXPECT_LE(fit->logLikelihood, free->logLikelihood);
    }
}

TEST(IntervalRegression, DoesNotDependOnWhereItBegins)
{
    const auto fit = lineThrough(wideningReadings());
    ASSERT_TRUE(fit);
    for (const double level : {-5.0, 0.2, 0.5, 40.0})
        for (const double sigma : {kFloor, 0.02, 0.5, 30.0}) {
            IntervalFit start;
            start.level = level;
            start.slope = 3;
            start.sigma = sigma;
            const auto again = intervalFitOf(wideningReadings(), Predictor::Line, kFloor, start);
            ASSERT_TRUE(again) << level << ' ' << sigma;
            EXPECT_NEAR(again->level, fit->level, 1e-9);
            EXPECT_NEAR(again->slope, fit->slope, 1e-9);
            EXPECT_NEAR(again->sigma, fit->sigma, 1e-9);
        }
}

TEST(IntervalRegression, DropsReadingsOpenBothWays)
{
    LineReadings readings = wideningReadings();
    const auto before = lineThrough(readings);
    readings.push_back({100, {-kInfinity, kInfinity}});
    const auto after = lineThrough(readings);
    ASSERT_TRUE(before && after);
    EXPECT_EQ(after->slope, before->slope);
}

TEST(IntervalRegression, RefusesWhatHasNoMaximum)
{
    struct Refused
    {
        const char* why;
        LineReadings readings;
    };
    const Refused table[] = {
        {"nothing", {}},
        {"all open both ways", {{0, {-kInfinity, kInfinity}}, {1, {-kInfinity, kInfinity}}}},
        {"all at one place", {{1, {0.5, 0.55}}, {1, {0.55, 0.6}}}},
        {"all open upwards", {{0, {0.5, kInfinity}}, {1, {0.6, kInfinity}}}},
        {"closed at one place only", {{0, {0.5, 0.55}, 9}, {1, {0.5, kInfinity}}, {2, {0.5, kInfinity}}}},
        {"open upwards first, downwards later", {{0, {0.5, kInfinity}, 4}, {1, {-kInfinity, 0.6}, 4}}},
        {"contradiction without a closed reading",
         {{0, {0.9, kInfinity}, 4},
          {1, {-kInfinity, 0.1}, 4},
          {0, {-kInfinity, 0.1}, 4},
          {1, {0.9, kInfinity}, 4}}},
        {"a bound that is no number", {{0, {0.5, kNotANumber}}, {1, {0.5, 0.55}}, {2, {0.5, 0.55}}}},
        {"a place that is no number", {{kNotANumber, {0.5, 0.6}}, {1, {0.5, 0.55}}, {2, {0.5, 0.55}}}},
        {"reversed bounds", {{0, {0.6, 0.5}}, {1, {0.5, 0.55}}, {2, {0.5, 0.55}}}},
        {"a value at infinity", {{0, {kInfinity, kInfinity}}, {1, {0.5, 0.55}}, {2, {0.5, 0.55}}}},
        {"figures beyond doubles", {{0, {-1.7e308, 1.7e308}}, {1, {0.5, 0.55}}, {2, {1e308, 1.1e308}}}},
    };
    for (const Refused& refused : table)
        EXPECT_FALSE(lineThrough(refused.readings)) << refused.why;
    EXPECT_FALSE(lineThrough(wideningReadings(), -0.1)) << "negative floor";
    EXPECT_FALSE(lineThrough(wideningReadings(), kNotANumber)) << "floor that is no number";
    EXPECT_FALSE(lineThrough({{0, {1, 1}}, {1, {2, 2}}, {2, {3, 3}}}, 0)) << "no scatter and no floor";
    EXPECT_FALSE(levelOf({{0, {1, 1}, 8}}, 0)) << "equal values and no floor";
}

TEST(IntervalRegression, HoldsASlopeBetweenOpenReadingsAlone)
{
    // Upwards at both ends, downwards in the middle and at both ends: every tilt meets something.
    const auto fit = lineThrough({{0, {0.5, kInfinity}, 3},
                                  {0, {-kInfinity, 0.6}, 3},
                                  {2, {0.7, kInfinity}, 3},
                                  {2, {-kInfinity, 0.8}, 3}});
    ASSERT_TRUE(fit);
    EXPECT_TRUE(fit->isFloored);
    EXPECT_NEAR(fit->level, 0.55, 1e-6);
    EXPECT_NEAR(fit->slope, 0.1, 1e-6);
}

TEST(IntervalRegression, FollowsShiftAndScaleOfReadings)
{
    for (const double scale : {1e-9, 1e-3, 1.0, 25.4, 1e9}) {
        for (const double shift : {0.0, 1.0, -3.0}) {
            LineReadings moved = wideningReadings();
            for (RegressionReading& reading : moved)
                reading.interval = {scale * (reading.interval.lower + shift),
                                    scale * (reading.interval.upper + shift)};
            const auto fit = lineThrough(wideningReadings());
            const auto after = lineThrough(moved, scale * kFloor);
            ASSERT_TRUE(fit && after) << scale;
            EXPECT_NEAR(after->level / scale, fit->level + shift, 1e-9);
            EXPECT_NEAR(after->slope / scale, fit->slope, 1e-9);
            EXPECT_NEAR(after->sigma / scale, fit->sigma, 1e-9);
            EXPECT_NEAR(after->covariance.slope / scale / scale, fit->covariance.slope, 1e-9);
        }
    }
}

TEST(IntervalRegression, FollowsOneWildReading)
{
    for (const double far : {1.0, 1e3, 1e6, 1e12}) {
        LineReadings readings = wideningReadings();
        std::erase_if(readings, [](const auto& reading) { return !reading.interval.isClosed(); });
        readings.push_back({0, {far, far + 0.05}});
        const auto fit = levelOf(readings);
        ASSERT_TRUE(fit) << far;
        // One of eleven, the others near 0.5.
        EXPECT_NEAR(fit->sigma, (far - 0.5) * std::sqrt(10.0) / 11, 0.05 + 1e-9 * far) << far;
    }
}

TEST(IntervalRegression, TreatsAVeryNarrowIntervalAsItsMiddle)
{
    LineReadings exact;
    LineReadings narrow;
    for (int i = 0; i < 9; ++i) {
        const double x = 0.5 + 0.03 * std::sin(1.7 * i * i);
        exact.push_back({double(i), {x, x}});
        narrow.push_back({double(i), {x - 1e-9, x + 1e-9}});
    }
    const auto a = lineThrough(exact, 0.001);
    const auto b = lineThrough(narrow, 0.001);
    ASSERT_TRUE(a && b);
    EXPECT_NEAR(b->level, a->level, 1e-9);
    EXPECT_NEAR(b->slope, a->slope, 1e-9);
    EXPECT_NEAR(b->sigma, a->sigma, 1e-9);
    EXPECT_NEAR(b->covariance.slope, a->covariance.slope, 1e-12);
    EXPECT_NEAR(b->logLikelihood - 9 * std::log(2e-9), a->logLikelihood, 1e-5);
}

TEST(IntervalRegression, GivesFiniteFiguresOrNoneForAnyFiniteReadings)
{
    std::mt19937 random{20240611};
    const auto uniform = [&random] { return static_cast<double>(random()) / 4294967296.0; };
    const auto wild = [&] { return (uniform() - 0.5) * std::pow(10.0, std::floor(uniform() * 40 - 20)); };
    int fitted = 0;
    for (int i = 0; i < 2000; ++i) {
        SCOPED_TRACE(i);
        LineReadings readings;
        const std::size_t count = random() % 12;
        const bool isWild = i % 2 == 0;
        for (std::size_t k = 0; k < count; ++k) {
            const double a = isWild ? wild() : std::floor(uniform() * 20) * 0.05;
            const double b = random() % 4 == 0 ? a : isWild ? wild() : a + 0.05;
            Interval interval{std::min(a, b), std::max(a, b)};
            if (random() % 5 == 0)
                interval.upper = kInfinity;
            if (random() % 5 == 0)
                interval.lower = -kInfinity;
            readings.push_back(
                {isWild ? wild() : std::floor(uniform() * 5), interval, 1 + int(random() % 3)});
        }
        const double floor = isWild ? std::abs(wild()) : kFloor;
        const auto fit = lineThrough(readings, floor);
        if (!fit)
            continue;
        ++fitted;
        for (const double figure : {fit->level, fit->slope, fit->sigma, fit->covariance.level,
                                    fit->covariance.levelAndSlope, fit->covariance.slope, fit->logLikelihood})
            EXPECT_TRUE(std::isfinite(figure));
        EXPECT_GE(fit->sigma, floor * (1 - 1e-12));
        EXPECT_GE(fit->covariance.slope, 0);
    }
    EXPECT_GT(fitted, 500);
}

TEST(IntervalRegression, FitsEveryOrdinarySeriesThatIsHeld)
{
    // Leaf readings with some left open, at five places: a line exists whenever closed ones stand at two.
    std::mt19937 random{77};
    const auto uniform = [&random] { return static_cast<double>(random()) / 4294967296.0; };
    for (int i = 0; i < 1000; ++i) {
        SCOPED_TRACE(i);
        LineReadings readings{{0, {0.5, 0.55}}, {1, {0.55, 0.6}}};
        for (std::size_t k = 0; k < 2 + random() % 20; ++k) {
            const double a = std::floor(uniform() * 10) * 0.05;
            Interval interval{a, a + 0.05};
            if (random() % 6 == 0)
                interval.upper = kInfinity;
            else if (random() % 6 == 0)
                interval.lower = -kInfinity;
            readings.push_back({std::floor(uniform() * 5), interval});
        }
        EXPECT_TRUE(lineThrough(readings));
    }
}
