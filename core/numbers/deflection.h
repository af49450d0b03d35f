#pragma once

#include <optional>

namespace rig::numbers {

// How the way of a point that turns about an axis was taken. At 30 degrees the three differ by up to 5 %.
enum class Travel {
    StraightLine,  // a ruler between the two places: 2 r sin(angle / 2)
    Perpendicular, // square to the place it started from: r sin(angle)
    Arc,           // along the way itself: r angle
};

// The way of a point `radius` away from the axis when it turns by `degrees`; signed like the angle, in the
// unit of the radius. Plane trigonometry. Empty for a radius that is not above 0, for anything not finite,
// and where the way does not tell the angle any more: beyond half a turn in a straight line, beyond a quarter
// square to the start.
std::optional<double> travelOf(double degrees, double radius, Travel kind);

// The angle in degrees that such a way means: 2 asin(t / 2r), asin(t / r), t / r. Empty for a radius that is
// not above 0, for anything not finite, and for a way that cannot be: longer than twice the radius in a
// straight line, longer than the radius square to the start.
std::optional<double> degreesOf(double travel, double radius, Travel kind);

} // namespace rig::numbers
