#pragma once

#include "core/store/records.h"

#include <vector>

namespace rig {

// The surfaces that most sailplanes have, left before right; flaps only where a coupling in use belongs to a
// flap. Those whose name the airframe knows already are left out.
std::vector<Surface> usualSurfaces(AirframeId airframe, const std::vector<Coupling>& couplings,
                                   const std::vector<Surface>& known);

// Adds them after those that are there, all or none. Returns how many were added.
Result<int> addUsualSurfaces(Records& records, AirframeId airframe, std::optional<PersonId> statedBy);

} // namespace rig
