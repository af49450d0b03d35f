#pragma once

#include "core/airframe/access.h"
#include "core/airframe/circuit.h"
#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <string>

namespace rig {

enum class Side { None, Left, Right };

// How the plunger tab and the sleeve stand to each other; docs/terms.md draws the three. Which way
// part-seated moves the gap follows only from readings, never from this.
enum class Layout { Unknown, A, B, C };

// What joins the two parts of the control. The first three are ball joints, by what holds the plunger home;
// of the kinds each is asked its own questions (core/rigging/joint_asks.h).
enum class CouplingKind {
    Sleeve,
    Pin,
    SleeveAndPin,
    ByItself,     // when the parts are rigged, as many tailplanes and wing roots do: no leaf goes anywhere
    WaterBallast, // the line or the rod of a dump valve
    Other,
};

constexpr bool isBallJoint(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
    case CouplingKind::Pin:
    case CouplingKind::SleeveAndPin:
        return true;
    case CouplingKind::ByItself:
    case CouplingKind::WaterBallast:
    case CouplingKind::Other:
        break;
    }
    return false;
}

// What there is at a coupling that is no ball joint; a ball joint has all three.
struct CouplingParts
{
    bool gap = false; // a leaf goes in somewhere; never where it connects by itself
    bool pull = true; // there is something to pull
    bool securing = false;

    constexpr bool operator==(const CouplingParts&) const = default;
};

// Where the coupling stands on the plan view: x -1 left wing tip to +1 right, y 0 nose to 1 tail.
struct PlanPlace
{
    double x = 0;
    double y = 0;
};

// One joint of a control of one airframe.
struct Coupling
{
    CouplingId id; // null until saved
    AirframeId airframe;
    std::string name;
    Circuit circuit = Circuit::Other;
    std::string otherCircuit; // in words what no kind names; empty when nobody said
    Side side = Side::None;
    std::optional<PlanPlace> place;
    std::string access; // from above by the hatch, fin top, ...
    AccessSide seenFrom = AccessSide::Unknown;
    AccessSide mirrorFrom = AccessSide::Unknown; // where a mirror shows what is hidden; unknown: nobody said
    std::string leafPlace;                       // where the leaf goes, from which side
    Layout layout = Layout::Unknown;
    CouplingKind kind = CouplingKind::Sleeve;
    CouplingParts parts; // as they were said; ask partsOf(), which knows what its kind must have
    int riggingOrder = 0;
    std::string note;
    bool inUse = true; // false once taken out of the list; its history stays
    Stamp stamp;
};

constexpr CouplingParts partsOf(CouplingKind kind, const CouplingParts& said)
{
    if (isBallJoint(kind))
        return {true, true, true};
    return {said.gap && kind != CouplingKind::ByItself, said.pull, said.securing};
}

inline CouplingParts partsOf(const Coupling& coupling)
{
    return partsOf(coupling.kind, coupling.parts);
}

// Without one there is no reading, no band and no verdict, and that is no lack.
inline bool hasGap(const Coupling& coupling)
{
    return partsOf(coupling).gap;
}

// Why a fitting began.
enum class FittingKind {
    First,       // with the coupling itself: nothing is known of a fitting before it
    Refitted,    // taken apart and set up again
    PartChanged, // ball, plunger, sleeve or spring
    Other,
};

// One period between refits of a coupling. A refit starts a new fitting, hence a new baseline.
struct Fitting
{
    FittingId id; // null until saved
    CouplingId coupling;
    Day begins;
    FittingKind kind = FittingKind::Other;
    std::string reason; // what was done, in words; empty where the kind says it all
    Stamp stamp;
};

} // namespace rig
