#include "core/numbers/linear_solve.h"

#include <cmath>
#include <utility>

namespace rig::numbers {
namespace {

// The row, from `first` on, with the largest entry in that column.
std::size_t pivotRow(const SquareMatrix& matrix, std::size_t first)
{
    std::size_t best = first;
    for (std::size_t row = first + 1; row < matrix.size(); ++row)
        if (std::abs(matrix.at(row, first)) > std::abs(matrix.at(best, first)))
            best = row;
    return best;
}

// Takes the pivot's column out of the rows below it.
void eliminateBelow(std::size_t step, SquareMatrix& matrix, std::vector<double>& rightSide)
{
    for (std::size_t row = step + 1; row < matrix.size(); ++row) {
        const double factor = matrix.at(row, step) / matrix.at(step, step);
        for (std::size_t column = step; column < matrix.size(); ++column)
            matrix.at(row, column) -= factor * matrix.at(step, column);
        rightSide[row] -= factor * rightSide[step];
    }
}

} // namespace

std::optional<std::vector<double>> solved(SquareMatrix matrix, std::vector<double> rightSide)
{
    const std::size_t size = matrix.size();
    for (std::size_t step = 0; step < size; ++step) {
        const std::size_t pivot = pivotRow(matrix, step);
        if (matrix.at(pivot, step) == 0)
            return std::nullopt;
        for (std::size_t column = step; column < size; ++column)
            std::swap(matrix.at(step, column), matrix.at(pivot, column));
        std::swap(rightSide[step], rightSide[pivot]);
        eliminateBelow(step, matrix, rightSide);
    }
    for (std::size_t row = size; row-- > 0;) {
        for (std::size_t column = row + 1; column < size; ++column)
            rightSide[row] -= matrix.at(row, column) * rightSide[column];
        rightSide[row] /= matrix.at(row, row);
    }
    return rightSide;
}

} // namespace rig::numbers
