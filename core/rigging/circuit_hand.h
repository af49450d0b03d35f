#pragma once

#include "core/airframe/saved_before.h"
#include "core/rigging/record_content.h"

#include <optional>
#include <span>

namespace rig {

// Whether a joint of that circuit may have to do with how such a surface moves, left and right alike. Where
// one of the two is of no named kind nobody knows, and it may.
constexpr bool mayMove(Circuit circuit, SurfaceKind surface)
{
    return circuit == surface || circuit == Circuit::Other || surface == SurfaceKind::Other;
}

// Somebody was at a joint: it was looked at, read, pulled, left half done, or a question about it was closed.
struct JointHand
{
    CouplingId coupling;
    Moment when;
    SaveOrder saved;
};

// The last in the record on any joint of the surface's circuit. What was tried on the surface before says
// nothing of how it moves now. A figure that is only put right on paper is no hand.
std::optional<JointHand> lastHandOn(const RecordContent& content, std::span<const Coupling> couplings,
                                    const Surface& surface);

} // namespace rig
