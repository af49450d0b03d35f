#pragma once

#include "app/pictures/aircraft.h"
#include "app/pictures/offsets.h"
#include "app/pictures/trend.h"
#include "app/wording/review_words.h"
#include "core/review/airframe_review.h"

namespace rig {

// What the numbers say of a coupling, laid over its readings: the line, the fan to the annual, where the
// drift began, a step. `series` is that coupling's.
void drawMovement(const CouplingReview& coupling, const AirframeReview& review, TrendSeries& series);

// Every coupling in its own scatters with the shared shift of each rigging day, over the whole file up to the
// end of the period.
AircraftSeries aircraftSeriesOf(const AirframeFacts& facts, const AirframeReview& review);

// The shared shifts of a review, with the cause of the called ones.
std::vector<ShiftDay> shiftDaysOf(const std::vector<DayShift>& shifts, const ReviewWords& words);

// One who measured, as drawn; without an offset the reason stands in its place.
template <typename Who>
OffsetRow offsetRowOf(const MeasuredBy<Who>& measured, const QString& name, numbers::OffsetsState state)
{
    OffsetRow row;
    row.name = name.toStdString();
    row.readings = measured.readings;
    row.spread = measured.spread;
    if (measured.offset) {
        row.offset = measured.offset->estimate;
        row.lower = measured.offset->lower;
        row.upper = measured.offset->upper;
        row.standsOut = measured.offset->isShown();
    } else {
        row.instead = ReviewWords::noOffset(state);
    }
    return row;
}

} // namespace rig
