#include "core/numbers/reading_pair.h"

#include <algorithm>

namespace rig::numbers {
namespace {

PairVerdict verdictOf(const ReadingPair& pair, double limit)
{
    if (pair.smallestDifference > limit)
        return PairVerdict::Disagree;
    return pair.largestDifference <= limit ? PairVerdict::Agree : PairVerdict::Unresolved;
}

} // namespace

std::optional<ReadingPair> readingPair(const Interval& first, const Interval& second, double limit)
{
    if (!first.holdsANumber() || !second.holdsANumber() || !(limit >= 0) || !std::isfinite(limit))
        return std::nullopt;
    ReadingPair pair;
    pair.smallestDifference = std::max({0.0, second.lower - first.upper, first.lower - second.upper});
    pair.largestDifference = std::max(second.upper - first.lower, first.upper - second.lower);
    pair.verdict = verdictOf(pair, limit);
    return std::isfinite(pair.smallestDifference) ? std::optional{pair} : std::nullopt;
}

} // namespace rig::numbers
