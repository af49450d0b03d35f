#pragma once

#include "core/exchange/reading_table.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/reading.h"

#include <map>
#include <optional>
#include <tuple>

namespace rig {

// What makes two readings the same in a table.
using RowKey = std::tuple<CouplingId, Day, GapInterval, PersonId, std::optional<GaugeId>, RowState>;
using RowCounts = std::map<RowKey, int>;

inline RowState rowStateOf(const Reading& reading)
{
    if (reading.state == SeatState::PartSeated)
        return RowState::PartSeated;
    if (reading.state == SeatState::NotSecured)
        return RowState::NotSecured;
    return mayMakeBand(reading) ? RowState::Baseline : RowState::Locked;
}

inline RowKey keyOf(const Reading& reading)
{
    const RowState state = rowStateOf(reading);
    // Tables of earlier versions say part-seated of both.
    return {reading.coupling, reading.when.localDay(),
            reading.interval, reading.person,
            reading.gauge,    state == RowState::NotSecured ? RowState::PartSeated : state};
}

} // namespace rig
