#pragma once

#include "core/review/airframe_facts.h"
#include "core/store/records.h"

namespace rig {

// Problem{NotFound} when the file has no such airframe.
Result<AirframeFacts> factsWithoutReadings(const Records& records, AirframeId airframe);
Result<AirframeFacts> factsOf(const Records& records, AirframeId airframe);

} // namespace rig
