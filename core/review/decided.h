#pragma once

#include "core/rigging/decision.h"

#include <map>
#include <set>
#include <span>
#include <vector>

namespace rig {

// What follows from all decisions of a file, for whoever reads its facts.
struct Decided
{
    std::set<IdBytes> setAside;        // they stand in the file, and the other one counts
    std::map<IdBytes, IdBytes> readAs; // of a person or gauge that is another one too: the one told of first

    bool isSetAside(const IdBytes& id) const { return setAside.contains(id); }
    const IdBytes& asRead(const IdBytes& id) const
    {
        const auto found = readAs.find(id);
        return found == readAs.end() ? id : found->second;
    }
};

// In any order.
Decided decidedBy(std::span<const Decision> decisions);

// Those that count: of several of the same two facts the one saved last.
std::vector<Decision> lastOfEach(std::span<const Decision> decisions);

} // namespace rig
