#pragma once

#include "core/result.h"
#include "core/review/conflicts.h"
#include "core/store/connection.h"

#include <vector>

namespace rig {

// What was decided apart on two computers and by nobody since.
Result<std::vector<Conflict>> openConflictsIn(StoreFile::Connection& connection);

Result<std::vector<ToldConflict>> toldConflictsIn(StoreFile::Connection& connection);

// What persons decided of such, in the order of saving; of several decisions on one the last.
Result<std::vector<ToldDecision>> toldDecisionsIn(StoreFile::Connection& connection);

// Brings what all readers of facts go by up to date with the decisions that stand in the file.
Outcome readDecided(StoreFile::Connection& connection);

} // namespace rig
