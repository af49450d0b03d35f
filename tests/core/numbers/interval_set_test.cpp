#include "core/numbers/interval_set.h"
#include "tests/support/odd_numbers.h"

#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

TEST(IntervalSet, SaysWhyReadingsCannotBeUsed)
{
    struct Row
    {
        std::vector<Interval> readings;
        ReadingsStatus expected;
    };
    const Row table[] = {
        {{}, ReadingsStatus::NoReadings},
        {{{-kInfinity, kInfinity}}, ReadingsStatus::NoReadings},
        {{{0.5, kNotANumber}}, ReadingsStatus::NotANumber},
        {{{kNotANumber, kNotANumber}}, ReadingsStatus::NotANumber},
        {{{kInfinity, kInfinity}}, ReadingsStatus::NotANumber},
        {{{-kInfinity, -kInfinity}}, ReadingsStatus::NotANumber},
        {{{0.55, 0.5}}, ReadingsStatus::ReversedBounds},
        // The first reading that is wrong names the status.
        {{{0.55, 0.5}, {0.5, kNotANumber}}, ReadingsStatus::ReversedBounds},
        {{{-kInfinity, 0.5}, {-kInfinity, 0.6}}, ReadingsStatus::NoLowerBound},
        {{{0.5, kInfinity}, {0.6, kInfinity}}, ReadingsStatus::NoUpperBound},
        {{{0.5, kInfinity}, {-kInfinity, 0.6}}, ReadingsStatus::Ok},
        {{{0.5, 0.5}}, ReadingsStatus::Ok},
    };
    for (const Row& row : table) {
        const IntervalSet set = intervalSetOf(row.readings);
        EXPECT_EQ(set.status, row.expected) << "row " << &row - table;
        EXPECT_EQ(set.distinct.empty(), row.expected != ReadingsStatus::Ok) << "row " << &row - table;
    }
}

TEST(IntervalSet, DoesNotCountReadingsThatSayNothing)
{
    const IntervalSet set = intervalSetOf(std::vector<Interval>{{0.5, 0.55}, {-kInfinity, kInfinity}});
    EXPECT_EQ(set.readings, 1);
}

TEST(IntervalSet, CountsEqualReadingsTogetherAndSortsThem)
{
    const IntervalSet set =
        intervalSetOf(std::vector<Interval>{{0.5, 0.55}, {0.45, 0.5}, {0.5, 0.55}, {0.5, 0.52}});
    ASSERT_EQ(set.distinct.size(), 3u);
    EXPECT_EQ(set.distinct[0].interval, (Interval{0.45, 0.5}));
    EXPECT_EQ(set.distinct[1].interval, (Interval{0.5, 0.52}));
    EXPECT_EQ(set.distinct[2].interval, (Interval{0.5, 0.55}));
    EXPECT_EQ(set.distinct[2].count, 2);
    EXPECT_EQ(set.readings, 4);
}

TEST(IntervalSet, TakesTheMedianOfFiniteWidthsOnly)
{
    EXPECT_DOUBLE_EQ(intervalSetOf(std::vector<Interval>{{0, 1}, {0, 3}, {0, 4}, {5, kInfinity}}).medianWidth,
                     3);
    EXPECT_DOUBLE_EQ(intervalSetOf(std::vector<Interval>{{0, 1}, {0, 3}}).medianWidth, 2);
    EXPECT_EQ(intervalSetOf(std::vector<Interval>{{0, kInfinity}, {-kInfinity, 1}}).medianWidth, 0);
}

TEST(IntervalSet, LeavesOutOneCopyAndKeepsTheGaugesWidth)
{
    const IntervalSet set = intervalSetOf(std::vector<Interval>{{0.5, 0.55}, {0.5, 0.55}, {0.4, 0.41}});
    const IntervalSet fewer = withoutOne(set, 1);
    EXPECT_EQ(fewer.readings, 2);
    ASSERT_EQ(fewer.distinct.size(), 2u);
    EXPECT_EQ(fewer.distinct[1].count, 1);
    EXPECT_EQ(fewer.medianWidth, set.medianWidth);
    const IntervalSet other = withoutOne(set, 0);
    ASSERT_EQ(other.distinct.size(), 1u);
    EXPECT_EQ(other.distinct[0].count, 2);
}

TEST(IntervalSet, HasNoPosteriorWithoutItsOnlyClosedReading)
{
    const IntervalSet set = intervalSetOf(std::vector<Interval>{{0.5, 0.55}, {1.0, kInfinity}});
    EXPECT_EQ(withoutOne(set, 0).status, ReadingsStatus::NoUpperBound);
}

TEST(ResolutionFloor, IsAQuarterStepAndNeverFinerThanFiveMicrometres)
{
    EXPECT_DOUBLE_EQ(resolutionFloor(0.05), 0.0125);
    EXPECT_DOUBLE_EQ(resolutionFloor(0.01), 0.005);
    EXPECT_DOUBLE_EQ(resolutionFloor(0), 0.005);
}
