#pragma once

#include "core/airframe/access.h"
#include "core/lesson/cutaway.h"

#include <array>
#include <optional>
#include <vector>

namespace rig {

// From where a joint is looked at, as the cutaway lies: the ball goes in from above, the rod runs to the
// rear. What a coupling's access says in words is not this; somebody chooses the side once.
inline constexpr std::array kAccessSides{AccessSide::Above, AccessSide::Below, AccessSide::Left,
                                         AccessSide::Right, AccessSide::Front, AccessSide::Rear};

// What the look asks for.
enum class JointPart { Ball, PlungerNose, Tab, WitnessHole, SleeveStop, Thread, Gap };

struct HatchSight
{
    AccessSide side = AccessSide::Above;
    std::optional<AccessSide> mirror; // the side that a mirror brings into sight
    bool torch = false;

    bool operator==(const HatchSight&) const = default;
};

AccessSide usualMirror(AccessSide side);

enum class PartSight {
    Seen,
    Dark, // in the line of sight, and too deep or too far round to be seen without a light
    Hidden,
};

PartSight sightOf(JointPart part, const Cutaway& cutaway, const HatchSight& sight);

// Each part that this joint has, in one of the three.
struct HatchParts
{
    std::vector<JointPart> seen;
    std::vector<JointPart> dark;
    std::vector<JointPart> hidden;
};

HatchParts hatchParts(const Cutaway& cutaway, const HatchSight& sight);

// Whether an eye can tell the two by this part.
bool looksDifferent(JointPart part, const Cutaway& one, const Cutaway& other);

// Whether the state can be told from here at all: some part in sight looks other than when locked. That it is
// locked can be told only from where each of the other three states would show.
bool tellable(const CutawayJoint& joint, const CutawayPose& pose, const HatchSight& sight);

} // namespace rig
