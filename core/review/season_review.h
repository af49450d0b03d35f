#pragma once

#include "core/numbers/season.h"
#include "core/review/later_readings.h"
#include "core/review/rigging_numbers.h"

#include <map>

namespace rig {

// Offsets below this are not told, however sure they are: no scatter is taken as smaller either
// (docs/method.md 0), and with one bad gauge every other one reads a little to the other side of the mean of
// all.
inline constexpr double kLeastOffsetTold = 0.005; // mm
// So many riggings enter: the latest ones all, those before them evenly thinned out.
inline constexpr std::size_t kRiggingsOfSeason = 300;
inline constexpr std::size_t kEarlierRiggings = 50;

// What all readings of an airframe say together: one model of its season (docs/method.md J, M).
struct SeasonReview
{
    std::map<FittingId, numbers::SeasonFitting> fittings; // whose readings have a band to be told against
    std::map<ReadingId, numbers::SingleReading> singles;  // readings of riggings that lie outside their path
    numbers::HandOffsets hands; // labels are places among the facts' persons and gauges
};

// Every fitting with its baseline and one reading a rigging; second readings and those in doubt tell of hands
// and days only. Fills in of `all` what the season tells of each reading and of each rigging day.
SeasonReview seasonReviewOf(const AirframeFacts& facts, const RiggingNumbers& numbers, AirframeReadings& all);

// All that readings up to a day say, whichever period ends on it: most of the work of a review.
struct SeasonUntil
{
    Day last{};
    RiggingNumbers numbers;
    AirframeReadings readings;
    SeasonReview season;
};

// `historyOfCoupling` as in readingsUntil().
SeasonUntil seasonUntil(const AirframeFacts& facts, Day last,
                        const HistoryOfCoupling& historyOfCoupling = {});

} // namespace rig
