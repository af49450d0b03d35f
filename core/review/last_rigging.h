#pragma once

#include "core/review/airframe_facts.h"

#include <optional>
#include <vector>

namespace rig {

// A record and how it ended; both belong to the facts.
struct EndedRigging
{
    const RiggingRecord* record = nullptr;
    const RecordClose* close = nullptr;

    const RiggingRecord& rigging() const { return *record; }
    bool isAbandoned() const { return close->closing == Closing::Abandoned; }
    // When it came to its end: one from paper on the day that stood on the paper, whenever it was typed in.
    Moment when() const { return record->isFromPaper() ? record->begins : close->stamp.when; }
};

// In the order of their closings.
std::vector<EndedRigging> endedRiggings(const AirframeFacts& facts);

enum class Ended { ByPeople, OrLeftBehind };

// The last one in the order of rigging, however late it was typed in.
std::optional<EndedRigging> lastEnded(const AirframeFacts& facts, Ended which);

} // namespace rig
