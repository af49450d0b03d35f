#include "app/pictures/mark_field.h"

#include <algorithm>

namespace rig {

MarkField::MarkField(Drawing& drawing, const QRectF& plot, double side)
    : m_drawing{drawing}, m_plot{plot}, m_side{side}
{
    m_across = static_cast<int>(plot.width() / side) + 2;
    const int down = static_cast<int>(plot.height() / side) + 2;
    m_cells.assign(static_cast<std::size_t>(m_across * down), -1);
}

void MarkField::add(QPointF centre, Verdict verdict)
{
    const double half = m_side / 2;
    const QPointF place{
        std::clamp(centre.x(), m_plot.left() + half, std::max(m_plot.left() + half, m_plot.right() - half)),
        std::clamp(centre.y(), m_plot.top() + half, std::max(m_plot.top() + half, m_plot.bottom() - half))};
    const QRectF where{place.x() - half, place.y() - half, m_side, m_side};
    const int column = static_cast<int>((place.x() - m_plot.left()) / m_side);
    const int row = static_cast<int>((place.y() - m_plot.top()) / m_side);
    if (isTaken(where, column, row))
        return;
    m_cells[static_cast<std::size_t>(row * m_across + column)] = static_cast<int>(m_drawing.marks.size());
    m_drawing.marks.push_back({where, shapeOf(verdict), shapeRoleOf(verdict)});
}

bool MarkField::isTaken(const QRectF& where, int column, int row) const
{
    for (int y = row - 1; y <= row + 1; ++y)
        for (int x = column - 1; x <= column + 1; ++x) {
            const auto cell = static_cast<std::size_t>(y * m_across + x);
            if (x < 0 || y < 0 || x >= m_across || cell >= m_cells.size() || m_cells[cell] < 0)
                continue;
            if (m_drawing.marks[static_cast<std::size_t>(m_cells[cell])].where.intersects(where))
                return true;
        }
    return false;
}

} // namespace rig
