#pragma once

#include "core/store/records.h"

#include <string>

namespace rig {

// The file's facts as tables: UTF-8, parted by commas, RFC 4180, lengths in millimetres with a point,
// whatever the computer's own habits.

// Every reading, in the form that importReadings() takes; it passes over those that do not stand.
Result<std::string> writeReadings(const Records& records);
Result<std::string> writeCouplings(const Records& records); // with their fittings, one line each
Result<std::string> writeEvents(const Records& records);
Result<std::string> writeJointPlays(const Records& records);
// Who was signed off by whom, and who learned at which rigging: to be read. What somebody practised goes out
// nowhere, whether or not they agreed.
Result<std::string> writeSignOffs(const Records& records);
Result<std::string> writeSupervised(const Records& records);
Result<std::string> writePeople(const Records& records);
Result<std::string> writeGauges(const Records& records); // with their checks, one line each
// Up to the end of a day, over the whole file: for each coupling how often it was read, how often outside its
// band, found part-seated, and answered with no. To be read, by nobody's name.
Result<std::string> writeCounts(const Records& records, Day today);

} // namespace rig
