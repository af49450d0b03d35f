#pragma once

#include <array>
#include <cstddef>
#include <optional>

namespace rig::numbers {

template <std::size_t kSize> using SmallVector = std::array<double, kSize>;
template <std::size_t kSize> using SmallMatrix = std::array<SmallVector<kSize>, kSize>;

using Vector3 = SmallVector<3>;
using Matrix3 = SmallMatrix<3>;
using Vector4 = SmallVector<4>;
using Matrix4 = SmallMatrix<4>;

// Lower triangle L with L L' = matrix, which is symmetric; its upper half is not read. Empty when the matrix
// is not positive definite, or so nearly not that 14 digits are lost. Sizes 3 and 4.
template <std::size_t kSize> std::optional<SmallMatrix<kSize>> choleskyOf(const SmallMatrix<kSize>& matrix);

// y with L L' y = right.
template <std::size_t kSize>
SmallVector<kSize> choleskySolution(const SmallMatrix<kSize>& root, SmallVector<kSize> right);

} // namespace rig::numbers
