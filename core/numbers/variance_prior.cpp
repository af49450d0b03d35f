#include "core/numbers/variance_prior.h"

#include "core/numbers/distributions.h"
#include "core/numbers/median.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace rig::numbers {
namespace {

// A variance of nothing has no logarithm; it is raised to this share of the median (a numeric setting read
// from limma 3.54, not from the paper).
constexpr double kLeastShareOfMedian = 1e-5;

bool isWellFormed(std::span<const double> variances, std::span<const double> degreesOfFreedom)
{
    const auto isVariance = [](double value) { return std::isfinite(value) && value >= 0; };
    const auto isDegrees = [](double value) { return std::isfinite(value) && value > 0; };
    return variances.size() >= 2 && variances.size() == degreesOfFreedom.size() &&
           std::ranges::all_of(variances, isVariance) && std::ranges::all_of(degreesOfFreedom, isDegrees);
}

double meanOf(std::span<const double> values)
{
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

// With n - 1 below.
double varianceOf(std::span<const double> values)
{
    const double mean = meanOf(values);
    double squares = 0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return squares / static_cast<double>(values.size() - 1);
}

// psi(d/2) - ln(d/2): what the logarithm of a chi-square over its d degrees of freedom is on average.
double meanLogOf(double degreesOfFreedom)
{
    return digamma(0.5 * degreesOfFreedom) - std::log(0.5 * degreesOfFreedom);
}

} // namespace

std::optional<VariancePrior> variancePriorOf(std::span<const double> variances,
                                             std::span<const double> degreesOfFreedom)
{
    if (!isWellFormed(variances, degreesOfFreedom))
        return std::nullopt;
    const double least = kLeastShareOfMedian * medianOf({variances.begin(), variances.end()});
    if (!(least > 0))
        return std::nullopt;

    std::vector<double> raised;
    std::vector<double> logs;
    std::vector<double> expectedSpread;
    for (std::size_t i = 0; i < variances.size(); ++i) {
        raised.push_back(std::max(variances[i], least));
        logs.push_back(std::log(raised[i]) - meanLogOf(degreesOfFreedom[i]));
        expectedSpread.push_back(trigamma(0.5 * degreesOfFreedom[i]));
    }
    const double excess = varianceOf(logs) - meanOf(expectedSpread);

    VariancePrior prior;
    if (excess > 0) {
        prior.degreesOfFreedom = 2 * inverseTrigamma(excess);
        prior.variance = std::exp(meanOf(logs) + meanLogOf(prior.degreesOfFreedom));
    } else {
        prior.degreesOfFreedom = std::numeric_limits<double>::infinity();
        prior.variance = meanOf(raised);
    }
    if (!std::isfinite(excess) || !std::isfinite(prior.variance))
        return std::nullopt;
    for (std::size_t i = 0; i < variances.size(); ++i) {
        const double share = degreesOfFreedom[i] / (degreesOfFreedom[i] + prior.degreesOfFreedom);
        prior.posteriorVariances.push_back(share * variances[i] + (1 - share) * prior.variance);
    }
    return prior;
}

} // namespace rig::numbers
