#include "core/baseline/baseline.h"
#include "core/baseline/narrowing.h"
#include "tests/support/gaps.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::tests;

TEST(Narrowing, IsNotKnownWithoutABand)
{
    EXPECT_FALSE(narrowingOf({}));
    EXPECT_FALSE(narrowingOf(repeated(aGap(500, 550), 4)));
    EXPECT_FALSE(narrowingOf(repeated(anOpenGap(1000), 12)));
}

TEST(Narrowing, StartsFromTheWidthThatIsShown)
{
    const auto readings = tenLeafReadings();
    const auto band = Baseline::from(readings).band();
    ASSERT_TRUE(band);
    const auto narrowing = narrowingOf(readings);
    ASSERT_TRUE(narrowing);
    EXPECT_DOUBLE_EQ(narrowing->widthNow, band->outer.upper - band->outer.lower);
}

TEST(Narrowing, IsTheOneOfTheSameReadingAgainWhereAllAreTheSame)
{
    const auto narrowing = narrowingOf(repeated(aGap(500, 550), 9));
    const auto ten = Baseline::from(repeated(aGap(500, 550), 10)).band();
    ASSERT_TRUE(narrowing && ten);
    EXPECT_NEAR(narrowing->widthWithOneMore, ten->outer.upper - ten->outer.lower, 1e-9);
    EXPECT_LT(narrowing->widthWithOneMore, narrowing->widthNow);
}

TEST(Narrowing, WeighsEachReadingByHowOftenItWasRead)
{
    const auto readings = tenLeafReadings();
    const auto widthWith = [&readings](const GapInterval& more) {
        const auto band = Baseline::from(together(readings, {more})).band();
        return band->outer.upper - band->outer.lower;
    };
    const auto narrowing = narrowingOf(readings);
    ASSERT_TRUE(narrowing);
    EXPECT_NEAR(narrowing->widthWithOneMore,
                0.8 * widthWith(aGap(500, 550)) + 0.2 * widthWith(aGap(450, 500)), 1e-9);
}

TEST(Narrowing, CountsALowerEdgeBelowNothingAsNothing)
{
    const auto readings = together(repeated(aGap(0, 50), 3), repeated(aGap(50, 100), 2));
    const auto band = Baseline::from(readings).band();
    const auto narrowing = narrowingOf(readings);
    ASSERT_TRUE(band && narrowing);
    ASSERT_LT(band->outer.lower, 0);
    EXPECT_DOUBLE_EQ(narrowing->widthNow, band->outer.upper);
}

// The further the baseline has come, the less one more reading gives: the factors of docs/method.md H fall
// from 6.82 to 5.66 between 5 and 6 readings, and by less than 1 % a reading beyond 20.
TEST(Narrowing, GivesLessTheFurtherTheBaselineHasCome)
{
    const auto shareOf = [](int times) {
        const auto narrowing =
            narrowingOf(together(repeated(aGap(500, 550), 3 * times), repeated(aGap(550, 600), 2 * times)));
        return 1 - narrowing->widthWithOneMore / narrowing->widthNow;
    };
    EXPECT_GT(shareOf(1), shareOf(2));
    EXPECT_GT(shareOf(2), shareOf(4));
    EXPECT_GT(shareOf(4), 0);
}
