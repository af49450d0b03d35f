#pragma once

#include "core/airframe/saved_before.h"
#include "core/rigging/reading.h"

namespace rig {

// The order of a coupling's history: by the time of measuring, and within one second by the order of saving.
inline constexpr struct
{
    constexpr bool operator()(const Reading& one, const Reading& other) const
    {
        if (one.when != other.when)
            return one.when < other.when;
        return savedBefore(one, other);
    }
} measuredBefore;

} // namespace rig
