#pragma once

#include "core/numbers/interval.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

enum class OffsetFactor { Person, LeafSet };

enum class OffsetsState {
    OneLevel,          // nothing to compare: nothing is claimed
    CannotBeToldApart, // at least one difference within the factor is also one within the other
    Estimated,
};

inline constexpr int kReadingsForOffset = 10;

// What is left of a reading once the path of its coupling is taken off, in mm, with its own variance (a wild
// reading's is large), and who read it, with what, on which day: labels, equal or not.
struct HandReading
{
    double left = 0;
    double variance = 1; // up to a factor that all readings share
    std::size_t coupling = 0;
    int person = 0;
    int gauge = 0;
    int day = 0;
    // Shapes of the coupling's own changes at this reading: their sizes are estimated again beside the
    // offsets, so that neither takes from the other unseen.
    std::array<double, 2> shape{};
};

// How far one person's readings, or those with one gauge, lie from all, in mm.
struct HandOffset
{
    int label = 0;
    int readings = 0;
    double estimate = 0;
    double standardError = 0;
    double degreesOfFreedom = 0;
    Interval interval; // 95 %

    bool isNamed() const { return interval.lower > 0 || interval.upper < 0; }
};

struct HandFactor
{
    OffsetsState state = OffsetsState::OneLevel;
    std::vector<HandOffset> levels; // when Estimated, by label
    // Levels with readings enough that cannot be told from the other factor, by label. The others are
    // compared without them.
    std::vector<int> hidden;
    std::vector<OffsetFactor> hiddenBehind; // when it cannot be told apart

    double offsetOf(int label) const; // 0 where it is not told
};

struct HandOffsets
{
    HandFactor persons;
    HandFactor gauges;
    double dayDeviation = 0; // tau, of the random days, mm
};

// left = coupling's level and shapes + person + gauge + day + e, days random (docs/method.md J): REML and
// Satterthwaite's degrees of freedom (mixed_fit.h). Each factor's offsets, weighted by their readings, add up
// to 0 over the levels that are compared: those of at least kReadingsForOffset readings that are joined to
// each other, through readings that share a person or a gauge, where most readings are. Readings of other
// levels are left out. Empty when a reading is not finite; nothing is told apart without readings, and where
// the fit fails.
std::optional<HandOffsets> handOffsetsOf(std::span<const HandReading> readings);

} // namespace rig::numbers
