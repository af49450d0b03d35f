#include "core/numbers/distributions.h"
#include "core/numbers/scatter_change.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

namespace {

// `before` readings of mean square sigma^2, then ten of so many times that scatter, all on either side of 0
// in turn.
std::vector<Interval> left(int before, double sigma, double times)
{
    std::vector<Interval> readings;
    for (int i = 0; i < before + 10; ++i) {
        const double x = (i % 2 == 0 ? 1 : -1) * sigma * (i < before ? 1 : times);
        readings.push_back({x, x});
    }
    return readings;
}

} // namespace

// The wild share takes a little from either.
TEST(ScatterChange, ChanceIsThatOfTheFTest)
{
    for (const double times : {0.8, 1.0, 1.3, 1.6, 2.0}) {
        const auto change = scatterChangeOf(left(60, 0.02, times), 40, 1e-4);
        ASSERT_TRUE(change);
        EXPECT_NEAR(change->chanceGrown, fisherBelow(times * times, 10, 60), 0.004) << times;
        EXPECT_EQ(change->readingsNow, 10U);
    }
}

TEST(ScatterChange, IsSaidFromHalfAsMuchAgainOnAndSurely)
{
    EXPECT_TRUE(scatterChangeOf(left(60, 0.02, 3), 40, 1e-4)->hasGrown(8));
    EXPECT_NEAR(scatterChangeOf(left(60, 0.02, 3), 40, 1e-4)->ratio(), 3, 0.15);
    EXPECT_FALSE(scatterChangeOf(left(60, 0.02, 1.4), 40, 1e-4)->hasGrown(1));
    const auto doubtful = scatterChangeOf(left(60, 0.02, 1.55), 40, 1e-4);
    EXPECT_TRUE(doubtful->hasGrown(1));
    EXPECT_FALSE(doubtful->hasGrown(100));
}

TEST(ScatterChange, IsNotGrownByOneStranger)
{
    auto readings = left(60, 0.02, 1);
    readings.back() = {0.6, 0.6};
    EXPECT_FALSE(scatterChangeOf(readings, 40, 1e-4)->hasGrown(8));
}

TEST(ScatterChange, NeedsFiveOnEitherSide)
{
    const auto readings = left(4, 0.02, 1);
    EXPECT_FALSE(scatterChangeOf(readings, 10, 0.005));
    EXPECT_FALSE(scatterChangeOf(left(60, 0.02, 1), 4, 0.005));
    EXPECT_EQ(scatterChangeOf(readings, 5, 0.005)->readingsNow, 5U);
}
