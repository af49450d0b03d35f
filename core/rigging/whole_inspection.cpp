#include "core/rigging/whole_inspection.h"

#include "core/rigging/rigging_flow.h"

#include <algorithm>

namespace rig {

std::optional<InspectedBy> whollyInspected(RecordContent content, const Coupling& coupling,
                                           const SaveOrder& since)
{
    const auto isBefore = [&since](const auto& fact) { return saveOrderOf(fact) < since; };
    std::erase_if(content.checks, isBefore);
    std::erase_if(content.readings, isBefore);
    const CouplingFlow first = flowOf(content, coupling, Turn::First);
    const CouplingFlow second = flowOf(content, coupling, Turn::Second);
    if (!first.isDone() || !second.isDone() || first.hasDoubt() || second.hasDoubt())
        return std::nullopt;
    const Check* last[2] = {nullptr, nullptr};
    for (const Check& check : content.checks)
        if (check.coupling == coupling.id)
            last[check.turn == Turn::First ? 0 : 1] = &check;
    if (last[0]->person == last[1]->person)
        return std::nullopt;
    return InspectedBy{last[0]->person, last[1]->person, std::max(last[0]->when, last[1]->when)};
}

} // namespace rig
