#pragma once

#include "core/numbers/interval_set.h"

#include <optional>
#include <span>

namespace rig::numbers {

// From this many couplings of this many readings on, a fleet may speak for a coupling that is not in it.
inline constexpr int kCouplingsForFleetPrior = 8;
inline constexpr int kReadingsForFleetPrior = 5;

// What the scatter of other couplings says about the scatter of one more: nu0 and s0 (mm) of SigmaPrior.
struct FleetPrior
{
    double nu0 = 0;
    double s0 = 0;
    double logMarginal =
        0; // sum over couplings of ln integral likelihood x prior, over mu (per mm) and ln sigma
    bool atLowerBound = false; // nu0 ran to the lower end of its range
    bool atUpperBound = false;
    // Enough couplings, and s0 above 1.02 times the resolution floor of all readings together: a fleet
    // measured too coarsely cannot tell its scatter, and would make confident, too narrow bands.
    bool isUsable = false;
};

// Type-II maximum likelihood of the prior's strength and scale from the couplings' interval readings, sigma
// from 0.005 to 0.3 mm (docs/method.md A, Fleet prior). The coupling to be judged is left out by the caller.
// Couplings without a posterior are left out here. Empty when none is left, or unless
// 0 < nu0Min <= nu0Max < infinity.
std::optional<FleetPrior> fleetPriorOf(std::span<const IntervalSet> couplings, double nu0Min = 1,
                                       double nu0Max = 10);

} // namespace rig::numbers
