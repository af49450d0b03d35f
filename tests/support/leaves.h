#pragma once

#include "core/measure/gauge_set.h"

namespace rig::tests {

// The usual twenty leaves, 0.05 to 1.00 mm.
inline GaugeSet twentyLeaves()
{
    std::vector<Gap> sizes;
    for (int um = 50; um <= 1000; um += 50)
        sizes.push_back(Gap::micrometres(um));
    return {GaugeKind::Leaves, sizes};
}

} // namespace rig::tests
