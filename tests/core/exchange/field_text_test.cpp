#include "core/exchange/field_text.h"

#include <gtest/gtest.h>
#include <limits>

using namespace rig;

TEST(Fields, HaveAPointWhateverTheComputersHabits)
{
    EXPECT_EQ(decimal(0.1234, 3), "0.123");
    EXPECT_EQ(decimal(-2, 2), "-2.00");
    EXPECT_EQ(decimal(-0.0001, 2), "0.00") << "a nothing has no sign";
    EXPECT_EQ(decimal(123456.5, 1), "123456.5");
    EXPECT_EQ(significant(0.000026, 3), "2.6e-05");
    EXPECT_EQ(significant(0.8341, 2), "0.83");
    EXPECT_EQ(millimetres(Gap::micrometres(600)), "0.60");
    EXPECT_EQ(millimetres(Gap::micrometres(1005)), "1.005");
}

TEST(Fields, AreEmptyWhereThereIsNoFigure)
{
    EXPECT_EQ(decimal(std::numeric_limits<double>::quiet_NaN(), 2), "");
    EXPECT_EQ(significant(std::numeric_limits<double>::infinity(), 2), "");
    EXPECT_EQ(millimetresOrNothing({}), "");
    EXPECT_EQ(dayOrNothing({}), "");
}

TEST(Fields, ShowTheTimeOfTheClockOnTheWall)
{
    EXPECT_EQ(timeText({0, 0}), "00:00:00");
    EXPECT_EQ(timeText({3661, 7200}), "03:01:01");
    EXPECT_EQ(timeText({-1, 0}), "23:59:59");
}
