#include "core/numbers/straight_line.h"
#include "tests/support/odd_numbers.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

using Coordinates = std::vector<double>;

const Coordinates kX{1, 2, 3, 4};
const Coordinates kY{0, 2, 1, 3};

Coordinates scaled(const Coordinates& values, double by)
{
    Coordinates result;
    for (const double value : values)
        result.push_back(value * by);
    return result;
}

} // namespace

// By hand: means 2.5 and 1.5, Sxx 5, Sxy 4, Syy 5; residual sum 5 - 16/5 = 1.8 with 2 degrees of freedom.
TEST(StraightLine, IsTheOneWorkedOutByHand)
{
    const auto line = straightLine(kX, kY);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->n, 4);
    EXPECT_EQ(line->residualDf, 2);
    EXPECT_NEAR(line->slope, 0.8, 1e-15);
    EXPECT_NEAR(line->intercept, -0.5, 1e-15);
    EXPECT_NEAR(line->residualSd, std::sqrt(0.9), 1e-15);
    EXPECT_NEAR(line->slopeError, std::sqrt(0.18), 1e-15);
    EXPECT_NEAR(line->interceptError, std::sqrt(0.9 / 4 + 0.18 * 6.25), 1e-15);
    EXPECT_NEAR(line->rSquared.value(), 0.64, 1e-15);
    EXPECT_NEAR(line->F.value(), 3.2 / 0.9, 1e-14);
}

// By hand: sums of squares 30 and 14, of products 19; residual sum 14 - 361/30 with 3 degrees of freedom.
TEST(StraightLine, ThroughTheOriginHasNoInterceptAndTotalsAboutZero)
{
    const auto line = straightLine(kX, kY, true);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->residualDf, 3);
    EXPECT_EQ(line->intercept, 0);
    EXPECT_EQ(line->interceptError, 0);
    EXPECT_NEAR(line->slope, 19.0 / 30, 1e-15);
    EXPECT_NEAR(line->rSquared.value(), 361.0 / 30 / 14, 1e-15);
    const double residualVariance = (14 - 361.0 / 30) / 3;
    EXPECT_NEAR(line->residualSd, std::sqrt(residualVariance), 1e-15);
    EXPECT_NEAR(line->slopeError, std::sqrt(residualVariance / 30), 1e-15);
    EXPECT_NEAR(line->F.value(), 361.0 / 30 / residualVariance, 1e-13);

    const auto origin = pointOn(*line, 0);
    ASSERT_TRUE(origin);
    EXPECT_EQ(origin->fit, 0);
    EXPECT_EQ(origin->fitError, 0);
    EXPECT_EQ(origin->predictionError, line->residualSd);
}

TEST(StraightLine, RefusesWhatHoldsNoLine)
{
    EXPECT_FALSE(straightLine({}, {}));
    EXPECT_FALSE(straightLine({}, {}, true));
    EXPECT_FALSE(straightLine(kX, Coordinates{1, 2, 3}));
    EXPECT_FALSE(straightLine(Coordinates{1, 2}, Coordinates{1, 2})); // nothing left to judge the scatter by
    EXPECT_FALSE(straightLine(Coordinates{1}, Coordinates{1}, true));
    EXPECT_FALSE(straightLine(Coordinates{0.1, 0.1, 0.1}, Coordinates{1, 2, 3}));
    EXPECT_FALSE(straightLine(Coordinates{0, 0, 0}, Coordinates{1, 2, 3}, true));
    EXPECT_FALSE(straightLine(Coordinates{1, 2, kNotANumber}, Coordinates{1, 2, 3}));
    EXPECT_FALSE(straightLine(Coordinates{1, 2, 3}, Coordinates{1, kNotANumber, 3}));
    EXPECT_FALSE(straightLine(Coordinates{1e-300, 2e-300, 3e-300}, Coordinates{1e300, 3e300, 2e300}));
}

TEST(StraightLine, ThroughTheOriginTakesTwoPointsAndEqualX)
{
    EXPECT_TRUE(straightLine(Coordinates{1, 2}, Coordinates{1, 3}, true));
    const auto line = straightLine(Coordinates{2, 2, 2}, Coordinates{1, 2, 3}, true);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->slope, 1, 1e-15);
}

TEST(StraightLine, LeavesNoFWithoutResidualsAndNoRSquaredWithoutSpreadOfY)
{
    const auto exact = straightLine(kX, Coordinates{2, 4, 6, 8});
    ASSERT_TRUE(exact);
    EXPECT_EQ(exact->residualSd, 0);
    EXPECT_EQ(exact->rSquared, 1);
    EXPECT_FALSE(exact->F);
    const auto flat = straightLine(kX, Coordinates(4, 0.1));
    ASSERT_TRUE(flat);
    EXPECT_EQ(flat->slope, 0);
    EXPECT_NEAR(flat->intercept, 0.1, 1e-16);
    EXPECT_FALSE(flat->rSquared);
    EXPECT_FALSE(flat->F);
}

TEST(StraightLine, FollowsTheScaleOfBothAxes)
{
    for (const double byX : {1e-150, 1.0, 1e150}) {
        for (const double byY : {1e-150, 1.0, 1e150}) {
            const auto line = straightLine(scaled(kX, byX), scaled(kY, byY));
            ASSERT_TRUE(line) << byX << ' ' << byY;
            EXPECT_NEAR(line->slope / (byY / byX), 0.8, 1e-14);
            EXPECT_NEAR(line->intercept / byY, -0.5, 1e-14);
            EXPECT_NEAR(line->residualSd / byY, std::sqrt(0.9), 1e-14);
            EXPECT_NEAR(line->rSquared.value(), 0.64, 1e-14);
        }
    }
}

TEST(StraightLine, IsLeastCertainFarFromItsPoints)
{
    const auto line = straightLine(kX, kY);
    ASSERT_TRUE(line);
    const auto middle = pointOn(*line, 2.5);
    const auto far = pointOn(*line, 10);
    ASSERT_TRUE(middle && far);
    EXPECT_NEAR(middle->fit, 1.5, 1e-15);
    EXPECT_NEAR(middle->fitError, line->residualSd / 2, 1e-15);
    EXPECT_NEAR(far->fit, 7.5, 1e-14);
    EXPECT_NEAR(far->fitError, std::sqrt(0.9 * (0.25 + 7.5 * 7.5 / 5)), 1e-14);
    EXPECT_NEAR(far->predictionError, std::sqrt(0.9 * (1.25 + 7.5 * 7.5 / 5)), 1e-14);
}

TEST(StraightLine, HasNoPointBeyondTheDoubles)
{
    const auto line = straightLine(kX, scaled(kY, 100));
    ASSERT_TRUE(line);
    EXPECT_FALSE(pointOn(*line, std::numeric_limits<double>::max()));
    EXPECT_FALSE(pointOn(*line, std::numeric_limits<double>::infinity()));
    EXPECT_FALSE(pointOn(*line, std::numeric_limits<double>::quiet_NaN()));
}
