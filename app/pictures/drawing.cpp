#include "app/pictures/drawing.h"

#include <QPainter>
#include <QTextOption>

#include <cmath>

namespace rig {

namespace {

constexpr double kHatchApart = 7;

// Strokes rising to the right, drawn one by one: a pattern brush would be a bitmap in print.
void paintHatch(QPainter& painter, const QRectF& where, const QColor& color)
{
    painter.save();
    painter.setClipRect(where);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{color, 1});
    for (double x = where.left() - where.height(); x < where.right(); x += kHatchApart)
        painter.drawLine(QPointF{x, where.bottom()}, QPointF{x + where.height(), where.top()});
    painter.restore();
}

void paintBox(QPainter& painter, const DrawnBox& box, const Theme& theme)
{
    QColor color = theme.color(box.role);
    color.setAlphaF(static_cast<float>(box.opacity));
    if (box.hatched) {
        paintHatch(painter, box.where, color);
    } else if (box.hollow) {
        painter.setPen(QPen{color, 1});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box.where);
    } else {
        // On whole pixels nothing needs smoothing, and goes quicker without.
        const bool isWhole = box.where == QRectF{box.where.toRect()};
        painter.setRenderHint(QPainter::Antialiasing, !isWhole);
        painter.fillRect(box.where, color);
        painter.setRenderHint(QPainter::Antialiasing);
    }
}

void paintLine(QPainter& painter, const DrawnLine& line, const Theme& theme)
{
    QPen pen{theme.color(line.role), line.width};
    pen.setCapStyle(Qt::FlatCap);
    if (line.dashed) {
        pen.setDashPattern({3, 3});
        pen.setDashOffset(line.dashesBegun / line.width);
    }
    painter.setPen(pen);
    const bool upright = line.from.x() == line.to.x() || line.from.y() == line.to.y();
    painter.setRenderHint(QPainter::Antialiasing, !upright || line.width != 1);
    painter.drawLine(line.from, line.to);
    painter.setRenderHint(QPainter::Antialiasing);
}

void paintArea(QPainter& painter, const DrawnArea& area, const Theme& theme)
{
    QColor color = theme.color(area.role);
    color.setAlphaF(static_cast<float>(area.opacity));
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(area.outline);
}

void paintArrow(QPainter& painter, const DrawnArrow& arrow, const Theme& theme)
{
    const double back = arrow.up != arrow.level ? arrow.size : -arrow.size;
    const double half = arrow.size / 2;
    const QPointF one = arrow.level ? QPointF{back, half} : QPointF{half, back};
    const QPointF other = arrow.level ? QPointF{back, -half} : QPointF{-half, back};
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(arrow.role));
    painter.drawPolygon(QPolygonF{{arrow.tip, arrow.tip + one, arrow.tip + other}});
}

void paintCurve(QPainter& painter, const DrawnCurve& curve, const Theme& theme)
{
    QColor color = theme.color(curve.role);
    color.setAlphaF(static_cast<float>(curve.opacity));
    painter.setPen(QPen{color, curve.width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    // Stretch by stretch: as one outline, a line that crosses itself often takes ten times as long.
    QList<QLineF> stretches;
    for (const QPolygonF& piece : curve.pieces)
        for (qsizetype i = 1; i < piece.size(); ++i)
            stretches.push_back({piece[i - 1], piece[i]});
    painter.drawLines(stretches);
    const double radius = curve.dotRadius;
    painter.setBrush(theme.color(Role::Card));
    for (const QPointF& ring : curve.rings)
        painter.drawEllipse(ring, radius, radius);
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    for (const QPointF& dot : curve.dots)
        painter.drawEllipse(dot, radius, radius);
}

void paintLabel(QPainter& painter, const DrawnLabel& label, const Theme& theme)
{
    painter.setFont(fontOn(painter, label.pixels, label.strong ? Weight::SemiBold : Weight::Regular));
    painter.setPen(theme.color(label.role));
    QTextOption option{label.align};
    option.setWrapMode(label.wrapped ? QTextOption::WordWrap : QTextOption::NoWrap);
    painter.drawText(label.where, label.text, option);
}

} // namespace

void paint(QPainter& painter, const Drawing& drawing, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const DrawnBox& box : drawing.boxes)
        paintBox(painter, box, theme);
    for (const DrawnLine& line : drawing.lines)
        paintLine(painter, line, theme);
    for (const DrawnArea& area : drawing.areas)
        paintArea(painter, area, theme);
    for (const DrawnCurve& curve : drawing.curves)
        paintCurve(painter, curve, theme);
    for (const DrawnBox& bar : drawing.bars)
        paintBox(painter, bar, theme);
    for (const DrawnLine& line : drawing.linesOver)
        paintLine(painter, line, theme);
    for (const DrawnArrow& arrow : drawing.arrows)
        paintArrow(painter, arrow, theme);
    for (const DrawnMark& mark : drawing.marks)
        paintMark(painter, mark.shape, mark.role, mark.where, theme);
    for (const DrawnLabel& label : drawing.labels)
        paintLabel(painter, label, theme);
    painter.restore();
}

} // namespace rig
