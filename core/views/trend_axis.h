#pragma once

#include "core/clock.h"

namespace rig {

enum class TrendAxis { ByDate, ByRigging };

// Where something stands on the chosen axis: UTC seconds or rigging number.
inline double along(TrendAxis axis, const Moment& when, double rigging)
{
    return axis == TrendAxis::ByDate ? static_cast<double>(when.utcSeconds) : rigging;
}

} // namespace rig
