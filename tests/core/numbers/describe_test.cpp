#include "core/numbers/describe.h"

#include <gtest/gtest.h>
#include <limits>
#include <vector>

using namespace rig::numbers;

TEST(Describe, KnowsNothingOfNothing)
{
    const Description nothing = describe({});
    EXPECT_EQ(nothing.n, 0);
    EXPECT_FALSE(nothing.mean);
    EXPECT_FALSE(nothing.sd);
    EXPECT_FALSE(nothing.lag1Autocorrelation);
}

TEST(Describe, KnowsOnlyTheMeanOfOneReading)
{
    const Description one = describe(std::vector{0.55});
    EXPECT_EQ(one.n, 1);
    EXPECT_EQ(one.mean, 0.55);
    EXPECT_FALSE(one.sd);
    EXPECT_FALSE(one.lag1Autocorrelation);
}

TEST(Describe, OfEqualReadingsHasNoSpreadAndNoAutocorrelation)
{
    const Description equal = describe(std::vector<double>(7, 0.1)); // 0.1 is no sum of powers of two
    EXPECT_EQ(equal.mean, 0.1);
    EXPECT_EQ(equal.sd, 0);
    EXPECT_FALSE(equal.lag1Autocorrelation);
}

TEST(Describe, OfTwoReadings)
{
    const Description two = describe(std::vector{0.5, 0.6});
    EXPECT_NEAR(two.mean.value(), 0.55, 1e-15);
    EXPECT_NEAR(two.sd.value(), 0.0707106781186548, 1e-15); // 0.1 / sqrt(2)
    EXPECT_NEAR(two.lag1Autocorrelation.value(), -0.5, 1e-14);
}

TEST(Describe, FollowsTheScaleFromTheSmallestDoublesToTheLargest)
{
    for (const double scale : {1e-300, 1e-160, 1.0, 1e160, 1e307}) {
        const Description scaled = describe(std::vector{1 * scale, 2 * scale, 4 * scale, 9 * scale});
        EXPECT_NEAR(scaled.mean.value() / scale, 4, 1e-14) << scale;
        EXPECT_NEAR(scaled.sd.value() / scale, 3.55902608401044, 1e-13) << scale; // sqrt(38 / 3)
        EXPECT_NEAR(scaled.lag1Autocorrelation.value(), 6.0 / 38, 1e-14) << scale;
    }
}

TEST(Describe, LeavesEmptyWhatADoubleCannotHold)
{
    constexpr double kLargest = std::numeric_limits<double>::max();
    const Description wide = describe(std::vector{-kLargest, kLargest});
    EXPECT_EQ(wide.mean, 0);
    EXPECT_FALSE(wide.sd);
    EXPECT_NEAR(wide.lag1Autocorrelation.value(), -0.5, 1e-15);
}

TEST(Describe, OnlyCountsReadingsThatAreNoNumbers)
{
    for (const double odd :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        const Description description = describe(std::vector{0.5, odd, 0.6});
        EXPECT_EQ(description.n, 3);
        EXPECT_FALSE(description.mean);
        EXPECT_FALSE(description.sd);
        EXPECT_FALSE(description.lag1Autocorrelation);
    }
}
