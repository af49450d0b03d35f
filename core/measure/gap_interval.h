#pragma once

#include "core/measure/gap.h"

#include <compare>
#include <optional>

namespace rig {

// What a feeler gauge really says: the gap lies between the two. `enters` goes in freely, `refuses` does not.
// No leaf enters: enters is 0. The thickest leaf is still loose: refuses is empty, the gap has no upper
// bound.
struct GapInterval
{
    Gap enters;
    std::optional<Gap> refuses;

    constexpr bool operator==(const GapInterval&) const = default;
    constexpr auto operator<=>(const GapInterval&) const = default;

    constexpr bool isOpen() const { return !refuses.has_value(); }
};

// In mm; of an open one nobody knows it.
constexpr std::optional<double> middleOf(const GapInterval& interval)
{
    if (interval.isOpen())
        return std::nullopt;
    return 0.5 * (interval.enters.inMillimetres() + interval.refuses->inMillimetres());
}

enum class IntervalProblem { None, Negative, Reversed, TooWide };

// Reversed also when both are the same: a leaf cannot both enter and refuse.
constexpr IntervalProblem problemOf(const GapInterval& interval)
{
    if (interval.enters < Gap{} || (interval.refuses && *interval.refuses < Gap{}))
        return IntervalProblem::Negative;
    if (interval.enters > kWidestGap || (interval.refuses && *interval.refuses > kWidestGap))
        return IntervalProblem::TooWide;
    if (interval.refuses && *interval.refuses <= interval.enters)
        return IntervalProblem::Reversed;
    return IntervalProblem::None;
}

} // namespace rig
