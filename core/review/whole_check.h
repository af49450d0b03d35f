#pragma once

#include "core/review/airframe_facts.h"

#include <optional>

namespace rig {

// What was done to a joint so that it asks for the whole check at the next rigging: cleaned, greased, set up
// again, or with another part. A control check can pass on it and the joint let go flights later.
bool asksForWholeCheck(EventKind kind);

// The last such event of this coupling, or of the whole airframe, since which no rigging was closed with all
// steps done. `record`, where given, is left out: it is the one that is asked.
std::optional<Event> wholeCheckAsked(const AirframeFacts& facts, CouplingId coupling,
                                     std::optional<RecordId> record = {});

} // namespace rig
