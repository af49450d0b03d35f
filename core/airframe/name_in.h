#pragma once

#include <algorithm>
#include <string>

namespace rig {

// The name of the one of these things that has this id, which may be optional; empty when none has.
template <typename Things, typename SomeId> std::string nameIn(const Things& things, const SomeId& id)
{
    const auto found = std::ranges::find_if(things, [&id](const auto& thing) { return id == thing.id; });
    return found == std::ranges::end(things) ? std::string{} : found->name;
}

} // namespace rig
