#pragma once

#include "core/numbers/change_point.h"
#include "core/numbers/drift.h"
#include "core/numbers/interval_trend.h"
#include "core/review/later_readings.h"
#include "core/review/review_period.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace rig {

// Drift is told per so many riggings.
inline constexpr double kDriftUnit = 100;
// The scatter now is that of the last readings, this many at most and that many at least.
inline constexpr std::size_t kReadingsForScatterNow = 10;
// Grown (or shrunk) is said from this chance on that it really is larger (smaller), and this ratio: of steady
// couplings up to 6 % are said to have grown, of doubled scatters about two in three (`rigband-bench
// calibration`; docs/method.md L).
inline constexpr double kChanceForScatter = 0.95;
inline constexpr double kRatioForScatter = 1.5;
// A step is said up to this p, from the latest so many readings.
inline constexpr double kStepP = 0.01;
inline constexpr std::size_t kReadingsForStep = 200;

// Drift against the frozen baseline: the chart's flag as it stands at the end (docs/method.md C).
struct DriftFlag
{
    std::size_t signal = 0; // index of the reading that raised it
    std::size_t onset = 0;  // and of the first of the drift, dated by the CUSUM
    bool isUp = true;       // the gap grows
    bool isRaised = true;   // false: it was raised within the period and has fallen since
};

struct ScatterNow
{
    int readings = 0;
    double now = 0;          // mm, posterior mean of sigma
    double baseline = 0;     // mm
    double chanceLarger = 0; // that the scatter now is larger than the baseline's
    std::size_t from = 0;    // index of the first of those readings

    bool hasGrown() const;
    bool hasShrunk() const;
};

// What is to be expected at the annual when the line goes on as it does.
struct DriftForecast
{
    double riggings = 0; // still to come by then, at the pace of the last year; at least 1
    double rigging = 0;  // the number that the annual then has
    Day day{};
    double chanceOutside = 0;     // that a reading then lies outside the outer band
    double chanceLineOutside = 0; // that the mean itself does
};

// How the readings of one fitting moved against its band. Indexes count through `readings`, which leaves out
// those in doubt; without a band there is nothing but them.
struct FittingMovement
{
    std::vector<LaterReading> readings; // oldest first, one a rigging
    numbers::ChartLimits limits;
    std::optional<numbers::Chart> chart;    // of the scores as they are
    std::optional<numbers::Chart> ownChart; // of the scores less what all couplings of the day shared
    std::optional<DriftFlag> drift;         // from ownChart
    bool sharedOnly = false;  // the chart of the scores as they are is beyond its limit, its own is not
    std::size_t lineFrom = 0; // index: the onset of the drift, or the period's first
    std::optional<numbers::IntervalTrend> line; // over rigging numbers, slope per kDriftUnit
    std::optional<DriftForecast> forecast;
    std::optional<numbers::ChangePoint> change; // over the period's latest kReadingsForStep readings
    std::size_t changeFrom = 0;                 // index of the first of those
    std::optional<ScatterNow> scatter;

    bool hasStep() const; // likelier than kStepP, on either side of it
    // Rigging number of the first reading after the step; empty without a change point.
    std::optional<double> stepAt() const;
};

// `all` are the coupling's readings up to the end of the period. `riggingsToCome` until the period's annual.
// Empty when the coupling has no fitting.
std::optional<FittingMovement> movementOf(const CouplingReadings& all, const ReviewPeriod& period,
                                          double riggingsToCome);

// Riggings still to come until a day at the pace of the year before `today`; of what there is of it when the
// file is younger, but not less than 30 days.
double riggingsToCome(const RiggingNumbers& numbers, Day today, Day until);

} // namespace rig
