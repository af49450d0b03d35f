#pragma once

#include "core/airframe/coupling.h"
#include "core/rigging/reading.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// The readings that a fitting's band is made of, frozen with two names. Later readings do not move it.
struct FrozenBaseline
{
    BaselineId id; // null until saved
    FittingId fitting;
    std::vector<ReadingId> readings;
    PersonId first;
    PersonId second;
    Stamp stamp;
};

// The newest reading of each chain of corrections, unless it was struck: nothing then takes its place. The
// order stays.
std::vector<Reading> standing(std::span<const Reading> all, std::span<const Exclusion> exclusions);

// Baseline readings of one fitting that make its band: the frozen list if there is one, otherwise every
// standing, locked baseline reading that nobody excluded.
std::vector<Reading> admittedReadings(FittingId fitting, std::span<const Reading> all,
                                      std::span<const Exclusion> exclusions,
                                      std::span<const FrozenBaseline> frozen);

// The fitting that holds on a day: the latest that begins on or before it; the first when all begin later.
std::optional<Fitting> fittingOn(Day day, CouplingId coupling, std::span<const Fitting> fittings);

} // namespace rig
