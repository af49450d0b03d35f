#include "core/store/airframe_facts.h"

#include <algorithm>

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
    const auto found = std::ranges::find(persons, person, &Person::id);
    return found == persons.end() ? std::string{} : found->name;
}

const Gauge* AirframeFacts::gauge(GaugeId id) const
{
    const auto found = std::ranges::find(gauges, id, &Gauge::id);
    return found == gauges.end() ? nullptr : &*found;
}

std::optional<Day> AirframeFacts::lastGoodCheck(GaugeId id) const
{
    std::optional<Day> last;
    for (const GaugeCheck& check : gaugeChecks)
        if (check.gauge == id && !check.quarantineFrom && (!last || *last < check.day))
            last = check.day;
    return last;
}

Result<AirframeFacts> factsOf(const Records& records, AirframeId airframe)
{
    AirframeFacts facts;
    std::vector<Airframe> airframes;
    Problem problem;
    const bool all = take(records.airframes(), airframes, problem) &&
                     take(records.persons(), facts.persons, problem) &&
                     take(records.gauges(), facts.gauges, problem) &&
                     take(records.gaugeChecks(), facts.gaugeChecks, problem) &&
                     take(records.couplings(airframe), facts.couplings, problem) &&
                     take(records.fittings(airframe), facts.fittings, problem) &&
                     take(records.events(airframe), facts.events, problem) &&
                     take(records.readings(airframe), facts.readings, problem) &&
                     take(records.exclusions(airframe), facts.exclusions, problem) &&
                     take(records.frozenBaselines(airframe), facts.frozenBaselines, problem) &&
                     take(records.riggingRecords(airframe), facts.riggingRecords, problem) &&
                     take(records.closings(airframe), facts.closings, problem) &&
                     take(records.surfaces(airframe), facts.surfaces, problem) &&
                     take(records.questions(airframe), facts.questions, problem);
    if (!all)
        return problem;
    const auto found = std::ranges::find(airframes, airframe, &Airframe::id);
    if (found == airframes.end())
        return Problem{ProblemKind::NotFound, textOf(airframe.bytes)};
    facts.airframe = *found;
    return facts;
}

} // namespace rig
