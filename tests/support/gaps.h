#pragma once

#include "core/baseline/baseline.h"
#include "core/measure/gap_interval.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace rig::tests {

inline GapInterval aGap(std::int32_t entersUm, std::int32_t refusesUm)
{
    return {Gap::micrometres(entersUm), Gap::micrometres(refusesUm)};
}

// The thickest leaf is still loose.
inline GapInterval anOpenGap(std::int32_t entersUm)
{
    return {Gap::micrometres(entersUm), std::nullopt};
}

inline std::vector<GapInterval> repeated(const GapInterval& gap, int times)
{
    return std::vector<GapInterval>(static_cast<std::size_t>(times), gap);
}

inline std::vector<GapInterval> together(std::vector<GapInterval> first,
                                         const std::vector<GapInterval>& second)
{
    for (const GapInterval& gap : second)
        first.push_back(gap);
    return first;
}

// Eight readings in 0.50 to 0.55 and two in 0.45 to 0.50. The oracle's case leaf10 has its band: outer 0.4316
// to 0.5982, inner 0.4703 to 0.5583.
inline std::vector<GapInterval> tenLeafReadings()
{
    return together(repeated(aGap(500, 550), 8), repeated(aGap(450, 500), 2));
}

} // namespace rig::tests
