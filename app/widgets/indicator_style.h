#pragma once

#include <QProxyStyle>

namespace rig {

// Fusion, with check boxes and radio buttons, drop-down lists and number fields whose frame is seen on every
// ground: Fusion's own is a little darker than the window; and with a ring around what has the focus. Nothing
// in it moves by itself.
class IndicatorStyle : public QProxyStyle
{
    Q_OBJECT

public:
    IndicatorStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                            const QWidget* widget) const override;
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* answer) const override;
};

} // namespace rig
