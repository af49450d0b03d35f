#pragma once

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

// The way the joint is secured after the plunger is home.
enum class Securing { Sleeve, Pin, SleeveAndPin };

// Where the coupling stands on the plan view: x -1 left wing tip to +1 right, y 0 nose to 1 tail.
struct PlanPlace
{
    double x = 0;
    double y = 0;
};

// One ball-and-socket joint of one airframe.
struct Coupling
{
    CouplingId id; // null until saved
    AirframeId airframe;
    std::string name;
    Circuit circuit = Circuit::Other;
    std::string otherCircuit; // in words what no kind names; empty when nobody said
    Side side = Side::None;
    std::optional<PlanPlace> place;
    std::string access;    // from above by the hatch, fin top, ...
    std::string leafPlace; // where the leaf goes, from which side
    Layout layout = Layout::Unknown;
    Securing securing = Securing::Sleeve;
    int riggingOrder = 0;
    std::string note;
    bool inUse = true; // false once taken out of the list; its history stays
    Stamp stamp;
};

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
