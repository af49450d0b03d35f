#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/judged_readings.h"

#include <map>
#include <optional>
#include <vector>

namespace rig {

// Why the saving of a reading wants a second look. None of it need be wrong: it is told, not judged.
enum class SavedOddly {
    ShownOtherwise,  // another verdict was shown at the time than the same method gives now
    ClockSetBack,    // its saving has an earlier time than something that had been saved before it
    InAClosedRecord, // saved into a record that had been closed, and corrects nothing
};

struct OddlySaved
{
    SavedOddly why{};
    JudgedReading one;
};

// The closings of an airframe by their records: asked for each of its readings, of which there may be many.
class ClosedRecords
{
public:
    explicit ClosedRecords(const AirframeFacts& facts); // which outlive it

    // Saved into a record that had been closed, and corrects nothing.
    bool tookIn(const Reading& reading) const;

private:
    std::multimap<RecordId, const RecordClose*> m_closings;
};

// More than a day ahead of the clock, which no clock of another place is.
bool isOfTheFuture(const Stamp& stamp, Moment now);

// Of these readings, in their order; one that is odd in two ways comes twice.
std::vector<OddlySaved> oddlySaved(const AirframeFacts& facts, const std::vector<JudgedReading>& judged);

} // namespace rig
