#include "app/bench/coverage.h"

#include "core/numbers/distributions.h"
#include "core/numbers/grading.h"

#include <cmath>

namespace rig::bench {
namespace {

constexpr double kReach = 8; // sigmas: the normal beyond them is below 1e-15

// The true share of gaps in an interval.
double shareIn(const numbers::Interval& interval, double mean, double sigma)
{
    return numbers::normalBelow((interval.upper - mean) / sigma) -
           numbers::normalBelow((interval.lower - mean) / sigma);
}

void addBands(Coverage& sum, const numbers::PredictiveBands& bands, double mean, double sigma)
{
    sum.innerContent += shareIn(bands.inner, mean, sigma);
    sum.innerWidth += bands.inner.width();
    sum.outerContent += shareIn(bands.outer, mean, sigma);
    sum.outerWidth += bands.outer.width();
}

// Every step that the gauge can show, weighted by its true share.
void addGrades(Coverage& sum, const numbers::IntervalPosterior& posterior,
               const numbers::PredictiveBands& bands, double mean, const Coupling& coupling)
{
    using numbers::Grade;
    const double step = coupling.kind.step;
    const double first = std::floor((mean - kReach * coupling.sigma) / step);
    const double last = std::ceil((mean + kReach * coupling.sigma) / step);
    for (double cell = first; cell < last; ++cell) {
        const numbers::Interval reading{cell * step, (cell + 1) * step};
        const Grade grade = numbers::gradingOf(reading, posterior, bands).grade;
        const double share = shareIn(reading, mean, coupling.sigma);
        if (grade == Grade::Outside)
            sum.outside += share;
        if (grade == Grade::Outside || grade == Grade::Watch)
            sum.nearEdgeOrOutside += share;
        if (grade == Grade::Unresolved)
            sum.cannotTell += share;
    }
}

} // namespace

Coverage coverageOf(const Coupling& coupling, int baselines, std::uint64_t seed)
{
    Draws draws{seed};
    Coverage sum;
    for (int i = 0; i < baselines; ++i) {
        const double mean = 0.5 + 0.1 * draws.uniform();
        const auto readings = readingsOf(coupling.readings, mean, coupling.sigma, coupling.kind, draws);
        // Closed readings always have a posterior.
        const auto posterior = *numbers::IntervalPosterior::of(numbers::intervalSetOf(readings));
        const numbers::PredictiveBands bands = numbers::bandsOf(posterior);
        addBands(sum, bands, mean, coupling.sigma);
        if (coupling.kind.step > 0)
            addGrades(sum, posterior, bands, mean, coupling);
    }
    for (double* mean : {&sum.innerContent, &sum.innerWidth, &sum.outerContent, &sum.outerWidth,
                         &sum.nearEdgeOrOutside, &sum.outside, &sum.cannotTell})
        *mean /= baselines;
    return sum;
}

} // namespace rig::bench
