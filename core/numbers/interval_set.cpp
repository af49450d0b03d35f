#include "core/numbers/interval_set.h"

#include "core/numbers/median.h"

#include <algorithm>

namespace rig::numbers {
namespace {

bool isNotANumber(const Interval& reading)
{
    if (std::isnan(reading.lower) || std::isnan(reading.upper))
        return true;
    return (std::isinf(reading.lower) && reading.lower > 0) ||
           (std::isinf(reading.upper) && reading.upper < 0);
}

ReadingsStatus statusOf(std::span<const Interval> readings)
{
    if (readings.empty())
        return ReadingsStatus::NoReadings;
    for (const Interval& reading : readings) {
        if (isNotANumber(reading))
            return ReadingsStatus::NotANumber;
        if (reading.lower > reading.upper)
            return ReadingsStatus::ReversedBounds;
    }
    const auto hasLower = [](const Interval& reading) { return std::isfinite(reading.lower); };
    const auto hasUpper = [](const Interval& reading) { return std::isfinite(reading.upper); };
    if (std::ranges::none_of(readings, hasLower))
        return ReadingsStatus::NoLowerBound;
    if (std::ranges::none_of(readings, hasUpper))
        return ReadingsStatus::NoUpperBound;
    return ReadingsStatus::Ok;
}

std::vector<CountedInterval> counted(std::vector<Interval> readings)
{
    const auto rising = [](const Interval& a, const Interval& b) {
        return a.lower < b.lower || (a.lower == b.lower && a.upper < b.upper);
    };
    std::ranges::sort(readings, rising);
    std::vector<CountedInterval> distinct;
    for (const Interval& reading : readings) {
        if (distinct.empty() || distinct.back().interval != reading)
            distinct.push_back({reading, 0});
        ++distinct.back().count;
    }
    return distinct;
}

} // namespace

IntervalSet intervalSetOf(std::span<const Interval> readings)
{
    const auto saysSomething = [](const Interval& reading) {
        return !(std::isinf(reading.lower) && reading.lower < 0 && std::isinf(reading.upper) &&
                 reading.upper > 0);
    };
    std::vector<Interval> kept;
    std::ranges::copy_if(readings, std::back_inserter(kept), saysSomething);

    IntervalSet set;
    set.status = statusOf(kept);
    set.readings = static_cast<int>(kept.size());
    if (set.status != ReadingsStatus::Ok)
        return set;
    std::vector<double> widths;
    for (const Interval& reading : kept)
        if (reading.isClosed())
            widths.push_back(reading.width());
    set.medianWidth = medianOf(std::move(widths));
    set.distinct = counted(std::move(kept));
    return set;
}

IntervalSet withoutOne(const IntervalSet& set, std::size_t index)
{
    std::vector<Interval> left;
    for (std::size_t i = 0; i < set.distinct.size(); ++i)
        left.insert(left.end(), static_cast<std::size_t>(set.distinct[i].count - (i == index ? 1 : 0)),
                    set.distinct[i].interval);
    IntervalSet rest = intervalSetOf(left);
    rest.medianWidth = set.medianWidth;
    return rest;
}

double resolutionFloor(double medianWidth)
{
    return std::max(0.005, medianWidth / 4);
}

} // namespace rig::numbers
