#include "app/widgets/focus_ring.h"

#include <QPainter>

namespace rig {

namespace {

constexpr double kRingPen = 2; // these in pixels
constexpr double kRingCorner = 4;

} // namespace

void paintFocusRing(QPainter& painter, const QRectF& around, const QColor& colour)
{
    constexpr double half = kRingPen / 2;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{colour, kRingPen});
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(around.adjusted(half, half, -half, -half), kRingCorner, kRingCorner);
    painter.restore();
}

} // namespace rig
