#include "core/numbers/distributions.h"
#include "core/numbers/interval.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>

using namespace rig::numbers;

// Expected values: the complementary error function in 40-digit arithmetic, rounded to 18 digits.
TEST(NormalLogarithm, StaysAccurateFarBelowTheSmallestDouble)
{
    struct Row
    {
        double z, expected;
    };
    for (const auto& [z, expected] :
         {Row{6, -9.86587645524375732e-10}, Row{-5, -15.0649983939887257}, Row{-29.5, -439.429474609150228},
          Row{-30, -454.321243956343197}, Row{-30.5, -469.462737322912114}, Row{-40, -804.608442013753788},
          Row{-200, -20006.2172808981904}})
        EXPECT_NEAR(logNormalBelow(z), expected, 1e-13 * std::abs(expected)) << z;
}

TEST(NormalLogarithm, OfAnIntervalStaysAccurateInEveryCorner)
{
    struct Row
    {
        double a, b, expected;
    };
    for (const auto& [a, b, expected] :
         {Row{-1, 2, -0.20016629432446258}, Row{-41, -40, -804.608442013753788},
          Row{40, 41, -804.608442013753788}, Row{3, 3.00005, -15.3225010852222822},
          Row{3, 3.001, -12.328193603728616}, Row{8, 9, -35.0136185934371481},
          Row{-35, -30, -454.321243956343197}, Row{-2e5, -30, -454.321243956343197}})
        EXPECT_NEAR(logNormalBetween(a, b), expected, 3e-12 * std::abs(expected)) << a << " to " << b;
}

TEST(NormalLogarithm, TakesOpenIntervals)
{
    EXPECT_DOUBLE_EQ(logNormalBetween(-kInfinity, -3), logNormalBelow(-3));
    EXPECT_DOUBLE_EQ(logNormalBetween(3, kInfinity), logNormalBelow(-3));
    EXPECT_NEAR(logNormalBetween(-3, kInfinity), logNormalBelow(3), 1e-15);
    EXPECT_EQ(logNormalBetween(-kInfinity, kInfinity), 0);
}

TEST(NormalLogarithm, HasNoStepWhereItsFormulaChanges)
{
    for (const double a : {-40.0, -6.0, -0.5, 0.5, 6.0, 40.0}) {
        const double narrow = logNormalBetween(a, a + 0.99e-4) - std::log(0.99e-4);
        const double wide = logNormalBetween(a, a + 1.01e-4) - std::log(1.01e-4);
        EXPECT_NEAR(narrow, wide, 1e-6 * (std::abs(a) + 1) * 1.2) << a; // the densities' own change over 1e-6
    }
}

TEST(NormalQuantile, TakesItsEdgesAndRefusesNoNumber)
{
    EXPECT_EQ(normalQuantile(0), -kInfinity);
    EXPECT_EQ(normalQuantile(1), kInfinity);
    EXPECT_TRUE(std::isnan(normalQuantile(std::nan(""))));
    EXPECT_NEAR(normalBelow(normalQuantile(1e-300)), 1e-300, 1e-312);
}

TEST(Student, TakesItsEdgesAndRefusesNoDegreesOfFreedom)
{
    EXPECT_EQ(studentQuantile(0, 3), -kInfinity);
    EXPECT_EQ(studentQuantile(1, 3), kInfinity);
    EXPECT_EQ(studentBelow(kInfinity, 3), 1);
    EXPECT_EQ(studentBelow(-kInfinity, 3), 0);
    for (const double df : {0.0, -1.0, std::nan("")}) {
        EXPECT_TRUE(std::isnan(studentBelow(1, df)));
        EXPECT_TRUE(std::isnan(studentQuantile(0.5, df)));
    }
    EXPECT_TRUE(std::isnan(studentQuantile(std::nan(""), 3)));
}

TEST(Trigamma, HasItsKnownValues)
{
    // Abramowitz & Stegun 6.3.2, 6.3.3, 6.4.2, 6.4.4 (from memory).
    EXPECT_NEAR(digamma(1), -std::numbers::egamma, 1e-15);
    EXPECT_NEAR(digamma(0.5), -std::numbers::egamma - 2 * std::numbers::ln2, 1e-14);
    EXPECT_NEAR(trigamma(1), std::numbers::pi * std::numbers::pi / 6, 1e-14);
    EXPECT_NEAR(trigamma(0.5), std::numbers::pi * std::numbers::pi / 2, 1e-14);
}

TEST(Trigamma, IsInvertedOverItsWholeRange)
{
    for (double y = 1e-5; y < 1e8; y *= 3.7)
        EXPECT_NEAR(inverseTrigamma(trigamma(y)), y, 1e-6 * y) << y;
}

TEST(Trigamma, IsNoNumberWhereItIsNotDefined)
{
    for (const double x : {0.0, -1.0, -2.5, std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_TRUE(std::isnan(digamma(x))) << x;
        EXPECT_TRUE(std::isnan(trigamma(x))) << x;
        EXPECT_TRUE(std::isnan(inverseTrigamma(x))) << x;
    }
}

TEST(ChiSquare, TakesItsEdgesAndRefusesNoDegreesOfFreedom)
{
    EXPECT_EQ(chiSquareBelow(0, 3), 0);
    EXPECT_EQ(chiSquareBelow(-1, 3), 0);
    EXPECT_EQ(chiSquareBelow(kInfinity, 3), 1);
    EXPECT_EQ(chiSquareQuantile(0, 3), 0);
    EXPECT_EQ(chiSquareQuantile(1, 3), kInfinity);
    for (const double df : {0.0, -1.0, std::nan("")}) {
        EXPECT_TRUE(std::isnan(chiSquareBelow(1, df)));
        EXPECT_TRUE(std::isnan(chiSquareQuantile(0.5, df)));
    }
    EXPECT_TRUE(std::isnan(chiSquareBelow(std::nan(""), 3)));
    EXPECT_TRUE(std::isnan(chiSquareQuantile(std::nan(""), 3)));
}

TEST(Fisher, TakesItsEdgesAndRefusesNoDegreesOfFreedom)
{
    EXPECT_EQ(fisherBelow(0, 2, 3), 0);
    EXPECT_EQ(fisherAbove(0, 2, 3), 1);
    EXPECT_EQ(fisherBelow(kInfinity, 2, 3), 1);
    EXPECT_EQ(fisherAbove(kInfinity, 2, 3), 0);
    EXPECT_EQ(fisherQuantile(0, 2, 3), 0);
    EXPECT_EQ(fisherQuantile(1, 2, 3), kInfinity);
    for (const double df : {0.0, -1.0, std::nan("")}) {
        EXPECT_TRUE(std::isnan(fisherBelow(1, df, 3)));
        EXPECT_TRUE(std::isnan(fisherAbove(1, 3, df)));
        EXPECT_TRUE(std::isnan(fisherQuantile(0.5, df, 3)));
        EXPECT_TRUE(std::isnan(fisherQuantile(0.5, 3, df)));
    }
    EXPECT_TRUE(std::isnan(fisherAbove(std::nan(""), 2, 3)));
    EXPECT_TRUE(std::isnan(fisherQuantile(std::nan(""), 2, 3)));
}

// With two degrees of freedom above, P(F >= f) = (1 + 2 f / df)^(-df / 2): integrate the density.
TEST(Fisher, KeepsItsDigitsFarOut)
{
    for (const double f : {0.1, 1.0, 30.0, 1e4})
        EXPECT_NEAR(fisherAbove(f, 2, 20) / std::pow(1 + f / 10, -10), 1, 1e-12) << f;
}
