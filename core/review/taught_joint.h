#pragma once

#include "core/lesson/cutaway.h"
#include "core/lesson/seating_round.h"
#include "core/review/known_airframe.h"

#include <map>
#include <vector>

namespace rig {

// What was stated as locked of one coupling in the fitting that holds on a day, without what another one took
// the place of or that was struck; oldest first. One that lies outside the band was taken as locked and may
// not have been: nobody learns from it what locked is.
struct StatedLocked
{
    std::vector<const Reading*> locked;
    std::vector<const Reading*> outside;
    std::vector<const Reading*> earlier; // of other fittings
};

StatedLocked statedLockedOf(const KnownAirframe& known, CouplingId coupling, Day day);

// What practice draws from: readings of the fitting that holds, and what was ever shown part-seated.
PracticeJoint practiceJointOf(const KnownAirframe& known, CouplingId coupling, Day day);

// The same in the middle, as a joint is drawn.
CutawayJoint taughtJointOf(const KnownAirframe& known, const Coupling& coupling, Day day);

// As which layout each ball joint in use is drawn.
std::map<CouplingId, DrawnLayout> drawnLayoutsOf(const KnownAirframe& known, Day day);

} // namespace rig
