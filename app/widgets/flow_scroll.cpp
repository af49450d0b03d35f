#include "app/widgets/flow_scroll.h"

#include <QCoreApplication>
#include <QEvent>
#include <QLayout>
#include <QScrollBar>

#include <algorithm>

namespace rig {

namespace {

constexpr int kAir = 4; // pixels, beside what is brought into view

} // namespace

FlowScroll::FlowScroll(QWidget* inside, QWidget* parent) : QScrollArea{parent}
{
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    setWidget(inside);
    inside->installEventFilter(this);
}

void FlowScroll::fit()
{
    QLayout* layout = widget()->layout();
    if (layout && layout->hasHeightForWidth())
        widget()->setMinimumHeight(layout->heightForWidth(viewport()->width()));
}

void FlowScroll::bringIntoView(QWidget* part)
{
    layOutNow();
    ensureWidgetVisible(part, 0, kAir);
}

void FlowScroll::bringHeadIntoView(const QWidget* part)
{
    layOutNow();
    const int head = part->mapTo(widget(), QPoint{}).y() - kAir;
    QScrollBar* bar = verticalScrollBar();
    bar->setValue(std::min(bar->value(), head));
}

void FlowScroll::scrollTo(int place)
{
    layOutNow();
    verticalScrollBar()->setValue(place);
}

// What came, went or grew inside, the innermost first, then what that changes around it.
void FlowScroll::layOutNow()
{
    const QList<QWidget*> inside = findChildren<QWidget*>();
    for (auto one = inside.rbegin(); one != inside.rend(); ++one)
        QCoreApplication::sendPostedEvents(*one, QEvent::LayoutRequest);
    for (QWidget* around = this; around; around = around->parentWidget())
        QCoreApplication::sendPostedEvents(around, QEvent::LayoutRequest);
}

// Qt forgets a change of size that comes while it delivers one to what is not seen yet.
void FlowScroll::layOutWhole()
{
    QLayout* layout = widget()->layout();
    if (layout && layout->geometry() != widget()->contentsRect())
        layout->setGeometry(widget()->contentsRect());
}

bool FlowScroll::event(QEvent* event)
{
    // Of what nobody sees yet the style comes piece by piece; laying it out after each takes long.
    if (event->type() == QEvent::StyleChange && !isVisible())
        return QAbstractScrollArea::event(event);
    return QScrollArea::event(event);
}

void FlowScroll::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

bool FlowScroll::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == widget() && event->type() == QEvent::LayoutRequest)
        fit();
    if (watched == widget() && event->type() == QEvent::Show)
        layOutWhole();
    return QScrollArea::eventFilter(watched, event);
}

} // namespace rig
