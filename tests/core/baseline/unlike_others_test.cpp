#include "core/baseline/unlike_others.h"
#include "tests/support/gaps.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::tests;

TEST(UnlikeOthers, AreNoneInTheReadingsOfAGoodJoint)
{
    EXPECT_TRUE(unlikeOthers(tenLeafReadings()).empty());
}

// method.md A6 finds a reading 0.3 mm off with a sigma of 0.03 mm in 97 to 100 % of baselines of ten.
TEST(UnlikeOthers, NamesTheOneThatIsFarOff)
{
    const auto readings = together(tenLeafReadings(), {aGap(900, 950)});
    EXPECT_EQ(unlikeOthers(readings), (std::set{aGap(900, 950)}));
}

TEST(UnlikeOthers, NamesOneOnEitherSide)
{
    const auto readings = together(tenLeafReadings(), {aGap(50, 100)});
    EXPECT_EQ(unlikeOthers(readings), (std::set{aGap(50, 100)}));
}

TEST(UnlikeOthers, AreNotLookedForBelowFiveReadings)
{
    EXPECT_TRUE(unlikeOthers(together(repeated(aGap(500, 550), 3), {aGap(900, 950)})).empty());
}

TEST(UnlikeOthers, AreNoneWhereTheReadingsSayNothingTogether)
{
    EXPECT_TRUE(unlikeOthers({}).empty());
    EXPECT_TRUE(unlikeOthers(repeated(anOpenGap(1000), 10)).empty());
}
