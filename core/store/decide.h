#pragma once

#include "core/store/records.h"

namespace rig {

// Keeps a decision. Of two corrections that do not both hold the other one is struck with it.
Outcome decide(Records& records, const Decision& decision);

} // namespace rig
