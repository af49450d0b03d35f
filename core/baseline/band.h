#pragma once

namespace rig {

// Where a central share of locked readings of this fitting falls. Millimetres, raw: a lower edge may be
// negative and is then shown as 0, but judged as it is.
struct BandEdges
{
    double lower = 0;
    double upper = 0;
};

// One fitting's own past, never a limit. Content as in docs/method.md: inner 95 %, outer 99.73 %.
struct Band
{
    BandEdges inner;
    BandEdges outer;
    double median = 0;  // of the predictive distribution
    double scatter = 0; // posterior mean of sigma, rigging to rigging
    int readings = 0;
    bool scatterAtCap = false; // wilder than the method can follow

    bool isThin() const { return readings < 10; }
};

} // namespace rig
