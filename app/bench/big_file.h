#pragma once

#include "core/airframe/ids.h"
#include "core/result.h"
#include "core/store/store_file.h"

#include <string>

namespace rig::bench {

// How much an invented file holds. Every airframe has the same share of the readings.
struct BigFile
{
    int airframes = 1;
    int readings = 0; // of all airframes together
};

inline constexpr int kCouplingsEach = 12; // an airframe

// The day on which the work on such a file is timed: the day after its last rigging.
Moment dayAfter();

// Makes the file, with a record for each rigging, closed with two names. Each fact is known to be right, so
// none is checked.
Outcome makeBigFile(const std::string& path, const BigFile& wanted);

} // namespace rig::bench
