#include "core/numbers/admission.h"

#include "core/numbers/grading.h"

namespace rig::numbers {
namespace {

constexpr double kOutlierBelow = 0.01; // as for Grubbs' test in ISO 5725-2, from memory
constexpr double kStragglerBelow = 0.05;

AdmissionFlag flagOf(double timesTail)
{
    if (timesTail < kOutlierBelow)
        return AdmissionFlag::Outlier;
    return timesTail < kStragglerBelow ? AdmissionFlag::Straggler : AdmissionFlag::None;
}

} // namespace

std::vector<AdmissionFinding> admissionOf(const IntervalSet& readings, const SigmaPrior& prior)
{
    const std::optional<Interval> range = sigmaRangeOf(readings, prior);
    if (readings.status != ReadingsStatus::Ok || !range)
        return {};
    SigmaPrior same = prior;
    same.sMin = range->lower;
    same.sMax = range->upper;

    std::vector<AdmissionFinding> findings;
    for (std::size_t i = 0; i < readings.distinct.size(); ++i) {
        AdmissionFinding finding{readings.distinct[i].interval, {}, AdmissionFlag::NotTestable};
        const auto others = IntervalPosterior::of(withoutOne(readings, i), same);
        if (others && readings.readings >= kReadingsForAdmission) {
            finding.tail = tailOf(finding.reading, *others);
            finding.flag = flagOf(readings.readings * *finding.tail);
        }
        findings.push_back(finding);
    }
    return findings;
}

} // namespace rig::numbers
