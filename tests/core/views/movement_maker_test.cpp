#include "core/views/movement_maker.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

Day day(unsigned month, unsigned number)
{
    return std::chrono::year{2026} / static_cast<int>(month) / static_cast<int>(number);
}

TrendSeries fiveRiggings()
{
    TrendSeries series;
    for (unsigned i = 0; i < 5; ++i) {
        TrendReading reading;
        reading.when = noonOf(day(3 + i, 1));
        reading.rigging = 10 + i;
        series.readings.push_back(reading);
    }
    return series;
}

TrendSeries seenIn(Day from, Day to)
{
    AirframeReview review;
    review.period.from = from;
    review.period.to = to;
    TrendSeries series = fiveRiggings();
    drawMovement({}, review, series);
    return series;
}

} // namespace

TEST(PeriodOfATrend, LiesBetweenTheRiggingsAroundIt)
{
    const TrendSeries series = seenIn(day(4, 1), day(5, 31));
    ASSERT_TRUE(series.period);
    EXPECT_EQ(series.period->begins.rigging, 10.5);
    EXPECT_EQ(series.period->ends.rigging, 12.5);
    EXPECT_EQ(series.period->begins.when.localDay(), day(4, 1));
    EXPECT_EQ(series.period->ends.when.localDay(), day(5, 31));
}

TEST(PeriodOfATrend, IsNotTheirsWhenItHoldsAllReadings)
{
    EXPECT_FALSE(seenIn(day(3, 1), day(7, 1)).period);
}

TEST(PeriodOfATrend, MayHoldNoReading)
{
    const TrendSeries series = seenIn(day(8, 1), day(8, 31));
    ASSERT_TRUE(series.period);
    EXPECT_EQ(series.period->begins.rigging, 14.5);
    EXPECT_EQ(series.period->ends.rigging, 14.5);
}
