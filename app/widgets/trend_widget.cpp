#include "app/widgets/trend_widget.h"

#include "app/wording/trend_words.h"

#include <QAccessible>
#include <QCursor>
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

TrendWidget::TrendWidget(QWidget* parent) : QWidget{parent}
{
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
}

TrendWidget::~TrendWidget() = default;

void TrendWidget::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    layOut();
}

void TrendWidget::setSeries(const TrendSeries& series, TrendAxis axis)
{
    m_series = series;
    m_small.reset();
    m_window = {axis, 0, 0};
    m_chosen = -1;
    m_hovered.reset();
    m_hoveredEvent.reset();
    m_pressed.reset();
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents, false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    updateGeometry();
    layOut();
}

void TrendWidget::setSmall(const TrendSeries& series, std::size_t lastReadings)
{
    m_series = series;
    m_small = lastReadings;
    m_chosen = -1;
    setFocusPolicy(Qt::NoFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    updateGeometry();
    layOut();
}

void TrendWidget::setAxis(TrendAxis axis)
{
    if (axis == m_window.axis)
        return;
    m_window = carriedOver(axis);
    layOut();
}

// The same readings on the other axis: from the first to the last that are in sight.
TrendWindow TrendWidget::carriedOver(TrendAxis axis) const
{
    if (m_window.isWhole())
        return {axis, 0, 0};
    const TrendReading* first = nullptr;
    const TrendReading* last = nullptr;
    for (const TrendReading& reading : m_series.readings) {
        const double place = m_window.axis == TrendAxis::ByDate ? static_cast<double>(reading.when.utcSeconds)
                                                                : reading.rigging;
        if (place < m_window.from || place > m_window.to)
            continue;
        first = first ? first : &reading;
        last = &reading;
    }
    if (!first)
        return {axis, 0, 0};
    const auto place = [axis](const TrendReading& reading) {
        return axis == TrendAxis::ByDate ? static_cast<double>(reading.when.utcSeconds) : reading.rigging;
    };
    const double margin =
        std::max((place(*last) - place(*first)) * 0.03, axis == TrendAxis::ByDate ? 86400.0 : 1.0);
    return {axis, place(*first) - margin, place(*last) + margin};
}

QSize TrendWidget::sizeHint() const
{
    const double scale = m_look.fonts.scale;
    return m_small ? QSize{240, static_cast<int>(44 * scale)} : QSize{800, static_cast<int>(420 * scale)};
}

QSize TrendWidget::minimumSizeHint() const
{
    const double scale = m_look.fonts.scale;
    return m_small ? QSize{120, static_cast<int>(34 * scale)}
                   : QSize{500, static_cast<int>(260 * std::min(scale, 1.2))};
}

void TrendWidget::layOut()
{
    m_picture = m_small ? layoutSmallTrend(m_series, *m_small, size())
                        : layoutTrend(m_series, m_window, size(), m_look.fonts);
    setAccessibleName(m_series.name.empty() ? m_picture.inWords : QString::fromStdString(m_series.name));
    setAccessibleDescription(m_small ? m_picture.inWords
                                     : m_picture.inWords + QLatin1Char(' ') + TrendWords::keysHint());
    update();
}

void TrendWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    paint(painter, m_picture, m_look.theme);
    if (m_small)
        return;
    if (m_hovered)
        paintAround(painter, *m_hovered, Role::InkSoft);
    if (m_chosen >= 0)
        paintAround(painter, static_cast<std::size_t>(m_chosen), Role::Accent);
    if (hasFocus()) {
        painter.setPen(QPen{m_look.theme.color(Role::Accent), 1.5});
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), 4, 4);
    }
}

void TrendWidget::paintAround(QPainter& painter, std::size_t reading, Role role) const
{
    const std::optional<QRectF> place = placeOf(m_series, m_picture, reading);
    if (!place)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{m_look.theme.color(role), 2});
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(place->adjusted(-4, -4, 4, 4), 3, 3);
}

void TrendWidget::resizeEvent(QResizeEvent*)
{
    layOut();
}

void TrendWidget::lookAt(const TrendWindow& window)
{
    m_window = window;
    layOut();
}

double TrendWidget::shareAt(double x) const
{
    const QRectF& plot = m_picture.plot;
    return plot.width() > 0 ? std::clamp((x - plot.left()) / plot.width(), 0.0, 1.0) : 0.5;
}

void TrendWidget::wheelEvent(QWheelEvent* event)
{
    if (m_small || m_series.readings.empty()) {
        event->ignore();
        return;
    }
    const QPoint turn = event->angleDelta();
    if (std::abs(turn.x()) > std::abs(turn.y()))
        lookAt(panned(m_series, m_picture.window, -turn.x() / 120.0 * kPanStep / 2));
    else if (turn.y() != 0)
        lookAt(zoomed(m_series, m_picture.window, std::pow(kZoomStep, turn.y() / 120.0),
                      shareAt(event->position().x())));
    hoverAt(event->position());
    event->accept();
}

void TrendWidget::mousePressEvent(QMouseEvent* event)
{
    if (m_small || event->button() != Qt::LeftButton) {
        event->ignore();
        return;
    }
    m_pressed = event->position();
    m_pressedWindow = m_picture.window;
    m_dragged = false;
}

void TrendWidget::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_pressed || m_series.readings.empty()) {
        hoverAt(event->position());
        return;
    }
    const double by = event->position().x() - m_pressed->x();
    if (!m_dragged && std::abs(by) < kDragBegins)
        return;
    m_dragged = true;
    setCursor(Qt::ClosedHandCursor);
    lookAt(panned(m_series, m_pressedWindow, -by / std::max(1.0, m_picture.plot.width())));
}

void TrendWidget::mouseReleaseEvent(QMouseEvent* event)
{
    if (!m_pressed || event->button() != Qt::LeftButton)
        return;
    m_pressed.reset();
    unsetCursor();
    if (m_dragged)
        return;
    if (const auto reading = readingAt(m_series, m_picture, event->position()))
        choose(static_cast<int>(*reading));
}

void TrendWidget::leaveEvent(QEvent*)
{
    hover(std::nullopt, std::nullopt);
}

void TrendWidget::hoverAt(QPointF point)
{
    hover(readingAt(m_series, m_picture, point), eventAt(m_series, m_picture, point));
}

void TrendWidget::hover(std::optional<std::size_t> reading, std::optional<std::size_t> event)
{
    if (reading == m_hovered && event == m_hoveredEvent)
        return;
    m_hovered = reading;
    m_hoveredEvent = event;
    emit hoverSentence(sentence());
    update();
}

// Of what is under the cursor; without it, of the chosen reading.
QString TrendWidget::sentence() const
{
    if (m_hovered)
        return TrendWords::reading(m_series.readings[*m_hovered]);
    if (m_hoveredEvent)
        return TrendWords::event(m_series.events[*m_hoveredEvent]);
    if (m_chosen >= 0)
        return TrendWords::reading(m_series.readings[static_cast<std::size_t>(m_chosen)]);
    return {};
}

void TrendWidget::choose(int index)
{
    m_chosen = index;
    m_hovered.reset();
    m_hoveredEvent.reset();
    setAccessibleDescription(sentence()); // a screen reader says it when it changes
    emit hoverSentence(sentence());
    emit readingChosen(index);
    update();
}

void TrendWidget::chooseReading(int index)
{
    if (index >= 0 && index < static_cast<int>(m_series.readings.size())) {
        choose(index);
        if (!placeOf(m_series, m_picture, static_cast<std::size_t>(index)))
            bringIntoSight(index);
        return;
    }
    m_chosen = -1;
    m_hovered.reset();
    m_hoveredEvent.reset();
    emit hoverSentence({});
    update();
}

void TrendWidget::step(int by)
{
    const int count = static_cast<int>(m_series.readings.size());
    if (count == 0)
        return;
    const int next = m_chosen < 0 ? (by > 0 ? 0 : count - 1) : std::clamp(m_chosen + by, 0, count - 1);
    chooseReading(next);
}

// Keeps the width that was chosen; the reading comes to the middle.
void TrendWidget::bringIntoSight(int index)
{
    const TrendReading& reading = m_series.readings[static_cast<std::size_t>(index)];
    const TrendWindow& drawn = m_picture.window;
    const double place =
        drawn.axis == TrendAxis::ByDate ? static_cast<double>(reading.when.utcSeconds) : reading.rigging;
    const double width = drawn.to - drawn.from;
    const QString said = accessibleDescription();
    lookAt(panned(m_series, drawn, (place - (drawn.from + width / 2)) / width));
    setAccessibleDescription(said);
}

bool TrendWidget::navigate(int key)
{
    const TrendWindow& drawn = m_picture.window;
    switch (key) {
    case Qt::Key_Left:
        lookAt(panned(m_series, drawn, -kPanStep));
        return true;
    case Qt::Key_Right:
        lookAt(panned(m_series, drawn, kPanStep));
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal: // the unshifted plus of many keyboards
        lookAt(zoomed(m_series, drawn, kZoomStep, 0.5));
        return true;
    case Qt::Key_Minus:
        lookAt(zoomed(m_series, drawn, 1 / kZoomStep, 0.5));
        return true;
    case Qt::Key_Home:
    case Qt::Key_End:
        bringIntoSight(key == Qt::Key_Home ? 0 : static_cast<int>(m_series.readings.size()) - 1);
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

void TrendWidget::keyPressEvent(QKeyEvent* event)
{
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (m_small || m_series.readings.empty() || !plain || !navigate(event->key()))
        QWidget::keyPressEvent(event);
}

void TrendWidget::focusInEvent(QFocusEvent*)
{
    update();
}

void TrendWidget::focusOutEvent(QFocusEvent*)
{
    update();
}

} // namespace rig
