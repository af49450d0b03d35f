#pragma once

#include "app/pictures/hatch_view.h"

namespace rig {

// The joint as it looks from one side, in an opening of its own.
std::vector<CutawayPart> partsSeen(const Cutaway& cutaway, AccessSide from, bool torch,
                                   const HatchOpening& opening);

} // namespace rig
