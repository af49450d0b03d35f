#pragma once

#include "core/review/known_airframe.h"
#include "core/rigging/counts_as.h"

#include <limits>
#include <vector>

namespace rig {

// The readings of one coupling that were taken as locked in the fitting that holds on a day, without those
// that another one took the place of or that were struck; oldest first.
inline std::vector<const Reading*> lockedReadingsOf(const KnownAirframe& known, CouplingId coupling, Day day)
{
    std::vector<const Reading*> locked;
    const FittingHistory* fitting = known.history(coupling).on(day);
    if (!fitting)
        return locked;
    for (const KeptReading* kept : known.lastLocked(coupling, std::numeric_limits<std::size_t>::max(), {}))
        if (kept->reading.fitting == fitting->fitting.id && isHeldAgainstBand(kept->reading))
            locked.push_back(&kept->reading);
    return locked;
}

} // namespace rig
