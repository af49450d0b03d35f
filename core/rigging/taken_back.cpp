#include "core/rigging/taken_back.h"

#include "core/rigging/counts_as.h"

#include <algorithm>

namespace rig {

std::optional<TakenBack> takenBack(const Reading& reading, std::span<const Reading> readings,
                                   std::span<const Exclusion> exclusions)
{
    std::optional<TakenBack> found;
    const Reading* now = &reading;
    // No more than there are readings: a file that names them in a ring is none of ours.
    for (std::size_t steps = 0; steps <= readings.size(); ++steps) {
        if (const Exclusion* strike = strikeOf(*now, exclusions))
            return TakenBack{reading, std::nullopt, strike->reason, strike->stamp};
        const auto next =
            std::ranges::find_if(readings, [now](const Reading& one) { return one.corrects == now->id; });
        if (next == readings.end())
            return found;
        now = &*next;
        found = TakenBack{reading, *now, now->note, now->stamp};
    }
    return found;
}

} // namespace rig
