#include "core/numbers/pivoted_qr.h"

#include <gtest/gtest.h>

using namespace rig::numbers;

TEST(PivotedQr, FitsALineThroughPoints)
{
    // y = 1, 2, 4 at x = 0, 1, 2: least squares 5/6 + 3/2 x, residuals 1/6, -1/3, 1/6.
    const PivotedQr qr{{{1, 1, 1}, {0, 1, 2}}, 1e-12};
    ASSERT_EQ(qr.rank(), 2U);
    const Column turned = qr.turned({1, 2, 4});
    const Column x = qr.solvedWith(turned);
    const std::vector<std::size_t>& basis = qr.basis();
    EXPECT_NEAR(x[basis[0] == 0 ? 0 : 1], 5.0 / 6, 1e-14);
    EXPECT_NEAR(x[basis[0] == 1 ? 0 : 1], 1.5, 1e-14);
    EXPECT_NEAR(turned[2] * turned[2], 1.0 / 6, 1e-14);
}

TEST(PivotedQr, GivesTheVarianceOfAContrast)
{
    // c' (X'X)^-1 c is the squared length of the solution of R' x = c. X'X = [3 3; 3 5], inverse [5 -3; -3 3]
    // / 6.
    const PivotedQr qr{{{1, 1, 1}, {0, 1, 2}}, 1e-12};
    const bool isSlopeFirst = qr.basis()[0] == 1;
    const Column x = qr.solvedAcross(isSlopeFirst ? Column{1, 0} : Column{0, 1});
    EXPECT_NEAR(x[0] * x[0] + x[1] * x[1], 0.5, 1e-14);
}

TEST(PivotedQr, CountsOnlyIndependentColumns)
{
    EXPECT_EQ((PivotedQr{{{1, 0, 1}, {0, 1, 1}, {1, 1, 2}}, 1e-12}.rank()), 2U);
    EXPECT_EQ((PivotedQr{{{1, 2, 3}, {2, 4, 6}}, 1e-12}.basis()), (std::vector<std::size_t>{1}));
    EXPECT_EQ((PivotedQr{{{0, 0}, {0, 0}}, 1e-12}.rank()), 0U);
    EXPECT_EQ((PivotedQr{{{1e-16, 0}}, 1e-12}.rank()), 0U); // rounding is not a direction
    EXPECT_EQ((PivotedQr{{}, 1e-12}.rank()), 0U);
    EXPECT_EQ((PivotedQr{{{1}, {2}}, 1e-12}.rank()), 1U); // more columns than rows
}
