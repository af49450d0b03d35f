#include "core/numbers/interval_posterior.h"

#include "core/numbers/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rig::numbers {
namespace {

constexpr double kQuantileAccuracy = 1e-8; // mm
constexpr int kMostQuantileSteps = 50;
constexpr double kEpsilon = std::numeric_limits<double>::epsilon();

} // namespace

std::optional<IntervalPosterior> IntervalPosterior::of(const IntervalSet& readings, const SigmaPrior& prior)
{
    const std::optional<Interval> range = sigmaRangeOf(readings, prior);
    if (readings.status != ReadingsStatus::Ok || !range)
        return std::nullopt;
    const IntervalPosterior posterior{readings, prior, *range};
    const bool isUsable = std::isfinite(posterior.m_meanMu) && std::isfinite(posterior.m_sdMu) &&
                          std::isfinite(posterior.logEvidence());
    return isUsable ? std::optional{posterior} : std::nullopt;
}

IntervalPosterior::IntervalPosterior(const IntervalSet& readings, const SigmaPrior& prior,
                                     const Interval& range)
    : m_readings{readings.readings},
      m_medianWidth{readings.medianWidth}, m_range{range}, m_grid{posteriorGridOf(readings, prior, range)}
{
    for (std::size_t i = 0; i < m_grid.mu.size(); ++i)
        m_meanMu += m_grid.weight[i] * m_grid.mu[i];
    double varianceOfMu = 0;
    for (const SigmaSlice& slice : m_grid.slices) {
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i) {
            const double weight = m_grid.weight[i];
            const double off = m_grid.mu[i] - m_meanMu;
            varianceOfMu += weight * off * off;
            m_meanSigma += weight * slice.sigma;
            m_meanVariance += weight * slice.sigma * slice.sigma;
        }
    }
    m_sdMu = std::sqrt(varianceOfMu);
}

double IntervalPosterior::below(double x, double extraVariance) const
{
    return tail(x, -1, extraVariance);
}

double IntervalPosterior::above(double x, double extraVariance) const
{
    return tail(x, +1, extraVariance);
}

double IntervalPosterior::between(const Interval& interval, double extraVariance) const
{
    // From whichever tail is the smaller, so that little is lost in the subtraction.
    const double belowUpper = below(interval.upper, extraVariance);
    if (belowUpper < 0.5)
        return std::max(0.0, belowUpper - below(interval.lower, extraVariance));
    return std::max(0.0, above(interval.lower, extraVariance) - above(interval.upper, extraVariance));
}

double IntervalPosterior::density(double x, double extraVariance) const
{
    return std::isfinite(x) ? tailAndDensity(x, +1, extraVariance).density : 0;
}

double IntervalPosterior::lowerQuantile(double tail, double extraVariance) const
{
    return quantile(tail, -1, extraVariance);
}

double IntervalPosterior::upperQuantile(double tail, double extraVariance) const
{
    return quantile(tail, +1, extraVariance);
}

// P(X >= x) for direction +1, P(X <= x) for -1.
double IntervalPosterior::tail(double x, double direction, double extraVariance) const
{
    if (std::isinf(x))
        return (x > 0) == (direction > 0) ? 0.0 : 1.0;
    double sum = 0;
    for (const SigmaSlice& slice : m_grid.slices) {
        const double scale = direction * kSqrtHalf / std::sqrt(slice.sigma * slice.sigma + extraVariance);
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i)
            sum += m_grid.weight[i] * std::erfc((x - m_grid.mu[i]) * scale);
    }
    return std::min(1.0, 0.5 * sum);
}

IntervalPosterior::TailAndDensity IntervalPosterior::tailAndDensity(double x, double direction,
                                                                    double extraVariance) const
{
    TailAndDensity result;
    for (const SigmaSlice& slice : m_grid.slices) {
        const double spread = std::sqrt(slice.sigma * slice.sigma + extraVariance);
        const double scale = direction * kSqrtHalf / spread;
        double tails = 0;
        double densities = 0;
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i) {
            const double z = (x - m_grid.mu[i]) * scale;
            tails += m_grid.weight[i] * std::erfc(z);
            densities += m_grid.weight[i] * std::exp(-z * z);
        }
        result.tail += 0.5 * tails;
        result.density += densities * std::exp(-kLnSqrtTwoPi) / spread;
    }
    return result;
}

// Safeguarded Newton on ln(tail / wanted); the tail falls as x goes in `direction`.
double IntervalPosterior::quantile(double wanted, double direction, double extraVariance) const
{
    const double sd = std::sqrt(m_sdMu * m_sdMu + m_meanVariance + extraVariance);
    // `inward` has a larger tail than wanted, `outward` a smaller one, once they are known.
    double inward = -direction * std::numeric_limits<double>::infinity();
    double outward = -inward;
    double x = m_meanMu - direction * 0.87 * normalQuantile(wanted) * sd; // 1.7 sd for 0.025
    for (int i = 0; i < kMostQuantileSteps; ++i) {
        const auto [tail, density] = tailAndDensity(x, direction, extraVariance);
        const double excess = std::log(tail / wanted);
        (excess > 0 ? inward : outward) = x;
        double change = direction * excess * tail / density;
        if (std::abs(change) < std::max(kQuantileAccuracy, 4 * kEpsilon * std::abs(x)))
            return x + change;
        if (!(std::abs(change) <= 3 * sd))
            change = direction * (excess > 0 ? 3 : -3) * sd;
        double next = x + change;
        if (direction * (next - inward) <= 0 || direction * (next - outward) >= 0)
            next = 0.5 * (inward + outward);
        x = next;
    }
    return x;
}

} // namespace rig::numbers
