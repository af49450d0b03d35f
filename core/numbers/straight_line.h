#pragma once

#include <optional>
#include <span>

namespace rig::numbers {

// y = intercept + slope x by ordinary least squares, with the standard errors that hold when the deviations
// of y are independent and of one size. Units are those of x and y.
struct StraightLine
{
    bool throughOrigin = false;
    int n = 0;
    int residualDf = 0; // n - 2; n - 1 through the origin
    double intercept = 0;
    double slope = 0;
    double interceptError = 0;
    double slopeError = 0;
    double residualSd = 0;
    // Share of the sum of squares of y that the line explains: about the mean, or about zero for a line
    // through the origin. Empty when that sum is zero.
    std::optional<double> rSquared;
    // Mean square of the line over mean square of the residuals. Empty when no residual is left.
    std::optional<double> F;
    // The point about which the line turns: the means; (0, 0) through the origin.
    double centreX = 0;
    double centreY = 0;
};

// Empty for lengths that differ, fewer than three points (two through the origin), x without spread (all zero
// through the origin), a value that is not finite, or a figure beyond a double's range. Formulas: Draper &
// Smith, Applied Regression Analysis, ch. 1 (from memory); through the origin with uncentred totals as in the
// NIST Statistical Reference Datasets, NoInt1. Held to their certified values.
std::optional<StraightLine> straightLine(std::span<const double> x, std::span<const double> y,
                                         bool throughOrigin = false);

// The line at one x: its height, the standard error of that, and of one new y there. Half an interval is
// Student's quantile of residualDf times one of these (NIST/SEMATECH e-Handbook 4.5.1.2).
struct LinePoint
{
    double fit = 0;
    double fitError = 0;
    double predictionError = 0;
};

// Empty when x is not finite or a figure leaves a double's range.
std::optional<LinePoint> pointOn(const StraightLine& line, double x);

} // namespace rig::numbers
