#pragma once

#include "core/review/record_review.h"
#include "core/rigging/taken_back.h"

namespace rig {

// What somebody has said of the reading that opened this question: that it was a slip. Empty while another
// reading of its rigging lies outside and nobody has taken that one back.
std::optional<TakenBack> slipBehind(const Question& question, std::span<const Reading> readings,
                                    std::span<const Exclusion> exclusions, const Judge& judge);

// The last of them, where everything outside that stops this coupling was a slip. The stop stays all the
// same, until a named person has said what it was.
std::optional<TakenBack> slipThatStops(std::span<const QuestionStory> questions, CouplingId coupling,
                                       std::span<const Reading> readings,
                                       std::span<const Exclusion> exclusions, const Judge& judge);

} // namespace rig
