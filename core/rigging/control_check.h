#pragma once

#include "core/airframe/surface.h"
#include "core/rigging/rigging_record.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// What is tried on one surface, in the order it is done. Which of them a surface has depends on its kind.
enum class SurfaceCheckKind {
    HeldOneWay,   // held and resisted while the cockpit control is moved
    HeldOtherWay, //
    Sense,        // moved as called aloud
    FullTravel,   // to both stops
    Neutral,
    FreePlay,
    Freedom,       // no rubbing, no change of friction
    LocksEvenly,   // airbrakes: over centre with even force, both sides together
    EveryNotch,    // flaps: each notch, both equal
    HoldsSetting,  // trim moves and stays
    OpensTogether, // water dump: both open, both shut
};

// In the order of asking; a trim and a water dump are not held and resisted.
std::span<const SurfaceCheckKind> checksOf(SurfaceKind kind);

// One answer at one surface. `person` stands at the surface, `cockpit` moves the control.
struct SurfaceCheck
{
    FactId id; // null until saved
    RecordId record;
    SurfaceId surface;
    SurfaceCheckKind kind = SurfaceCheckKind::Sense;
    Answer answer = Answer::CannotSee;
    PersonId person;
    PersonId cockpit;
    Stamp stamp;
};

enum class MeasureKind { FreePlay, Up, Down };

// One measured figure of a surface, in the unit that was measured in.
struct SurfaceMeasure
{
    FactId id; // null until saved
    RecordId record;
    SurfaceId surface;
    MeasureKind kind = MeasureKind::FreePlay;
    DeflectionUnit unit = DeflectionUnit::Millimetres;
    Deflection value;
    std::optional<Gap> measuredAt; // as in Surface; needed to turn millimetres into degrees
    PersonId person;
    Stamp stamp;
};

} // namespace rig
