#pragma once

#include "core/clock.h"
#include "core/exchange/imported.h"
#include "core/exchange/named_things.h"
#include "core/exchange/reading_table.h"
#include "core/progress.h"
#include "core/store/records.h"

#include <vector>

namespace rig {

// Adds these readings to those in the file, and rigging records for them, unless one of the rows is bad.
// Within a transaction of the caller, who gives it up when there is a bad row. Stopped between two rows:
// Unexpected.
//
// A reading of the same coupling, day, interval, person and state is there already once the table was
// imported, so a second time is refused; `repeat` tells readings apart that are truly the same.
//
// Rows that are neither baseline nor part-seated belong to a rigging: one record per airframe, day and time
// at which it began, as far as that is told, led by the first person named. One imported earlier for that day
// and time is used again, so that a rigging counts once.
Outcome addReadings(Records& records, Day today, const std::vector<TableRow>& rows, const NamedThings& known,
                    Imported& imported, Progress* progress = nullptr);

} // namespace rig
