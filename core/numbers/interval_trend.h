#pragma once

#include "core/numbers/interval_regression.h"

#include <optional>
#include <span>

namespace rig::numbers {

inline constexpr double kDaysPerYear = 365.25;
inline constexpr double kTenYearsInDays = 3652.5; // no line is followed further
inline constexpr int kReadingsForTrend = 6;
inline constexpr int kDaysForTrend = 4;

// The line at one day, and where the mean and the next reading may lie.
struct TrendPrediction
{
    double fit = 0;
    double meanError = 0;    // standard error of the line
    double readingError = 0; // of a new reading about the line
    Interval mean95;
    Interval reading95;
};

// What may reach a limit.
enum class TrendEdge { Line, Reading95, Mean95 };

// A straight line through interval readings over time with constant scatter, by maximum likelihood
// (docs/method.md D). n/(n-2) on sigma^2 and on the covariance and the quantiles of t with n-2 degrees of
// freedom make it ordinary least squares, with its intervals, on exact readings.
// Days stands for any count that runs on, rig cycles too; slopeUnit is how many of them the slope is for.
struct IntervalTrend
{
    int readings = 0;      // those open both ways are not counted
    int differentDays = 0; // on which they were taken
    double meanDay = 0;
    double lastDay = 0;
    double slopeUnit = kDaysPerYear;

    double level = 0; // of the line at meanDay
    double slope = 0; // per slopeUnit
    double sigmaMl = 0;
    double sigma = 0; // adjusted: sigmaMl sqrt(n / (n - 2))
    bool isFloored = false;
    LineCovariance covariance; // of level and slope, not adjusted
    double logLikelihood = 0;
    double t95 = 0; // half the width of every 95 % interval, in standard errors
    Interval slope95;
    double slopeP = 1; // two-sided, of a slope this far from 0 where there is none

    // Enough readings on enough days to be shown to anyone.
    bool isShown() const { return readings >= kReadingsForTrend && differentDays >= kDaysForTrend; }

    // Empty so far away that doubles cannot follow.
    std::optional<TrendPrediction> predictionAt(double day) const;

    // The chance that a reading on that day, or the line itself, lies outside the band; lower <= upper.
    std::optional<double> chanceReadingOutside(const Interval& band, double day) const;
    std::optional<double> chanceLineOutside(const Interval& band, double day) const;

    // The first day, from the last reading's on, on which the edge is at or beyond a limit; lower <= upper,
    // an infinite limit is never reached. Scanned in whole days and refined by bisection. Empty when it is
    // not within `horizon` days, at most a million.
    std::optional<double> firstDayReaching(const Interval& limits, TrendEdge edge,
                                           double horizon = kTenYearsInDays) const;
};

// Lengths in mm: sigma does not go below resolutionFloor of the readings. A day for each reading; their order
// does not matter. Empty when the readings have no status Ok (interval_set.h), fewer than 3 are left, the
// days are not as many as the readings or not finite, or there is no such line (interval_regression.h): all
// on one day, for one.
std::optional<IntervalTrend> intervalTrendOf(std::span<const double> days, std::span<const Interval> readings,
                                             double slopeUnit = kDaysPerYear);

} // namespace rig::numbers
