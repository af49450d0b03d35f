#pragma once

#include "app/blocks/blocks.h"
#include "core/lesson/hatch_view.h"
#include "core/lesson/lesson.h"
#include "core/lesson/seating_round.h"

namespace rig {

// From where its access lets it be seen; from above where nobody has said.
HatchSight sightOf(const Coupling& coupling, const LookedWith& with);

// What is seen of it, and nothing that gives the state away. `joint` has the coupling's own gaps.
PictureBlock seenOf(const Coupling& coupling, const CutawayJoint& joint, const SeatingTask& task);
// The same joint cut open, once it was called.
PictureBlock cutOpenOf(const CutawayJoint& joint, const SeatingAnswer& answer);

} // namespace rig
