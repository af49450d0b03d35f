#pragma once

#include "app/pictures/aircraft.h"
#include "app/pictures/trend.h"
#include "core/review/airframe_review.h"

namespace rig {

// What the numbers say of a coupling, laid over its readings: the line, the fan to the annual, where the
// drift began, a step. `series` is that coupling's.
void drawMovement(const CouplingReview& coupling, const AirframeReview& review, TrendSeries& series);

// Every coupling in its own scatters with the shared shift of each rigging day, over the whole file up to the
// end of the period.
AircraftSeries aircraftSeriesOf(const AirframeFacts& facts, const AirframeReview& review);

} // namespace rig
