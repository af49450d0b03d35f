#pragma once

#include "core/airframe/circuit.h"
#include "core/airframe/coupling.h"
#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/measure/gap.h"

#include <cstdint>
#include <optional>
#include <string>

namespace rig {

using SurfaceKind = Circuit;

// How the manual gives deflections: an angle, or the straight line between two places of the trailing edge.
enum class DeflectionUnit { Degrees, Millimetres };

// Thousandths of a degree or of a millimetre, as the surface's unit says.
struct Deflection
{
    std::int32_t thousandths = 0;

    constexpr auto operator<=>(const Deflection&) const = default;
    constexpr double inUnits() const { return thousandths / 1000.0; }
};

// What the manual says of one direction; never a default of ours.
struct ManualDeflection
{
    Deflection nominal;
    Deflection tolerance; // plus or minus
};

// A control surface, or whatever else a cockpit control moves, as the control check goes through it.
struct Surface
{
    SurfaceId id; // null until saved
    AirframeId airframe;
    std::string name;
    SurfaceKind kind = SurfaceKind::Other;
    Side side = Side::None;
    int order = 0;
    std::string senseCall; // what is called aloud; empty: the usual sentence of its kind
    DeflectionUnit unit = DeflectionUnit::Degrees;
    std::optional<Gap> measuredAt; // hinge axis to the place of the trailing edge where a ruler is held
    std::optional<ManualDeflection> up;
    std::optional<ManualDeflection> down;
    std::optional<Deflection> mostPlay; // free play that the manual names
    std::string manualReference;        // page and revision that the figures were taken from
    bool inUse = true;
    Stamp stamp;
};

} // namespace rig
