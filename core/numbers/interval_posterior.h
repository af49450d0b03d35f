#pragma once

#include "core/numbers/interval.h"
#include "core/numbers/interval_set.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// What is held about sigma before any reading: ln sigma on [ln sMin, ln sMax] with density proportional to
// exp(-nu0 lambda - nu0 s0^2 exp(-2 lambda) / 2), a truncated scaled inverse chi-square on sigma^2. nu0 = 0
// is uniform in ln sigma. Bounds left empty follow from the readings. Needs nu0 >= 0, s0 > 0, 0 < sMin <
// sMax.
struct SigmaPrior
{
    double nu0 = 0;
    double s0 = 0.03;
    std::optional<double> sMin; // empty: resolutionFloor of the readings
    std::optional<double> sMax; // empty: max(0.3, 10 sMin), mm
};

// The range of sigma for these readings; empty when the prior makes none: all finite, nu0 >= 0, s0 > 0, 0 <
// sMin < sMax.
std::optional<Interval> sigmaRangeOf(const IntervalSet& readings, const SigmaPrior& prior);

// What independent interval readings say about mu and sigma of N(mu, sigma^2), flat prior on mu, and about
// the next value. Weighted points in (mu, sigma), found by quadrature (docs/method.md A2); no random numbers.
// Lengths in mm.
class IntervalPosterior
{
public:
    // Empty unless the set's status is Ok and the prior has a range of sigma.
    static std::optional<IntervalPosterior> of(const IntervalSet& readings, const SigmaPrior& prior = {});

    int readings() const { return m_readings; }
    double medianWidth() const { return m_medianWidth; }
    double sMin() const { return m_sMin; }
    double sMax() const { return m_sMax; }
    double meanMu() const { return m_meanMu; }
    double sdMu() const { return m_sdMu; }
    double meanSigma() const { return m_meanSigma; }
    // ln of the integral of likelihood times prior over mu (per mm) and ln sigma.
    double logEvidence() const { return m_logEvidence; }
    // Wilder than can be followed: the posterior leans on the upper end of the range of sigma.
    bool sigmaAtCap() const { return m_meanSigma > 0.5 * m_sMax; }

    // The next value X. `extraVariance` (mm^2) is added to sigma^2, for a reading with another gauge. x may
    // be infinite. Each tail is summed directly, never as one minus the other.
    double below(double x, double extraVariance = 0) const; // P(X <= x)
    double above(double x, double extraVariance = 0) const; // P(X >= x)
    double between(const Interval& interval, double extraVariance = 0) const;
    double density(double x, double extraVariance = 0) const;
    // x with below(x) = tail, or above(x) = tail; 0 < tail < 1.
    double lowerQuantile(double tail, double extraVariance = 0) const;
    double upperQuantile(double tail, double extraVariance = 0) const;

private:
    // Points that share a sigma: `count` of them from `first`.
    struct Slice
    {
        double sigma = 0;
        std::size_t first = 0;
        std::size_t count = 0;
    };
    struct TailAndDensity
    {
        double tail = 0;
        double density = 0;
    };

    IntervalPosterior() = default;
    void integrate(const IntervalSet& readings, const SigmaPrior& prior);
    void normalise();
    double tail(double x, double direction, double extraVariance) const;
    TailAndDensity tailAndDensity(double x, double direction, double extraVariance) const;
    double quantile(double tail, double direction, double extraVariance) const;

    int m_readings = 0;
    double m_medianWidth = 0;
    double m_sMin = 0;
    double m_sMax = 0;
    double m_meanMu = 0;
    double m_sdMu = 0;
    double m_meanSigma = 0;
    double m_logEvidence = 0;
    std::vector<Slice> m_slices;
    std::vector<double> m_mu;
    std::vector<double> m_weight;
};

} // namespace rig::numbers
