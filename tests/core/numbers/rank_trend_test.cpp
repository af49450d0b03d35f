// Corners and properties of the rank trend; figures are checked against independent results in
// tests/reference.

#include "core/numbers/rank_trend.h"
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

using Values = std::vector<double>;

Values upTo(int count)
{
    Values values(static_cast<std::size_t>(count));
    std::iota(values.begin(), values.end(), 1.0);
    return values;
}

// The two-sided p by listing every order of n values.
double pByListing(double s, int n)
{
    Values order = upTo(n);
    int all = 0;
    int asFar = 0;
    do {
        double sum = 0;
        for (std::size_t i = 0; i < order.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                sum += order[i] > order[j] ? 1 : -1;
        ++all;
        asFar += std::abs(sum) >= std::abs(s) ? 1 : 0;
    } while (std::ranges::next_permutation(order).found);
    return static_cast<double>(asFar) / all;
}

} // namespace

TEST(RankTrend, RefusesWhatHasNoSlope)
{
    EXPECT_FALSE(rankTrendOf(Values{}, Values{}));
    EXPECT_FALSE(rankTrendOf(Values{1, 2}, Values{1, 2}));
    EXPECT_FALSE(rankTrendOf(Values{1, 2, 3}, Values{1, 2}));
    EXPECT_FALSE(rankTrendOf(Values{4, 4, 4}, Values{1, 2, 3}));
    EXPECT_FALSE(rankTrendOf(Values{1, 2, kInfinity}, Values{1, 2, 3}));
    EXPECT_FALSE(rankTrendOf(Values{1, 2, 3}, Values{1, 2, std::nan("")}));
    EXPECT_FALSE(rankTrendOf(Values{-1e308, 0, 1e308}, Values{1, 2, 3}));
    EXPECT_FALSE(rankTrendOf(Values{0, 1e-300, 2e-300}, Values{0, 1e300, 2e300}));
}

TEST(RankTrend, HasTheExactChanceOfShortSeries)
{
    std::mt19937 random{3};
    for (int n = 3; n <= 7; ++n)
        for (int i = 0; i < 6; ++i) {
            Values y;
            for (int k = 0; k < n; ++k)
                y.push_back(uniform(random));
            const auto trend = rankTrendOf(upTo(n), y);
            ASSERT_TRUE(trend);
            EXPECT_TRUE(trend->isExactP);
            EXPECT_NEAR(trend->p, pByListing(trend->s, n), 1e-12);
        }
}

TEST(RankTrend, TurnsFromExactToNormalWithoutAJump)
{
    const auto pOf = [](int n) {
        Values y;
        for (int i = 0; i < n; ++i)
            y.push_back(0.04 * i + std::sin(2.3 * i * i));
        return rankTrendOf(upTo(n), y);
    };
    const auto exact = pOf(49);
    const auto normal = pOf(50);
    ASSERT_TRUE(exact && normal);
    EXPECT_TRUE(exact->isExactP);
    EXPECT_FALSE(normal->isExactP);
    const double z = (std::abs(exact->s) - 1) / std::sqrt(exact->varianceOfS);
    EXPECT_NEAR(exact->p, std::erfc(z / std::sqrt(2.0)), 0.02 * exact->p + 1e-4);
}

TEST(RankTrend, SaysOneForValuesThatAreAllEqual)
{
    const auto trend = rankTrendOf(upTo(9), Values(9, 0.525));
    ASSERT_TRUE(trend);
    EXPECT_EQ(trend->s, 0);
    EXPECT_FALSE(trend->tauB);
    EXPECT_EQ(trend->p, 1);
    EXPECT_FALSE(trend->isExactP);
    EXPECT_EQ(trend->slope, 0);
    EXPECT_EQ(trend->slope95, (Interval{0, 0}));
    EXPECT_EQ(trend->intercept, 0.525);
}

TEST(RankTrend, LeavesPairsOfTheSameDayOutOfItsSlopes)
{
    const auto trend = rankTrendOf(Values{0, 0, 0, 1}, Values{1, 2, 3, 12});
    ASSERT_TRUE(trend);
    EXPECT_EQ(trend->slope, 10); // 11, 10 and 9
    EXPECT_EQ(trend->s, 3);
}

TEST(RankTrend, DoesNotDependOnTheOrderOfPairs)
{
    const Values t{3, 1, 7, 7, 9, 12, 2};
    const Values y{0.5, 0.55, 0.5, 0.6, 0.6, 0.65, 0.5};
    const auto trend = rankTrendOf(t, y);
    const auto turned = rankTrendOf(Values{t.rbegin(), t.rend()}, Values{y.rbegin(), y.rend()});
    ASSERT_TRUE(trend && turned);
    EXPECT_EQ(turned->s, trend->s);
    EXPECT_EQ(turned->p, trend->p);
    EXPECT_EQ(turned->slope, trend->slope);
    EXPECT_EQ(turned->slope95, trend->slope95);
    EXPECT_EQ(turned->intercept, trend->intercept);
}

TEST(RankTrend, FollowsShiftAndScale)
{
    const Values t{1, 2, 4, 7, 11, 16};
    const Values y{0.5, 0.75, 0.25, 1, 0.875, 1.25};
    Values laterT = t;
    Values largerY = y;
    for (double& when : laterT)
        when = 2 * when + 64;
    for (double& value : largerY)
        value = 8 * value - 4;
    const auto trend = rankTrendOf(t, y);
    const auto moved = rankTrendOf(laterT, largerY);
    ASSERT_TRUE(trend && moved);
    EXPECT_EQ(moved->s, trend->s);
    EXPECT_EQ(moved->p, trend->p);
    EXPECT_NEAR(moved->slope, 4 * trend->slope, 1e-12);
    EXPECT_NEAR(moved->slope95.lower, 4 * trend->slope95.lower, 1e-12);
}

TEST(RankTrend, HardlyMindsOneWildReading)
{
    Values y;
    for (int i = 0; i < 30; ++i)
        y.push_back(0.5 + 0.002 * i + 0.01 * std::sin(1.7 * i * i));
    const auto before = rankTrendOf(upTo(30), y);
    y[4] = 1000;
    const auto after = rankTrendOf(upTo(30), y);
    ASSERT_TRUE(before && after);
    EXPECT_NEAR(after->slope, before->slope, 3e-4);
}

TEST(RankTrend, UsesTheMiddlesOfClosedReadingsOnly)
{
    const std::vector<Interval> readings{{0.5, 0.55},       {0.6, kInfinity}, {0.55, 0.6},
                                         {-kInfinity, 0.5}, {0.6, 0.65},      {0.6, 0.65}};
    const auto trend = rankTrendOf(upTo(6), readings);
    const auto closed = rankTrendOf(Values{1, 3, 5, 6}, Values{0.525, 0.575, 0.625, 0.625});
    ASSERT_TRUE(trend && closed);
    EXPECT_EQ(trend->readings, 4);
    EXPECT_NEAR(trend->slope, closed->slope, 1e-12);
    EXPECT_EQ(trend->s, closed->s);
    EXPECT_FALSE(rankTrendOf(upTo(5), readings)) << "a reading without a day";
    EXPECT_FALSE(rankTrendOf(upTo(3), std::vector<Interval>(3, {0.5, kInfinity})));
}

TEST(RankTrend, TakesTwoThousandReadings)
{
    Values y;
    for (int i = 0; i < 2000; ++i)
        y.push_back(1e-5 * i + 0.05 * (i * 7919 % 13));
    const auto trend = rankTrendOf(upTo(2000), y);
    ASSERT_TRUE(trend);
    EXPECT_NEAR(trend->slope, 1e-5, 3e-6);
    EXPECT_GT(trend->varianceOfS, 8.8e8);
    EXPECT_LT(trend->varianceOfS,
              9e8); // n (n - 1) (2 n + 5) / 18 = 8.894e8, far beyond 32 bits before the 18

    const auto tied = rankTrendOf(upTo(2000), Values(2000, 0.525));
    ASSERT_TRUE(tied);
    EXPECT_EQ(tied->varianceOfS, 0);
}

TEST(RankTrend, GivesFiniteFiguresOrNoneForAnyFiniteReadings)
{
    std::mt19937 random{17};
    int trends = 0;
    for (int i = 0; i < 3000; ++i) {
        SCOPED_TRACE(i);
        const auto value = [&] {
            return i % 2 == 0 ? std::floor(4 * uniform(random))
                              : (uniform(random) - 0.5) * std::pow(10.0, 600 * uniform(random) - 300);
        };
        Values t;
        Values y;
        for (std::size_t k = 0; k < random() % 12; ++k) {
            t.push_back(value());
            y.push_back(value());
        }
        const auto trend = rankTrendOf(t, y);
        if (!trend)
            continue;
        ++trends;
        EXPECT_TRUE(std::isfinite(trend->slope) && std::isfinite(trend->intercept));
        EXPECT_LE(trend->slope95.lower, trend->slope);
        EXPECT_GE(trend->slope95.upper, trend->slope);
        EXPECT_TRUE(trend->p > 0 && trend->p <= 1);
        EXPECT_GE(trend->varianceOfS, 0);
        EXPECT_TRUE(!trend->tauB || std::abs(*trend->tauB) <= 1 + 1e-12);
    }
    EXPECT_GT(trends, 1000);
}
