#include "app/widgets/indicator_style.h"

#include "app/widgets/focus_ring.h"

#include <QCheckBox>
#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <QRadioButton>
#include <QStyleOption>

namespace rig {

namespace {

constexpr double kFrame = 1.5; // these in pixels
constexpr double kTickPen = 1.8;
constexpr double kIndicatorCorner = 3;
constexpr double kWithin = 2.5;    // of a button, from its edge
constexpr double kFieldCorner = 2; // Fusion's

QPainterPath tickIn(const QRectF& box)
{
    QPainterPath tick;
    tick.moveTo(box.left() + 0.22 * box.width(), box.top() + 0.52 * box.height());
    tick.lineTo(box.left() + 0.42 * box.width(), box.top() + 0.72 * box.height());
    tick.lineTo(box.left() + 0.78 * box.width(), box.top() + 0.30 * box.height());
    return tick;
}

void drawFrame(QPainter& painter, const QPalette& palette, const QStyleOption& option, const QRectF& box,
               bool isBox)
{
    const bool isOn = option.state & QStyle::State_On;
    const bool standsOut = isOn || option.state & (QStyle::State_HasFocus | QStyle::State_MouseOver);
    painter.setPen(QPen{palette.color(standsOut ? QPalette::Highlight : QPalette::PlaceholderText), kFrame});
    painter.setBrush(palette.color(isBox && isOn ? QPalette::Highlight : QPalette::Base));
    if (isBox)
        painter.drawRoundedRect(box, kIndicatorCorner, kIndicatorCorner);
    else
        painter.drawEllipse(box);
}

void drawTick(QPainter& painter, const QPalette& palette, const QRectF& box)
{
    painter.setPen(
        QPen{palette.color(QPalette::HighlightedText), kTickPen, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(tickIn(box));
}

void drawDot(QPainter& painter, const QPalette& palette, const QRectF& box)
{
    const double inset = 0.28 * box.width();
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette.color(QPalette::Highlight));
    painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset));
}

// The frame of a button is its ring, which is told from the ground. Where the button itself has the colour of
// the frame, a second one stands within it, clear of the words.
void drawWithin(QPainter& painter, const QPalette& palette, const QPushButton& button)
{
    const QString kind = button.property("kind").toString();
    const bool isFilled =
        kind == QLatin1String("primary") ||
        (button.isChecked() && (kind == QLatin1String("choice") || kind == QLatin1String("leaf") ||
                                kind == QLatin1String("answer")));
    const bool isTinted =
        button.isChecked() && (kind == QLatin1String("chip") || kind == QLatin1String("row"));
    if (!isFilled && !isTinted)
        return;
    const bool isDoubt = button.property("doubt").toBool();
    const QPalette::ColorRole role = isTinted  ? QPalette::Highlight
                                     : isDoubt ? QPalette::Base
                                               : QPalette::HighlightedText;
    paintFocusRing(painter, QRectF{button.rect()}.adjusted(kWithin, kWithin, -kWithin, -kWithin),
                   palette.color(role));
}

} // namespace

IndicatorStyle::IndicatorStyle() : QProxyStyle{QStringLiteral("Fusion")} {}

void IndicatorStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                   const QWidget* widget) const
{
    const bool isTicked = qobject_cast<const QCheckBox*>(widget) || qobject_cast<const QRadioButton*>(widget);
    if (element == PE_FrameFocusRect && isTicked) // around its words
        return paintFocusRing(*painter, option->rect, option->palette.color(QPalette::Highlight));
    const auto* button = qobject_cast<const QPushButton*>(widget);
    if (element == PE_FrameFocusRect && button)
        return drawWithin(*painter, option->palette, *button);
    const bool isBox = element == PE_IndicatorCheckBox;
    if (!isBox && element != PE_IndicatorRadioButton)
        return QProxyStyle::drawPrimitive(element, option, painter, widget);
    const QPalette& palette = option->palette;
    const QRectF box = QRectF{option->rect}.adjusted(1, 1, -1, -1);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    drawFrame(*painter, palette, *option, box, isBox);
    if (option->state & State_On) {
        if (isBox)
            drawTick(*painter, palette, box);
        else
            drawDot(*painter, palette, box);
    }
    painter->restore();
}

void IndicatorStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                        QPainter* painter, const QWidget* widget) const
{
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control != CC_ComboBox && control != CC_SpinBox)
        return;
    if (option->state & State_HasFocus)
        return paintFocusRing(*painter, option->rect, option->palette.color(QPalette::Highlight));
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{option->palette.color(QPalette::Mid), 1});
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(QRectF{option->rect}.adjusted(0.5, 0.5, -0.5, -0.5), kFieldCorner, kFieldCorner);
    painter->restore();
}

// A long name in a drop-down list keeps both its ends.
void IndicatorStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                                 const QWidget* widget) const
{
    const auto* box = qstyleoption_cast<const QStyleOptionComboBox*>(option);
    if (element != CE_ComboBoxLabel || !box)
        return QProxyStyle::drawControl(element, option, painter, widget);
    QStyleOptionComboBox fitting = *box;
    const int room = proxy()->subControlRect(CC_ComboBox, box, SC_ComboBoxEditField, widget).width();
    fitting.currentText = painter->fontMetrics().elidedText(box->currentText, Qt::ElideMiddle, room - 2);
    QProxyStyle::drawControl(element, &fitting, painter, widget);
}

int IndicatorStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                              QStyleHintReturn* answer) const
{
    if (hint == SH_Widget_Animate || hint == SH_Widget_Animation_Duration)
        return 0; // a desktop that asks for less motion has it
    return QProxyStyle::styleHint(hint, option, widget, answer);
}

} // namespace rig
