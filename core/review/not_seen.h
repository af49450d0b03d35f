#pragma once

#include "core/judgement/judgement.h"
#include "core/rigging/rigging_record.h"

#include <optional>

namespace rig {

// A gap says nothing of a part that nobody has seen: what does not lie outside cannot be told until somebody
// has. `notSeen` is the part; nothing is changed without one.
Judgement withoutSight(Judgement judgement, std::optional<CheckKind> notSeen);

} // namespace rig
