#include "core/numbers/cholesky.h"

#include <cmath>
#include <cstddef>

namespace rig::numbers {
namespace {

constexpr double kSmallestPivot = 1e-14; // of its diagonal element

} // namespace

std::optional<Matrix3> choleskyOf(const Matrix3& matrix)
{
    Matrix3 root{};
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j <= i; ++j) {
            double rest = matrix[i][j];
            for (std::size_t k = 0; k < j; ++k)
                rest -= root[i][k] * root[j][k];
            if (i != j)
                root[i][j] = rest / root[j][j];
            else if (rest > kSmallestPivot * matrix[i][i] && std::isfinite(rest))
                root[i][i] = std::sqrt(rest);
            else
                return std::nullopt;
        }
    return root;
}

Vector3 choleskySolution(const Matrix3& root, Vector3 right)
{
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t k = 0; k < i; ++k)
            right[i] -= root[i][k] * right[k];
        right[i] /= root[i][i];
    }
    for (std::size_t i = 3; i-- > 0;) {
        for (std::size_t k = i + 1; k < 3; ++k)
            right[i] -= root[k][i] * right[k];
        right[i] /= root[i][i];
    }
    return right;
}

} // namespace rig::numbers
