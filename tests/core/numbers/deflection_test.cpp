#include "core/numbers/deflection.h"
#include "tests/support/odd_numbers.h"

#include <gtest/gtest.h>
#include <limits>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

constexpr Travel kKinds[] = {Travel::StraightLine, Travel::Perpendicular, Travel::Arc};
constexpr double kHuge = std::numeric_limits<double>::max();

} // namespace

TEST(Deflection, ComesBackFromTravelToTheAngleItWas)
{
    for (const Travel kind : kKinds)
        for (const double degrees : {-90.0, -15.0, 0.0, 0.3, 28.0, 90.0}) {
            const auto travel = travelOf(degrees, 135, kind);
            ASSERT_TRUE(travel);
            EXPECT_NEAR(degreesOf(*travel, 135, kind).value(), degrees, 1e-6); // asin is flat near 90
        }
}

TEST(Deflection, IsNotKnownWithoutADistanceFromTheHinge)
{
    for (const Travel kind : kKinds)
        for (const double radius : {0.0, -120.0, kNotANumber}) {
            EXPECT_FALSE(degreesOf(10, radius, kind));
            EXPECT_FALSE(travelOf(10, radius, kind));
        }
}

TEST(Deflection, IsNotKnownWhereTheWayDoesNotTellTheAngle)
{
    EXPECT_FALSE(travelOf(181, 120, Travel::StraightLine));
    EXPECT_FALSE(travelOf(-91, 120, Travel::Perpendicular));
    EXPECT_TRUE(travelOf(400, 120, Travel::Arc));
    EXPECT_FALSE(degreesOf(120.1, 120, Travel::Perpendicular));
    EXPECT_FALSE(degreesOf(-240.1, 120, Travel::StraightLine));
}

TEST(Deflection, IsNeverInfiniteOrNaN)
{
    for (const Travel kind : kKinds) {
        EXPECT_FALSE(degreesOf(kNotANumber, 120, kind));
        EXPECT_FALSE(travelOf(kNotANumber, 120, kind));
        EXPECT_FALSE(degreesOf(kHuge, 1e-300, kind));
    }
    EXPECT_FALSE(travelOf(170, kHuge, Travel::StraightLine));
    EXPECT_FALSE(travelOf(kHuge, 120, Travel::Arc));
}
