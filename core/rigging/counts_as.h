#pragma once

#include "core/rigging/reading.h"

#include <span>

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

// What an exclusion says of a reading that was taken at a rigging. It stays to be read, struck through, and
// so does any question it opened.
constexpr bool isStruckBy(const Reading& reading, const Exclusion& exclusion)
{
    return countsAs(reading.purpose).rigging && reading.id == exclusion.reading;
}

constexpr const Exclusion* strikeOf(const Reading& reading, std::span<const Exclusion> exclusions)
{
    for (const Exclusion& one : exclusions)
        if (isStruckBy(reading, one))
            return &one;
    return nullptr;
}

// At a rigging, after a “no”.
constexpr bool wasFoundNotLocked(const Reading& reading)
{
    return countsAs(reading.purpose).rigging && reading.state != SeatState::Locked;
}

// At a rigging it was found so.
constexpr bool wasShownPartSeated(const Reading& reading)
{
    return !countsAs(reading.purpose).rigging && reading.state == SeatState::PartSeated;
}

} // namespace rig
