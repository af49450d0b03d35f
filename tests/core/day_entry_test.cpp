#include "core/day_entry.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace std::chrono_literals;

TEST(TypedDay, IsTakenAsYearMonthDay)
{
    EXPECT_EQ(parseDay("2026-05-02"), Day{2026y / 5 / 2});
    EXPECT_EQ(parseDay("  2026-12-31 "), Day{2026y / 12 / 31});
    EXPECT_EQ(parseDay("2024-02-29"), Day{2024y / 2 / 29});
}

TEST(TypedDay, IsRefusedWhenTwoReadersCouldTakeItForTwoDays)
{
    for (const char* doubtful :
         {"02/05/2026", "2.5.2026", "02-05-2026", "26-05-02", "2026/05/02", "2026-5-2"})
        EXPECT_FALSE(parseDay(doubtful)) << doubtful;
}

TEST(TypedDay, IsRefusedWhenNoCalendarHasIt)
{
    for (const char* impossible : {"2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "0000-01-01",
                                   "2026-0a-01", "2026-+5-02", "", "   ", "today"})
        EXPECT_FALSE(parseDay(impossible)) << impossible;
}

TEST(TypedDay, ReadsBackWhatIsWrittenForIt)
{
    EXPECT_EQ(dayText(Day{2026y / 5 / 2}), "2026-05-02");
    EXPECT_EQ(parseDay(dayText(Day{1999y / 12 / 9})), Day{1999y / 12 / 9});
}
