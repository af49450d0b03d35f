#include "core/rigging/connected.h"

#include "core/airframe/saved_before.h"

#include <algorithm>

namespace rig {

const SideConnected* statedFor(Side side, std::span<const SideConnected> stated)
{
    const SideConnected* last = nullptr;
    for (const SideConnected& one : stated)
        if (one.side == side && (!last || savedBefore(*last, one)))
            last = &one;
    return last;
}

std::vector<PersonId> whoConnected(Side side, std::span<const SideConnected> stated)
{
    const SideConnected* last = statedFor(side, stated);
    return last ? last->persons : std::vector<PersonId>{};
}

std::vector<Side> sidesOf(std::span<const Coupling> couplings)
{
    std::vector<Side> sides;
    for (const Side side : {Side::Left, Side::Right, Side::None})
        if (std::ranges::any_of(couplings,
                                [side](const Coupling& one) { return one.inUse && one.side == side; }))
            sides.push_back(side);
    return sides;
}

Independence independenceOf(PersonId person, std::span<const Side> sides,
                            std::span<const SideConnected> stated)
{
    Independence found;
    for (const Side side : sides) {
        const std::vector<PersonId> who = whoConnected(side, stated);
        if (who.empty())
            found.unknown.push_back(side);
        else if (std::ranges::find(who, person) != who.end())
            found.connected.push_back(side);
    }
    return found;
}

} // namespace rig
