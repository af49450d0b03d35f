#pragma once

#include "core/review/airframe_facts.h"

#include <cstdint>

namespace rig::bench {

// The facts of an invented airframe: each coupling with a baseline of 12, then read at every rigging, one a
// day.
AirframeFacts inventedAirframe(int couplings, int riggings, std::uint64_t seed);

} // namespace rig::bench
