#pragma once

#include "app/bench/draws.h"
#include "core/review/airframe_review.h"

namespace rig::bench {

// An invented coupling with its baseline, and what is read at riggings after it.
class InventedCoupling
{
public:
    InventedCoupling(int baselineReadings, double sigma, const ReadingKind& kind, std::uint64_t seed);

    // One rigging more, its gap so far from the baseline's mean, its scatter so many times the baseline's.
    void rig(double shift, double timesScatter = 1);
    FittingMovement movement() const; // over everything since the baseline

private:
    Draws m_draws;
    double m_sigma;
    ReadingKind m_kind;
    double m_mean;
    CouplingReadings m_all;
};

// The facts of an invented airframe: each coupling with a baseline of 12, then read at every rigging, one a day.
AirframeFacts inventedAirframe(int couplings, int riggings, std::uint64_t seed);

} // namespace rig::bench
