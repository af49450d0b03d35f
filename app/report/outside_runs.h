#pragma once

#include "core/review/airframe_review.h"
#include "core/review/judged_readings.h"

#include <span>
#include <vector>

namespace rig::engineer {

// Readings of one coupling that lay outside its band on the same side, or were found part-seated, one after
// the other.
struct OutsideStories
{
    std::vector<const OutsideStory*> stories; // oldest first, never empty

    const OutsideStory& first() const { return *stories.front(); }
    const OutsideStory& last() const { return *stories.back(); }
    bool isOne() const { return stories.size() == 1; }
};

// The stories of a coupling in runs, oldest first: on one fitting, with no other reading of a rigging that
// stands between them. What was corrected or struck stands alone and parts no run. `judged` are readings of
// any coupling, oldest first; the stories outlive what is returned.
std::vector<OutsideStories> outsideRunsOf(const CouplingReview& coupling,
                                          std::span<const JudgedReading> judged);

} // namespace rig::engineer
