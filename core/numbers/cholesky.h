#pragma once

#include <array>
#include <optional>

namespace rig::numbers {

using Vector3 = std::array<double, 3>;
using Matrix3 = std::array<Vector3, 3>;

// Lower triangle L with L L' = matrix, which is symmetric; its upper half is not read. Empty when the matrix
// is not positive definite, or so nearly not that 14 digits are lost.
std::optional<Matrix3> choleskyOf(const Matrix3& matrix);

// y with L L' y = right.
Vector3 choleskySolution(const Matrix3& root, Vector3 right);

} // namespace rig::numbers
