#pragma once

#include "core/numbers/interval.h"

#include <optional>
#include <span>

namespace rig::numbers {

// The same interval read `count` times at the place x.
struct RegressionReading
{
    double x = 0;
    Interval interval;
    int count = 1;
};

// What the mean is: the same everywhere, or level + slope x.
enum class Predictor { Level, Line };

// Of the estimates of level and slope; what concerns the slope is 0 for Predictor::Level.
struct LineCovariance
{
    double level = 0; // variance
    double levelAndSlope = 0;
    double slope = 0; // variance
};

struct IntervalFit
{
    double level = 0; // at x = 0
    double slope = 0; // per unit of x
    double sigma = 0;
    bool isFloored = false; // sigma is held at the floor: the likelihood would still rise below it
    LineCovariance covariance;
    double logLikelihood = 0;
};

// Maximum likelihood of a normal variable whose mean is the predictor and whose sigma is constant, from
// interval readings: each contributes the probability of lying in it, an exact value its density
// (docs/method.md D). Newton's method in level/sigma, slope/sigma and 1/sigma, in which the log-likelihood is
// concave (Burridge 1981, JRSS B 43; Pratt 1981, JASA 76; both from memory), so the answer does not depend on
// `start`; a neighbour's fit there only saves steps. On exact readings it is ordinary least squares with
// sigma^2 = sum of squares / n. Lengths in any unit, sigmaFloor in the same.
//
// Readings open both ways are dropped. Empty when a bound or an x is no number, bounds are reversed, the
// figures are too large or too small for doubles, sigmaFloor is negative, or there is no maximum: nothing
// holds the level or the slope from below or from above, sigma grows without end, or, with a floor of 0, goes
// to 0.
std::optional<IntervalFit> intervalFitOf(std::span<const RegressionReading> readings, Predictor predictor,
                                         double sigmaFloor, const std::optional<IntervalFit>& start = {});

} // namespace rig::numbers
