#include "core/numbers/distributions.h"
#include "core/numbers/leaf_uncertainty.h"
#include "core/numbers/quadrature.h"
#include "tests/support/odd_numbers.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

// P(|R + N| <= x) by summing over the rectangle, apart from the closed form.
double shareWithinBySumming(double x, double halfWidth, double sd)
{
    double share = 0;
    for (const auto& [r, weight] : gaussLegendre(400, -halfWidth, halfWidth))
        share += weight / (2 * halfWidth) * (normalBelow((x - r) / sd) - normalBelow((-x - r) / sd));
    return share;
}

LeafReading between(double enters, double refuses)
{
    LeafReading reading;
    reading.bracket = {enters, refuses};
    return reading;
}

} // namespace

TEST(HalfWidth95, HoldsNineteenInTwentyOfTheSum)
{
    for (const double sd : {0.001, 0.004, 0.01, 0.025, 0.1, 1.0, 20.0})
        EXPECT_NEAR(shareWithinBySumming(halfWidth95(0.025, sd), 0.025, sd), 0.95, 1e-9) << sd;
}

TEST(HalfWidth95, IsTheRectanglesOrTheNormalsOwnWhereTheOtherIsNothing)
{
    EXPECT_NEAR(halfWidth95(0.1, 0), 0.095, 1e-16);
    EXPECT_NEAR(halfWidth95(0, 0.1), 0.1959963984540054, 1e-16);
    EXPECT_EQ(halfWidth95(0, 0), 0);
    EXPECT_NEAR(halfWidth95(0.1, 1e-300), 0.095, 1e-15);
    EXPECT_NEAR(halfWidth95(1e-300, 0.1), 0.1959963984540054, 1e-16);
}

TEST(HalfWidth95, HasNoStepWhereItsFormulaChanges)
{
    EXPECT_NEAR(halfWidth95(1.0001e-3, 1), halfWidth95(0.9999e-3, 1), 1e-9); // the true change is 1.3e-10
    EXPECT_GT(halfWidth95(1.0001e-3, 1), halfWidth95(0.9999e-3, 1));
}

TEST(HalfWidth95, FollowsTheScale)
{
    for (const double scale : {1e-300, 1e-12, 1e12, 1e300})
        EXPECT_NEAR(halfWidth95(0.025 * scale, 0.004 * scale) / scale, halfWidth95(0.025, 0.004), 1e-14)
            << scale;
}

TEST(LeafUncertainty, OfABracketAloneIsItsRectangle)
{
    const auto result = leafUncertainty(between(0.5, 0.55));
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->midpoint, 0.525, 1e-15);
    EXPECT_NEAR(result->bracket, 0.05 / std::sqrt(12), 1e-15);
    EXPECT_EQ(result->leaves, 0);
    EXPECT_NEAR(result->combined, result->bracket, 1e-17);
    EXPECT_NEAR(result->halfWidth95, 0.95 * 0.025, 1e-15);
}

TEST(LeafUncertainty, OfALeafKnownExactlyIsNothing)
{
    const auto result = leafUncertainty(between(0.5, 0.5));
    ASSERT_TRUE(result);
    EXPECT_EQ(result->combined, 0);
    EXPECT_EQ(result->halfWidth95, 0);
}

// Film holds leaves apart: a stack is thicker than it is marked, by half a film for each joint on average.
TEST(LeafUncertainty, MovesTheMidpointByHalfAFilmForEachJoint)
{
    LeafReading reading = between(1.2, 1.25);
    reading.film = 0.004;
    reading.leafTolerances = {0.005};
    EXPECT_NEAR(leafUncertainty(reading)->midpoint, 1.225, 1e-15);
    EXPECT_EQ(leafUncertainty(reading)->films, 0);
    reading.leafTolerances = {0.005, 0.005, 0.005};
    EXPECT_NEAR(leafUncertainty(reading)->midpoint, 1.229, 1e-15);
    EXPECT_NEAR(leafUncertainty(reading)->films, 0.004 / std::sqrt(6), 1e-15);
}

TEST(LeafUncertainty, AddsTolerancesThatErrTogetherBeforeAnythingElse)
{
    LeafReading reading = between(0.5, 0.51);
    reading.leafTolerances = {0.003, 0.004};
    const auto apart = leafUncertainty(reading);
    reading.sharedTolerance = true;
    const auto together = leafUncertainty(reading);
    ASSERT_TRUE(apart && together);
    EXPECT_NEAR(apart->leaves, 0.005 / std::sqrt(3), 1e-15);
    EXPECT_NEAR(together->leaves, 0.007 / std::sqrt(3), 1e-15);
    EXPECT_NEAR(apart->largestRectangularHalfWidth, 0.005, 1e-15);    // the bracket
    EXPECT_NEAR(together->largestRectangularHalfWidth, 0.007, 1e-15); // the leaves
    EXPECT_GT(together->halfWidth95, apart->halfWidth95);
}

TEST(LeafUncertainty, CountsColdAndHeatAlike)
{
    LeafReading reading = between(1.0, 1.0);
    reading.kelvinFrom20 = -30;
    const double cold = leafUncertainty(reading)->temperature;
    EXPECT_NEAR(cold, 11.5e-6 * 30 / std::sqrt(3), 1e-18);
    reading.kelvinFrom20 = 30;
    EXPECT_EQ(leafUncertainty(reading)->temperature, cold);
}

TEST(LeafUncertainty, RefusesWhatIsNoReading)
{
    EXPECT_FALSE(leafUncertainty(between(0.55, 0.5)));
    EXPECT_FALSE(leafUncertainty(between(0.5, kInfinity)));
    EXPECT_FALSE(leafUncertainty(between(-kInfinity, 0.5)));
    EXPECT_FALSE(leafUncertainty(between(kNotANumber, 0.5)));
    EXPECT_FALSE(leafUncertainty(between(-1e308, 1e308))); // its width is beyond a double
    for (const double odd : {-0.001, kNotANumber, kInfinity}) {
        LeafReading reading = between(0.5, 0.55);
        reading.leafTolerances = {0.005, odd};
        EXPECT_FALSE(leafUncertainty(reading)) << odd;
        reading = between(0.5, 0.55);
        reading.film = odd;
        EXPECT_FALSE(leafUncertainty(reading)) << odd;
        reading = between(0.5, 0.55);
        reading.repeatSd = odd;
        EXPECT_FALSE(leafUncertainty(reading)) << odd;
    }
    LeafReading reading = between(0.5, 0.55);
    reading.kelvinFrom20 = kNotANumber;
    EXPECT_FALSE(leafUncertainty(reading));
}
