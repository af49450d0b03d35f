#pragma once

#include "core/store/records.h"

namespace rig {

// Opens a question, unless the same is open already. Meant to stand in one transaction with what asks it.
Outcome ask(Records& records, const Question& question);

} // namespace rig
