#pragma once

#include "core/review/airframe_review.h"

namespace rig {

// Every reading of a rigging in the period that lies outside its band, superseded, struck or not, and every
// one that was found part-seated there. A correction that only names the state of a reading belongs to that
// reading's story. Oldest first.
std::vector<OutsideStory> outsideStories(const AirframeFacts& facts, const AirframeReadings& all,
                                         const RiggingNumbers& numbers, const ReviewPeriod& period);

// Of those before the period: of the fitting that holds at its end, locked, and by then neither corrected nor
// struck, and with nothing that says what it was: no question about it that is open or resolved, no finding
// noted of its coupling since. Oldest first.
std::vector<OutsideStory> unexplainedBefore(const AirframeFacts& facts, const AirframeReadings& all,
                                            const RiggingNumbers& numbers, const ReviewPeriod& period);

// What brings each of a coupling's stories inside its band again, by what the season tells of its readings.
void tellWhy(const CouplingReadings& all, CouplingReview& coupling);

std::vector<OutsideRun> outsideRunsOf(const std::vector<OutsideStory>& stories, const CouplingReadings& all);

} // namespace rig
