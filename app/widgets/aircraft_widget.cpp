#include "app/widgets/aircraft_widget.h"

#include "app/wording/aircraft_words.h"

#include <QPainter>

#include <algorithm>

namespace rig {

AircraftWidget::AircraftWidget(QWidget* parent) : ChartWidget{parent}
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(AircraftWords::title());
}

AircraftWidget::~AircraftWidget() = default;

void AircraftWidget::setSeries(const AircraftSeries& series, TrendAxis axis,
                               std::optional<std::size_t> chosenCoupling)
{
    const bool isSame = series.airframe && series.airframe == m_series.airframe;
    if (isSame && axis != window().axis)
        setWindow(window().isWhole() ? TrendWindow{axis, 0, 0} : carriedOver(axis));
    else if (!isSame)
        setWindow({axis, 0, 0});
    m_series = series;
    m_reach = reachOf(series, axis);
    m_chosen = chosenCoupling;
    m_said.clear();
    endDrag();
    layOut();
}

void AircraftWidget::chooseCoupling(std::optional<std::size_t> coupling)
{
    m_chosen = coupling;
    layOut();
}

void AircraftWidget::axisChanged()
{
    m_reach = reachOf(m_series, window().axis);
}

// The same riggings on the other axis: from the first to the last reading in sight.
TrendWindow AircraftWidget::carriedOver(TrendAxis axis) const
{
    const TrendWindow& seen = window();
    std::optional<TrendWindow> carried;
    for (const AircraftCoupling& coupling : m_series.couplings)
        for (const AircraftPoint& point : coupling.points) {
            const double place = along(seen.axis, point.when, point.rigging);
            if (place < seen.from || place > seen.to)
                continue;
            const double other = along(axis, point.when, point.rigging);
            carried = carried
                          ? TrendWindow{axis, std::min(carried->from, other), std::max(carried->to, other)}
                          : TrendWindow{axis, other, other};
        }
    if (!carried)
        return {axis, 0, 0};
    const double margin =
        std::max((carried->to - carried->from) * 0.03, axis == TrendAxis::ByDate ? 86400.0 : 1.0);
    return {axis, carried->from - margin, carried->to + margin};
}

QSize AircraftWidget::sizeHint() const
{
    return {800, static_cast<int>(460 * look().fonts.scale)};
}

QSize AircraftWidget::minimumSizeHint() const
{
    return {500, static_cast<int>(300 * std::min(look().fonts.scale, 1.2))};
}

void AircraftWidget::layOut()
{
    m_picture = layoutAircraft(m_series, window(), m_chosen, size(), look().fonts);
    setAccessibleDescription(m_picture.inWords + QLatin1Char(' ') + AircraftWords::keysHint());
    update();
}

void AircraftWidget::paintPicture(QPainter& painter)
{
    paint(painter, m_picture, look().theme);
}

QString AircraftWidget::sentenceAt(QPointF point) const
{
    if (const auto found = pointAt(m_series, m_picture, m_chosen, point)) {
        const AircraftCoupling& coupling = m_series.couplings[found->coupling];
        return AircraftWords::point(coupling, coupling.points[found->point]);
    }
    if (const auto shift = shiftAt(m_series, m_picture, point))
        return AircraftWords::shift(m_series.shifts[*shift]);
    return {};
}

void AircraftWidget::say(const QString& sentence)
{
    if (sentence == m_said)
        return;
    m_said = sentence;
    emit hoverSentence(sentence);
}

void AircraftWidget::hoverAt(QPointF point)
{
    say(sentenceAt(point));
}

void AircraftWidget::hoverNothing()
{
    say({});
}

std::optional<std::size_t> AircraftWidget::couplingAt(QPointF point) const
{
    for (const AircraftName& name : m_picture.names)
        if (name.where.contains(point))
            return name.coupling;
    const auto found = pointAt(m_series, m_picture, m_chosen, point);
    return found ? std::optional{found->coupling} : std::nullopt;
}

void AircraftWidget::clickAt(QPointF point)
{
    if (const auto coupling = couplingAt(point))
        choose(*coupling);
}

void AircraftWidget::choose(std::size_t coupling)
{
    chooseCoupling(coupling);
    const AircraftCoupling& one = m_series.couplings[coupling];
    if (!one.points.empty())
        say(AircraftWords::point(one, one.points.back()));
    emit couplingChosen(static_cast<int>(coupling));
}

void AircraftWidget::step(int by)
{
    const int count = static_cast<int>(m_series.couplings.size());
    if (count == 0)
        return;
    const int next =
        m_chosen ? std::clamp(static_cast<int>(*m_chosen) + by, 0, count - 1) : (by > 0 ? 0 : count - 1);
    choose(static_cast<std::size_t>(next));
}

} // namespace rig
