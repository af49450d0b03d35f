#include "core/views/movement_maker.h"

#include "core/review/judging.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace rig {

namespace {

constexpr int kStepsOfFan = 6;
constexpr std::int64_t kDaySeconds = 24 * 3600;

TrendPlace placeOf(const LaterReading& one)
{
    return {one.reading.when, one.rigging};
}

TrendPlace placeOnPath(const FittingMovement& movement, double rigging)
{
    const auto at = std::ranges::lower_bound(movement.readings, rigging, {}, &LaterReading::rigging);
    return placeOf(at == movement.readings.end() ? movement.readings.back() : *at);
}

// The likeliest way that agrees with what is told.
const numbers::MovementWay& wayToldOf(const FittingMovement& movement)
{
    if (!movement.changes.empty())
        return movement.path->likeliestWay();
    const auto steady = std::ranges::find_if(movement.path->ways, [](const numbers::MovementWay& way) {
        return way.changes[0].kind == numbers::MovementKind::Steady;
    });
    return steady == movement.path->ways.end() ? movement.path->likeliestWay() : *steady;
}

class PathLine
{
public:
    explicit PathLine(const FittingMovement& movement) : m_movement{movement} {}

    std::vector<TrendPoint> points()
    {
        const auto& changes = m_movement.changes;
        const bool isUnclear = std::ranges::any_of(
            changes, [](const PathChangeTold& change) { return change.kind == ChangeKind::StepOrDrift; });
        if (isUnclear)
            followMeans();
        else
            followWay(wayToldOf(m_movement));
        return std::move(m_points);
    }

private:
    void add(const TrendPlace& place, double mm)
    {
        m_points.push_back({place.when, place.rigging, mm, mm, mm});
    }

    std::size_t firstReading() const
    {
        return std::min(m_movement.periodFrom, m_movement.readings.size() - 1);
    }

    void followMeans()
    {
        for (std::size_t i = firstReading(); i < m_movement.readings.size(); ++i)
            if (m_movement.readings[i].path)
                add(placeOf(m_movement.readings[i]), *m_movement.readings[i].path);
    }

    // Level, the two ends of each step, each bend, the last reading; a drift alone is drawn from its
    // beginning.
    void followWay(const numbers::MovementWay& way)
    {
        const bool isOneDrift = m_movement.changes.size() == 1 && !m_movement.changes.front().step;
        const double begin = isOneDrift ? way.changes[0].at : m_movement.readings[firstReading()].rigging;
        const double end = m_movement.readings.back().rigging;
        add(placeOnPath(m_movement, begin), way.meanAt(begin));
        for (const numbers::PathChange& change : way.changes) {
            if (change.kind == numbers::MovementKind::Steady || change.at <= begin || change.at >= end)
                continue;
            if (change.kind == numbers::MovementKind::Step)
                add(placeOnPath(m_movement, change.at), way.meanAt(std::nextafter(change.at, begin)));
            add(placeOnPath(m_movement, change.at), way.meanAt(change.at));
        }
        add(placeOf(m_movement.readings.back()), way.meanAt(end));
    }

    const FittingMovement& m_movement;
    std::vector<TrendPoint> m_points;
};

// The interval is that of a new reading. Days go on evenly with the riggings.
void addFan(const FittingMovement& movement, TrendSeries& series)
{
    const AnnualForecast& forecast = *movement.forecast;
    const TrendPlace from = placeOf(movement.readings.back());
    const std::int64_t end = std::max(noonOf(forecast.day).utcSeconds, from.when.utcSeconds + kDaySeconds);
    for (int i = 0; i <= kStepsOfFan; ++i) {
        const double share = static_cast<double>(i) / kStepsOfFan;
        const double rigging = from.rigging + share * forecast.riggings;
        const auto at = numbers::forecastPlaceOf(*movement.path, rigging);
        const auto seconds =
            from.when.utcSeconds +
            static_cast<std::int64_t>(share * static_cast<double>(end - from.when.utcSeconds));
        series.forecast.push_back(
            {{seconds, from.when.offsetSeconds}, rigging, at.reading.lower, at.mean, at.reading.upper});
    }
}

void addChange(const FittingMovement& movement, const PathChangeTold& change, TrendSeries& series)
{
    const TrendPlace at = placeOnPath(movement, change.at);
    series.changeWithin = {placeOnPath(movement, change.atLower), placeOnPath(movement, change.atUpper)};
    switch (change.kind) {
    case ChangeKind::Step:
        series.change = at;
        return;
    case ChangeKind::Drift:
        series.onset = at;
        return;
    case ChangeKind::StepOrDrift:
        series.either = at;
        return;
    }
}

// A rigging's place is its number: half way to the next one lies the edge.
constexpr double kHalfRigging = 0.5;

Moment startOf(Day day, std::int32_t offsetSeconds)
{
    return {day.time_since_epoch().count() * kDaySeconds - offsetSeconds, offsetSeconds};
}

std::optional<TrendPeriod> periodAmong(const std::vector<TrendReading>& readings, const ReviewPeriod& period)
{
    const auto isBefore = [&](const TrendReading& one) { return one.when.localDay() < period.from; };
    const auto isUpTo = [&](const TrendReading& one) { return one.when.localDay() <= period.to; };
    const auto first = std::ranges::partition_point(readings, isBefore);
    const auto behind = std::ranges::partition_point(readings, isUpTo);
    if (readings.empty() || (first == readings.begin() && behind == readings.end()))
        return std::nullopt;
    const std::int32_t offset = readings.front().when.offsetSeconds;
    return TrendPeriod{{startOf(period.from, offset), first == readings.end()
                                                          ? readings.back().rigging + kHalfRigging
                                                          : first->rigging - kHalfRigging},
                       {{startOf(period.to, offset).utcSeconds + kDaySeconds - 1, offset},
                        behind == readings.begin() ? readings.front().rigging - kHalfRigging
                                                   : std::prev(behind)->rigging + kHalfRigging}};
}

} // namespace

void drawMovement(const CouplingReview& coupling, const AirframeReview& review, TrendSeries& series)
{
    series.period = periodAmong(series.readings, review.period);
    series.annualDue.reset();
    series.annualRigging.reset();
    if (review.period.annual)
        series.annualDue = noonOf(*review.period.annual);
    if (review.period.isAnnualToCome() && review.riggingsToCome)
        series.annualRigging = review.counts.lastNumber + std::max(1.0, *review.riggingsToCome);
    if (!coupling.movement || coupling.movement->readings.empty())
        return;
    const FittingMovement& movement = *coupling.movement;
    if (movement.forecast)
        series.annualRigging = movement.forecast->rigging;
    if (movement.path)
        series.path = PathLine{movement}.points();
    if (movement.forecast)
        addFan(movement, series);
    if (const PathChangeTold* told = movement.told())
        addChange(movement, *told, series);
}

std::vector<ShiftDay> shiftDaysOf(const std::vector<DayShift>& shifts, const CauseOfShift& causeOf)
{
    std::vector<ShiftDay> days;
    for (const DayShift& day : shifts)
        days.push_back({day.when, static_cast<double>(day.rigging), day.shift.median, day.shift.scores,
                        day.shift.isCalled, day.shift.isCalled ? causeOf(day) : std::string{}});
    return days;
}

AircraftSeries aircraftSeriesOf(AirframeId airframe, const AirframeReview& review,
                                const CauseOfShift& causeOf)
{
    AircraftSeries series;
    series.airframe = airframe;
    for (const CouplingReadings& coupling : review.readings.couplings) {
        AircraftCoupling one{coupling.coupling.name, coupling.coupling.side, {}};
        Judging judging{coupling.history};
        for (const LaterReading& later : coupling.readings)
            if (later.score)
                one.points.push_back({later.reading.when, later.rigging, *later.score,
                                      judging.of(later.reading).verdict, later.inDoubt});
        series.couplings.push_back(std::move(one));
    }
    series.shifts = shiftDaysOf(review.readings.shifts, causeOf);
    return series;
}

} // namespace rig
