#include "core/numbers/shared_shift.h"

#include "core/numbers/distributions.h"
#include "core/numbers/median.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {
namespace {

// Docs/method.md I.
constexpr int kFewestScores = 4;
constexpr double kFarthestByChance = 3; // of z; two-sided 0.0027
constexpr double kLeastShare = 0.75;
constexpr double kLeastMedian = 1;

} // namespace

std::optional<SharedShift> sharedShiftOf(std::span<const double> scores)
{
    if (scores.empty() || !std::ranges::all_of(scores, [](double score) { return std::isfinite(score); }))
        return std::nullopt;
    const auto count = static_cast<double>(scores.size());
    const auto above = std::ranges::count_if(scores, [](double score) { return score > 0; });
    const auto below = std::ranges::count_if(scores, [](double score) { return score < 0; });
    const auto sameSign = std::max(above, below);

    SharedShift shift;
    shift.scores = static_cast<int>(scores.size());
    for (const double score : scores)
        shift.mean += score / count;
    shift.median = medianOf({scores.begin(), scores.end()});
    shift.z = shift.mean * std::sqrt(count);
    shift.p = 2 * normalBelow(-std::abs(shift.z));
    shift.sameSignShare = static_cast<double>(sameSign) / count;
    shift.isCalled = shift.scores >= kFewestScores && std::abs(shift.z) > kFarthestByChance &&
                     shift.sameSignShare >= kLeastShare && std::abs(shift.median) >= kLeastMedian;
    return shift;
}

std::vector<double> scoresLessMedian(std::span<const double> scores)
{
    const double median = medianOf({scores.begin(), scores.end()});
    std::vector<double> left;
    for (const double score : scores)
        left.push_back(score - median);
    return left;
}

} // namespace rig::numbers
