#pragma once

#include "app/theme/theme.h"

#include <QRectF>

class QPainter;

namespace rig {

// The ring around what has the focus, the same wherever it is painted. `around` in pixels: the ring lies
// within.
void paintFocusRing(QPainter& painter, const QRectF& around, const QColor& colour);
inline void paintFocusRing(QPainter& painter, const QRectF& around, const Theme& theme)
{
    paintFocusRing(painter, around, theme.color(Role::Accent));
}

} // namespace rig
