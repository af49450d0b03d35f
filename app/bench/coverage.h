#pragma once

#include "app/bench/draws.h"

namespace rig::bench {

// A coupling without fault: normal gaps, `readings` of them make the baseline.
struct Coupling
{
    int readings = 0;
    double sigma = 0; // mm
    ReadingKind kind = kExact;
};

// Means over invented baselines (docs/method.md A).
struct Coverage
{
    double innerContent = 0; // share of true gaps within the band that promises 95 %
    double innerWidth = 0;   // mm
    double outerContent = 0; // within the band that promises 99.73 %
    double outerWidth = 0;
    // Shares of later readings by the same gauge and their grades; 0 for exact readings' cannotTell.
    double nearEdgeOrOutside = 0;
    double outside = 0;
    double cannotTell = 0;
};

// Each baseline lies at a random place against the leaf grid. `baselines` > 0.
Coverage coverageOf(const Coupling& coupling, int baselines, std::uint64_t seed);

} // namespace rig::bench
