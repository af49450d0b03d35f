#pragma once

#include "core/measure/gap_interval.h"

#include <set>
#include <span>

namespace rig {

// The readings that the others of the same baseline make strangers (docs/method.md A6, outlier). A person
// measures again or excludes them with a reason; the program drops none. Two alike hide each other. Empty
// below five readings, and where the readings have no posterior.
std::set<GapInterval> unlikeOthers(std::span<const GapInterval> readings);

} // namespace rig
