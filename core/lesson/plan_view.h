#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace rig {

// A glider from above, nose up, as plain numbers: x -1 left wing tip to +1 right, y 0 nose to 1 tail. Any
// glider and none in particular.

struct PlanGlider
{
    double spanMetres = 15;
    TailForm tail = TailForm::T;
    int panels = 2; // of the whole wing, 1 to 8
};

// What was said of an airframe; where nobody said, the usual.
PlanGlider gliderOf(const Airframe& airframe);

inline constexpr double kShortestSpan = 8; // metres; what is drawn, whatever was typed
inline constexpr double kLongestSpan = 32;
inline constexpr int kMostPanels = 8;

// Length over span, as gliders of that span usually are.
double usualLength(const PlanGlider& glider);

struct PlanOutlines
{
    std::vector<PlanPlace> fuselage;
    std::vector<PlanPlace> wing;
    std::vector<std::vector<PlanPlace>> tail;            // one surface, or the two of a V
    std::vector<std::pair<PlanPlace, PlanPlace>> joints; // across the wing, between its panels
};

PlanOutlines outlinesOf(const PlanGlider& glider);

// Where a coupling of that circuit usually is, until somebody says where this one is: at the wing root the
// flap innermost, then the airbrake, then the aileron.
PlanPlace usualPlace(Circuit circuit, Side side);

// Marks in a picture, moved apart until no two lie nearer than that. What stands alone stays where it is.
// Within 0 to `width` and 0 to `height`, and each between its own `leftmost` and `rightmost`.
struct PlanPoint
{
    double x = 0;
    double y = 0;
    double leftmost = -1e9;
    double rightmost = 1e9;
};
std::vector<PlanPoint> pushedApart(std::vector<PlanPoint> marks, double apart, double width, double height);

enum class PlanWay { Left, Right, Up, Down };

// The nearest mark in that direction, one straight ahead before one far aside; nothing when there is none.
std::optional<std::size_t> nearestOn(PlanWay way, const std::vector<PlanPoint>& marks, std::size_t from);

// A place on the plan, and nowhere beside it.
PlanPlace withinPlan(PlanPlace place);

} // namespace rig
