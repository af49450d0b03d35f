#pragma once

#include "core/numbers/interval_likelihood.h"

#include <limits>
#include <span>
#include <vector>

namespace rig::numbers {

// ln sum exp(values), without overflow. Needs at least one value.
double logSumExp(std::span<const double> values);

// The likelihood along mu for one sigma: ln heights at the middles of equal cells.
struct MuCells
{
    double first = 0;
    double step = 0;
    std::vector<double> logHeights;

    double at(std::size_t i) const { return first + static_cast<double>(i) * step; }
    // ln of the integral over mu, midpoint rule.
    double logIntegral() const;
};

// Walks ln sigma from large to small, each search for the range in mu beginning from its neighbour's
// (docs/method.md, Numerics). Borrows the likelihood.
class MuWalk
{
public:
    explicit MuWalk(const IntervalLikelihood& likelihood);

    MuCells coarselyAt(double lambda);
    // As many cells as the range is sigmas long; more than 32 only on the plateaus of one-sided readings.
    // Points below the height `worth` may be left out, and fewer cells do where the range is shorter for it.
    MuCells finelyAt(double lambda, double worth = -std::numeric_limits<double>::infinity());

private:
    MuCells cellsAt(double sigma, int count) const;
    void moveTo(double sigma, double worth);

    const IntervalLikelihood& m_likelihood;
    MuRange m_range;
    double m_sigma = 0;
};

} // namespace rig::numbers
