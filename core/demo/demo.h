#pragma once

#include "core/result.h"

namespace rig {

class StoreFile;

// Fills a new, empty file with an invented hangar: three airframes, seven people, five gauges, and the
// seasons 2024 to 2026 with all that happened in them. The same facts, with the same ids, every time. One
// transaction.
Outcome buildDemo(StoreFile& file);

} // namespace rig
