#pragma once

#include "core/lesson/learning_facts.h"
#include "core/lesson/sign_off_standing.h"
#include "core/review/person_riggings.h"

#include <map>
#include <vector>

namespace rig {

// How persons stand on one airframe, of whom there is anything to tell.
using PersonStandings = std::map<PersonId, SignOffStanding>;

// Nobody is told of an airframe whose owner does without: only once somebody was ever signed off on it or
// supervised at it; else those alone who practised on it. Whoever signs for others is not told of either.
bool tellsOfAnybody(const LearningFacts& learning);
PersonStandings personStandingsOf(const LearningFacts& learning, const AirframeFacts& facts,
                                  std::span<const PartInRigging> parts, Day today);

} // namespace rig
