#pragma once

#include "core/review/chain_state.h"
#include "core/review/conflicts.h"

#include <optional>
#include <vector>

namespace rig {

// What a print says of the file it was made from.
struct FileEvidence
{
    FileEnd end;
    std::optional<ChainState> chain; // empty: not looked at yet
    std::vector<ComparedPrint> prints;
    std::vector<ToldConflict> conflicts; // that are open, of the whole file
    std::vector<ToldDecision> decided;   // those that count

    bool hasFaults() const { return chain && chain->faults > 0; }
};

} // namespace rig
