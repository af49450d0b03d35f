#pragma once

#include "core/progress.h"
#include "core/review/airframe_facts.h"
#include "core/review/person_standings.h"
#include "core/store/records.h"

namespace rig {

// Problem{NotFound} when the file has no such airframe.
Result<AirframeFacts> factsWithoutReadings(const Records& records, AirframeId airframe);
Result<AirframeFacts> factsOf(const Records& records, AirframeId airframe);

// How persons stand on the airframe on that day, as it was stated by then.
Result<PersonStandings> personStandingsOn(const Records& records, const AirframeFacts& facts, Day day);

// All that stands in each of its records, for whoever tells of the looks and the control checks too. Stopped:
// Unexpected.
Outcome readContents(const Records& records, AirframeFacts& facts, Progress* progress = nullptr);

} // namespace rig
