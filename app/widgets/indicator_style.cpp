#include "app/widgets/indicator_style.h"

#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>

namespace rig {

namespace {

constexpr double kFrame = 1.5; // pixels
constexpr double kIndicatorCorner = 3;

QPainterPath tickIn(const QRectF& box)
{
    QPainterPath tick;
    tick.moveTo(box.left() + 0.22 * box.width(), box.top() + 0.52 * box.height());
    tick.lineTo(box.left() + 0.42 * box.width(), box.top() + 0.72 * box.height());
    tick.lineTo(box.left() + 0.78 * box.width(), box.top() + 0.30 * box.height());
    return tick;
}

} // namespace

IndicatorStyle::IndicatorStyle() : QProxyStyle{QStringLiteral("Fusion")} {}

void IndicatorStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                   const QWidget* widget) const
{
    const bool isBox = element == PE_IndicatorCheckBox;
    if (!isBox && element != PE_IndicatorRadioButton)
        return QProxyStyle::drawPrimitive(element, option, painter, widget);
    const QPalette& palette = option->palette;
    const bool isOn = option->state & State_On;
    const QRectF box = QRectF{option->rect}.adjusted(1, 1, -1, -1);
    const QColor frame =
        palette.color(option->state & (State_HasFocus | State_MouseOver) || isOn ? QPalette::Highlight
                                                                                 : QPalette::PlaceholderText);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{frame, kFrame});
    painter->setBrush(isBox && isOn ? palette.color(QPalette::Highlight) : palette.color(QPalette::Base));
    if (isBox)
        painter->drawRoundedRect(box, kIndicatorCorner, kIndicatorCorner);
    else
        painter->drawEllipse(box);
    if (isOn && isBox) {
        painter->setPen(
            QPen{palette.color(QPalette::HighlightedText), 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        painter->setBrush(Qt::NoBrush);
        painter->drawPath(tickIn(box));
    } else if (isOn) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(palette.color(QPalette::Highlight));
        const double inset = box.width() * 0.28;
        painter->drawEllipse(box.adjusted(inset, inset, -inset, -inset));
    }
    painter->restore();
}

} // namespace rig
