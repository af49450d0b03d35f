#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

namespace rig {

// What is ticked once for a whole record, not for one coupling.
enum class TickKind {
    // First rigging of the season.
    SeasonCleaned,   // balls and sockets cleaned, springs snap, sleeves move freely
    SeasonGreased,   // thin film of the grade in the manual
    SeasonLeaves,    // leaf sets checked
    SeasonRefresher, // everybody has looked at the couplings anew
    // At the close.
    ToolsOut,  // tools, leaves, mirror, torch, cloth and pins counted back out
    HatchesOn, // hatches closed and taped
    // After the close.
    NoteRead, // its note was read by whoever rigs next
};

// Done, by a named person. A later one of the same kind stands beside it.
struct RecordTick
{
    FactId id; // null until saved
    RecordId record;
    TickKind kind = TickKind::ToolsOut;
    PersonId person;
    Stamp stamp;
};

} // namespace rig
