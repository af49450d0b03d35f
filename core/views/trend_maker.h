#pragma once

#include "core/review/judged_readings.h"
#include "core/views/trend_series.h"

#include <span>

namespace rig {

// One coupling's history up to the end of a day as it is drawn: its readings in the order given (oldest
// first), its fittings with their bands, what was done to it. What has no rigging number of its own stands
// between the numbers. Without names and notes, and without what moved (movement_maker.h).
TrendSeries trendSeriesOf(const Coupling& coupling, const CouplingHistory& history,
                          std::span<const JudgedReading> readings, const AirframeFacts& facts,
                          const RiggingNumbers& numbers, Day last);

} // namespace rig
