#include "core/numbers/distributions.h"
#include "core/numbers/student_mixture.h"

#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

TEST(StudentMixture, OfOnePartIsThatPart)
{
    const std::vector<StudentPart> one{{0.3, 2, 0.5, 9}};
    EXPECT_NEAR(mixtureQuantile(one, 0.975), 2 + 0.5 * studentQuantile(0.975, 9), 1e-12);
    EXPECT_NEAR(mixtureBelow(one, 2.4), studentBelow(0.8, 9), 1e-14);
}

TEST(StudentMixture, QuantileIsTheInverse)
{
    const std::vector<StudentPart> parts{{0.6, 0, 0.1, 90}, {0.3, 1, 0.02, 90}, {0.1, -3, 0.5, 4}};
    for (const double p : {0.001, 0.025, 0.5, 0.7, 0.975, 0.999})
        EXPECT_NEAR(mixtureBelow(parts, mixtureQuantile(parts, p)), p, 1e-9) << p;
}

// Far apart, of unequal width and with nothing between: where a straight step would leave the range.
TEST(StudentMixture, QuantileIsTheInverseWhereThePartsAreFarApart)
{
    const std::vector<StudentPart> parts{{0.5, -1, 0.002, 3}, {0.4999, 1, 0.0005, 200}, {1e-4, 0, 5, 1}};
    for (const double p : {1e-4, 0.025, 0.4, 0.5, 0.50005, 0.6, 0.975, 0.9999})
        EXPECT_NEAR(mixtureBelow(parts, mixtureQuantile(parts, p)), p, 1e-9) << p;
}

TEST(StudentMixture, DensityIsTheSlopeOfTheChance)
{
    for (const double df : {1.0, 4.5, 90.0})
        for (const double t : {-3.0, -0.4, 0.0, 1.7})
            EXPECT_NEAR(studentDensity(t, df),
                        (studentBelow(t + 1e-3, df) - studentBelow(t - 1e-3, df)) / 2e-3, 1e-6);
}

TEST(StudentMixture, APartWithoutErrorIsAPoint)
{
    const std::vector<StudentPart> parts{{0.5, 1, 0, 5}, {0.5, 3, 0, 5}};
    EXPECT_EQ(mixtureBelow(parts, 0.9), 0);
    EXPECT_EQ(mixtureBelow(parts, 2), 0.5);
    EXPECT_EQ(mixtureBelow(parts, 3), 1);
    EXPECT_NEAR(mixtureQuantile(parts, 0.2), 1, 1e-9);
    EXPECT_NEAR(mixtureQuantile(parts, 0.8), 3, 1e-9);
}
