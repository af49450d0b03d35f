#pragma once

#include "core/result.h"

#include <string>

struct sqlite3;

namespace rig {

// What SQLite reported last, as one of our kinds. `path` decides between a folder that refuses and other
// reasons.
Problem problemFrom(sqlite3* database, const std::string& path);

bool folderRefusesWriting(const std::string& path);
bool fileRefusesWriting(const std::string& path);

} // namespace rig
