#include "core/numbers/discrimination.h"

#include <cmath>
#include <limits>

namespace rig::numbers {

Interval unseenBetween(const Interval& band, std::span<const Interval> steps)
{
    if (steps.empty())
        return band;
    Interval unseen{-kInfinity, kInfinity};
    for (const Interval& size : steps) {
        // A value below `size.lower` surely refuses this step, one above `size.upper` surely lets it in.
        if (size.upper <= band.lower)
            unseen.lower = size.lower;
        if (size.lower >= band.upper) {
            unseen.upper = size.upper;
            break;
        }
    }
    return unseen;
}

std::optional<double> logLikelihoodRatio(const Interval& reading, const IntervalPosterior& first,
                                         const IntervalPosterior& other)
{
    const auto likelihood = [&reading](const IntervalPosterior& state) {
        return reading.isExact() ? state.density(reading.lower) : state.between(reading);
    };
    const double underFirst = likelihood(first);
    const double underOther = likelihood(other);
    if (!(underFirst > 0) && !(underOther > 0))
        return std::nullopt;
    return std::log10(underOther) - std::log10(underFirst);
}

bool isLarger(const IntervalPosterior& first, const IntervalPosterior& other)
{
    return other.lowerQuantile(0.5) > first.lowerQuantile(0.5);
}

std::optional<DividingLeaf> bestDividingLeaf(const IntervalPosterior& first, const IntervalPosterior& other,
                                             std::span<const double> sizes)
{
    const bool up = isLarger(first, other);
    std::optional<DividingLeaf> best;
    for (const double size : sizes) {
        const DividingLeaf leaf{size, up ? first.above(size) : first.below(size),
                                up ? other.below(size) : other.above(size)};
        if (!best || leaf.falseAlarm + leaf.miss < best->falseAlarm + best->miss)
            best = leaf;
    }
    return best;
}

} // namespace rig::numbers
