#pragma once

#include "core/rigging/rigging_record.h"

#include <set>
#include <span>

namespace rig {

// The records that came to this end.
std::set<RecordId> closedAs(Closing closing, std::span<const RecordClose> closings);

// The records that were left behind: none of them is a rigging.
std::set<RecordId> abandonedAmong(std::span<const RecordClose> closings);

} // namespace rig
