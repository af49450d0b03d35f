#pragma once

#include "core/numbers/interval.h"

#include <cstddef>
#include <optional>
#include <span>

namespace rig::numbers {

inline constexpr std::size_t kMostReadingsNow = 10;
inline constexpr std::size_t kLeastReadingsNow = 5;
inline constexpr double kScatterGrown = 1.5;
inline constexpr double kScatterFalsely = 0.05; // an airframe, in a period

// The scatter of the last readings about a path beside that of all before them (docs/method.md M4).
struct ScatterChange
{
    std::size_t readingsNow = 0;
    double now = 0; // mm; medians of what the readings leave likely
    double before = 0;
    double chanceGrown = 0;

    double ratio() const { return now / before; }
    // Said of at most one airframe in twenty where nothing grew, however many couplings it has.
    bool hasGrown(int couplings) const;
    bool hasShrunk(int couplings) const; // likewise
};

// `left` are readings less the path, oldest first, those of the baseline among them. ln sigma uniform above
// the floor, the path taken as known, one reading in a hundred wild (path_fit.h); the last ten against the
// others. Without wild readings, exact, it is one minus the one-sided p of the F test of two variances with
// known means (Box & Tiao, Bayesian Inference in Statistical Analysis, 2.6, from memory). Empty unless there
// are kLeastReadingsNow of both, `riggings` being how many of the last may be taken.
std::optional<ScatterChange> scatterChangeOf(std::span<const Interval> left, std::size_t riggings,
                                             double sigmaFloor);

} // namespace rig::numbers
