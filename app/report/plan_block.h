#pragma once

#include "app/blocks/blocks.h"
#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"

#include <span>

namespace rig {

// How a coupling stands, and in words.
struct PlanStanding
{
    Says says = Says::NotRead;
    QString word;
};

// The airframe from above with its couplings: each with the mark of how it stands, or numbered as they come.
PictureBlock planBlock(const Airframe& airframe, std::span<const Coupling> couplings, double height,
                       std::span<const PlanStanding> standings = {});

} // namespace rig
