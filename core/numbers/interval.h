#pragma once

#include <cmath>
#include <limits>

namespace rig::numbers {

inline constexpr double kInfinity = std::numeric_limits<double>::infinity(); // an open bound

// A value known to lie between two bounds; either may be infinite. Equal bounds: the value itself is known.
struct Interval
{
    double lower = 0;
    double upper = 0;

    bool operator==(const Interval&) const = default;

    bool isExact() const { return lower == upper; }
    bool isClosed() const { return std::isfinite(lower) && std::isfinite(upper); }
    double width() const { return upper - lower; }
    // The middle, or the only bound that is finite.
    double place() const
    {
        if (isClosed())
            return 0.5 * lower + 0.5 * upper;
        return std::isfinite(lower) ? lower : upper;
    }
    bool isOpenBothWays() const { return lower == -kInfinity && upper == kInfinity; }
    // Whether any number can lie in it; false also where a bound is NaN.
    bool holdsANumber() const { return lower <= upper && lower < kInfinity && upper > -kInfinity; }
};

} // namespace rig::numbers
