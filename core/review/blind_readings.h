#pragma once

#include "core/review/airframe_facts.h"
#include "core/rigging/record_content.h"

#include <span>
#include <vector>

namespace rig {

// Couplings of a record that is open where the second person has yet to work without seeing the first result:
// the first person is done, or the second has begun, and the second has neither kept a reading
// of their own nor finished without one. Not where something stopped the joint: nobody reads it on then, and
// everybody has to know. Until the second inspection has begun, also not where something could not be seen:
// the first person goes for a mirror, and every page says so. `isSecondAtPage`: in this window it has, though
// nothing is answered yet. `questions` and `couplings` are the airframe's.
std::vector<CouplingId> closedToTheSecond(const RecordContent& content,
                                          std::span<const QuestionStory> questions,
                                          std::span<const Coupling> couplings, bool isSecondAtPage);

// Without what the first person read there in this record, without the play that was felt there, as it does
// not say in whose turn, and without what could not be seen there.
AirframeFacts withoutWhatIsClosed(AirframeFacts facts, const RecordContent& content,
                                  std::vector<CouplingId> closed);

} // namespace rig
