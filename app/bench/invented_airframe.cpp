#include "app/bench/invented_airframe.h"

#include "app/bench/draws.h"
#include "core/airframe/id_source.h"

#include <cmath>

namespace rig::bench {
namespace {

constexpr Day kBaselineDay{std::chrono::days{19'800}};

GapInterval inGaps(const numbers::Interval& reading)
{
    const auto um = [](double mm) {
        return Gap::micrometres(static_cast<std::int32_t>(std::lround(1000 * mm)));
    };
    return {um(reading.lower), um(reading.upper)};
}

} // namespace

AirframeFacts inventedAirframe(int couplings, int riggings, std::uint64_t seed)
{
    Draws draws{seed};
    IdSource ids{seed};
    AirframeFacts facts;
    facts.airframe.id = {ids.next(0)};
    facts.persons.emplace_back().id = {ids.next(0)};
    facts.gauges.emplace_back().id = {ids.next(0)};
    for (int i = 0; i < couplings; ++i) {
        rig::Coupling coupling; // a fact, not what the coverage is asked of
        coupling.id = {ids.next(0)};
        Fitting fitting;
        fitting.id = {ids.next(0)};
        fitting.coupling = coupling.id;
        fitting.begins = kBaselineDay;
        facts.couplings.push_back(coupling);
        facts.fittings.push_back(fitting);
    }
    const auto read = [&](int coupling, Day day, Purpose purpose) {
        Reading reading;
        reading.id = {ids.next(0)};
        reading.coupling = facts.couplings[static_cast<std::size_t>(coupling)].id;
        reading.fitting = facts.fittings[static_cast<std::size_t>(coupling)].id;
        if (purpose == Purpose::Rigging)
            reading.record = facts.riggingRecords.back().id;
        reading.interval = inGaps(readingOf(0.52 + 0.02 * draws.normal(), kLeaves));
        reading.gauge = facts.gauges.front().id;
        reading.person = facts.persons.front().id;
        reading.purpose = purpose;
        reading.when = noonOf(day);
        facts.readings.push_back({reading, {}});
    };
    for (int i = 0; i < couplings; ++i)
        for (int j = 0; j < 12; ++j)
            read(i, kBaselineDay, Purpose::Baseline);
    for (int rigging = 1; rigging <= riggings; ++rigging) {
        RiggingRecord record;
        record.id = {ids.next(0)};
        record.begins = noonOf(kBaselineDay + std::chrono::days{rigging});
        facts.riggingRecords.push_back(record);
        for (int i = 0; i < couplings; ++i)
            read(i, kBaselineDay + std::chrono::days{rigging}, Purpose::Rigging);
    }
    return facts;
}

} // namespace rig::bench
