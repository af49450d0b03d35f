#include "core/numbers/readings_needed.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>

using namespace rig::numbers;

TEST(C4, HasItsClosedFormsAndGrowsTowardsOne)
{
    EXPECT_NEAR(c4(2).value(), std::sqrt(2 / std::numbers::pi), 1e-15);
    EXPECT_NEAR(c4(3).value(), std::sqrt(std::numbers::pi) / 2, 1e-15);
    double before = 0;
    for (int n = 2; n < 5000; n = n * 3 / 2 + 1) {
        EXPECT_GT(c4(n).value(), before) << n;
        before = *c4(n);
        const double m = n - 1; // asymptotic series, Gamma(m/2 + 1/2) / Gamma(m/2)
        const double series = 1 - 0.25 / m + 1 / (32 * m * m) + 5 / (128 * m * m * m);
        EXPECT_NEAR(*c4(n), series, 1e-11 + 0.2 / (m * m * m * m)) << n;
    }
    EXPECT_LT(before, 1);
}

TEST(C4, NeedsTwoReadings)
{
    EXPECT_FALSE(c4(1));
    EXPECT_FALSE(c4(0));
    EXPECT_FALSE(c4(-3));
}

TEST(MeanHalfWidth, NarrowsWithEachReadingAndWidensWithContent)
{
    double before = std::numeric_limits<double>::infinity();
    for (int n = 2; n <= 60; ++n) {
        const double width = meanHalfWidth(n, 0.95).value();
        EXPECT_LT(width, before) << n;
        EXPECT_GT(meanHalfWidth(n, 0.9973).value(), width) << n;
        before = width;
    }
    EXPECT_GT(before, 1.959964);
}

TEST(MeanHalfWidth, RefusesOneReadingAndContentsThatAreNoShare)
{
    EXPECT_FALSE(meanHalfWidth(1, 0.95));
    for (const double content : {0.0, 1.0, -0.5, 1.5, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_FALSE(meanHalfWidth(10, content)) << content;
}
