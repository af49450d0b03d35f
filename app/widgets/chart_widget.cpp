#include "app/widgets/chart_widget.h"

#include "app/widgets/focus_ring.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kZoomStep = 1.25;
constexpr double kPanStep = 0.15;
constexpr int kDragBegins = 4; // pixels: less is a click with a cold hand

} // namespace

ChartWidget::ChartWidget(QWidget* parent) : QWidget{parent}
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
}

ChartWidget::~ChartWidget() = default;

void ChartWidget::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    layOut();
}

void ChartWidget::setAxis(TrendAxis axis)
{
    if (axis == m_window.axis)
        return;
    m_window = m_window.isWhole() ? TrendWindow{axis, 0, 0} : carriedOver(axis);
    axisChanged();
    layOut();
}

void ChartWidget::lookAt(const TrendWindow& window)
{
    m_window = window;
    layOut();
}

void ChartWidget::bringIntoSight(double place)
{
    const TrendWindow& drawn = shown();
    const double width = drawn.to - drawn.from;
    lookAt(panned(reach(), drawn, (place - (drawn.from + width / 2)) / width));
}

void ChartWidget::endDrag()
{
    m_pressed.reset();
}

void ChartWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    paintPicture(painter);
    if (hasFocus())
        paintFocusRing(painter, rect(), m_look.theme);
}

void ChartWidget::resizeEvent(QResizeEvent*)
{
    layOut();
}

double ChartWidget::shareAt(double x) const
{
    const QRectF where = plot();
    return where.width() > 0 ? std::clamp((x - where.left()) / where.width(), 0.0, 1.0) : 0.5;
}

void ChartWidget::wheelEvent(QWheelEvent* event)
{
    if (isStill()) {
        event->ignore();
        return;
    }
    const QPoint turn = event->angleDelta();
    if (std::abs(turn.x()) > std::abs(turn.y()))
        lookAt(panned(reach(), shown(), -turn.x() / 120.0 * kPanStep / 2));
    else if (turn.y() != 0)
        lookAt(
            zoomed(reach(), shown(), std::pow(kZoomStep, turn.y() / 120.0), shareAt(event->position().x())));
    hoverAt(event->position());
    event->accept();
}

void ChartWidget::mousePressEvent(QMouseEvent* event)
{
    if (isStill() || event->button() != Qt::LeftButton) {
        event->ignore();
        return;
    }
    m_pressed = event->position();
    m_pressedWindow = shown();
    m_dragged = false;
}

void ChartWidget::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_pressed || isStill()) {
        hoverAt(event->position());
        return;
    }
    const double by = event->position().x() - m_pressed->x();
    if (!m_dragged && std::abs(by) < kDragBegins)
        return;
    m_dragged = true;
    setCursor(Qt::ClosedHandCursor);
    lookAt(panned(reach(), m_pressedWindow, -by / std::max(1.0, plot().width())));
}

void ChartWidget::mouseReleaseEvent(QMouseEvent* event)
{
    if (!m_pressed || event->button() != Qt::LeftButton)
        return;
    m_pressed.reset();
    unsetCursor();
    if (!m_dragged)
        clickAt(event->position());
}

void ChartWidget::leaveEvent(QEvent*)
{
    hoverNothing();
}

bool ChartWidget::navigate(int key)
{
    const TrendWindow& drawn = shown();
    switch (key) {
    case Qt::Key_Left:
        lookAt(panned(reach(), drawn, -kPanStep));
        return true;
    case Qt::Key_Right:
        lookAt(panned(reach(), drawn, kPanStep));
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal: // the unshifted plus of many keyboards
        lookAt(zoomed(reach(), drawn, kZoomStep, 0.5));
        return true;
    case Qt::Key_Minus:
        lookAt(zoomed(reach(), drawn, 1 / kZoomStep, 0.5));
        return true;
    case Qt::Key_Home:
        bringIntoSight(reach().first);
        return true;
    case Qt::Key_End:
        bringIntoSight(reach().last);
        return true;
    case Qt::Key_0:
        lookAt({drawn.axis, 0, 0});
        return true;
    case Qt::Key_Up:
        step(-1);
        return true;
    case Qt::Key_Down:
        step(1);
        return true;
    default:
        return false;
    }
}

void ChartWidget::keyPressEvent(QKeyEvent* event)
{
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (isStill() || !plain || !navigate(event->key()))
        QWidget::keyPressEvent(event);
}

void ChartWidget::focusInEvent(QFocusEvent*)
{
    update();
}

void ChartWidget::focusOutEvent(QFocusEvent*)
{
    update();
}

} // namespace rig
