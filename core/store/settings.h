#pragma once

struct sqlite3;

namespace rig {

enum class ReadsDamage {
    No,
    Yes, // also a file that is shorter than its header says, and tables beside one that is described wrongly
};

// What holds for every connection before it reads anything: a file comes from anywhere, and what stands in it
// may neither run for ever nor reach beyond it. False when SQLite does not know one of them.
bool setUp(sqlite3* file, ReadsDamage damage = ReadsDamage::No);

} // namespace rig
