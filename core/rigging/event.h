#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <string>

namespace rig {

enum class EventKind { Cleaned, Greased, Refitted, PartChanged, Annual, Note, Derigged, Finding };

// Something done to the airframe, or to one coupling, that a reader of the history needs to know. A finding
// is what a named person found, in `note`, and did about it.
struct Event
{
    EventId id; // null until saved
    AirframeId airframe;
    std::optional<CouplingId> coupling; // empty: the whole airframe
    EventKind kind = EventKind::Note;
    Day day;
    std::string note;
    std::optional<PersonId> person; // who states it; facts of older files do not say
    Stamp stamp;
    std::string done = {}; // of a finding; empty otherwise
};

} // namespace rig
