#pragma once

#include "core/numbers/interval_set.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace rig::numbers {

// What is held about sigma before any reading: ln sigma on [ln sMin, ln sMax] with density proportional to
// exp(-nu0 lambda - nu0 s0^2 exp(-2 lambda) / 2), a truncated scaled inverse chi-square on sigma^2. nu0 = 0
// is uniform in ln sigma. Bounds left empty follow from the readings.
struct SigmaPrior
{
    double nu0 = 0;
    double s0 = 0.03;
    std::optional<double> sMin; // empty: resolutionFloor of the readings
    std::optional<double> sMax; // empty: max(0.3, 10 sMin), mm
};

// ln of that density at lambda = ln sigma, less a constant.
double logPriorShape(double lambda, const SigmaPrior& prior);

// The range of sigma for these readings; empty when the prior makes none. It needs finite figures, nu0 >= 0,
// s0 > 0 and 0 < sMin < sMax.
std::optional<Interval> sigmaRangeOf(const IntervalSet& readings, const SigmaPrior& prior);

// Points that share a sigma: `count` of them from `first`.
struct SigmaSlice
{
    double sigma = 0;
    std::size_t first = 0;
    std::size_t count = 0;
};

// Weighted points in (mu, sigma) that stand for a posterior; the weights add up to 1.
struct PosteriorGrid
{
    std::vector<SigmaSlice> slices;
    std::vector<double> mu;
    std::vector<double> weight;
    double logEvidence = 0; // ln of the integral of likelihood times prior over mu (per mm) and ln sigma
};

// Quadrature of docs/method.md A2. The set's status is Ok and `range` is sigmaRangeOf the same readings and
// prior.
PosteriorGrid posteriorGridOf(const IntervalSet& readings, const SigmaPrior& prior, const Interval& range);

} // namespace rig::numbers
