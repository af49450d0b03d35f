#pragma once

#include "app/bench/coverage.h"

namespace rig::bench {

// What becomes of the drift flag (docs/method.md C) over many invented couplings of one kind.
struct Flags
{
    double within20 = 0;  // share flagged within twenty readings after freezing
    double within100 = 0; // within a hundred
};

// The whole chain: baseline, band, scores of a hundred later readings, EWMA with the limit of that many
// baseline readings. Every later reading is `shift` mm off the baseline's mean; 0 gives the false alarms.
Flags flagsOf(const Coupling& coupling, double shift, int baselines, std::uint64_t seed);

} // namespace rig::bench
