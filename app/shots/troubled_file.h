#pragma once

#include "core/clock.h"
#include "core/demo/language.h"
#include "core/result.h"

#include <string>

namespace rig {

// The demonstration in one language, in a new file at `path`, in UTF-8, with what the pages beside the
// moments are for: dated copies beside it, what two laptops did apart and nobody has decided, and a fact that
// another program changed. `now`: the end of the last season. What goes wrong is of the disk.
Outcome writeTroubledFile(const std::string& path, const Clock& now, demo::Language language);

} // namespace rig
