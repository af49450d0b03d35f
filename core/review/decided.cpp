#include "core/review/decided.h"

#include "core/airframe/saved_before.h"

#include <algorithm>
#include <tuple>
#include <vector>

namespace rig {

namespace {

// The one that was told of first stands for all of them.
void readAsOne(const Decision& decision, Decided& decided)
{
    const IdBytes one = decided.asRead(decision.first.bytes);
    const IdBytes other = decided.asRead(decision.second.bytes);
    const auto& [first, later] = std::minmax(one, other);
    if (first == later)
        return;
    for (auto& [id, as] : decided.readAs)
        if (as == later)
            as = first;
    decided.readAs[later] = first;
}

} // namespace

std::vector<Decision> lastOfEach(std::span<const Decision> decisions)
{
    std::map<std::tuple<ConflictKind, IdBytes, IdBytes>, Decision> last;
    for (const Decision& decision : decisions) {
        const auto& [one, other] = std::minmax(decision.first.bytes, decision.second.bytes);
        const auto [known, isNew] = last.try_emplace({decision.kind, one, other}, decision);
        if (!isNew && savedBefore(known->second, decision))
            known->second = decision;
    }
    std::vector<Decision> all;
    for (auto& [key, decision] : last)
        all.push_back(std::move(decision));
    return all;
}

Decided decidedBy(std::span<const Decision> decisions)
{
    Decided decided;
    for (const Decision& decision : lastOfEach(decisions)) {
        if (decision.holds == Holds::First)
            decided.setAside.insert(decision.second.bytes);
        else if (decision.holds == Holds::Second)
            decided.setAside.insert(decision.first.bytes);
        else if (decision.kind == ConflictKind::Names && decision.holds == Holds::OneThing)
            readAsOne(decision, decided);
    }
    return decided;
}

} // namespace rig
