#pragma once

#include "app/report/review_parts.h"
#include "core/views/trend_series.h"

namespace rig::engineer {

// One coupling's whole history up to the end of the period, with what its movement says. Part-seated readings
// shown on purpose are left to the strip. Empty without a reading.
TrendSeries trendOf(const Source& source, const CouplingReview& coupling);

} // namespace rig::engineer
