#pragma once

#include "core/numbers/interval.h"

#include <initializer_list>
#include <numbers>

namespace rig::numbers {

struct Peak
{
    double at = 0;
    double height = 0;
};

// The highest point of a function with one peak on a closed range, to `accuracy` in x; its ends count as
// well, so that a function which rises all the way has its peak exactly at the end. Golden section (Kiefer
// 1953, Proc. Amer. Math. Soc. 4, from memory).
template <typename Function> Peak highestPoint(Interval range, double accuracy, const Function& function)
{
    constexpr double kShare = 1 / std::numbers::phi;
    const Peak ends[] = {{range.lower, function(range.lower)}, {range.upper, function(range.upper)}};
    const auto peakAt = [&function](double x) { return Peak{x, function(x)}; };
    Peak left = peakAt(range.upper - kShare * range.width());
    Peak right = peakAt(range.lower + kShare * range.width());
    while (range.width() > accuracy) {
        if (left.height >= right.height) {
            range.upper = right.at;
            right = left;
            left = peakAt(range.upper - kShare * range.width());
        } else {
            range.lower = left.at;
            left = right;
            right = peakAt(range.lower + kShare * range.width());
        }
    }
    Peak best = left.height >= right.height ? left : right;
    for (const Peak& end : ends)
        if (end.height >= best.height)
            best = end;
    return best;
}

} // namespace rig::numbers
