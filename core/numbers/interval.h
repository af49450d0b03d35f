#pragma once

#include <cmath>

namespace rig::numbers {

// A value known to lie between two bounds; either may be infinite. Equal bounds: the value itself is known.
struct Interval
{
    double lower = 0;
    double upper = 0;

    bool operator==(const Interval&) const = default;

    bool isExact() const { return lower == upper; }
    bool isClosed() const { return std::isfinite(lower) && std::isfinite(upper); }
    double width() const { return upper - lower; }
};

} // namespace rig::numbers
