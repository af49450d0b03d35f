#pragma once

#include "core/airframe/ids.h"

#include <set>

namespace rig {

// Of which couplings the facts do not stand as they were saved, or nobody can tell: of what belongs to them
// something was changed, put in or taken out past this program. No figure of them is held for good.
struct FactsInDoubt
{
    bool all = false; // of every coupling in the file: what is gone cannot be told
    std::set<CouplingId> couplings;

    bool isOf(CouplingId coupling) const { return all || couplings.contains(coupling); }
    bool operator==(const FactsInDoubt&) const = default;
};

} // namespace rig
