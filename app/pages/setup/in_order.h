#pragma once

#include <algorithm>
#include <iterator>
#include <vector>

namespace rig {

// Couplings and surfaces each stand in an order that the owner chooses, counted from 1; `order` is the member
// that holds it.

// The place after the last, also of those taken out of use.
template <typename Thing> int nextInOrder(const std::vector<Thing>& things, int Thing::*order)
{
    int last = 0;
    for (const Thing& thing : things)
        last = std::max(last, thing.*order);
    return last + 1;
}

// Those whose number changes when one in use goes so many places on; nothing when it would leave the list.
template <typename Thing, typename ThingId>
std::vector<Thing> renumbered(std::vector<Thing> things, ThingId id, int by, int Thing::*order)
{
    std::erase_if(things, [](const Thing& one) { return !one.inUse; });
    const auto here = std::ranges::find(things, id, &Thing::id);
    const auto at = std::distance(things.begin(), here) + by;
    if (here == things.end() || at < 0 || at >= std::ssize(things))
        return {};
    std::iter_swap(here, things.begin() + at);
    std::vector<Thing> changed;
    int number = 1;
    for (Thing& one : things) {
        if (one.*order != number) {
            one.*order = number;
            changed.push_back(one);
        }
        ++number;
    }
    return changed;
}

} // namespace rig
