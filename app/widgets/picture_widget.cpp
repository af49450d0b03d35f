#include "app/widgets/picture_widget.h"

#include "app/widgets/plain_tip.h"

#include <QPainter>

#include <cmath>

namespace rig {

PictureWidget::PictureWidget(QWidget* parent) : QWidget{parent}
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PictureWidget::setPicture(const PictureBlock& block, const QString& name)
{
    m_block = block;
    m_name = name;
    updateGeometry();
    lay();
}

void PictureWidget::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    lay();
}

QSize PictureWidget::sizeHint() const
{
    return {480, minimumSizeHint().height()};
}

QSize PictureWidget::minimumSizeHint() const
{
    return {120, static_cast<int>(std::ceil(m_block.height * m_look.fonts.scale))};
}

void PictureWidget::lay()
{
    m_picture = m_block.lay ? m_block.lay(size(), m_look.fonts) : LaidPicture{};
    setAccessibleName(m_name.isEmpty() ? m_picture.inWords : m_name);
    setAccessibleDescription(m_picture.inWords);
    setToolTip(plainTip(m_picture.inWords));
    update();
}

void PictureWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    if (m_picture.paint)
        m_picture.paint(painter, m_look.theme);
}

void PictureWidget::resizeEvent(QResizeEvent*)
{
    lay();
}

} // namespace rig
