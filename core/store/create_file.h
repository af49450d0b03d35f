#pragma once

#include "core/result.h"
#include "core/store/store_file.h"

#include <memory>
#include <string>

namespace rig {

// A new empty file with the layout of `version`; leaves nothing behind when it cannot be made.
Result<std::unique_ptr<StoreFile::Connection>> createFile(const std::string& path, int version);

} // namespace rig
