#pragma once

#include "core/rigging/reading.h"

namespace rig {

// What a reading counts for, by why it was taken.
struct CountsAs
{
    bool band = false;     // a locked one may make the band
    bool judged = false;   // a locked one is judged against the band
    bool rigging = false;  // it belongs to a rigging, which is counted and looked back on
    bool ownTrend = false; // it is drawn in the coupling's history
};

// The one place that decides.
constexpr CountsAs countsAs(Purpose purpose)
{
    switch (purpose) {
    case Purpose::Rigging:
        return {.judged = true, .rigging = true, .ownTrend = true};
    case Purpose::Baseline:
        return {.band = true, .judged = true, .ownTrend = true};
    case Purpose::Demonstration:
        return {};
    }
    return {};
}

constexpr bool mayMakeBand(const Reading& reading)
{
    return countsAs(reading.purpose).band && reading.state == SeatState::Locked;
}

constexpr bool isHeldAgainstBand(const Reading& reading)
{
    return countsAs(reading.purpose).judged && reading.state == SeatState::Locked;
}

constexpr bool isLockedAtRigging(const Reading& reading)
{
    return countsAs(reading.purpose).rigging && reading.state == SeatState::Locked;
}

// At a rigging it was found so.
constexpr bool wasShownPartSeated(const Reading& reading)
{
    return !countsAs(reading.purpose).rigging && reading.state == SeatState::PartSeated;
}

} // namespace rig
