#include "core/numbers/interval_posterior.h"

#include "core/numbers/distributions.h"
#include "core/numbers/interval_likelihood.h"
#include "core/numbers/quadrature.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <ranges>

namespace rig::numbers {
namespace {

// The figures of docs/method.md A2, chosen there by measurement.
constexpr double kMuDrop = 38;    // ln units below the mode where the range in mu ends
constexpr double kSigmaDrop = 36; // the same for ln sigma, on the coarse scan
constexpr double kNodeDrop = 30;  // points lighter than exp(-30) of the heaviest are left out
constexpr int kScanCells = 16;
constexpr int kFewestCells = 32;
constexpr int kMostCells = 400;
constexpr double kQuantileAccuracy = 1e-8; // mm
constexpr double kSqrtHalf = 1.0 / std::numbers::sqrt2;

double largestOf(std::span<const double> values)
{
    return *std::ranges::max_element(values);
}

// ln sum exp(values), without overflow.
double logSumExp(std::span<const double> values)
{
    const double largest = largestOf(values);
    if (!std::isfinite(largest))
        return largest;
    double sum = 0;
    for (const double value : values)
        sum += std::exp(value - largest);
    return largest + std::log(sum);
}

double logPriorShape(double lambda, const SigmaPrior& prior)
{
    if (prior.nu0 <= 0)
        return 0;
    return -prior.nu0 * lambda - 0.5 * prior.nu0 * prior.s0 * prior.s0 * std::exp(-2 * lambda);
}

// ln of the integral of the prior's shape over its range.
double logPriorTotal(double from, double to, const SigmaPrior& prior)
{
    if (prior.nu0 <= 0)
        return std::log(to - from);
    const int count = std::max(64, static_cast<int>(std::ceil(16 * (to - from))));
    std::vector<double> terms;
    for (const auto& [lambda, weight] : gaussLegendre(count, from, to))
        terms.push_back(std::log(weight) + logPriorShape(lambda, prior));
    return logSumExp(terms);
}

// The likelihood along mu for one sigma: ln heights at the middles of equal cells.
struct MuCells
{
    MuRange range;
    double first = 0;
    double step = 0;
    std::vector<double> logHeights;

    double at(std::size_t i) const { return first + static_cast<double>(i) * step; }
};

// `scaled` is the neighbouring sigma's range, its distances already scaled to this one.
MuCells muCellsAt(const IntervalLikelihood& likelihood, double sigma, const MuRange& scaled, int cells)
{
    MuCells result;
    result.range = likelihood.rangeAt(sigma, kMuDrop, scaled);
    const double length = result.range.below + result.range.above;
    if (cells == 0) {
        const double wanted = std::min(std::ceil(length / sigma), static_cast<double>(kMostCells));
        cells = std::max(kFewestCells, static_cast<int>(wanted));
    }
    result.step = length / cells;
    result.first = result.range.mode - result.range.below + 0.5 * result.step;
    result.logHeights.resize(static_cast<std::size_t>(cells));
    for (std::size_t i = 0; i < result.logHeights.size(); ++i)
        result.logHeights[i] = likelihood.logAt(result.at(i), sigma);
    return result;
}

// Walks sigma from large to small, each search beginning from its neighbour's range.
class MuWalk
{
public:
    explicit MuWalk(const IntervalLikelihood& likelihood) : m_likelihood{likelihood}
    {
        m_range.mode = likelihood.centre();
    }

    // cells = 0: as many as the length asks for.
    MuCells at(double lambda, int cells)
    {
        const double sigma = std::exp(lambda);
        const double scale = m_sigma > 0 ? sigma / m_sigma : 0;
        MuCells found = muCellsAt(m_likelihood, sigma,
                                  {m_range.mode, m_range.below * scale, m_range.above * scale}, cells);
        m_range = found.range;
        m_sigma = sigma;
        return found;
    }

private:
    const IntervalLikelihood& m_likelihood;
    MuRange m_range;
    double m_sigma = 0;
};

struct LambdaRange
{
    double from = 0;
    double to = 0;
};

// The part of ln sigma that carries weight: a coarse scan, cut off kSigmaDrop below its maximum, one step
// spare.
LambdaRange rangeWorthIntegrating(const IntervalLikelihood& likelihood, LambdaRange whole,
                                  const SigmaPrior& prior)
{
    const double length = whole.to - whole.from;
    const int last = std::max(16, static_cast<int>(std::ceil(length / 0.25)));
    const double step = length / last;
    std::vector<double> heights(static_cast<std::size_t>(last) + 1);
    MuWalk walk{likelihood};
    for (int i = last; i >= 0; --i) {
        const double lambda = whole.from + i * step;
        const MuCells cells = walk.at(lambda, kScanCells);
        heights[static_cast<std::size_t>(i)] =
            std::log(cells.step) + logSumExp(cells.logHeights) + logPriorShape(lambda, prior);
    }
    const double enough = largestOf(heights) - kSigmaDrop;
    const auto kept = [enough](double height) { return height >= enough; };
    const auto lowest = std::ranges::find_if(heights, kept) - heights.begin();
    const auto highest =
        last - (std::ranges::find_if(heights | std::views::reverse, kept) - heights.rbegin());
    return {lowest > 0 ? whole.from + static_cast<double>(lowest - 1) * step : whole.from,
            highest < last ? whole.from + static_cast<double>(highest + 1) * step : whole.to};
}

} // namespace

std::optional<Interval> sigmaRangeOf(const IntervalSet& readings, const SigmaPrior& prior)
{
    const double sMin = prior.sMin.value_or(resolutionFloor(readings.medianWidth));
    const double sMax = prior.sMax.value_or(std::max(0.3, 10 * sMin));
    const bool isPrior =
        std::isfinite(prior.nu0) && prior.nu0 >= 0 && std::isfinite(prior.s0) && prior.s0 > 0;
    const bool isRange = sMin > 0 && sMin < sMax && std::isfinite(sMax);
    if (!isPrior || !isRange)
        return std::nullopt;
    return Interval{sMin, sMax};
}

std::optional<IntervalPosterior> IntervalPosterior::of(const IntervalSet& readings, const SigmaPrior& prior)
{
    const std::optional<Interval> range = sigmaRangeOf(readings, prior);
    if (readings.status != ReadingsStatus::Ok || !range)
        return std::nullopt;
    IntervalPosterior posterior;
    posterior.m_readings = readings.readings;
    posterior.m_medianWidth = readings.medianWidth;
    posterior.m_sMin = range->lower;
    posterior.m_sMax = range->upper;
    posterior.integrate(readings, prior);
    posterior.normalise();
    return posterior;
}

// Fills the slices; m_weight holds ln weights until normalise().
void IntervalPosterior::integrate(const IntervalSet& readings, const SigmaPrior& prior)
{
    const IntervalLikelihood likelihood{readings.distinct};
    const LambdaRange whole{std::log(m_sMin), std::log(m_sMax)};
    const LambdaRange kept = rangeWorthIntegrating(likelihood, whole, prior);
    const int nodes = std::max(32, static_cast<int>(std::ceil(8 * (kept.to - kept.from))));
    const double logTotal = logPriorTotal(whole.from, whole.to, prior);

    MuWalk walk{likelihood};
    const std::vector<QuadraturePoint> points = gaussLegendre(nodes, kept.from, kept.to);
    for (const auto& [lambda, weight] : points | std::views::reverse) {
        const MuCells cells = walk.at(lambda, 0);
        const double logFactor =
            std::log(cells.step) + std::log(weight) + logPriorShape(lambda, prior) - logTotal;
        m_slices.push_back({std::exp(lambda), m_mu.size(), cells.logHeights.size()});
        for (std::size_t i = 0; i < cells.logHeights.size(); ++i) {
            m_mu.push_back(cells.at(i));
            m_weight.push_back(cells.logHeights[i] + logFactor);
        }
    }
}

void IntervalPosterior::normalise()
{
    m_logEvidence = logSumExp(m_weight);
    const double enough = largestOf(m_weight) - kNodeDrop;
    std::size_t kept = 0;
    double total = 0;
    for (Slice& slice : m_slices) {
        const std::size_t end = slice.first + slice.count;
        const std::size_t first = kept;
        for (std::size_t i = slice.first; i < end; ++i) {
            if (m_weight[i] < enough)
                continue;
            m_mu[kept] = m_mu[i];
            m_weight[kept] = std::exp(m_weight[i] - m_logEvidence);
            total += m_weight[kept++];
        }
        slice.first = first;
        slice.count = kept - first;
    }
    m_mu.resize(kept);
    m_weight.resize(kept);
    std::erase_if(m_slices, [](const Slice& slice) { return slice.count == 0; });
    for (double& weight : m_weight)
        weight /= total;

    for (std::size_t i = 0; i < kept; ++i)
        m_meanMu += m_weight[i] * m_mu[i];
    double variance = 0;
    for (std::size_t i = 0; i < kept; ++i)
        variance += m_weight[i] * (m_mu[i] - m_meanMu) * (m_mu[i] - m_meanMu);
    m_sdMu = std::sqrt(variance);
    for (const Slice& slice : m_slices)
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i)
            m_meanSigma += m_weight[i] * slice.sigma;
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
    for (const Slice& slice : m_slices) {
        const double scale = direction * kSqrtHalf / std::sqrt(slice.sigma * slice.sigma + extraVariance);
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i)
            sum += m_weight[i] * std::erfc((x - m_mu[i]) * scale);
    }
    return std::min(1.0, 0.5 * sum);
}

IntervalPosterior::TailAndDensity IntervalPosterior::tailAndDensity(double x, double direction,
                                                                    double extraVariance) const
{
    TailAndDensity result;
    for (const Slice& slice : m_slices) {
        const double spread = std::sqrt(slice.sigma * slice.sigma + extraVariance);
        const double scale = direction * kSqrtHalf / spread;
        double tails = 0;
        double densities = 0;
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i) {
            const double z = (x - m_mu[i]) * scale;
            tails += m_weight[i] * std::erfc(z);
            densities += m_weight[i] * std::exp(-z * z);
        }
        result.tail += 0.5 * tails;
        result.density += densities * std::exp(-kLnSqrtTwoPi) / spread;
    }
    return result;
}

// Safeguarded Newton on ln(tail / wanted); the tail falls as x goes in `direction`.
double IntervalPosterior::quantile(double wanted, double direction, double extraVariance) const
{
    double variance = m_sdMu * m_sdMu + extraVariance;
    for (const Slice& slice : m_slices)
        for (std::size_t i = slice.first; i < slice.first + slice.count; ++i)
            variance += m_weight[i] * slice.sigma * slice.sigma;
    const double sd = std::sqrt(variance);

    // `inward` has a larger tail than wanted, `outward` a smaller one, once they are known.
    double inward = -direction * std::numeric_limits<double>::infinity();
    double outward = -inward;
    double x = m_meanMu - direction * 0.87 * normalQuantile(wanted) * sd; // 1.7 sd for 0.025
    for (int i = 0; i < 50; ++i) {
        const auto [tail, density] = tailAndDensity(x, direction, extraVariance);
        const double excess = std::log(tail / wanted);
        (excess > 0 ? inward : outward) = x;
        double change = direction * excess * tail / density;
        if (std::abs(change) < kQuantileAccuracy)
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
