#include "app/widgets/gap_strip_widget.h"

#include "app/widgets/plain_tip.h"
#include "app/wording/rigged_words.h"

#include <QPainter>

#include <cmath>

namespace rig {

GapStripWidget::GapStripWidget(QWidget* parent) : QWidget{parent}
{
    setAccessibleName(RiggedWords::lockedGap());
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void GapStripWidget::setView(const GapStripView& view)
{
    m_view = view;
    lay();
}

void GapStripWidget::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    lay();
}

QSize GapStripWidget::sizeHint() const
{
    return {480, static_cast<int>(std::lround(86 * m_look.fonts.scale))};
}

void GapStripWidget::lay()
{
    m_picture = layoutGapStrip(m_view, size(), m_look.fonts);
    setAccessibleDescription(m_picture.inWords);
    setToolTip(plainTip(m_picture.inWords));
    update();
}

void GapStripWidget::resizeEvent(QResizeEvent*)
{
    lay();
}

void GapStripWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    paint(painter, m_picture, m_look.theme);
}

} // namespace rig
