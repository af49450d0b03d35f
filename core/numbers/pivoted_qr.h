#pragma once

#include <cstddef>
#include <vector>

namespace rig::numbers {

// A column of numbers, and a matrix as its columns.
using Column = std::vector<double>;

// Householder reflections that turn the columns of a matrix, the most independent first, into a triangle
// (Golub & Van Loan, Matrix Computations, 5.2 and 5.4, from memory). All columns have the same length.
class PivotedQr
{
public:
    // A column of which no more than `nothing` is left, in length, once the others are taken out is not
    // independent of them.
    PivotedQr(std::vector<Column> columns, double nothing);

    std::size_t rank() const { return m_reflections.size(); }
    // The columns of the basis, rank() of them, by their place in the matrix.
    const std::vector<std::size_t>& basis() const { return m_basis; }

    // Q' times a column: its first rank() entries belong to the basis, the rest to what the basis cannot
    // reach.
    Column turned(Column column) const;
    // x with R x = the first rank() entries.
    Column solvedWith(const Column& turned) const;
    // x with R' x = the entries, rank() of them.
    Column solvedAcross(const Column& entries) const;

private:
    void reflect(Column& column, std::size_t step) const;

    std::vector<Column> m_reflections; // unit vectors, 0 above their step
    std::vector<Column> m_triangle;    // columns of R in the order of the basis
    std::vector<std::size_t> m_basis;
};

} // namespace rig::numbers
