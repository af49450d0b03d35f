#include "core/baseline/baseline.h"

#include "core/baseline/gap_numbers.h"
#include "core/numbers/grading.h"

#include <vector>

namespace rig {

Baseline Baseline::from(std::span<const GapInterval> readings)
{
    std::vector<numbers::Interval> intervals;
    for (const GapInterval& reading : readings)
        intervals.push_back(inNumbers(reading));
    const numbers::IntervalSet set = numbers::intervalSetOf(intervals);

    Baseline baseline;
    baseline.m_status = set.status;
    baseline.m_readings = set.readings;
    baseline.m_posterior = numbers::IntervalPosterior::of(set);
    if (baseline.m_posterior && baseline.m_readings >= kReadingsForBand)
        baseline.m_band = bandOf(*baseline.m_posterior);
    return baseline;
}

} // namespace rig
