#include "app/widgets/foot_scroll.h"

#include <QEvent>
#include <QLayout>
#include <QScrollBar>

#include <algorithm>

namespace rig {

FootScroll::FootScroll(QWidget* inside, QWidget* parent) : FlowScroll{inside, parent}
{
    setFrameShape(QFrame::NoFrame);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    QScrollBar* bar = verticalScrollBar();
    connect(bar, &QScrollBar::rangeChanged, bar, [bar](int, int end) { bar->setValue(end); });
}

void FootScroll::setRoom(int room)
{
    if (m_room == room)
        return;
    m_room = room;
    updateGeometry();
}

int FootScroll::heightForWidth(int width) const
{
    return std::min(m_room, widget()->layout()->heightForWidth(width));
}

QSize FootScroll::sizeHint() const
{
    return {widget()->sizeHint().width(), std::min(m_room, widget()->sizeHint().height())};
}

QSize FootScroll::minimumSizeHint() const
{
    return {widget()->minimumSizeHint().width(), 0};
}

bool FootScroll::eventFilter(QObject* watched, QEvent* event)
{
    const bool isTaken = FlowScroll::eventFilter(watched, event);
    if (watched == widget() && event->type() == QEvent::LayoutRequest)
        updateGeometry();
    return isTaken;
}

} // namespace rig
