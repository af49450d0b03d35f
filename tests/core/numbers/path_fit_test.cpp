#include "core/numbers/interval_regression.h"
#include "core/numbers/path_fit.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

namespace {

double roughness(int i)
{
    return 0.02 * std::sin(1.7 * i * i + 0.4);
}

// A line from a corner on, read exactly or in steps.
std::vector<PathReading> hinge(int corner, double step)
{
    std::vector<PathReading> rows;
    for (int i = 0; i < 40; ++i) {
        const double shape = std::max(0, i - corner) / 100.0;
        const double value = 0.6 + 0.8 * shape + roughness(i);
        const double below = step > 0 ? std::floor(value / step) * step : value;
        rows.push_back({{below, below + step}, {shape, 0}, 1});
    }
    return rows;
}

PathFit startAt(double level, double sigma)
{
    PathFit start;
    start.coefficients[0] = level;
    start.sigma = sigma;
    return start;
}

} // namespace

// One reading in a hundred may be wild, which takes nothing from readings that are not: a part in ten
// thousand.
TEST(PathFit, IsTheLineOfAllReadingsWhereNoneIsWild)
{
    for (const double step : {0.0, 0.01, 0.05}) {
        const auto rows = hinge(0, step);
        std::vector<RegressionReading> same;
        for (const PathReading& row : rows)
            same.push_back({row.shape[0], row.interval, 1});
        const auto line = intervalFitOf(same, Predictor::Line, 0.005);
        const auto fit = pathFitOf(rows, 1, 0.005, startAt(0.6, 0.02));
        ASSERT_TRUE(line && fit) << step;
        EXPECT_NEAR(fit->coefficients[0], line->level, 2e-5);
        EXPECT_NEAR(fit->coefficients[1], line->slope, 2e-4);
        EXPECT_NEAR(fit->sigma, line->sigma, 2e-4 * line->sigma + 1e-5);
        EXPECT_NEAR(fit->covariance[1][1], line->covariance.slope, 4e-3 * line->covariance.slope);
        EXPECT_NEAR(fit->covariance[1][0], line->covariance.levelAndSlope,
                    -4e-3 * line->covariance.levelAndSlope);
        EXPECT_EQ(fit->covariance[2][2], 0);
    }
}

TEST(PathFit, LeavesAWildReadingOut)
{
    auto rows = hinge(0, 0.01);
    const auto without = pathFitOf(rows, 1, 0.005, startAt(0.6, 0.02));
    rows.push_back({{1.6, 1.61}, {0.1, 0}, 1});
    const auto with = pathFitOf(rows, 1, 0.005, startAt(0.6, 0.02));
    ASSERT_TRUE(without && with);
    EXPECT_NEAR(with->coefficients[0], without->coefficients[0], 1e-9);
    EXPECT_NEAR(with->sigma, without->sigma, 1e-9);
    EXPECT_NEAR(with->logLikelihood - without->logLikelihood, std::log(kWildShare * 0.01 / kWildRange), 1e-9);
}

TEST(PathFit, CountsEqualReadings)
{
    const std::vector<PathReading> apart{{{0.50, 0.55}, {}, 1}, {{0.50, 0.55}, {}, 1}, {{0.55, 0.60}, {}, 1}};
    const std::vector<PathReading> together{{{0.50, 0.55}, {}, 2}, {{0.55, 0.60}, {}, 1}};
    const auto a = pathFitOf(apart, 0, 0.0125, startAt(0.55, 0.02));
    const auto b = pathFitOf(together, 0, 0.0125, startAt(0.55, 0.02));
    ASSERT_TRUE(a && b);
    EXPECT_NEAR(a->coefficients[0], b->coefficients[0], 1e-13);
    EXPECT_NEAR(a->logLikelihood, b->logLikelihood, 1e-12);
}

TEST(PathFit, HoldsSigmaAtTheFloorWhereItWouldGoToNothing)
{
    const std::vector<PathReading> same(12, {{0.50, 0.55}, {}, 1});
    const auto fit = pathFitOf(same, 0, 0.0125, startAt(0.53, 0.02));
    ASSERT_TRUE(fit);
    EXPECT_TRUE(fit->isFloored);
    EXPECT_EQ(fit->sigma, 0.0125);
    EXPECT_NEAR(fit->coefficients[0], 0.525, 1e-6);
    EXPECT_TRUE(std::isinf(fit->sigmaInformation));
}

TEST(PathFit, KnowsSigmaAsWellAsExactReadingsDo)
{
    const auto fit = pathFitOf(hinge(0, 0), 1, 0.001, startAt(0.6, 0.02));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->sigmaInformation, 2 * 40, 0.1);
}

TEST(PathFit, HasNoneWhereNothingHoldsAShape)
{
    auto rows = hinge(0, 0.01);
    for (PathReading& row : rows)
        row.shape = {};
    EXPECT_FALSE(pathFitOf(rows, 1, 0.005, startAt(0.6, 0.02)));
    EXPECT_FALSE(pathFitOf(rows, 0, 0.005, startAt(0.6, 0)));
}

// Near the fit, the ln likelihood is a parabola about the pseudo-reading's value.
TEST(PathFit, PseudoReadingsFollowTheLikelihood)
{
    for (const Interval& interval : {Interval{0.53, 0.53}, {0.50, 0.55}, {0.47, 0.48}, {0.3, 0.56}}) {
        const auto logAt = [&](double mean) {
            const std::vector<PathReading> row{{interval, {}, 1}};
            const PseudoReading there = pseudoReadingOf(interval, mean, 0.03);
            return there.weight * (there.value - mean); // the slope there
        };
        const PseudoReading pseudo = pseudoReadingOf(interval, 0.51, 0.03);
        const double slopeOfSlope = (logAt(0.5101) - logAt(0.5099)) / 0.0002;
        EXPECT_NEAR(-slopeOfSlope, pseudo.weight, 0.02 * pseudo.weight) << interval.lower;
        EXPECT_GT(pseudo.tame, 0.9);
    }
    EXPECT_LT(pseudoReadingOf({0.9, 0.91}, 0.5, 0.02).tame, 1e-6);
}
