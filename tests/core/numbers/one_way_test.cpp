#include "core/numbers/one_way.h"
#include "tests/support/odd_numbers.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

using Groups = std::vector<std::vector<double>>;

} // namespace

// By hand: means 2, 5 and 9 of 3, 2 and 1 values, grand mean 25/6; between 12 + 50 + 81 - 625/6, within 2
// + 2.
TEST(OneWay, IsTheOneWorkedOutByHandForUnequalGroups)
{
    const auto result = oneWay(Groups{{1, 2, 3}, {4, 6}, {9}});
    ASSERT_TRUE(result);
    const double between = 12 + 50 + 81 - 625.0 / 6;
    EXPECT_EQ(result->dfBetween, 2);
    EXPECT_EQ(result->dfWithin, 3);
    EXPECT_NEAR(result->msBetween, between / 2, 1e-13);
    EXPECT_NEAR(result->msWithin, 4.0 / 3, 1e-14);
    EXPECT_NEAR(result->residualSd, std::sqrt(4.0 / 3), 1e-14);
    EXPECT_NEAR(result->F.value(), between / 2 / (4.0 / 3), 1e-13);
    EXPECT_NEAR(result->rSquared.value(), between / (between + 4), 1e-14);
}

TEST(OneWay, RefusesWhatCannotBeCompared)
{
    EXPECT_FALSE(oneWay({}));
    EXPECT_FALSE(oneWay(Groups{{1, 2, 3}}));
    EXPECT_FALSE(oneWay(Groups{{1, 2}, {}}));
    EXPECT_FALSE(oneWay(Groups{{1}, {2}, {3}}));
    EXPECT_FALSE(oneWay(Groups{{1, 2}, {3, kNotANumber}}));
    EXPECT_FALSE(oneWay(Groups{{1e300, 2e300}, {3e300, 5e300}})); // its squares are beyond a double
}

TEST(OneWay, LeavesEmptyWhatHasNothingToDivideBy)
{
    const auto onlyBetween = oneWay(Groups{{0.1, 0.1}, {0.3, 0.3}});
    ASSERT_TRUE(onlyBetween);
    EXPECT_EQ(onlyBetween->msWithin, 0);
    EXPECT_FALSE(onlyBetween->F);
    EXPECT_EQ(onlyBetween->rSquared, 1);
    const auto nothing = oneWay(Groups{{0.1, 0.1}, {0.1, 0.1}});
    ASSERT_TRUE(nothing);
    EXPECT_FALSE(nothing->F);
    EXPECT_FALSE(nothing->rSquared);
}

TEST(OneWay, KeepsTheScatterWithinGroupsThatLieFarApart)
{
    const auto result = oneWay(Groups{{1, 2, 3}, {1e12 + 1, 1e12 + 2, 1e12 + 3}});
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->msWithin, 1, 1e-12);
}

TEST(OneWay, HasTheSameRatiosAtAnyScale)
{
    for (const double scale : {1e-150, 1.0, 1e150}) {
        const auto result = oneWay(Groups{{1 * scale, 3 * scale}, {4 * scale, 8 * scale}});
        ASSERT_TRUE(result) << scale;
        EXPECT_NEAR(result->F.value(), 3.2, 1e-13) << scale;
        EXPECT_NEAR(result->rSquared.value(), 16.0 / 26, 1e-14) << scale;
        EXPECT_NEAR(result->residualSd / scale, std::sqrt(5), 1e-14) << scale;
    }
}
