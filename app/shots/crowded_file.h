#pragma once

#include "core/clock.h"
#include "core/result.h"

#include <string>

namespace rig {

// A new file at `path`, in UTF-8, in which everything is as long and as much as people have it: names of
// forty letters, twenty couplings, forty leaves, fifteen people. What goes wrong is of the disk.
Outcome writeCrowdedFile(const std::string& path, const Clock& now);

} // namespace rig
