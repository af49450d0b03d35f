#include "core/review/airframe_facts.h"

#include "core/airframe/name_in.h"

#include <algorithm>
#include <iterator>

namespace rig {

std::vector<Reading> AirframeFacts::readingsOf(CouplingId coupling) const
{
    std::vector<Reading> of;
    for (const KeptReading& kept : readings)
        if (kept.reading.coupling == coupling)
            of.push_back(kept.reading);
    return of;
}

std::vector<Coupling> AirframeFacts::couplingsInUse() const
{
    std::vector<Coupling> inUse;
    std::ranges::copy_if(couplings, std::back_inserter(inUse), &Coupling::inUse);
    return inUse;
}

std::vector<Gauge> AirframeFacts::gaugesInUse() const
{
    std::vector<Gauge> inUse;
    std::ranges::copy_if(gauges, std::back_inserter(inUse), &Gauge::inUse);
    return inUse;
}

std::vector<Surface> AirframeFacts::surfacesInUse() const
{
    std::vector<Surface> inUse;
    std::ranges::copy_if(surfaces, std::back_inserter(inUse), &Surface::inUse);
    return inUse;
}

std::string AirframeFacts::nameOf(PersonId person) const
{
    return nameIn(persons, person);
}

std::string AirframeFacts::placeOf(const Question& question) const
{
    if (question.surface)
        return nameIn(surfaces, question.surface);
    if (question.coupling)
        return nameIn(couplings, question.coupling);
    return question.gauge ? nameIn(gauges, question.gauge) : airframe.registration;
}

const Gauge* AirframeFacts::gauge(GaugeId id) const
{
    const auto found = std::ranges::find(gauges, id, &Gauge::id);
    return found == gauges.end() ? nullptr : &*found;
}

const KeptReading* AirframeFacts::reading(ReadingId id) const
{
    const auto found = std::ranges::find(readings, id, [](const KeptReading& one) { return one.reading.id; });
    return found == readings.end() ? nullptr : &*found;
}

std::optional<Day> AirframeFacts::lastGoodCheck(GaugeId id, Day upTo) const
{
    std::optional<Day> last;
    for (const GaugeCheck& check : gaugeChecks)
        if (check.gauge == id && !check.quarantineFrom && check.day <= upTo && (!last || *last < check.day))
            last = check.day;
    return last;
}

} // namespace rig
