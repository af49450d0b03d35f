#pragma once

#include "core/lesson/cutaway.h"

#include <numbers>

namespace rig {

inline constexpr double kCutawaySlant = 35 * std::numbers::pi / 180; // of layout C
// Sleeve pushed back per unit of a slanting plunger, by the bevel of its tab.
inline constexpr double kCutawaySlantGain = 1.6;

// The shape that one coupling has in all its states.
struct CutawayShape
{
    Layout layout = Layout::C;
    GapSide side = GapSide::Larger;
    bool pushesSleeve = false; // layout A with a larger gap: the tab takes the sleeve along
    double lockedMm = 0;
    double partMm = 0;
    double unitsPerMm = 1;
    double travel = 0;
    double slant = 0; // of the plunger's way, above the rod's direction
    double sign = 1;  // +1 the plunger backs to the right, -1 to the left
    double angle = 0; // at which nose and ball meet at home
    LessonPoint noseHome;
    double ballTop = 0; // y of the ball's middle where its widest line stands at the nose
    double housingEnd = 26;
};

CutawayShape cutawayShape(const CutawayJoint& joint);

// How far back the ball holds the plunger: the nose, on its way, just touches it.
double heldBack(const CutawayShape& shape, double ballY);

} // namespace rig
