#include "core/numbers/discrimination.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

namespace {

IntervalPosterior around(double lower)
{
    return *IntervalPosterior::of(intervalSetOf(std::vector<Interval>(8, {lower, lower + 0.05})));
}

} // namespace

TEST(Discrimination, ALeafSetSeesOnlyWhatLiesWhollyBeyond)
{
    const Interval band{0.42, 0.58};
    const std::vector<Interval> steps{{0.3, 0.3}, {0.4, 0.4}, {0.5, 0.5}, {0.6, 0.6}, {0.7, 0.7}};
    EXPECT_EQ(unseenBetween(band, steps), (Interval{0.4, 0.6}));
    // A step just on the edge counts.
    EXPECT_EQ(unseenBetween({0.4, 0.6}, steps), (Interval{0.4, 0.6}));
    // No leaf that thick, or that thin.
    EXPECT_EQ(unseenBetween({0.42, 0.75}, steps), (Interval{0.4, kInfinity}));
    EXPECT_EQ(unseenBetween({-0.1, 0.58}, steps), (Interval{-kInfinity, 0.6}));
    EXPECT_EQ(unseenBetween(band, {}), band);
}

TEST(Discrimination, AStepOfUncertainSizeSeesLess)
{
    const Interval band{0.42, 0.58};
    EXPECT_EQ(unseenBetween(band, std::vector<Interval>{{0.3, 0.31}, {0.41, 0.43}, {0.6, 0.61}}),
              (Interval{0.3, 0.61}));
}

TEST(Discrimination, RatioSpeaksForTheStateTheReadingFits)
{
    const IntervalPosterior locked = around(0.5);
    const IntervalPosterior partSeated = around(0.9);
    EXPECT_LT(*logLikelihoodRatio({0.5, 0.55}, locked, partSeated), -2);
    EXPECT_GT(*logLikelihoodRatio({0.9, 0.95}, locked, partSeated), 2);
    EXPECT_LT(*logLikelihoodRatio({0.52, 0.52}, locked, partSeated), -2);
    EXPECT_NEAR(*logLikelihoodRatio({0.7, 0.75}, locked, partSeated), 0, 1e-6);
    EXPECT_NEAR(*logLikelihoodRatio({-kInfinity, kInfinity}, locked, partSeated), 0, 1e-12);
}

TEST(Discrimination, HasNoRatioWhereNeitherStateCanMakeTheReading)
{
    EXPECT_FALSE(logLikelihoodRatio({900, 901}, around(0.5), around(0.9)));
}

TEST(Discrimination, TheBestLeafLiesBetweenTheTwoStates)
{
    const std::vector<double> sizes{0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0};
    const IntervalPosterior locked = around(0.5);
    EXPECT_TRUE(isLarger(locked, around(0.875)));
    EXPECT_FALSE(isLarger(locked, around(0.125)));
    EXPECT_EQ(bestDividingLeaf(locked, around(0.875), sizes)->size, 0.7);
    EXPECT_EQ(bestDividingLeaf(locked, around(0.125), std::vector<double>{0.1, 0.2, 0.3, 0.4, 0.5})->size,
              0.3);
    EXPECT_FALSE(bestDividingLeaf(locked, around(0.9), {}));
}

TEST(Discrimination, TakesTheFirstOfEquallyGoodLeaves)
{
    EXPECT_EQ(bestDividingLeaf(around(0.5), around(0.9), std::vector<double>{0.7, 0.7, 0.7})->size, 0.7);
    // Both leaves are as far from everything as can be told apart.
    EXPECT_EQ(bestDividingLeaf(around(0.5), around(0.9), std::vector<double>{500, 600})->size, 500);
}
