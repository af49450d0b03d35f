#pragma once

#include "core/airframe/coupling.h"
#include "core/rigging/rigging_record.h"

#include <array>
#include <vector>

namespace rig {

// In the order of doing.
inline constexpr std::array kCheckKinds{
    CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop,  CheckKind::PinThrough,
    CheckKind::Engaged,      CheckKind::NoStep,      CheckKind::LineConnected, CheckKind::Connected,
    CheckKind::Pull,         CheckKind::Secured};

// Something to be seen or felt, before anything is measured or tried.
constexpr bool isLook(CheckKind kind)
{
    return kind != CheckKind::Pull && kind != CheckKind::Secured;
}

// What is asked of one coupling, by its kind and by what there is at it.
struct JointAsks
{
    std::vector<CheckKind> look; // in order; never empty
    CouplingParts parts;         // what is there to be measured, pulled and secured

    // The second person looks and pulls; nobody asks that person to secure.
    bool has(CheckKind kind, Turn turn) const;
};

JointAsks asksOf(const Coupling& coupling);

} // namespace rig
