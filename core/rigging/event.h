#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <string>

namespace rig {

enum class EventKind { Cleaned, Greased, Refitted, PartChanged, Annual, Note, Derigged };

// Something done to the airframe, or to one coupling, that a reader of the history needs to know.
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
};

} // namespace rig
