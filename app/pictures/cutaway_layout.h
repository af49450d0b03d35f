#pragma once

#include "app/pictures/cutaway.h"
#include "app/pictures/lettering.h"

#include <QSizeF>

namespace rig {

// How units of the mechanism become pixels, the same in every state of one coupling.
struct CutawayPlace
{
    double pixels = 3; // per unit
    QPointF origin;    // of the ball at home

    QPointF at(LessonPoint unit) const
    {
        return {origin.x() + unit.x * pixels, origin.y() + unit.y * pixels};
    }
    double x(double unit) const { return origin.x() + unit * pixels; }
    double y(double unit) const { return origin.y() + unit * pixels; }
    QRectF box(double left, double top, double right, double bottom) const
    {
        return {QPointF{x(left), y(top)}, QPointF{x(right), y(bottom)}};
    }
};

// The rows around the mechanism, from top to bottom, and the mechanism's place between them.
struct CutawayRows
{
    QRectF title;
    QRectF above; // labels
    QRectF below; // labels
    QRectF caption;
    CutawayPlace place;
};

CutawayRows rowsOf(const CutawayView& view, const Cutaway& cutaway, QSizeF size, const FontSizes& fonts);
// Title, labels with their leaders, the gap with its figure, the caption.
void addCutawayLabels(CutawayPicture& picture, const CutawayView& view, const Cutaway& cutaway,
                      const CutawayRows& rows, const FontSizes& fonts);

} // namespace rig
