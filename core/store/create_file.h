#pragma once

#include "core/result.h"
#include "core/store/store_file.h"

#include <functional>
#include <memory>
#include <string>

namespace rig {

// A new empty file with the layout of `version`; leaves nothing behind when it cannot be made.
Result<std::unique_ptr<StoreFile::Connection>> createFile(const std::string& path, int version);

// Makes a file at `path`, which stands there once `make` has filled the one whose name it is given: whoever
// is killed meanwhile leaves nothing under the name that is wanted. FileExists when something stands at
// `path`; where `make` fails nothing is left of it.
Outcome makeUnderAnotherName(const std::string& path,
                             const std::function<Outcome(const std::string& making)>& make);

} // namespace rig
