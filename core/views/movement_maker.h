#pragma once

#include "core/review/airframe_review.h"
#include "core/views/aircraft_series.h"
#include "core/views/offset_row.h"
#include "core/views/trend_series.h"

#include <functional>
#include <string>
#include <vector>

namespace rig {

// Words what a called shift comes from; empty when nothing names itself.
using CauseOfShift = std::function<std::string(const DayShift&)>;

// What the numbers say of a coupling, laid over its readings: its path, the fan to the annual, and where the
// change that is told began. `series` is that coupling's.
void drawMovement(const CouplingReview& coupling, const AirframeReview& review, TrendSeries& series);

// Every coupling in its own scatters with the shared shift of each rigging day, over the whole file up to the
// end of the period.
AircraftSeries aircraftSeriesOf(AirframeId airframe, const AirframeReview& review,
                                const CauseOfShift& causeOf);

// The shared shifts of a review, with the cause of the called ones.
std::vector<ShiftDay> shiftDaysOf(const std::vector<DayShift>& shifts, const CauseOfShift& causeOf);

// One who measured, as drawn; without an offset `instead` stands in its place.
template <typename Who>
OffsetRow offsetRowOf(const MeasuredBy<Who>& measured, const std::string& name, const std::string& instead)
{
    OffsetRow row;
    row.name = name;
    row.readings = measured.readings;
    row.spread = measured.spread;
    if (measured.offset) {
        row.offset = measured.offset->estimate;
        row.lower = measured.offset->lower;
        row.upper = measured.offset->upper;
        row.standsOut = measured.offset->isShown();
    } else {
        row.instead = instead;
    }
    return row;
}

} // namespace rig
