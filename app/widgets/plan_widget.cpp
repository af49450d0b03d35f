#include "app/widgets/plan_widget.h"

#include "app/widgets/focus_ring.h"
#include "app/wording/plan_words.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace rig {

namespace {

constexpr double kSmallMove = 0.01;
constexpr double kLargeMove = 0.05;
constexpr double kDragFrom = 4; // pixels: less is a click with a cold hand

std::optional<PlanWay> wayOf(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return PlanWay::Left;
    case Qt::Key_Right:
        return PlanWay::Right;
    case Qt::Key_Up:
        return PlanWay::Up;
    case Qt::Key_Down:
        return PlanWay::Down;
    default:
        return std::nullopt;
    }
}

} // namespace

PlanWidget::PlanWidget(QWidget* parent) : QWidget{parent}
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(PlanWords::name());
}

void PlanWidget::setView(const PlanView& view)
{
    m_view = view;
    if (m_view.chosen && *m_view.chosen >= m_view.items.size())
        m_view.chosen.reset();
    m_pressed.reset();
    lay();
}

void PlanWidget::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    lay();
}

void PlanWidget::setEditing(bool editing)
{
    m_isEditing = editing;
    m_pressed.reset();
    lay();
}

QSize PlanWidget::sizeHint() const
{
    return (QSizeF{300, 260} * m_look.fonts.scale).toSize();
}

QSize PlanWidget::minimumSizeHint() const
{
    const double scale = m_look.fonts.scale; // the marks grow with it, the wing need not
    return QSizeF{220 * std::min(scale, 1.2), 190 * scale}.toSize();
}

void PlanWidget::lay()
{
    m_picture = layoutPlan(m_view, size(), m_look.fonts);
    const QString keys = m_isEditing ? PlanWords::keysToMove() : PlanWords::keysToChoose();
    setAccessibleDescription(m_picture.inWords + QLatin1Char(' ') + keys);
    update();
}

void PlanWidget::choose(std::size_t index)
{
    if (m_view.chosen == index)
        return;
    m_view.chosen = index;
    lay();
    QAccessibleEvent said{this, QAccessible::DescriptionChanged};
    QAccessible::updateAccessibility(&said);
    emit couplingChosen(static_cast<int>(index));
}

void PlanWidget::go(PlanWay way)
{
    if (m_view.items.empty())
        return;
    if (!m_view.chosen)
        return choose(0);
    std::vector<PlanPoint> points;
    for (const PlanMarkSpot& spot : m_picture.spots)
        points.push_back({spot.centre.x(), spot.centre.y()});
    if (const auto next = nearestOn(way, points, *m_view.chosen))
        choose(*next);
}

PlanPlace PlanWidget::placeOf(std::size_t index) const
{
    const PlanItem& item = m_view.items[index];
    return item.place.value_or(usualPlace(item.circuit, item.side));
}

void PlanWidget::place(std::size_t index, const PlanPlace& place)
{
    m_view.items[index].place = withinPlan(place);
    lay();
}

void PlanWidget::nudge(PlanWay way, double step)
{
    if (!m_view.chosen)
        return go(way);
    PlanPlace to = placeOf(*m_view.chosen);
    to.x += way == PlanWay::Left ? -step : way == PlanWay::Right ? step : 0;
    to.y += way == PlanWay::Up ? -step : way == PlanWay::Down ? step : 0;
    place(*m_view.chosen, to);
    emit placeMoved(static_cast<int>(*m_view.chosen), placeOf(*m_view.chosen));
}

bool PlanWidget::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto found = m_picture.itemAt(help->pos());
        if (!found) {
            QToolTip::hideText();
            return true;
        }
        const PlanItem& item = m_view.items[*found];
        QToolTip::showText(
            help->globalPos(),
            PlanWords::coupling({item.name, item.word, item.side, item.kind == CouplingKind::ByItself,
                                 item.inUse, item.order, false}),
            this);
        return true;
    }
    return QWidget::event(event);
}

void PlanWidget::keyPressEvent(QKeyEvent* event)
{
    const auto way = wayOf(event->key());
    if (!way || event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
        return QWidget::keyPressEvent(event);
    if (m_isEditing)
        nudge(*way, event->modifiers() & Qt::ShiftModifier ? kLargeMove : kSmallMove);
    else
        go(*way);
}

void PlanWidget::mousePressEvent(QMouseEvent* event)
{
    const auto found = m_picture.itemAt(event->position());
    if (event->button() != Qt::LeftButton || !found)
        return QWidget::mousePressEvent(event);
    choose(*found);
    m_dragged = false;
    if (m_isEditing && m_view.chosen == found) // whoever was told may have kept to the one before
        m_pressed = event->position();
}

void PlanWidget::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_pressed || !m_view.chosen) {
        setCursor(m_picture.itemAt(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
        return;
    }
    if (!m_dragged && QLineF{*m_pressed, event->position()}.length() < kDragFrom)
        return;
    m_dragged = true;
    place(*m_view.chosen, m_picture.placeAt(event->position()));
}

void PlanWidget::mouseReleaseEvent(QMouseEvent*)
{
    if (m_pressed && m_dragged && m_view.chosen)
        emit placeMoved(static_cast<int>(*m_view.chosen), placeOf(*m_view.chosen));
    m_pressed.reset();
    m_dragged = false;
}

void PlanWidget::resizeEvent(QResizeEvent*)
{
    lay();
}

void PlanWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    paint(painter, m_picture, m_look.theme);
    if (hasFocus())
        paintFocusRing(painter, rect(), m_look.theme);
}

} // namespace rig
