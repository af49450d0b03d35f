#include "app/widgets/beside_or_below.h"

#include <QBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr int kRoomBetween = 10;

} // namespace

BesideOrBelow::BesideOrBelow(QWidget* first, QWidget* second, QWidget* parent)
    : QWidget{parent}, m_first{first}, m_second{second}, m_layout{
                                                             new QBoxLayout{QBoxLayout::LeftToRight, this}}
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(kRoomBetween);
    m_layout->addWidget(first, 1);
    m_layout->addWidget(second);
}

QSize BesideOrBelow::minimumSizeHint() const
{
    const int widest = std::max(m_first->minimumSizeHint().width(), m_second->minimumSizeHint().width());
    return {widest, m_layout->minimumSize().height()};
}

void BesideOrBelow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    const int both = m_first->minimumSizeHint().width() + kRoomBetween + m_second->sizeHint().width();
    m_layout->setDirection(both <= width() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

} // namespace rig
