#include "app/pictures/marks.h"
#include "app/pictures/trend.h"

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

void paintBox(QPainter& painter, const TrendBox& box, const Theme& theme)
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
        painter.fillRect(box.where, color);
    }
}

void paintLine(QPainter& painter, const TrendLine& line, const Theme& theme)
{
    QPen pen{theme.color(line.role), line.width};
    pen.setCapStyle(Qt::FlatCap);
    if (line.dashed)
        pen.setDashPattern({3, 3});
    painter.setPen(pen);
    const bool upright = line.from.x() == line.to.x() || line.from.y() == line.to.y();
    painter.setRenderHint(QPainter::Antialiasing, !upright || line.width != 1);
    painter.drawLine(line.from, line.to);
    painter.setRenderHint(QPainter::Antialiasing);
}

void paintArea(QPainter& painter, const TrendArea& area, const Theme& theme)
{
    QColor color = theme.color(area.role);
    color.setAlphaF(static_cast<float>(area.opacity));
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(area.outline);
}

void paintArrow(QPainter& painter, const TrendArrow& arrow, const Theme& theme)
{
    const double back = arrow.up ? arrow.size : -arrow.size;
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.color(arrow.role));
    painter.drawPolygon(QPolygonF{
        {arrow.tip, arrow.tip + QPointF{arrow.size / 2, back}, arrow.tip + QPointF{-arrow.size / 2, back}}});
}

void paintLabel(QPainter& painter, const TrendLabel& label, const Theme& theme)
{
    painter.setFont(fontOn(painter, label.pixels, label.strong ? Weight::SemiBold : Weight::Regular));
    painter.setPen(theme.color(label.role));
    QTextOption option{label.align};
    option.setWrapMode(label.wrapped ? QTextOption::WordWrap : QTextOption::NoWrap);
    painter.drawText(label.where, label.text, option);
}

} // namespace

void paint(QPainter& painter, const TrendPicture& picture, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const TrendBox& box : picture.boxes)
        paintBox(painter, box, theme);
    for (const TrendLine& line : picture.lines)
        paintLine(painter, line, theme);
    for (const TrendArea& area : picture.areas)
        paintArea(painter, area, theme);
    for (const TrendBox& bar : picture.bars)
        paintBox(painter, bar, theme);
    for (const TrendLine& line : picture.linesOver)
        paintLine(painter, line, theme);
    for (const TrendArrow& arrow : picture.arrows)
        paintArrow(painter, arrow, theme);
    for (const TrendMark& mark : picture.marks)
        paintMark(painter, mark.shape, mark.role, mark.where, theme);
    for (const TrendLabel& label : picture.labels)
        paintLabel(painter, label, theme);
    painter.restore();
}

} // namespace rig
