#pragma once

#include "core/baseline/band.h"
#include "core/measure/gap_interval.h"
#include "core/numbers/interval.h"
#include "core/numbers/interval_posterior.h"

namespace rig {

// From whole micrometres to the numbers' millimetres, an open upper bound as infinity.
numbers::Interval inNumbers(const GapInterval& interval);

// The band of a posterior; `setVariance` (mm squared) widens it for readings with another gauge.
Band bandOf(const numbers::IntervalPosterior& posterior, double setVariance = 0);

} // namespace rig
