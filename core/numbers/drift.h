#pragma once

#include "core/numbers/interval_posterior.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

inline constexpr double kEwmaWeight = 0.2;     // of the newest score
inline constexpr double kCusumReference = 0.5; // k, in units of the score

struct ChartLimits
{
    double ewma = 0;  // L: in standard deviations of the EWMA in the long run, sqrt(weight / (2 - weight))
    double cusum = 0; // h: in units of the score

    double ewmaLimit(double weight = kEwmaWeight) const; // what |EWMA| is held against
};

inline constexpr int kReadingsForDrift = 5;

// While the reference still grows: with the mean known, 500 readings on average to a false alarm on either
// chart (Lucas & Saccucci 1990, Technometrics 32; the run-length integral equations of run_length.h).
inline constexpr ChartLimits kSequentialLimits{2.962, 5.07};

// For scores against a frozen baseline of so many readings, wider because its mean is not known exactly: so
// that 17.5 % of steady couplings have a false alarm on either chart within 100 readings (own simulation,
// 400 000 exact baselines for each row; repeated by tests/property; docs/method.md C). Empty below
// kReadingsForDrift.
std::optional<ChartLimits> chartLimitsFor(int readings);

struct ChartSettings
{
    double ewmaWeight = kEwmaWeight;         // above 0, at most 1
    double cusumReference = kCusumReference; // not negative
};

// EWMA and two-sided CUSUM of scores that are standard normal while nothing drifts, both beginning at 0. The
// EWMA raises the flag of a drift; the CUSUM only dates it (docs/method.md C: alarming on both raises the
// false alarms). All places count from 0.
struct Chart
{
    std::vector<double> ewma;
    std::vector<double> cusumUp;
    std::vector<double> cusumDown;          // not negative: grows as scores fall
    std::optional<std::size_t> ewmaSignal;  // first |EWMA| beyond its limit
    std::optional<std::size_t> cusumSignal; // first CUSUM beyond its limit, either side
    // The first score after the CUSUM's signalling side was last 0.
    std::optional<std::size_t> cusumOnset;
    // The date of the EWMA's flag, whether or not the CUSUM signals: the first score after the CUSUM of the
    // EWMA's side was last 0, seen from the flag.
    std::optional<std::size_t> onset;
};

// Scores are finite.
Chart chartOf(std::span<const double> scores, const ChartLimits& limits, const ChartSettings& settings = {});

struct DriftCharts
{
    ChartLimits limits;
    std::vector<double> scores;
    Chart chart;
};

// Later readings scored against a frozen baseline. Empty when the baseline has too few readings, or a reading
// is not a number or reversed.
std::optional<DriftCharts> driftOf(const IntervalPosterior& baseline, std::span<const Interval> later);

// While a baseline is being built: each reading is scored against all before it, `first` and those of
// `later`, with the range of sigma of `first` (for exact readings and a wide range the Q statistics of
// Quesenberry 1991, J. Qual. Technol. 23, from memory). Not for use after freezing, since the reference
// learns the drift. Empty when `first` has fewer than two readings or no posterior, or a later reading is not
// a number or reversed.
std::optional<DriftCharts> sequentialDriftOf(std::span<const Interval> first, std::span<const Interval> later,
                                       const SigmaPrior& prior = {});

} // namespace rig::numbers
