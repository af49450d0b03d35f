#pragma once

#include "core/store/records.h"

#include <algorithm>
#include <iterator>
#include <vector>

namespace rig {

// What the parts of Set up do alike with a list of things: find one, keep new versions, and, where they stand
// in an order that the owner chooses (counted from 1; `order` is the member that holds it), move them.

// Null when it is not there.
template <typename Things, typename ThingId> auto findIn(Things& things, const ThingId& id)
{
    const auto found = std::ranges::find(things, id, [](const auto& thing) { return thing.id; });
    return found == things.end() ? nullptr : &*found;
}

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

// One place earlier (-1) or later (+1); nothing happens at the ends. `read` is asked within the transaction.
template <typename Read, typename ThingId, typename Thing>
Outcome moveInOrder(Records& records, Read read, ThingId id, int by, int Thing::*order, const Stamp& stamp)
{
    return records.together([&]() -> Outcome {
        const auto known = read();
        if (!known)
            return known.problem();
        for (Thing& one : renumbered(known.value(), id, by, order)) {
            one.stamp = stamp;
            if (const auto kept = records.add(one); !kept)
                return kept.problem();
        }
        return Done{};
    });
}

// Out of use, or in use again: then after the last, where there is an order.
template <typename Thing, typename Read, typename ThingId>
Outcome putInUse(Records& records, Read read, ThingId id, bool inUse, const Stamp& stamp,
                 int Thing::*order = nullptr)
{
    return records.together([&]() -> Outcome {
        const auto known = read();
        if (!known)
            return known.problem();
        const Thing* const before = findIn(known.value(), id);
        if (!before)
            return Problem{ProblemKind::NotFound, "not in the list"};
        Thing changed = *before;
        changed.inUse = inUse;
        changed.stamp = stamp;
        if (inUse && order)
            changed.*order = nextInOrder(known.value(), order);
        const auto kept = records.add(changed);
        return kept ? Outcome{Done{}} : Outcome{kept.problem()};
    });
}

} // namespace rig
