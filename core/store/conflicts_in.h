#pragma once

#include "core/review/conflicts.h"
#include "core/store/connection.h"
#include "core/store/records.h"

#include <vector>

namespace rig {

// What was decided apart on two computers and by nobody since.
Result<std::vector<Conflict>> openConflictsIn(StoreFile::Connection& connection);

// Brings what all readers of facts go by up to date with the decisions that stand in the file.
Outcome readDecided(StoreFile::Connection& connection);

// Keeps a decision. Of two corrections that do not both hold the other one is struck with it.
Outcome decide(Records& records, const Decision& decision);

} // namespace rig
