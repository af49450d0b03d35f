#include "app/widgets/trend_widget.h"

#include "app/wording/trend_words.h"

#include <QPainter>

#include <algorithm>

namespace rig {

namespace {

// The same reading after the history was read anew; -1 when it is no longer there.
int sameReading(const TrendReading& wanted, const TrendSeries& series)
{
    const auto found =
        std::find_if(series.readings.begin(), series.readings.end(), [&wanted](const TrendReading& one) {
            return one.when == wanted.when && one.interval == wanted.interval && one.state == wanted.state &&
                   one.person == wanted.person;
        });
    return found == series.readings.end() ? -1 : static_cast<int>(found - series.readings.begin());
}

} // namespace

TrendWidget::TrendWidget(QWidget* parent) : ChartWidget{parent} {}

TrendWidget::~TrendWidget() = default;

void TrendWidget::setSeries(const TrendSeries& series, TrendAxis axis)
{
    const bool isSame = !m_small && series.coupling && series.coupling == m_series.coupling;
    const int chosen = isSame && m_chosen >= 0
                           ? sameReading(m_series.readings[static_cast<std::size_t>(m_chosen)], series)
                           : -1;
    if (isSame && axis != window().axis)
        setWindow(window().isWhole() ? TrendWindow{axis, 0, 0} : carriedOver(axis));
    else if (!isSame)
        setWindow({axis, 0, 0});
    m_series = series;
    m_index = indexOf(series, axis);
    m_small.reset();
    m_chosen = chosen;
    m_hovered.reset();
    m_hoveredEvent.reset();
    endDrag();
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents, false);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    updateGeometry();
    describe();
    layOut();
    emit hoverSentence(sentence());
}

void TrendWidget::setSmall(const TrendSeries& series, std::size_t lastReadings)
{
    m_series = series;
    m_index = {};
    m_small = lastReadings;
    m_chosen = -1;
    setFocusPolicy(Qt::NoFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    updateGeometry();
    layOut();
    describe();
}

void TrendWidget::axisChanged()
{
    m_index = indexOf(m_series, window().axis);
}

// From the first of the readings that are in it to the last, with some room; everything without any.
template <typename IsIn> TrendWindow TrendWidget::windowAround(TrendAxis axis, IsIn isIn) const
{
    const TrendReading* first = nullptr;
    const TrendReading* last = nullptr;
    for (const TrendReading& reading : m_series.readings) {
        if (!isIn(reading))
            continue;
        first = first ? first : &reading;
        last = &reading;
    }
    if (!first)
        return {axis, 0, 0};
    const double from = along(axis, first->when, first->rigging);
    const double to = along(axis, last->when, last->rigging);
    const double margin = std::max((to - from) * 0.03, axis == TrendAxis::ByDate ? 86400.0 : 1.0);
    return {axis, from - margin, to + margin};
}

// The same readings on the other axis: from the first to the last that are in sight.
TrendWindow TrendWidget::carriedOver(TrendAxis axis) const
{
    const TrendWindow& seen = window();
    return windowAround(axis, [&](const TrendReading& reading) {
        const double place = along(seen.axis, reading.when, reading.rigging);
        return place >= seen.from && place <= seen.to;
    });
}

void TrendWidget::lookAtDays(Day from, Day to)
{
    lookAt(windowAround(window().axis, [&](const TrendReading& reading) {
        const Day day = reading.when.localDay();
        return from <= day && day <= to;
    }));
}

void TrendWidget::lookAtAll()
{
    lookAt({window().axis, 0, 0});
}

QSize TrendWidget::sizeHint() const
{
    const double scale = look().fonts.scale;
    return m_small ? QSize{240, static_cast<int>(44 * scale)} : QSize{800, static_cast<int>(420 * scale)};
}

QSize TrendWidget::minimumSizeHint() const
{
    const double scale = look().fonts.scale;
    return m_small ? QSize{120, static_cast<int>(34 * scale)}
                   : QSize{500, static_cast<int>(260 * std::min(scale, 1.2))};
}

void TrendWidget::layOut()
{
    m_picture = m_small ? layoutSmallTrend(m_series, *m_small, size())
                        : layoutTrend(m_series, m_index, window(), size(), look().fonts);
    update();
}

// A screen reader says the chosen reading, and without one the whole.
void TrendWidget::describe()
{
    const QString whole = m_small ? m_picture.inWords : m_index.inWords;
    setAccessibleName(m_series.name.empty() ? whole : QString::fromStdString(m_series.name));
    if (m_chosen >= 0)
        setAccessibleDescription(sentence());
    else
        setAccessibleDescription(m_small ? whole : whole + QLatin1Char(' ') + TrendWords::keysHint());
}

void TrendWidget::paintPicture(QPainter& painter)
{
    paint(painter, m_picture, look().theme);
    if (m_small)
        return;
    if (m_hovered)
        paintAround(painter, *m_hovered, Role::InkSoft);
    if (m_chosen >= 0)
        paintAround(painter, static_cast<std::size_t>(m_chosen), Role::Accent);
}

void TrendWidget::paintAround(QPainter& painter, std::size_t reading, Role role) const
{
    const std::optional<QRectF> place = placeOf(m_index, m_picture, reading);
    if (!place)
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{look().theme.color(role), 2});
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(place->adjusted(-4, -4, 4, 4), 3, 3);
}

void TrendWidget::clickAt(QPointF point)
{
    if (const auto reading = readingAt(m_index, m_picture, point))
        choose(static_cast<int>(*reading));
}

void TrendWidget::hoverAt(QPointF point)
{
    hover(readingAt(m_index, m_picture, point), eventAt(m_series, m_picture, point));
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
    describe();
    emit hoverSentence(sentence());
    emit readingChosen(index);
    update();
}

void TrendWidget::chooseReading(int index)
{
    if (index >= 0 && index < static_cast<int>(m_series.readings.size())) {
        choose(index);
        if (!placeOf(m_index, m_picture, static_cast<std::size_t>(index)))
            bringIntoSight(m_index.spots[static_cast<std::size_t>(index)].x);
        return;
    }
    m_chosen = -1;
    m_hovered.reset();
    m_hoveredEvent.reset();
    describe();
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

} // namespace rig
