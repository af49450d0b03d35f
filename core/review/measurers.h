#pragma once

#include "core/numbers/hand_offsets.h"
#include "core/review/review_period.h"
#include "core/review/season_review.h"

#include <optional>
#include <vector>

namespace rig {

// An offset of one person or leaf set from all of them, everything else allowed for. Millimetres.
struct MeasuredOffset
{
    double estimate = 0;
    double lower = 0; // 95 %
    double upper = 0;

    // The interval does not hold 0, and what it tells of is no trifle.
    bool isShown() const
    {
        return (lower > 0 || upper < 0) && (estimate >= kLeastOffsetTold || estimate <= -kLeastOffsetTold);
    }
};

template <typename Who> struct MeasuredBy
{
    Who who;
    int readings = 0;
    std::optional<MeasuredOffset> offset; // empty: see MeasurerOffsets' states, or too few readings
    bool isHidden = false;                // it cannot be told from the other factor, though others can
    // Standard deviation of this one's readings about each coupling's path, mm. Empty below two readings.
    std::optional<double> spread;
};

// Who measures like whom (docs/method.md J): those who read in the period, with what all readings up to its
// end say of them, mm. Readings in doubt are left out.
struct MeasurerOffsets
{
    std::vector<MeasuredBy<PersonId>> persons; // in the order of the file
    std::vector<MeasuredBy<GaugeId>> gauges;
    numbers::OffsetsState personsState = numbers::OffsetsState::OneLevel;
    numbers::OffsetsState gaugesState = numbers::OffsetsState::OneLevel;
    std::vector<numbers::OffsetFactor> personsHiddenBehind;
    std::vector<numbers::OffsetFactor> gaugesHiddenBehind;
};

MeasurerOffsets measurerOffsetsOf(const AirframeFacts& facts, const AirframeReadings& all,
                                  const SeasonReview& season, const ReviewPeriod& period);

} // namespace rig
