#pragma once

#include "tests/support/hangar.h"

#include <string>

namespace rig::test {

inline constexpr Day kBaselineDay = dayOf(2026, 3, 7);

// The small hangar in the autumn of 2026: facts of the whole year can be told in any order.
class TrendsScene
{
public:
    TrendsScene() { store.clock().set(dayOf(2026, 11, 1)); }

    static Moment at(Day day, int hour) { return {noonOf(day).utcSeconds + (hour - 14) * 3600, 7200}; }

    ReadingId add(const Reading& reading) { return must(store.records().add(reading, std::nullopt)); }

    Reading reading(int entersUm, Day day, int hour = 10) const
    {
        return hangar.reading(between(entersUm, entersUm + 50), at(day, hour));
    }

    // Eight readings of 0.50-0.55 and four of 0.45-0.50 mm, one an hour.
    void baselineDay(Day day, std::optional<FittingId> fitting = {}, int shiftUm = 0)
    {
        for (int i = 0; i < 12; ++i) {
            Reading one = reading((i % 3 ? 500 : 450) + shiftUm, day, 8 + i);
            one.purpose = Purpose::Baseline;
            one.fitting = fitting.value_or(hangar.leftFitting);
            add(one);
        }
    }

    RecordId record(Day day, int hour = 9) { return must(store.records().add(hangar.record(at(day, hour)))); }

    // A rigging with one reading of the left aileron.
    RecordId rig(Day day, int entersUm, std::optional<FittingId> fitting = {})
    {
        const RecordId id = record(day);
        Reading one = reading(entersUm, day);
        one.record = id;
        one.fitting = fitting.value_or(hangar.leftFitting);
        add(one);
        return id;
    }

    void abandon(RecordId record)
    {
        RecordClose close;
        close.record = record;
        close.closing = Closing::Abandoned;
        close.stamp.by = hangar.oren;
        must(store.records().add(close));
    }

    FittingId refit(Day day, const std::string& reason)
    {
        Fitting fitting;
        fitting.coupling = hangar.leftAileron;
        fitting.begins = day;
        fitting.reason = reason;
        return must(store.records().add(fitting));
    }

    void event(Day day, EventKind kind, const std::string& note, std::optional<CouplingId> coupling = {})
    {
        Event event;
        event.airframe = hangar.airframe;
        event.coupling = coupling;
        event.kind = kind;
        event.day = day;
        event.note = note;
        must(store.records().add(event));
    }

    TempStore store;
    Hangar hangar{store.records()};
};

} // namespace rig::test
