#include "core/rigging/control_check.h"

#include <array>

namespace rig {

std::span<const SurfaceCheckKind> checksOf(SurfaceKind kind)
{
    using enum SurfaceCheckKind;
    static constexpr std::array kCommon{HeldOneWay, HeldOtherWay, Sense,  FullTravel,
                                        Neutral,    FreePlay,     Freedom};
    static constexpr std::array kFlap{HeldOneWay, HeldOtherWay, Sense,  FullTravel,
                                      EveryNotch, FreePlay,     Freedom};
    static constexpr std::array kAirbrake{HeldOneWay, HeldOtherWay, Sense, FullTravel, LocksEvenly, Freedom};
    static constexpr std::array kTrim{Sense, FullTravel, HoldsSetting};
    static constexpr std::array kWater{Sense, OpensTogether};
    switch (kind) {
    case SurfaceKind::Flap:
        return kFlap;
    case SurfaceKind::Airbrake:
        return kAirbrake;
    case SurfaceKind::Trim:
        return kTrim;
    case SurfaceKind::WaterDump:
        return kWater;
    case SurfaceKind::Aileron:
    case SurfaceKind::Elevator:
    case SurfaceKind::Rudder:
    case SurfaceKind::Other:
        break;
    }
    return kCommon;
}

} // namespace rig
