#pragma once

#include "core/numbers/interval.h"

#include <optional>
#include <span>

namespace rig::numbers {

// Whether y runs with t, by signs and medians only: no normal shape is leaned on, and a wild value counts as
// one of many (docs/method.md D).
struct RankTrend
{
    int readings = 0;
    // Mann-Kendall: pairs that rise less pairs that fall, its variance where there is no trend, with ties in
    // t and in y (Kendall, Rank Correlation Methods, from memory).
    double s = 0;
    double varianceOfS = 0;
    std::optional<double> tauB; // empty when all y are equal
    double p = 1;               // two-sided
    bool isExactP = false; // from the distribution of inversions; else normal with a continuity correction
    // Theil-Sen: median of the slopes of all pairs with different t, per unit of t; intercept at t = 0
    // (Sen 1968, JASA 63, from memory).
    double slope = 0;
    double intercept = 0;
    Interval slope95; // two of the sorted slopes, at Sen's ranks rounded to whole ones
};

// The order of the pairs does not matter. n log n to n^2 steps and n^2 / 2 slopes: meant for some thousands.
// Empty with fewer than 3 pairs, unequal counts, a figure that is not finite or too large for a slope, or all
// t equal.
std::optional<RankTrend> rankTrendOf(std::span<const double> t, std::span<const double> y);

// The same on the middles of interval readings; those open on a side have none and are left out.
std::optional<RankTrend> rankTrendOf(std::span<const double> t, std::span<const Interval> readings);

} // namespace rig::numbers
