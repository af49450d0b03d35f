#include "core/baseline/narrowing.h"

#include "core/baseline/baseline.h"

#include <algorithm>
#include <map>
#include <vector>

namespace rig {

namespace {

std::optional<double> shownWidth(std::span<const GapInterval> readings)
{
    const auto band = Baseline::from(readings).band();
    if (!band)
        return std::nullopt;
    return band->outer.upper - std::max(0.0, band->outer.lower);
}

} // namespace

std::optional<Narrowing> narrowingOf(std::span<const GapInterval> readings)
{
    const auto now = shownWidth(readings);
    if (!now)
        return std::nullopt;

    // The same reading twice widens or narrows alike: one band for each distinct reading is enough.
    std::map<GapInterval, int> times;
    for (const GapInterval& reading : readings)
        ++times[reading];
    std::vector<GapInterval> withOneMore(readings.begin(), readings.end());
    withOneMore.emplace_back();
    double sum = 0;
    int counted = 0;
    for (const auto& [reading, count] : times) {
        withOneMore.back() = reading;
        const auto width = shownWidth(withOneMore);
        if (!width)
            continue;
        sum += *width * count;
        counted += count;
    }
    if (counted == 0)
        return std::nullopt;
    return Narrowing{*now, sum / counted};
}

} // namespace rig
