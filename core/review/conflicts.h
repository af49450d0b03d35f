#pragma once

#include "core/airframe/saved_before.h"
#include "core/review/chain_state.h"
#include "core/rigging/decision.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace rig {

// A fact that may stand against others of its kind and `about`: the record that is closed, the question that
// is resolved, the thing whose version it is, the reading that is corrected, airframe and day, the name.
struct Rival
{
    ConflictKind kind{};
    std::string table; // where it stands
    std::string about;
    IdBytes id{};
    SaveOrder saved;
    bool fromTable = false; // a record made for readings of a table, which knows a rigging by its day
    bool isTimed = false;   // and, there, by the time at which it began
};

// Two facts of which only one can hold, or of which nobody has said what they are to each other.
struct Conflict
{
    ConflictKind kind{};
    std::string table;
    IdBytes first{}; // it counts until a person decides; of corrections and records both do
    IdBytes second{};
    bool areApart = true; // in two files; else one of them was saved where the other stood, or is not known

    bool operator==(const Conflict&) const = default;
};

// With both sides as they stand in the file: who, when, what.
struct ToldConflict
{
    Conflict conflict;
    FaultyFact first;
    FaultyFact second;
};

// A conflict that a person decided, with both sides as they still stand in the file.
struct ToldDecision
{
    ToldConflict conflict;
    Decision decision;
};

// Whether it is about this airframe, or about persons or gauges, who belong to every airframe of the file.
bool concerns(const ToldConflict& told, AirframeId airframe);
// Whether one of its sides is this record or stands in it.
bool concerns(const ToldConflict& told, RecordId record);

// Whether each of them is between two files that were joined.
bool areAllApart(std::span<const ToldConflict> open);

// What nobody has decided, in the order of saving. `areApart`: neither fact was in the file when the other
// was saved; a person saw the one who made the other otherwise, and there is nothing to decide.
std::vector<Conflict> openConflicts(std::vector<Rival> rivals, std::span<const Decision> decisions,
                                    const std::function<bool(const IdBytes&, const IdBytes&)>& areApart);

} // namespace rig
