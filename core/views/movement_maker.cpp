#include "core/views/movement_maker.h"

#include "core/review/judging.h"

#include <algorithm>

namespace rig {

namespace {

constexpr int kStepsOfFan = 12;
constexpr std::int64_t kDaySeconds = 24 * 3600;

TrendPlace placeOf(const LaterReading& one)
{
    return {one.reading.when, one.rigging};
}

std::optional<TrendPoint> onLine(const numbers::IntervalTrend& line, const TrendPlace& place)
{
    const auto at = line.predictionAt(place.rigging);
    if (!at)
        return std::nullopt;
    return TrendPoint{place.when, place.rigging, at->fit, at->fit, at->fit};
}

void addLine(const FittingMovement& movement, TrendSeries& series)
{
    for (const std::size_t index : {movement.lineFrom, movement.readings.size() - 1})
        if (const auto point = onLine(*movement.line, placeOf(movement.readings[index])))
            series.drift.push_back(*point);
}

// The interval is that of a new reading. Days go on evenly with the riggings.
void addFan(const FittingMovement& movement, TrendSeries& series)
{
    const DriftForecast& forecast = *movement.forecast;
    const TrendPlace from = placeOf(movement.readings.back());
    const std::int64_t end = std::max(noonOf(forecast.day).utcSeconds, from.when.utcSeconds + kDaySeconds);
    for (int i = 0; i <= kStepsOfFan; ++i) {
        const double share = static_cast<double>(i) / kStepsOfFan;
        const double rigging = from.rigging + share * forecast.riggings;
        const auto at = movement.line->predictionAt(rigging);
        if (!at)
            return;
        const auto seconds =
            from.when.utcSeconds +
            static_cast<std::int64_t>(share * static_cast<double>(end - from.when.utcSeconds));
        series.forecast.push_back(
            {{seconds, from.when.offsetSeconds}, rigging, at->reading95.lower, at->fit, at->reading95.upper});
    }
}

} // namespace

void drawMovement(const CouplingReview& coupling, const AirframeReview& review, TrendSeries& series)
{
    series.annualDue.reset();
    series.annualRigging.reset();
    if (review.period.annual)
        series.annualDue = noonOf(*review.period.annual);
    if (review.period.isAnnualToCome())
        series.annualRigging = review.counts.lastNumber + std::max(1.0, review.riggingsToCome);
    if (!coupling.movement || coupling.movement->readings.empty())
        return;
    const FittingMovement& movement = *coupling.movement;
    if (movement.forecast)
        series.annualRigging = movement.forecast->rigging;
    if (movement.line)
        addLine(movement, series);
    if (movement.forecast)
        addFan(movement, series);
    if (movement.drift && movement.drift->isRaised)
        series.onset = placeOf(movement.readings[movement.drift->onset]);
    else if (movement.hasStep())
        series.change = placeOf(
            movement.readings[movement.changeFrom + static_cast<std::size_t>(movement.change->splitAfter)]);
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
