#include "core/numbers/cholesky.h"
#include "core/numbers/interval.h"
#include "tests/support/odd_numbers.h"

#include <gtest/gtest.h>

using namespace rig::numbers;
using namespace rig::tests;

TEST(Cholesky, SolvesByHand)
{
    // L = (2; 1 3; -1 2 1), so L L' is the matrix below; it maps (1, 2, 3) to (2, 37, 26).
    const Matrix3 matrix{{{4, 2, -2}, {2, 10, 5}, {-2, 5, 6}}};
    const auto root = choleskyOf(matrix);
    ASSERT_TRUE(root);
    EXPECT_EQ(*root, (Matrix3{{{2, 0, 0}, {1, 3, 0}, {-1, 2, 1}}}));
    const Vector3 solution = choleskySolution(*root, {2, 37, 26});
    EXPECT_NEAR(solution[0], 1, 1e-12);
    EXPECT_NEAR(solution[1], 2, 1e-12);
    EXPECT_NEAR(solution[2], 3, 1e-12);
}

TEST(Cholesky, RefusesWhatIsNotPositiveDefinite)
{
    EXPECT_FALSE(choleskyOf(Matrix3{{{1, 0, 0}, {0, 0, 0}, {0, 0, 1}}}));
    EXPECT_FALSE(choleskyOf(Matrix3{{{1, 0, 0}, {0, -1, 0}, {0, 0, 1}}}));
    EXPECT_FALSE(choleskyOf(Matrix3{{{1, 1, 0}, {1, 1, 0}, {0, 0, 1}}}));
    EXPECT_FALSE(choleskyOf(Matrix3{{{1, 1, 0}, {1, 1 + 1e-15, 0}, {0, 0, 1}}}));
    EXPECT_FALSE(choleskyOf(Matrix3{{{kInfinity, 0, 0}, {0, 1, 0}, {0, 0, 1}}}));
    EXPECT_FALSE(choleskyOf(Matrix3{{{1, 0, 0}, {kNotANumber, 1, 0}, {0, 0, 1}}}));
}
