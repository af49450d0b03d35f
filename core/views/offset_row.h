#pragma once

#include <optional>
#include <string>

namespace rig {

// One person or gauge against the mean of all, millimetres. Without an estimate the row says why instead.
struct OffsetRow
{
    std::string name;
    std::optional<double> offset;
    std::optional<double> lower; // of its interval
    std::optional<double> upper;
    std::optional<double> spread; // the figure at the right
    int readings = 0;
    bool standsOut = false;
    std::string instead; // "4 readings: too few to tell"; only without an estimate
};

} // namespace rig
