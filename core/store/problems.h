#pragma once

#include "core/result.h"

#include <string>

class QSqlError;

namespace rig {

// What SQLite reported, as one of our kinds. `path` decides between a folder that refuses and other reasons.
Problem problemFrom(const QSqlError& error, const std::string& path);

bool folderRefusesWriting(const std::string& path);
bool fileRefusesWriting(const std::string& path);

} // namespace rig
