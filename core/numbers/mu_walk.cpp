#include "core/numbers/mu_walk.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {
namespace {

// The figures of docs/method.md, Numerics, chosen there by measurement.
constexpr double kMuDrop = 38; // ln units below the mode where the range in mu ends
constexpr int kScanCells = 16;
constexpr int kFewestCells = 32;
constexpr int kMostCells = 400;

} // namespace

double logSumExp(std::span<const double> values)
{
    const double largest = *std::ranges::max_element(values);
    if (!std::isfinite(largest))
        return largest;
    double sum = 0;
    for (const double value : values)
        sum += std::exp(value - largest);
    return largest + std::log(sum);
}

double MuCells::logIntegral() const
{
    return std::log(step) + logSumExp(logHeights);
}

MuWalk::MuWalk(const IntervalLikelihood& likelihood) : m_likelihood{likelihood}
{
    m_range.mode = likelihood.centre();
}

MuCells MuWalk::coarselyAt(double lambda)
{
    const double sigma = std::exp(lambda);
    moveTo(sigma, -std::numeric_limits<double>::infinity());
    return cellsAt(sigma, kScanCells);
}

MuCells MuWalk::finelyAt(double lambda, double worth)
{
    const double sigma = std::exp(lambda);
    moveTo(sigma, worth);
    const double fitting = std::min(double{kMostCells}, std::ceil((m_range.below + m_range.above) / sigma));
    // A parabola is as many cells long as its depth has roots.
    const double fewest = std::ceil(kFewestCells * std::sqrt(m_range.drop / kMuDrop));
    return cellsAt(sigma, static_cast<int>(std::max(fewest, fitting)));
}

void MuWalk::moveTo(double sigma, double worth)
{
    const double scale = m_sigma > 0 ? sigma / m_sigma : 0;
    m_range = m_likelihood.rangeAt(
        sigma, {kMuDrop, worth}, {m_range.mode, m_range.below * scale, m_range.above * scale, m_range.drop});
    m_sigma = sigma;
}

MuCells MuWalk::cellsAt(double sigma, int count) const
{
    MuCells cells;
    cells.step = (m_range.below + m_range.above) / count;
    cells.first = m_range.mode - m_range.below + 0.5 * cells.step;
    cells.logHeights.resize(static_cast<std::size_t>(count));
    for (std::size_t i = 0; i < cells.logHeights.size(); ++i)
        cells.logHeights[i] = m_likelihood.logAt(cells.at(i), sigma);
    return cells;
}

} // namespace rig::numbers
