#pragma once

#include "core/baseline/band.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <optional>

namespace rig {

// The latest reading of one coupling on its own band, as small as a table's row.
struct BandBarView
{
    std::optional<Band> band;
    std::optional<GapInterval> reading;
    std::optional<Verdict> verdict; // of `reading`: colours its bar
    bool hasGap = true;             // false: nothing is drawn, as nothing is missing
};

} // namespace rig
