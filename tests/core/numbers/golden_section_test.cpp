#include "core/numbers/golden_section.h"

#include <gtest/gtest.h>

using namespace rig::numbers;

TEST(GoldenSection, FindsThePeakInside)
{
    const Peak peak = highestPoint({-1, 5}, 1e-6, [](double x) { return 3 - (x - 2) * (x - 2); });
    EXPECT_NEAR(peak.at, 2, 1e-6);
    EXPECT_NEAR(peak.height, 3, 1e-12);
}

TEST(GoldenSection, GivesTheVeryEndOfAFunctionThatOnlyRisesOrFalls)
{
    EXPECT_EQ(highestPoint({-1, 5}, 1e-6, [](double x) { return x; }).at, 5);
    EXPECT_EQ(highestPoint({-1, 5}, 1e-6, [](double x) { return -x; }).at, -1);
}

TEST(GoldenSection, TakesARangeOfOnePoint)
{
    EXPECT_EQ(highestPoint({2, 2}, 1e-6, [](double x) { return x; }).at, 2);
}
