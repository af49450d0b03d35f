#include "core/numbers/quadrature.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;

// Abramowitz & Stegun, table 25.4, n = 5.
TEST(GaussLegendre, HasThePublishedPointsAndWeights)
{
    const auto points = gaussLegendre(5, -1, 1);
    ASSERT_EQ(points.size(), 5u);
    EXPECT_NEAR(points[4].x, 0.906179845938664, 1e-15);
    EXPECT_NEAR(points[3].x, 0.538469310105683, 1e-15);
    EXPECT_EQ(points[2].x, 0);
    EXPECT_NEAR(points[4].weight, 0.236926885056189, 1e-15);
    EXPECT_NEAR(points[3].weight, 0.478628670499366, 1e-15);
    EXPECT_NEAR(points[2].weight, 0.568888888888889, 1e-15);
    EXPECT_EQ(points[0].x, -points[4].x);
    EXPECT_EQ(points[0].weight, points[4].weight);
}

TEST(GaussLegendre, IsExactForPolynomialsBelowTwiceItsCount)
{
    for (const int count : {1, 2, 3, 8, 32, 33}) {
        for (const int degree : {0, 1, 2 * count - 1}) {
            double sum = 0;
            for (const auto& [x, weight] : gaussLegendre(count, 0.5, 1.5))
                sum += weight * std::pow(x, degree);
            const double exact = (std::pow(1.5, degree + 1) - std::pow(0.5, degree + 1)) / (degree + 1);
            EXPECT_NEAR(sum, exact, 1e-12 * exact) << count << " points, degree " << degree;
        }
    }
}

TEST(GaussLegendre, RisesAndAddsUpForLargeCounts)
{
    double sum = 0;
    double before = -3;
    for (const auto& [x, weight] : gaussLegendre(500, -3, 4)) {
        EXPECT_GT(x, before);
        EXPECT_GT(weight, 0);
        sum += weight;
        before = x;
    }
    EXPECT_LT(before, 4);
    EXPECT_NEAR(sum, 7, 1e-11);
}
