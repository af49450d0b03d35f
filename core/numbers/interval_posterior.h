#pragma once

#include "core/numbers/interval_set.h"
#include "core/numbers/posterior_grid.h"

#include <optional>

namespace rig::numbers {

// What independent interval readings say about mu and sigma of N(mu, sigma^2), flat prior on mu, and about
// the next value. Weighted points in (mu, sigma), found by quadrature (docs/method.md A2); no random numbers.
// Lengths in mm.
class IntervalPosterior
{
public:
    // Empty unless the set's status is Ok, the prior has a range of sigma, and both are such that doubles can
    // follow.
    static std::optional<IntervalPosterior> of(const IntervalSet& readings, const SigmaPrior& prior = {});

    int readings() const { return m_readings; }
    double medianWidth() const { return m_medianWidth; }
    double sMin() const { return m_range.lower; }
    double sMax() const { return m_range.upper; }
    double meanMu() const { return m_meanMu; }
    double sdMu() const { return m_sdMu; }
    double meanSigma() const { return m_meanSigma; }
    // ln of the integral of likelihood times prior over mu (per mm) and ln sigma.
    double logEvidence() const { return m_grid.logEvidence; }
    // Wilder than can be followed: the posterior leans on the upper end of the range of sigma.
    bool sigmaAtCap() const { return m_meanSigma > 0.5 * m_range.upper; }

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
    struct TailAndDensity
    {
        double tail = 0;
        double density = 0;
    };

    IntervalPosterior(const IntervalSet& readings, const SigmaPrior& prior, const Interval& range);
    double tail(double x, double direction, double extraVariance) const;
    TailAndDensity tailAndDensity(double x, double direction, double extraVariance) const;
    double quantile(double wanted, double direction, double extraVariance) const;

    int m_readings = 0;
    double m_medianWidth = 0;
    Interval m_range; // of sigma
    PosteriorGrid m_grid;
    double m_meanMu = 0;
    double m_sdMu = 0;
    double m_meanSigma = 0;
    double m_meanVariance = 0; // of sigma^2
};

} // namespace rig::numbers
