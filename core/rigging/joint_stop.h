#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/surface.h"
#include "core/rigging/question.h"
#include "core/rigging/reading.h"

#include <optional>
#include <span>

namespace rig {

// A surface of a joint's circuit for which “no” was answered in the control check.
struct SurfaceStop
{
    SurfaceId surface;
    SurfaceCheckKind saidNo = SurfaceCheckKind::Sense; // to this
    bool didNothing = false;                           // instead of moving otherwise than expected

    bool isWrongMovement() const { return isOfSense(saidNo); }
    bool operator==(const SurfaceStop&) const = default;
};

// Why nothing else is asked of a joint: “no” was answered, a reading lay outside its band, or a surface of
// its circuit was found wrong in the control check, and no named person has said yet what it was. It is left
// as it is, whoever comes back to it.
struct JointStop
{
    std::optional<CheckKind> saidNo;         // to this; empty: a reading outside, or a surface
    std::optional<SurfaceStop> surface = {}; // nothing was found at the joint itself

    bool isOutside() const { return !saidNo && !surface; }

    bool operator==(const JointStop&) const = default;
};

// The first that is not resolved, of the questions asked about this coupling; a “no” before a reading.
std::optional<JointStop> stopAmong(std::span<const QuestionStory> questions, CouplingId coupling);
// Likewise, and where there is none that of a surface of its circuit, a wrong movement before any other.
// `surfaces`: those of the airframe. One that could only not be seen stops no joint.
std::optional<JointStop> stopAmong(std::span<const QuestionStory> questions, const Coupling& coupling,
                                   std::span<const Surface> surfaces);

// A further reading is taken of it where only a reading has stopped it.
bool mayReadAgain(const std::optional<JointStop>& stop);

// Whether its gap may still be read as it was found after a “no”. What is read of an empty socket says
// nothing, and what stands with nothing but its pin missing was read before.
bool mayMeasureAsFound(const JointStop& stop);

// Who found what the question is about: the reader of the reading outside, or whoever answered. Empty where
// it is nobody's own finding. `readings`: those of its coupling.
std::optional<PersonId> finderOf(const Question& question, std::span<const Reading> readings);
// The same person found it and said what it was.
bool isOwnDecision(const QuestionStory& story, std::span<const Reading> readings);

} // namespace rig
