#include "core/views/trend_maker.h"

#include "core/rigging/time_known.h"

#include <algorithm>

namespace rig {

namespace {

TrendReading drawn(const JudgedReading& one)
{
    TrendReading reading;
    reading.interval = one.reading.interval;
    reading.when = one.reading.when;
    reading.isTimeKnown = isTimeKnown(one.reading);
    reading.verdict = one.judgement.verdict;
    reading.state = one.reading.state;
    reading.ofBaseline = one.ofBaseline;
    reading.setAside = one.isStruckThrough() || one.leftOut;
    reading.inDoubt = one.inDoubt;
    return reading;
}

// The first second of its day where it was read: whatever was read on that day came after it.
Moment beginOf(const Fitting& fitting, std::span<const JudgedReading> readings)
{
    const auto first =
        std::ranges::find(readings, fitting.id, [](const JudgedReading& one) { return one.reading.fitting; });
    const std::int32_t offset = first == readings.end() ? 0 : first->reading.when.offsetSeconds;
    return {wallSeconds(fitting.begins) - offset, offset};
}

std::vector<TrendEvent> eventsOf(const Coupling& coupling, const AirframeFacts& facts, Day last)
{
    std::vector<TrendEvent> events;
    for (const Event& event : facts.events)
        if (event.day <= last && (!event.coupling || *event.coupling == coupling.id))
            events.push_back({noonOf(event.day), 0, event.kind, event.note, event.done,
                              event.kind == EventKind::Finding && event.person ? facts.nameOf(*event.person)
                                                                               : std::string{}});
    for (const JointPlay& play : facts.jointPlays)
        if (play.day <= last && play.coupling == coupling.id) {
            TrendEvent felt;
            felt.when = noonOf(play.day);
            felt.person = facts.nameOf(play.person);
            felt.play = play;
            events.push_back(std::move(felt));
        }
    std::ranges::stable_sort(events, {}, &TrendEvent::when);
    return events;
}

// Fittings first on their day, then what was done, then what was read.
void place(TrendSeries& series, std::span<const JudgedReading> readings, const RiggingNumbers& numbers)
{
    std::vector<std::pair<std::int64_t, double*>> places;
    for (TrendFitting& fitting : series.fittings)
        places.emplace_back(wallSeconds(fitting.begins.localDay()), &fitting.rigging);
    for (TrendEvent& event : series.events)
        places.emplace_back(wallSeconds(event.when.localDay()), &event.rigging);
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (readings[i].rigging)
            series.readings[i].rigging = *readings[i].rigging;
        else
            places.emplace_back(wallSeconds(readings[i].reading.when), &series.readings[i].rigging);
    }
    std::ranges::stable_sort(places, {}, [](const auto& one) { return one.first; });
    std::vector<std::int64_t> times;
    for (const auto& one : places)
        times.push_back(one.first);
    const std::vector<double> between = numbers.between(times);
    for (std::size_t i = 0; i < places.size(); ++i)
        *places[i].second = between[i];
}

} // namespace

TrendSeries trendSeriesOf(const Coupling& coupling, const CouplingHistory& history,
                          std::span<const JudgedReading> readings, const AirframeFacts& facts,
                          const RiggingNumbers& numbers, Day last)
{
    TrendSeries series;
    series.coupling = coupling.id;
    series.name = coupling.name;
    series.hasGap = hasGap(coupling);
    for (const FittingHistory& one : history.fittings)
        if (one.fitting.begins <= last)
            series.fittings.push_back({beginOf(one.fitting, readings), 0, one.baseline.band(),
                                       one.fitting.reason, one.fitting.kind});
    series.events = eventsOf(coupling, facts, last);
    for (const JudgedReading& one : readings)
        series.readings.push_back(drawn(one));
    place(series, readings, numbers);
    return series;
}

} // namespace rig
