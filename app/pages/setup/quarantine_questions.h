#pragma once

#include "core/store/records.h"

namespace rig {

// Asks about a gauge that a check has put in doubt: one question for each airframe that has readings taken
// with it from the doubted day on. Nothing is asked after a check that found it usable. Stands in one
// transaction with the check.
Outcome askAboutQuarantine(Records& records, const GaugeCheck& check);

} // namespace rig
