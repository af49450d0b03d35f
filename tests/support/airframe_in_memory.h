#pragma once

#include "core/airframe/id_source.h"
#include "core/review/airframe_facts.h"

#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace rig::test {

// The facts of one airframe without a file, told day by day. Riggings come in the order they are told.
class AirframeInMemory
{
public:
    AirframeInMemory()
    {
        facts.airframe.id = next<AirframeId>();
        facts.airframe.registration = "QX-99";
        for (const char* name : {"M. Oren", "T. Vale"}) {
            Person person;
            person.id = next<PersonId>();
            person.name = name;
            facts.persons.push_back(person);
        }
        for (const char* name : {"A", "B"}) {
            Gauge gauge;
            gauge.id = next<GaugeId>();
            gauge.name = name;
            facts.gauges.push_back(gauge);
        }
    }

    // A coupling whose first fitting began on that day with baseline readings in leaf steps about the middle.
    Coupling& addCoupling(const std::string& name, double middle, Day day, int baselineReadings = 12)
    {
        Coupling coupling;
        coupling.id = next<CouplingId>();
        coupling.airframe = facts.airframe.id;
        coupling.name = name;
        coupling.riggingOrder = static_cast<int>(facts.couplings.size());
        facts.couplings.push_back(coupling);
        addFitting(coupling.id, "first fitting", middle, day, baselineReadings);
        return facts.couplings.back();
    }

    void addFitting(CouplingId coupling, const std::string& reason, double middle, Day day,
                    int baselineReadings = 12)
    {
        Fitting fitting;
        fitting.id = next<FittingId>();
        fitting.coupling = coupling;
        fitting.begins = day;
        fitting.reason = reason;
        facts.fittings.push_back(fitting);
        static constexpr double kOff[] = {-0.02, 0, 0.02, 0, -0.01, 0.01}; // mean 0, sd 0.014 mm
        for (int i = 0; i < baselineReadings; ++i) {
            Reading& reading = read(coupling, middle + kOff[i % 6], day);
            reading.purpose = Purpose::Baseline;
            reading.record.reset();
            reading.person = facts.persons[static_cast<std::size_t>(i) % 2].id;
        }
    }

    // Every reading from now on belongs to it.
    RiggingRecord& rig(Day day)
    {
        RiggingRecord record;
        record.id = next<RecordId>();
        record.airframe = facts.airframe.id;
        record.begins = noonOf(day);
        facts.riggingRecords.push_back(record);
        m_day = day;
        return facts.riggingRecords.back();
    }

    // By the first person with leaf set A, in steps of 0.02 mm.
    Reading& read(CouplingId coupling, double gap, std::optional<Day> day = {})
    {
        Reading reading;
        reading.id = next<ReadingId>();
        reading.coupling = coupling;
        for (const Fitting& fitting : facts.fittings)
            if (fitting.coupling == coupling)
                reading.fitting = fitting.id;
        if (!facts.riggingRecords.empty())
            reading.record = facts.riggingRecords.back().id;
        const int step = static_cast<int>(std::floor(gap / 0.02));
        reading.interval = {Gap::micrometres(step * 20), Gap::micrometres(step * 20 + 20)};
        reading.gauge = facts.gauges[0].id;
        reading.person = facts.persons[0].id;
        reading.when = noonOf(day.value_or(m_day));
        facts.readings.push_back({reading, {}});
        return facts.readings.back().reading;
    }

    void happen(EventKind kind, Day day)
    {
        Event event;
        event.id = next<EventId>();
        event.airframe = facts.airframe.id;
        event.kind = kind;
        event.day = day;
        facts.events.push_back(event);
    }

    template <typename AnyId> AnyId next() { return {m_ids.next(0)}; }

    AirframeFacts facts;

private:
    IdSource m_ids{7};
    Day m_day{};
};

} // namespace rig::test
