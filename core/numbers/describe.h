#pragma once

#include <optional>
#include <span>

namespace rig::numbers {

// Plain figures of a list of values, in their own unit. Each that cannot be known is empty.
struct Description
{
    int n = 0;
    std::optional<double> mean; // from one value
    std::optional<double> sd;   // divisor n - 1; from two values
    // Of each value with the next: sum of (x_i - m)(x_{i+1} - m) over sum of (x_i - m)^2. Empty for equal
    // values.
    std::optional<double> lag1Autocorrelation;
};

// Definitions as in the NIST Statistical Reference Datasets, whose certified values it reaches (how: see
// centred.h). When a value is not finite only n is given; a figure beyond a double's range is empty.
Description describe(std::span<const double> values);

} // namespace rig::numbers
