#include "core/baseline/gap_numbers.h"

#include "core/numbers/grading.h"

#include <limits>

namespace rig {

numbers::Interval inNumbers(const GapInterval& interval)
{
    return {interval.enters.inMillimetres(),
            interval.refuses ? interval.refuses->inMillimetres() : std::numeric_limits<double>::infinity()};
}

Band bandOf(const numbers::IntervalPosterior& posterior, double setVariance)
{
    const numbers::PredictiveBands bands = numbers::bandsOf(posterior, setVariance);
    Band band;
    band.inner = {bands.inner.lower, bands.inner.upper};
    band.outer = {bands.outer.lower, bands.outer.upper};
    band.median = bands.median;
    band.scatter = posterior.meanSigma();
    band.readings = posterior.readings();
    band.scatterAtCap = posterior.sigmaAtCap();
    return band;
}

} // namespace rig
