#pragma once

#include "core/review/airframe_review.h"

#include <span>

namespace rig {

// One of the three that tell how the path moved.
bool isMovement(Sign sign);

// What stands out on a coupling whose other figures are filled in, gravest first.
std::vector<Sign> signsOf(const CouplingReview& coupling);
// What the signs make of a coupling whose readings by themselves are inside: the gravest of them that is more
// than a caution about how little is known. Inside where none is.
Says gravestTold(const CouplingReview& coupling);

// The called day of `shifts` on which the coupling was read last and went the way of the others; null where
// it was another day, or it did not go along.
const DayShift* togetherWith(const CouplingReview& coupling, std::span<const DayShift> shifts);
// Whether `shifts` call that rigging's day, and all couplings then went to that side.
bool wentWithAll(std::span<const DayShift> shifts, double rigging, Direction direction);
// Which of the stories are of a called day of `shifts`, and on the side to which all couplings then went.
void tellTogether(std::span<const DayShift> shifts, std::vector<OutsideStory>& stories);
// How many of the couplings that were read on that day went the same way.
int wentTogether(const DayShift& day);

// True when one's gravest sign is graver than the other's; where both move, when a larger chance of lying
// outside speaks for it, and else when a reading of it lay farther outside.
bool standsOutMore(const CouplingReview& one, const CouplingReview& other);

// Called days that the same offset explains, gravest first by their number.
std::vector<SharedShiftStory> sharedShiftStories(const std::vector<DayShift>& shifts,
                                                 const std::vector<GaugeCheck>& checks);

} // namespace rig
