#pragma once

#include "core/clock.h"
#include "core/rigging/reading.h"
#include "core/rigging/rigging_record.h"

#include <chrono>
#include <optional>

namespace rig {

// A table tells a day, and a time only where somebody wrote it down. Without one noon stands in the file, so
// that the day is the right one wherever it is read. Noon that was written down is told from it by the offset
// from UTC, of which a table says nothing.
inline Moment momentOf(Day day, std::optional<std::chrono::seconds> time)
{
    Moment when = noonOf(day);
    constexpr std::chrono::seconds kNoon = std::chrono::hours{12};
    if (!time)
        return when;
    if (*time == kNoon)
        return {when.utcSeconds - 1, 1};
    when.utcSeconds += (*time - kNoon).count();
    return when;
}

inline bool isTimeTold(const Moment& ofATable)
{
    return ofATable.offsetSeconds != 0 || ofATable.utcSeconds != noonOf(ofATable.localDay()).utcSeconds;
}

// Whether it is known when on its day it was read: of every reading that was taken with the program.
inline bool isTimeKnown(const Reading& reading)
{
    return reading.technique != Technique::Table || isTimeTold(reading.when);
}

// Likewise when a rigging began.
inline bool isTimeKnown(const RiggingRecord& record)
{
    return record.origin != RecordOrigin::ImportedTable || isTimeTold(record.begins);
}

} // namespace rig
