#pragma once

#include "core/rigging/question.h"
#include "core/rigging/reading.h"

#include <optional>
#include <span>

namespace rig {

// Why nothing else is asked of a joint: “no” was answered, or a reading lay outside its band, and no named
// person has said yet what it was. It is left as it is, whoever comes back to it.
struct JointStop
{
    std::optional<CheckKind> saidNo; // to this; empty: a reading outside

    bool operator==(const JointStop&) const = default;
};

// The first that is not resolved, of the questions asked about this coupling; a “no” before a reading.
std::optional<JointStop> stopAmong(std::span<const QuestionStory> questions, CouplingId coupling);

// Whether its gap may still be read as it was found after a “no”. What is read of an empty socket says
// nothing, and what stands with nothing but its pin missing was read before.
bool mayMeasureAsFound(const JointStop& stop);

// Who found what the question is about: the reader of the reading outside, or whoever answered. Empty where
// it is nobody's own finding. `readings`: those of its coupling.
std::optional<PersonId> finderOf(const Question& question, std::span<const Reading> readings);
// The same person found it and said what it was.
bool isOwnDecision(const QuestionStory& story, std::span<const Reading> readings);

} // namespace rig
