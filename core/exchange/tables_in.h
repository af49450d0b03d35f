#pragma once

#include "core/exchange/imported.h"
#include "core/progress.h"
#include "core/store/records.h"

#include <optional>
#include <string_view>

namespace rig {

// The tables that are to come in, as they were read from the disk; empty where there is none.
struct TablesGiven
{
    std::optional<std::string_view> couplings; // airframes and fittings with them
    std::optional<std::string_view> people;
    std::optional<std::string_view> gauges; // their checks with them
    std::optional<std::string_view> events;
    std::optional<std::string_view> jointPlays;
    std::optional<std::string_view> readings;
};

// Adds what these tables say to the file, all of them in one transaction. What a table names must be in the
// file or in another of the tables; upper and lower case and surrounding blanks do not count.
//
// An airframe, coupling, person or gauge that is there already is passed over where the row says the same of
// it, and the row is bad where it says something else: nothing is changed that is there. Fittings, checks,
// events and joint plays are passed over as often as the file holds them. Stopped: Unexpected, and nothing
// came.
Result<Imported> importTables(Records& records, const Clock& clock, const TablesGiven& given,
                              Progress* progress = nullptr);

// A table of readings alone.
Result<Imported> importReadings(Records& records, const Clock& clock, std::string_view table);

} // namespace rig
