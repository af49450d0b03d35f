#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <string>

namespace rig {

// What two persons may have done apart, on two computers, that a single file would not have taken.
enum class ConflictKind {
    Closings,    // of one record
    Resolutions, // of one question
    Versions,    // of one person, airframe, gauge, coupling or surface
    Corrections, // of one reading
    Records,     // of one airframe and day
    Names,       // one name under two ids
};

enum class Holds {
    First,
    Second,
    TwoThings, // both do: they tell of different things
    OneThing,  // both do: they tell of the same
};

// What a named person decided of two facts that stand against each other. Of several the one saved last
// counts.
struct Decision
{
    FactId id; // null until saved
    ConflictKind kind = ConflictKind::Names;
    FactId first; // of versions their rows; of names the things
    FactId second;
    Holds holds = Holds::TwoThings;
    PersonId person;
    std::string reason;
    Stamp stamp;
};

// What can be decided of it. Whether two things are one can only be said of a person or a gauge.
constexpr bool mayHold(ConflictKind kind, Holds holds)
{
    const bool isOneOfTwo = holds == Holds::First || holds == Holds::Second;
    return (kind == ConflictKind::Records || kind == ConflictKind::Names) != isOneOfTwo;
}

} // namespace rig
