#include "core/numbers/pivoted_qr.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace rig::numbers {
namespace {

// Length of a column from row `first` down.
double lengthFrom(const Column& column, std::size_t first)
{
    double squares = 0;
    for (std::size_t i = first; i < column.size(); ++i)
        squares += column[i] * column[i];
    return std::sqrt(squares);
}

// The unit vector of the reflection that leaves of the column, from row `step` down, one entry only.
Column reflectionOf(Column column, std::size_t step)
{
    const double length = lengthFrom(column, step);
    std::fill_n(column.begin(), step, 0.0);
    column[step] += column[step] < 0 ? -length : length;
    const double scale = lengthFrom(column, step);
    for (double& entry : column)
        entry /= scale;
    return column;
}

} // namespace

PivotedQr::PivotedQr(std::vector<Column> columns, double nothing)
{
    std::vector<std::size_t> places(columns.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    const std::size_t rows = columns.empty() ? 0 : columns.front().size();
    for (std::size_t step = 0; step < std::min(rows, columns.size()); ++step) {
        std::size_t pivot = step;
        for (std::size_t i = step + 1; i < columns.size(); ++i)
            if (lengthFrom(columns[i], step) > lengthFrom(columns[pivot], step))
                pivot = i;
        if (!(lengthFrom(columns[pivot], step) > nothing))
            break;
        std::swap(columns[step], columns[pivot]);
        std::swap(places[step], places[pivot]);
        m_reflections.push_back(reflectionOf(columns[step], step));
        m_basis.push_back(places[step]);
        for (std::size_t i = step; i < columns.size(); ++i)
            reflect(columns[i], step);
    }
    columns.resize(rank());
    m_triangle = std::move(columns);
}

Column PivotedQr::turned(Column column) const
{
    for (std::size_t step = 0; step < rank(); ++step)
        reflect(column, step);
    return column;
}

Column PivotedQr::solvedWith(const Column& turned) const
{
    Column x(turned.begin(), turned.begin() + static_cast<std::ptrdiff_t>(rank()));
    for (std::size_t row = rank(); row-- > 0;) {
        for (std::size_t i = row + 1; i < rank(); ++i)
            x[row] -= m_triangle[i][row] * x[i];
        x[row] /= m_triangle[row][row];
    }
    return x;
}

Column PivotedQr::solvedAcross(const Column& entries) const
{
    Column x = entries;
    for (std::size_t row = 0; row < rank(); ++row) {
        for (std::size_t i = 0; i < row; ++i)
            x[row] -= m_triangle[row][i] * x[i];
        x[row] /= m_triangle[row][row];
    }
    return x;
}

void PivotedQr::reflect(Column& column, std::size_t step) const
{
    const Column& unit = m_reflections[step];
    double along = 0;
    for (std::size_t i = step; i < column.size(); ++i)
        along += unit[i] * column[i];
    for (std::size_t i = step; i < column.size(); ++i)
        column[i] -= 2 * along * unit[i];
}

} // namespace rig::numbers
