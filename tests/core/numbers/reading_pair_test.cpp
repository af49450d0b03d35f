#include "core/numbers/reading_pair.h"
#include "tests/support/odd_numbers.h"

#include <gtest/gtest.h>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

PairVerdict verdictOf(const Interval& first, const Interval& second, double limit)
{
    return readingPair(first, second, limit).value().verdict;
}

} // namespace

TEST(ReadingPair, GivesTheNearestAndTheFurthestThatTwoReadingsCanLieApart)
{
    const auto apart = readingPair({1, 2}, {5, 7}, 1);
    ASSERT_TRUE(apart);
    EXPECT_EQ(apart->smallestDifference, 3);
    EXPECT_EQ(apart->largestDifference, 6);
    const auto nested = readingPair({1, 8}, {5, 7}, 1);
    ASSERT_TRUE(nested);
    EXPECT_EQ(nested->smallestDifference, 0);
    EXPECT_EQ(nested->largestDifference, 6);
}

TEST(ReadingPair, AgreesDisagreesOrLeavesItOpen)
{
    EXPECT_EQ(verdictOf({1, 2}, {5, 7}, 6), PairVerdict::Agree);
    EXPECT_EQ(verdictOf({1, 2}, {5, 7}, 5.9), PairVerdict::Unresolved);
    EXPECT_EQ(verdictOf({1, 2}, {5, 7}, 3), PairVerdict::Unresolved);
    EXPECT_EQ(verdictOf({1, 2}, {5, 7}, 2.9), PairVerdict::Disagree);
    EXPECT_EQ(verdictOf({1, 1}, {1, 1}, 0), PairVerdict::Agree);
    EXPECT_EQ(verdictOf({1, 2}, {1, 2}, 0), PairVerdict::Unresolved); // the same leaf is not the same gap
}

TEST(ReadingPair, DoesNotDependOnWhoReadFirst)
{
    const auto one = readingPair({1, 2}, {5, 7}, 4);
    const auto other = readingPair({5, 7}, {1, 2}, 4);
    ASSERT_TRUE(one && other);
    EXPECT_EQ(one->smallestDifference, other->smallestDifference);
    EXPECT_EQ(one->largestDifference, other->largestDifference);
}

TEST(ReadingPair, WithAnOpenBoundNeverAgrees)
{
    const auto open = readingPair({1, 2}, {5, kInfinity}, 100);
    ASSERT_TRUE(open);
    EXPECT_EQ(open->smallestDifference, 3);
    EXPECT_EQ(open->largestDifference, kInfinity);
    EXPECT_EQ(open->verdict, PairVerdict::Unresolved);
    EXPECT_EQ(verdictOf({1, 2}, {5, kInfinity}, 2), PairVerdict::Disagree);
    EXPECT_EQ(verdictOf({-kInfinity, 2}, {5, kInfinity}, 2), PairVerdict::Disagree);

    const auto bothOpen = readingPair({1, kInfinity}, {5, kInfinity}, 1);
    ASSERT_TRUE(bothOpen);
    EXPECT_EQ(bothOpen->smallestDifference, 0);
    EXPECT_EQ(bothOpen->largestDifference, kInfinity);
}

TEST(ReadingPair, RefusesWhatIsNoReadingOrNoLimit)
{
    EXPECT_FALSE(readingPair({2, 1}, {1, 2}, 1));
    EXPECT_FALSE(readingPair({1, 2}, {2, 1}, 1));
    EXPECT_FALSE(readingPair({kNotANumber, 2}, {1, 2}, 1));
    EXPECT_FALSE(readingPair({1, 2}, {1, kNotANumber}, 1));
    EXPECT_FALSE(readingPair({kInfinity, kInfinity}, {1, 2}, 1));
    EXPECT_FALSE(readingPair({1, 2}, {-kInfinity, -kInfinity}, 1));
    EXPECT_FALSE(readingPair({-1.5e308, -1.5e308}, {1.5e308, 1.5e308}, 1));
    for (const double limit : {-1.0, kNotANumber, kInfinity})
        EXPECT_FALSE(readingPair({1, 2}, {1, 2}, limit)) << limit;
}
