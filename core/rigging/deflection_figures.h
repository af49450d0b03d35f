#pragma once

#include "core/rigging/control_check.h"

#include <optional>
#include <span>

namespace rig {

// Measured deflections worked out. A figure in millimetres is the straight line a ruler shows between two
// places of the trailing edge; see core/numbers/deflection.h.

// The figure in the wanted unit. Empty when that takes a distance from the hinge that nobody gave, or when
// the two figures cannot be together.
std::optional<Deflection> inUnit(const SurfaceMeasure& measure, DeflectionUnit wanted);

// How far a figure lies beyond the manual's range: above 0 more than it, below 0 less, 0 in it.
Deflection beyondRange(Deflection figure, const ManualDeflection& manual);

// The latest of each, and what can be said of them together.
struct MeasuredSurface
{
    std::optional<SurfaceMeasure> play;
    std::optional<SurfaceMeasure> up;
    std::optional<SurfaceMeasure> down;

    bool isAny() const { return play || up || down; }
};

MeasuredSurface measuredOn(SurfaceId surface, std::span<const SurfaceMeasure> all);

// Up over down, in degrees where both can be had, else in the unit both have. Empty without both, or when
// there is no down at all.
std::optional<double> upOverDown(const MeasuredSurface& measured);

// The first less the second in degrees; empty when either cannot be had in degrees.
std::optional<Deflection> differenceInDegrees(const std::optional<SurfaceMeasure>& first,
                                              const std::optional<SurfaceMeasure>& second);

} // namespace rig
