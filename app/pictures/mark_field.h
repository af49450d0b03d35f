#pragma once

#include "app/pictures/drawing.h"

namespace rig {

// Places marks inside a plot. One that would lie over another is left out; what it marks remains.
class MarkField
{
public:
    MarkField(Drawing& drawing, const QRectF& plot, double side);
    void add(QPointF centre, Verdict verdict);

private:
    bool isTaken(const QRectF& where, int column, int row) const;

    Drawing& m_drawing;
    QRectF m_plot;
    double m_side;
    int m_across = 0;
    std::vector<int> m_cells; // index of the mark with its middle there
};

} // namespace rig
