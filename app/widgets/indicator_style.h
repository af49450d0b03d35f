#pragma once

#include <QProxyStyle>

namespace rig {

// Fusion, with check boxes and radio buttons whose frame is seen on a dark ground as well: Fusion's own is
// darker than the window.
class IndicatorStyle : public QProxyStyle
{
    Q_OBJECT

public:
    IndicatorStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
};

} // namespace rig
