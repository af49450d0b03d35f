#pragma once

#include "core/numbers/interval_posterior.h"

#include <optional>
#include <span>

namespace rig::numbers {

// How well one reading tells two states apart, each known by its own posterior (docs/method.md B).

// The true values that a reading with these steps would not show as outside the band. A step that enters and
// the next that refuses make a reading; it is outside only when wholly beyond, so straddling counts as
// unseen. Each step is the range in which its true size lies (equal bounds: known exactly), rising; no steps:
// read continuously, the band itself.
Interval unseenBetween(const Interval& band, std::span<const Interval> steps);

// log10 of P(reading | other) / P(reading | first), both predictive; for an exact reading the ratio of
// densities (Aitken & Taroni, Statistics and the Evaluation of Evidence, from memory). May be infinite; empty
// when neither can make the reading.
std::optional<double> logLikelihoodRatio(const Interval& reading, const IntervalPosterior& first,
                                         const IntervalPosterior& other);

// Beyond this a ratio is model, not evidence: with tens of readings the far tails are not known.
inline constexpr double kLogRatioCap = 3;

// A single leaf as the dividing line, `other` on its far side.
struct DividingLeaf
{
    double size = 0;
    double falseAlarm = 0; // share of `first` on the wrong side
    double miss = 0;       // share of `other` on the wrong side
};

// True when the median of `other` is the larger.
bool isLarger(const IntervalPosterior& first, const IntervalPosterior& other);

// The size with the smallest sum of both errors, the first of equals; empty without sizes.
std::optional<DividingLeaf> bestDividingLeaf(const IntervalPosterior& first, const IntervalPosterior& other,
                                             std::span<const double> sizes);

} // namespace rig::numbers
