#pragma once

#include "core/exchange/reading_table.h"
#include "core/store/records.h"

#include <string_view>
#include <vector>

namespace rig {

struct Imported
{
    int readings = 0;
    int records = 0;         // rigging records made for them
    int setAside = 0;        // rows passed over, of readings that were corrected or struck
    std::vector<BadRow> bad; // all of them, in the order of lines; when there is one, nothing was imported
};

// Adds the readings of a table to those in the file, in one transaction. Airframes, couplings, people and
// gauges must be in the file already; upper and lower case and surrounding blanks do not count. A reading of
// the same coupling, day, interval, person and state is there already once the table was imported, so a
// second time is refused; `repeat` tells readings apart that are truly the same.
//
// Rows that are neither baseline nor part-seated belong to a rigging: one record per airframe and day, led by
// the first person named. One imported earlier for that day is used again, so that a rigging counts once.
Result<Imported> importReadings(Records& records, const Clock& clock, std::string_view table);

} // namespace rig
