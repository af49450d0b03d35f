#include "app/widgets/mark_widget.h"

#include <QPainter>

#include <cmath>

namespace rig {

MarkWidget::MarkWidget(QWidget* parent) : QWidget{parent}
{
    setLook({});
}

void MarkWidget::setLook(const Look& look)
{
    m_look = look;
    const int side = static_cast<int>(std::lround(28 * look.fonts.scale));
    setFixedSize(side, side);
    update();
}

void MarkWidget::show(MarkShape shape, Role role)
{
    m_shape = shape;
    m_role = role;
    update();
}

void MarkWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    paintMark(painter, m_shape, m_role, QRectF{rect()}.adjusted(1, 1, -1, -1), m_look.theme);
}

} // namespace rig
