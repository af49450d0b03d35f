#pragma once

#include "core/rigging/connected.h"
#include "core/rigging/control_check.h"
#include "core/rigging/joint_play.h"
#include "core/rigging/question.h"
#include "core/rigging/reading.h"
#include "core/rigging/rigging_record.h"
#include "core/rigging/tick.h"

#include <optional>
#include <vector>

namespace rig {

// All that stands in one record, each in the order of saving.
struct RecordContent
{
    RiggingRecord record;
    std::vector<SideConnected> connected;
    std::vector<Check> checks;
    std::vector<Reading> readings;
    std::vector<Exclusion> exclusions; // of these readings: the struck ones
    std::vector<Interruption> interruptions;
    std::vector<SurfaceCheck> surfaceChecks;
    std::vector<SurfaceMeasure> surfaceMeasures;
    std::vector<RecordTick> ticks;
    std::vector<JointPlay> jointPlays;
    std::vector<QuestionStory> questions;
    std::optional<RecordClose> close;
};

} // namespace rig
