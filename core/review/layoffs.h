#pragma once

#include "core/clock.h"
#include "core/rigging/rigging_record.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace rig {

// From so many weeks on a rigging is the first after a layoff: three months without rigging are what
// refreshers are commonly asked after (common practice, no published source).
inline constexpr int kLayoffWeeks = 12;

// How long the airframe had stood when a rigging began.
struct StoodBefore
{
    RecordId record;
    Day day{};                // of the rigging
    std::optional<Day> since; // of what was done on it before, a recheck too; empty for the first of the file
    bool isFirstOfYear = false; // no rigging of that year was before it; a recheck is none

    int days() const { return since ? static_cast<int>((day - *since).count()) : 0; }
    int weeks() const { return days() / 7; }
    bool isAfterLayoff() const { return weeks() >= kLayoffWeeks; }
    // The list of the season is asked.
    bool isFirstOfSeason() const { return isFirstOfYear || isAfterLayoff(); }
};

// Of each rigging that was not abandoned, in the order they began. A table brought in counts as one.
std::vector<StoodBefore> stoodBefore(std::span<const RiggingRecord> all,
                                     std::span<const RecordClose> closings);

// Of every record, also of those that are no riggings: rechecks, and what was abandoned.
std::map<RecordId, StoodBefore> stoodBeforeEach(std::span<const RiggingRecord> all,
                                                std::span<const RecordClose> closings);
// Likewise of one.
StoodBefore stoodBefore(const RiggingRecord& record, std::span<const RiggingRecord> all,
                        std::span<const RecordClose> closings);

} // namespace rig
