#pragma once

#include "core/numbers/interval.h"

#include <optional>

namespace rig::numbers {

// Two readings whose errors have the standard deviation s differ by more than this in about 5 % of pairs:
// 1.96 sqrt(2) s, rounded as in ISO 5725-6 (from memory).
inline constexpr double kDifferenceFactor = 2.8;

enum class PairVerdict {
    Agree,      // however the values lie in their intervals, they differ by no more than the limit
    Disagree,   // however they lie, they differ by more
    Unresolved, // it depends on where they lie
};

struct ReadingPair
{
    double smallestDifference = 0;
    double largestDifference = 0; // infinite when a bound that counts is open
    PairVerdict verdict = PairVerdict::Unresolved;
};

// How far two values known by intervals can lie apart, against a limit in the same unit: 2.8 s_r for two
// readings of one person, 2.8 s_R for two persons (docs/method.md F). Bounds may be open. Empty for NaN,
// reversed bounds, an interval beyond all numbers, a difference beyond a double's range, or a limit that is
// negative or not finite.
std::optional<ReadingPair> readingPair(const Interval& first, const Interval& second, double limit);

} // namespace rig::numbers
