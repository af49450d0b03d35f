#pragma once

#include "core/rigging/circuit_hand.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// An answer of the control check, and why it is not the one that counts.
struct SurfaceAnswer
{
    const SurfaceCheck* check = nullptr; // of the record's content
    std::optional<JointHand> hand;       // somebody was at a joint of its circuit since
    bool isFoundOut = false; // somebody was at the surface since, and closed the question about it
    bool isAnsweredAgain = false;

    bool counts() const { return !hand && !isFoundOut && !isAnsweredAgain; }
};

// All that was answered of the surface in the record, in the order of saving. The one place that says which
// of them count; of a closed record hand it what stood there at the close: asAtTheClose().
std::vector<SurfaceAnswer> surfaceAnswersIn(const RecordContent& content, std::span<const Coupling> couplings,
                                            const Surface& surface);

} // namespace rig
