#pragma once

#include "core/judgement/judgement.h"
#include "core/rigging/reading.h"

#include <optional>

namespace rig {

// A reading with what its measurer was shown at the time, where anything was shown.
struct KeptReading
{
    Reading reading;
    std::optional<Shown> shown;
};

} // namespace rig
