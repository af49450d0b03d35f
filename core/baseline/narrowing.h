#pragma once

#include "core/measure/gap_interval.h"

#include <optional>
#include <span>

namespace rig {

// How wide the outer band of these readings is, and how wide it would be with one more. Millimetres, as
// shown: a lower edge below 0 counts as 0.
struct Narrowing
{
    double widthNow = 0;
    double widthWithOneMore = 0;
};

// Each reading so far is added once more in turn, and the widths that Baseline::from() then gives are
// averaged. So it holds for a further reading like those so far; one unlike them widens the band. Empty while
// there is no band.
std::optional<Narrowing> narrowingOf(std::span<const GapInterval> readings);

} // namespace rig
