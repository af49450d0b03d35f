#pragma once

#include "core/baseline/band.h"
#include "core/measure/gap_interval.h"

#include <optional>
#include <vector>

namespace rig {

// All that was ever read of one coupling, on one millimetre scale that begins at nothing.
struct ReadingsStripView
{
    std::optional<Band> band;
    std::vector<GapInterval> locked;
    std::vector<GapInterval> partSeated; // on purpose, to learn where they lie
    std::vector<GapInterval> asFound;    // at a rigging: part-seated, or outside the band
    std::vector<GapInterval> notSecured; // likewise: home, and nothing held the plunger
    std::vector<GapInterval> earlier;    // of other fittings, not drawn: they too were seen
};

// Millimetres between locked and other readings, in which nothing was ever read.
struct EmptyStretch
{
    double from = 0;
    double to = 0;

    double width() const { return to - from; }
};

// What lies below the locked readings first. None where one kind was never read, where any reading reaches
// into the locked ones, where they touch, where a locked one has no upper end on that side, or where a
// reading of another fitting or one that was not secured reaches into it.
std::vector<EmptyStretch> emptyBetween(const ReadingsStripView& view);

// Where the scale ends: a whole step above what was read, and never beyond `kWidestStrip`, where readings lie
// off the scale.
inline constexpr double kWidestStrip = 4.0; // mm
double stripEnd(const ReadingsStripView& view);
bool isOffStrip(const GapInterval& reading, double end);

// One number for where a reading is drawn: the middle of it, or where it begins when it has no upper end.
double drawnAt(const GapInterval& reading);

} // namespace rig
