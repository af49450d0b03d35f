#include "core/numbers/posterior_grid.h"

#include "core/numbers/mu_walk.h"
#include "core/numbers/quadrature.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace rig::numbers {
namespace {

// The figures of docs/method.md A2, chosen there by measurement.
constexpr double kSigmaDrop = 36; // ln units below the maximum where the range of ln sigma ends
constexpr double kNodeDrop = 30;  // points lighter than exp(-30) of the heaviest are left out
// Points so far below the highest are not looked at. Cells at a large sigma are up to e^4 times as wide as at
// a small one, and so far a lower point can weigh more.
constexpr double kPointDrop = kNodeDrop + 4;
constexpr double kScanStep = 0.25;
constexpr int kFewestGridNodes = 32;
constexpr int kNodesPerUnit = 8; // of ln sigma
// A scan with fewer points in what is kept is made again, closer. With five, 32 nodes leave a relative error
// of the weights below 1e-5 (trapezoidal rule on a normal curve, nodes 1.25 standard deviations apart); with
// more readings than about 150 there would be fewer.
constexpr int kEnoughScanPoints = 5;
constexpr int kMostScans = 8;

double largestOf(std::span<const double> values)
{
    return *std::ranges::max_element(values);
}

struct LambdaScan
{
    Interval kept; // what lies within kSigmaDrop of the maximum, and one step spare
    std::ptrdiff_t points = 0;
};

// Heights at equal steps, from large lambda to small.
template <typename LogHeight> LambdaScan scanned(const Interval& whole, const LogHeight& logHeight)
{
    const int last = std::max(16, static_cast<int>(std::ceil(whole.width() / kScanStep)));
    const double step = whole.width() / last;
    std::vector<double> heights(static_cast<std::size_t>(last) + 1);
    for (int i = last; i >= 0; --i)
        heights[static_cast<std::size_t>(i)] = logHeight(whole.lower + i * step);

    const double enough = largestOf(heights) - kSigmaDrop;
    const auto isKept = [enough](double height) { return height >= enough; };
    const auto lowest = std::find_if(heights.begin(), heights.end(), isKept) - heights.begin();
    const auto highest = last - (std::find_if(heights.rbegin(), heights.rend(), isKept) - heights.rbegin());
    return {{lowest > 0 ? whole.lower + static_cast<double>(lowest - 1) * step : whole.lower,
             highest < last ? whole.lower + static_cast<double>(highest + 1) * step : whole.upper},
            highest - lowest + 1};
}

// The part of ln sigma that carries weight. With many readings, or a prior that is very sure, it is narrower
// than a scan's step and is scanned again.
template <typename LogHeight> Interval partWorthIntegrating(Interval range, const LogHeight& logHeight)
{
    for (int round = 0; round < kMostScans; ++round) {
        const LambdaScan scan = scanned(range, logHeight);
        range = scan.kept;
        if (scan.points >= kEnoughScanPoints)
            break;
    }
    return range;
}

std::vector<QuadraturePoint> nodesOn(const Interval& range)
{
    const int count = static_cast<int>(std::ceil(kNodesPerUnit * range.width()));
    return gaussLegendre(std::max(kFewestGridNodes, count), range.lower, range.upper);
}

// ln of the integral of the prior's shape over its range of ln sigma.
double logPriorTotal(const Interval& range, const SigmaPrior& prior)
{
    if (prior.nu0 <= 0)
        return std::log(range.width());
    const auto shape = [&prior](double lambda) { return logPriorShape(lambda, prior); };
    std::vector<double> terms;
    for (const auto& [lambda, weight] : nodesOn(partWorthIntegrating(range, shape)))
        terms.push_back(std::log(weight) + shape(lambda));
    return logSumExp(terms);
}

// Leaves out what is too light and turns ln weights into weights that add up to 1.
void normalise(PosteriorGrid& grid)
{
    grid.logEvidence = logSumExp(grid.weight);
    const double enough = largestOf(grid.weight) - kNodeDrop;
    std::size_t kept = 0;
    double total = 0;
    for (SigmaSlice& slice : grid.slices) {
        const std::size_t end = slice.first + slice.count;
        const std::size_t first = kept;
        for (std::size_t i = slice.first; i < end; ++i) {
            if (grid.weight[i] < enough)
                continue;
            grid.mu[kept] = grid.mu[i];
            grid.weight[kept] = std::exp(grid.weight[i] - grid.logEvidence);
            total += grid.weight[kept++];
        }
        slice = {slice.sigma, first, kept - first};
    }
    grid.mu.resize(kept);
    grid.weight.resize(kept);
    std::erase_if(grid.slices, [](const SigmaSlice& slice) { return slice.count == 0; });
    for (double& weight : grid.weight)
        weight /= total;
}

} // namespace

double logPriorShape(double lambda, const SigmaPrior& prior)
{
    if (prior.nu0 <= 0)
        return 0;
    return -prior.nu0 * lambda - 0.5 * prior.nu0 * prior.s0 * prior.s0 * std::exp(-2 * lambda);
}

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

PosteriorGrid posteriorGridOf(const IntervalSet& readings, const SigmaPrior& prior, const Interval& range)
{
    const IntervalLikelihood likelihood{readings.distinct};
    const Interval whole{std::log(range.lower), std::log(range.upper)};
    MuWalk walk{likelihood};
    double highest =
        -std::numeric_limits<double>::infinity(); // of likelihood times prior, as the scan met it
    const Interval part = partWorthIntegrating(whole, [&](double lambda) {
        const MuCells cells = walk.coarselyAt(lambda);
        highest = std::max(highest, largestOf(cells.logHeights) + logPriorShape(lambda, prior));
        return cells.logIntegral() + logPriorShape(lambda, prior);
    });

    const double logTotal = logPriorTotal(whole, prior);
    PosteriorGrid grid;
    std::vector<QuadraturePoint> nodes = nodesOn(part);
    std::ranges::reverse(nodes);
    for (const auto& [lambda, weight] : nodes) {
        const MuCells cells = walk.finelyAt(lambda, highest - kPointDrop - logPriorShape(lambda, prior));
        const double logFactor =
            std::log(cells.step) + std::log(weight) + logPriorShape(lambda, prior) - logTotal;
        grid.slices.push_back({std::exp(lambda), grid.mu.size(), cells.logHeights.size()});
        for (std::size_t i = 0; i < cells.logHeights.size(); ++i) {
            grid.mu.push_back(cells.at(i));
            grid.weight.push_back(cells.logHeights[i] + logFactor);
        }
    }
    normalise(grid);
    return grid;
}

} // namespace rig::numbers
