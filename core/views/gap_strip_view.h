#pragma once

#include "core/baseline/band.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <optional>
#include <vector>

namespace rig {

// One coupling's gaps on a millimetre scale that the band fills: band, near-edge zones, centre, a reading as
// a bar from enters to refuses, and the part-seated region hatched on the side where it was seen, behind a
// break on a scale of its own where that is far.
struct GapStripView
{
    std::optional<Band> band;
    std::optional<GapInterval> reading; // today's, drawn strongest
    std::optional<Verdict> verdict;     // of `reading`: colours its bar
    std::vector<GapInterval> partSeated;
    std::vector<GapInterval> earlier; // faint ticks below the strip's middle
    bool withLegends = true; // "this coupling's band 0.55-0.71", "part-seated was seen here" or "never seen"
};

} // namespace rig
