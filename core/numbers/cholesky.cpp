#include "core/numbers/cholesky.h"

#include <cmath>

namespace rig::numbers {
namespace {

constexpr double kSmallestPivot = 1e-14; // of its diagonal element

} // namespace

template <std::size_t kSize> std::optional<SmallMatrix<kSize>> choleskyOf(const SmallMatrix<kSize>& matrix)
{
    SmallMatrix<kSize> root{};
    for (std::size_t i = 0; i < kSize; ++i)
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

template <std::size_t kSize>
SmallVector<kSize> choleskySolution(const SmallMatrix<kSize>& root, SmallVector<kSize> right)
{
    for (std::size_t i = 0; i < kSize; ++i) {
        for (std::size_t k = 0; k < i; ++k)
            right[i] -= root[i][k] * right[k];
        right[i] /= root[i][i];
    }
    for (std::size_t i = kSize; i-- > 0;) {
        for (std::size_t k = i + 1; k < kSize; ++k)
            right[i] -= root[k][i] * right[k];
        right[i] /= root[i][i];
    }
    return right;
}

template std::optional<Matrix3> choleskyOf<3>(const Matrix3& matrix);
template std::optional<Matrix4> choleskyOf<4>(const Matrix4& matrix);
template Vector3 choleskySolution<3>(const Matrix3& root, Vector3 right);
template Vector4 choleskySolution<4>(const Matrix4& root, Vector4 right);

} // namespace rig::numbers
