#include "app/pictures/marks.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace rig {

MarkShape shapeOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::NoBandYet:
        return MarkShape::DashedRing;
    case Verdict::Outside:
        return MarkShape::Diamond;
    case Verdict::CannotTell:
        return MarkShape::HalfDisc;
    case Verdict::NearEdge:
        return MarkShape::Triangle;
    case Verdict::Inside:
        break;
    }
    return MarkShape::DiscTick;
}

Role shapeRoleOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Outside:
        return Role::Outside;
    case Verdict::NearEdge:
        return Role::NearEdge;
    case Verdict::Inside:
        return Role::Inside;
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
        break;
    }
    return Role::Unknown;
}

MarkShape shapeOf(Says says)
{
    switch (says) {
    case Says::Outside:
    case Says::Stopped:
        return MarkShape::Diamond;
    case Says::Asked:
    case Says::PartSeated:
    case Says::NotSecured:
    case Says::InDoubt:
    case Says::CannotTell:
        return MarkShape::HalfDisc;
    case Says::NoBandYet:
        return MarkShape::DashedRing;
    case Says::Hidden:
    case Says::NotRead:
    case Says::NoGap:
        return MarkShape::Waiting;
    case Says::NearEdge:
    case Says::Moved:
    case Says::Scatters:
    case Says::WasOutside:
    case Says::OutsideBefore:
        return MarkShape::Triangle;
    case Says::Inside:
        break;
    }
    return MarkShape::DiscTick;
}

Role shapeRoleOf(Says says)
{
    switch (says) {
    case Says::Outside:
    case Says::Stopped:
        return Role::Outside;
    case Says::Asked:
    case Says::PartSeated:
    case Says::NotSecured:
    case Says::InDoubt:
    case Says::NearEdge:
    case Says::Moved:
    case Says::Scatters:
    case Says::WasOutside:
    case Says::OutsideBefore:
        return Role::NearEdge;
    case Says::CannotTell:
    case Says::NoBandYet:
    case Says::Hidden:
    case Says::NotRead:
    case Says::NoGap:
        return Role::Unknown;
    case Says::Inside:
        break;
    }
    return Role::Inside;
}

Role textRoleOf(Says says)
{
    const Role role = shapeRoleOf(says);
    return role == Role::NearEdge ? Role::NearEdgeText : role;
}

MarkShape shapeOf(const Question& question)
{
    return question.isStop() ? shapeOf(Verdict::Outside) : MarkShape::HalfDisc;
}

Role shapeRoleOf(const Question& question)
{
    return question.isStop() ? shapeRoleOf(Verdict::Outside) : Role::NearEdge;
}

Role textRoleOf(Verdict verdict)
{
    return verdict == Verdict::NearEdge ? Role::NearEdgeText : shapeRoleOf(verdict);
}

Role fillRoleOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Outside:
        return Role::OutsideFill;
    case Verdict::NearEdge:
        return Role::NearEdgeFill;
    case Verdict::Inside:
        return Role::InsideFill;
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
        break;
    }
    return Role::UnknownFill;
}

namespace {

void paintTick(QPainter& painter, const QRectF& box, const QColor& color)
{
    QPainterPath tick;
    tick.moveTo(box.left() + box.width() * 0.30, box.top() + box.height() * 0.52);
    tick.lineTo(box.left() + box.width() * 0.45, box.top() + box.height() * 0.66);
    tick.lineTo(box.left() + box.width() * 0.71, box.top() + box.height() * 0.37);
    painter.setPen(QPen{color, box.width() * 0.11, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(tick);
}

void paintRing(QPainter& painter, const QRectF& box, const QColor& color, bool dashed)
{
    QPen pen{color, box.width() * 0.11};
    if (dashed)
        pen.setDashPattern({2.0, 1.6});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    const double inset = box.width() * 0.12;
    painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset));
}

} // namespace

void paintMark(QPainter& painter, MarkShape shape, Role role, const QRectF& where, const Theme& theme)
{
    const double side = std::min(where.width(), where.height());
    const QRectF box{where.center().x() - side / 2, where.center().y() - side / 2, side, side};
    const QColor color = theme.color(role);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    switch (shape) {
    case MarkShape::DiscTick:
        painter.drawEllipse(box.adjusted(side * 0.04, side * 0.04, -side * 0.04, -side * 0.04));
        paintTick(painter, box, theme.color(Role::Card));
        break;
    case MarkShape::Triangle:
        painter.drawPolygon(QPolygonF{{QPointF{box.center().x(), box.top() + side * 0.06},
                                       QPointF{box.right(), box.bottom() - side * 0.06},
                                       QPointF{box.left(), box.bottom() - side * 0.06}}});
        break;
    case MarkShape::Diamond:
        painter.drawPolygon(
            QPolygonF{{QPointF{box.center().x(), box.top()}, QPointF{box.right(), box.center().y()},
                       QPointF{box.center().x(), box.bottom()}, QPointF{box.left(), box.center().y()}}});
        break;
    case MarkShape::HalfDisc:
        painter.drawPie(box.adjusted(side * 0.06, side * 0.06, -side * 0.06, -side * 0.06), 90 * 16,
                        180 * 16);
        paintRing(painter, box, color, false);
        break;
    case MarkShape::DashedRing:
        paintRing(painter, box, color, true);
        break;
    case MarkShape::Waiting:
        paintRing(painter, box.adjusted(side * 0.16, side * 0.16, -side * 0.16, -side * 0.16), color, false);
        break;
    case MarkShape::Done:
        painter.drawEllipse(box.adjusted(side * 0.24, side * 0.24, -side * 0.24, -side * 0.24));
        break;
    case MarkShape::Person: // an open square looked like a box to tick
        painter.drawEllipse(QPointF{box.center().x(), box.top() + side * 0.3}, side * 0.2, side * 0.2);
        painter.drawChord(QRectF{box.left() + side * 0.14, box.top() + side * 0.56, side * 0.72, side * 0.72},
                          0, 180 * 16);
        break;
    case MarkShape::Current:
        painter.drawPolygon(QPolygonF{{QPointF{box.left() + side * 0.2, box.top() + side * 0.08},
                                       QPointF{box.right() - side * 0.08, box.center().y()},
                                       QPointF{box.left() + side * 0.2, box.bottom() - side * 0.08}}});
        break;
    }
    painter.restore();
}

} // namespace rig
