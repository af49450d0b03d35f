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
    CalledOneWay,  // what it does while the control is moved one way: said before anybody says what is
                   // expected
    CalledOtherWay,
};

constexpr bool isCall(SurfaceCheckKind kind)
{
    return kind == SurfaceCheckKind::CalledOneWay || kind == SurfaceCheckKind::CalledOtherWay;
}

// Whether it moves as it should: a “no” to one of these is the gravest that a control check finds.
constexpr bool isOfSense(SurfaceCheckKind kind)
{
    return isCall(kind) || kind == SurfaceCheckKind::Sense;
}

// What a surface does, as whoever stands there calls it.
enum class Movement { Up, Down, Left, Right, Out, In, Opens, Shuts, Nothing };

// What may be called of such a surface, in the order of showing; nothing at all is the last of them.
std::span<const Movement> movementsOf(SurfaceKind kind);

// What a surface has to do while the control is moved one way and the other; empty where the program does not
// know.
struct ExpectedCalls
{
    std::optional<Movement> oneWay;
    std::optional<Movement> otherWay;

    bool areKnown() const { return oneWay && otherWay; }
    std::optional<Movement> of(SurfaceCheckKind call) const
    {
        return call == SurfaceCheckKind::CalledOneWay ? oneWay : otherWay;
    }
};

// By its kind and side. Of one for which the owner wrote what is called the program knows nothing, nor of a
// trim, which the manual decides.
ExpectedCalls expectedOf(const Surface& surface);

// `seen` is empty where it could not be seen. Nothing at all is a “no”, and so is another movement than the
// expected one. Where the program does not know what is expected, it is asked in a question of its own.
Answer answerToCall(const ExpectedCalls& expected, SurfaceCheckKind call, std::optional<Movement> seen);

// In the order of asking; a trim and a water dump are not held and resisted. Whether it moves as it should is
// asked in words only where the program does not know it from the calls.
std::vector<SurfaceCheckKind> checksOf(const Surface& surface);

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
    std::optional<Movement> seen = {}; // of a call: what was called; empty: it could not be seen
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
