#include "core/baseline/admitted.h"

#include "core/airframe/saved_before.h"
#include "core/rigging/counts_as.h"

#include <algorithm>
#include <set>

namespace rig {

std::vector<Reading> standing(std::span<const Reading> all, std::span<const Exclusion> exclusions)
{
    std::set<ReadingId> superseded;
    for (const Reading& reading : all)
        if (reading.corrects)
            superseded.insert(*reading.corrects);
    std::set<ReadingId> excluded;
    for (const Exclusion& exclusion : exclusions)
        excluded.insert(exclusion.reading);
    std::vector<Reading> kept;
    std::ranges::copy_if(all, std::back_inserter(kept), [&](const Reading& reading) {
        const bool isStruck = countsAs(reading.purpose).rigging && excluded.contains(reading.id);
        return !isStruck && !superseded.contains(reading.id);
    });
    return kept;
}

std::vector<Reading> admittedReadings(FittingId fitting, std::span<const Reading> all,
                                      std::span<const Exclusion> exclusions,
                                      std::span<const FrozenBaseline> frozen)
{
    std::set<ReadingId> excluded;
    for (const Exclusion& exclusion : exclusions)
        excluded.insert(exclusion.reading);

    const FrozenBaseline* fixed = nullptr;
    for (const FrozenBaseline& one : frozen)
        if (one.fitting == fitting && (!fixed || savedBefore(*fixed, one)))
            fixed = &one;
    const auto belongs = [&](const Reading& reading) {
        if (fixed)
            return std::ranges::find(fixed->readings, reading.id) != fixed->readings.end();
        return reading.fitting == fitting && mayMakeBand(reading) && !excluded.contains(reading.id);
    };
    // A frozen list names readings as they stood; a later correction does not move a frozen band.
    const std::vector<Reading> candidates =
        fixed ? std::vector<Reading>(all.begin(), all.end()) : standing(all, exclusions);
    std::vector<Reading> admitted;
    std::ranges::copy_if(candidates, std::back_inserter(admitted), belongs);
    return admitted;
}

std::optional<Fitting> fittingOn(Day day, CouplingId coupling, std::span<const Fitting> fittings)
{
    const Fitting* holding = nullptr;
    const Fitting* first = nullptr;
    const auto later = [](const Fitting& a, const Fitting* b) {
        return !b || b->begins < a.begins || (b->begins == a.begins && savedBefore(*b, a));
    };
    for (const Fitting& one : fittings) {
        if (one.coupling != coupling)
            continue;
        if (!first || !later(one, first))
            first = &one;
        if (one.begins <= day && later(one, holding))
            holding = &one;
    }
    if (holding)
        return *holding;
    if (first)
        return *first;
    return std::nullopt;
}

} // namespace rig
