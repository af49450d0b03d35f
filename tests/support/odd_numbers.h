#pragma once

#include <limits>
#include <random>

// What the numbers' own tests feed them with.
namespace rig::tests {

inline constexpr double kNotANumber = std::numeric_limits<double>::quiet_NaN();

// At least 0 and below 1, the same on every machine.
inline double uniform(std::mt19937& random)
{
    return static_cast<double>(random()) / 4294967296.0;
}

} // namespace rig::tests
