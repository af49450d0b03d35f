#pragma once

#include "core/result.h"
#include "core/store/store_file.h"

#include <memory>
#include <string>

namespace rig {

// A new empty file with the layout of `version`; leaves nothing behind when it cannot be made.
Result<std::unique_ptr<StoreFile::Connection>> createFile(const std::string& path, int version);

// Gives what was made under another name the name that is wanted, unless that is taken: FileExists. What was
// made is removed where it cannot have it.
Outcome nameMade(const std::string& making, const std::string& path);

} // namespace rig
