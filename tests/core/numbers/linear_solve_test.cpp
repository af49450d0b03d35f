#include "core/numbers/linear_solve.h"

#include <gtest/gtest.h>

using namespace rig::numbers;

namespace {

SquareMatrix matrixOf(std::size_t size, const std::vector<double>& rows)
{
    SquareMatrix matrix{size};
    for (std::size_t i = 0; i < rows.size(); ++i)
        matrix.at(i / size, i % size) = rows[i];
    return matrix;
}

} // namespace

TEST(LinearSolve, FindsTheUnknowns)
{
    // x + 2y + z = 8, 3x + 8y + z = 22, 4y + z = 11: x = 1, y = 2, z = 3
    const auto x = solved(matrixOf(3, {1, 2, 1, 3, 8, 1, 0, 4, 1}), {8, 22, 11});
    ASSERT_TRUE(x);
    EXPECT_NEAR((*x)[0], 1, 1e-13);
    EXPECT_NEAR((*x)[1], 2, 1e-13);
    EXPECT_NEAR((*x)[2], 3, 1e-13);
}

TEST(LinearSolve, ExchangesRowsWhereTheFirstHasNothing)
{
    EXPECT_EQ(solved(matrixOf(2, {0, 1, 1, 0}), {3, 4}), (std::vector<double>{4, 3}));
    // Without an exchange the small pivot would swallow the answer.
    const auto x = solved(matrixOf(2, {1e-20, 1, 1, 1}), {1, 2});
    ASSERT_TRUE(x);
    EXPECT_NEAR((*x)[0], 1, 1e-15);
    EXPECT_NEAR((*x)[1], 1, 1e-15);
}

TEST(LinearSolve, HasNoAnswerWhereThereIsNone)
{
    EXPECT_FALSE(solved(matrixOf(2, {1, 2, 2, 4}), {1, 2}));
    EXPECT_FALSE(solved(matrixOf(1, {0}), {1}));
}
