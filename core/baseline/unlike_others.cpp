#include "core/baseline/unlike_others.h"

#include "core/baseline/gap_numbers.h"
#include "core/numbers/admission.h"

#include <algorithm>
#include <vector>

namespace rig {

std::set<GapInterval> unlikeOthers(std::span<const GapInterval> readings)
{
    std::vector<numbers::Interval> intervals;
    for (const GapInterval& reading : readings)
        intervals.push_back(inNumbers(reading));
    const auto findings = numbers::admissionOf(numbers::intervalSetOf(intervals));

    std::set<GapInterval> unlike;
    for (std::size_t i = 0; i < intervals.size(); ++i) {
        const bool isOutlier = std::ranges::any_of(findings, [&](const numbers::AdmissionFinding& finding) {
            return finding.reading == intervals[i] && finding.flag == numbers::AdmissionFlag::Outlier;
        });
        if (isOutlier)
            unlike.insert(readings[i]);
    }
    return unlike;
}

} // namespace rig
