#pragma once

#include "core/clock.h"
#include "core/exchange/bad_row.h"

#include <set>
#include <vector>

namespace rig {

// What came in; when there is a bad row, nothing did.
struct Imported
{
    int readings = 0;
    int records = 0;    // rigging records made for them
    int setAside = 0;   // rows passed over, of readings that were corrected or struck
    int notSecured = 0; // likewise, of readings that were found not secured at a rigging
    int airframes = 0;
    int couplings = 0;
    int fittings = 0;
    int people = 0;
    int gauges = 0;
    int gaugeChecks = 0;
    int events = 0;
    int jointPlays = 0;
    int thereAlready = 0;    // rows passed over, as the file says the same
    int sameDay = 0;         // of these records: the file has another rigging of that airframe and day
    std::set<Day> sameDays;  // on which
    std::vector<BadRow> bad; // all of them, table by table in the order of lines

    int things() const
    {
        return airframes + couplings + fittings + people + gauges + gaugeChecks + events + jointPlays;
    }
};

} // namespace rig
