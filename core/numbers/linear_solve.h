#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace rig::numbers {

// A square matrix, row by row.
class SquareMatrix
{
public:
    explicit SquareMatrix(std::size_t size) : m_size{size}, m_values(size * size) {}

    std::size_t size() const { return m_size; }
    double& at(std::size_t row, std::size_t column) { return m_values[row * m_size + column]; }
    double at(std::size_t row, std::size_t column) const { return m_values[row * m_size + column]; }

private:
    std::size_t m_size = 0;
    std::vector<double> m_values;
};

// x with matrix x = right side, by Gauss elimination with partial pivoting. Empty when a pivot is 0. The
// sizes agree.
std::optional<std::vector<double>> solved(SquareMatrix matrix, std::vector<double> rightSide);

} // namespace rig::numbers
