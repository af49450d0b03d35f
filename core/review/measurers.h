#pragma once

#include "core/numbers/offsets.h"
#include "core/review/later_readings.h"
#include "core/review/review_period.h"

#include <optional>
#include <vector>

namespace rig {

// An offset of one person or leaf set from all of them, everything else allowed for. Millimetres.
struct MeasuredOffset
{
    double estimate = 0;
    double lower = 0; // 95 %
    double upper = 0;

    bool isShown() const { return lower > 0 || upper < 0; } // the interval does not hold 0
};

template <typename Who> struct MeasuredBy
{
    Who who;
    int readings = 0;
    std::optional<MeasuredOffset> offset; // empty: see MeasurerOffsets' states, or too few readings
    // Standard deviation of this one's readings about the middle of each coupling's band, less what the
    // day shared; through the median scatter. Empty below two readings.
    std::optional<double> spread;
};

// Who measures like whom (docs/method.md J): readings of riggings in the period against their bands, those in
// doubt left out. In mm through the median scatter of the bands.
struct MeasurerOffsets
{
    std::vector<MeasuredBy<PersonId>> persons; // in the order of the file
    std::vector<MeasuredBy<GaugeId>> gauges;
    numbers::OffsetsState personsState = numbers::OffsetsState::OneLevel;
    numbers::OffsetsState gaugesState = numbers::OffsetsState::OneLevel;
    std::vector<numbers::OffsetFactor> personsHiddenBehind;
    std::vector<numbers::OffsetFactor> gaugesHiddenBehind;
    double scatter = 0; // the median one, mm
};

MeasurerOffsets measurerOffsetsOf(const AirframeFacts& facts, const AirframeReadings& all,
                                  const ReviewPeriod& period);

} // namespace rig
