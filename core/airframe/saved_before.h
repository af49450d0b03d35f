#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <algorithm>
#include <compare>
#include <cstdint>
#include <type_traits>

namespace rig {

// The place of a fact in the order of saving. Ask this and never compare ids: what an id alone says holds
// only for facts saved under one clock.
//
// Within one file an id's own time lies neither before the clock's nor before that of any fact already there
// (Writer), so the order stands also when the clock was set back between two saves, where the stamps would
// turn it round. Where an id's time lies behind the stamp it was made under another clock, and the stamp
// decides. What is left, the same second under two clocks, the ids part the same way on every computer.
struct SaveOrder
{
    std::int64_t seconds = 0;
    IdBytes id{};

    constexpr auto operator<=>(const SaveOrder&) const = default;
};

// Of these `id` names the first version and `stamp` tells of the newest: the two belong to different facts.
template <typename SomeId>
inline constexpr bool kNamesVersions =
    std::is_same_v<SomeId, AirframeId> || std::is_same_v<SomeId, PersonId> ||
    std::is_same_v<SomeId, GaugeId> || std::is_same_v<SomeId, CouplingId> ||
    std::is_same_v<SomeId, SurfaceId>;

constexpr SaveOrder saveOrderOf(const Stamp& stamp, const IdBytes& id)
{
    return {std::max(stamp.when.utcSeconds, millisecondsIn(id) / 1000), id};
}

template <typename Fact> constexpr SaveOrder saveOrderOf(const Fact& fact)
{
    static_assert(!kNamesVersions<decltype(fact.id)>, "ask firstSavedOf()");
    return saveOrderOf(fact.stamp, fact.id.bytes);
}

// When an airframe, a person, a gauge, a coupling or a surface was first told of.
template <typename Thing> constexpr SaveOrder firstSavedOf(const Thing& thing)
{
    static_assert(kNamesVersions<decltype(thing.id)>, "ask saveOrderOf()");
    return {millisecondsIn(thing.id.bytes) / 1000, thing.id.bytes};
}

// savedBefore(a, b) for any two facts; an object, so that it can be handed to sort() and max_element().
inline constexpr struct
{
    template <typename One, typename Other>
    constexpr bool operator()(const One& one, const Other& other) const
    {
        return saveOrderOf(one) < saveOrderOf(other);
    }
} savedBefore;

} // namespace rig
