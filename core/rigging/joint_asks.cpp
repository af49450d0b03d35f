#include "core/rigging/joint_asks.h"

#include <algorithm>

namespace rig {

namespace {

std::vector<CheckKind> lookOf(CouplingKind kind)
{
    using enum CheckKind;
    switch (kind) {
    case CouplingKind::Sleeve:
        return {BallInSocket, PlungerHome, SleeveAtStop};
    case CouplingKind::Pin:
        return {BallInSocket, PlungerHome, PinThrough};
    case CouplingKind::SleeveAndPin:
        return {BallInSocket, PlungerHome, SleeveAtStop, PinThrough};
    case CouplingKind::ByItself:
        return {Engaged, NoStep};
    case CouplingKind::WaterBallast:
        return {LineConnected};
    case CouplingKind::Other:
        break;
    }
    return {Connected};
}

} // namespace

bool JointAsks::has(CheckKind kind, Turn turn) const
{
    if (kind == CheckKind::Pull)
        return parts.pull;
    if (kind == CheckKind::Secured)
        return parts.securing && turn == Turn::First;
    return std::ranges::find(look, kind) != look.end();
}

JointAsks asksOf(const Coupling& coupling)
{
    return {lookOf(coupling.kind), partsOf(coupling)};
}

} // namespace rig
