#include "core/rigging/control_check.h"

#include <array>

namespace rig {

namespace {

std::span<const SurfaceCheckKind> everyCheckOf(SurfaceKind kind)
{
    using enum SurfaceCheckKind;
    static constexpr std::array kCommon{HeldOneWay, HeldOtherWay, CalledOneWay, CalledOtherWay, Sense,
                                        FullTravel, Neutral,      FreePlay,     Freedom};
    static constexpr std::array kFlap{HeldOneWay, HeldOtherWay, CalledOneWay, CalledOtherWay, Sense,
                                      FullTravel, EveryNotch,   FreePlay,     Freedom};
    static constexpr std::array kAirbrake{HeldOneWay, HeldOtherWay, CalledOneWay, CalledOtherWay,
                                          Sense,      FullTravel,   LocksEvenly,  Freedom};
    static constexpr std::array kTrim{CalledOneWay, CalledOtherWay, Sense, FullTravel, HoldsSetting};
    static constexpr std::array kWater{CalledOneWay, CalledOtherWay, Sense, OpensTogether};
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

} // namespace

std::span<const Movement> movementsOf(SurfaceKind kind)
{
    using enum Movement;
    static constexpr std::array kUpDown{Up, Down, Nothing};
    static constexpr std::array kLeftRight{Left, Right, Nothing};
    static constexpr std::array kOutIn{Out, In, Nothing};
    static constexpr std::array kOpensShuts{Opens, Shuts, Nothing};
    static constexpr std::array kAny{Up, Down, Left, Right, Nothing};
    switch (kind) {
    case SurfaceKind::Aileron:
    case SurfaceKind::Elevator:
    case SurfaceKind::Flap:
    case SurfaceKind::Trim:
        return kUpDown;
    case SurfaceKind::Rudder:
        return kLeftRight;
    case SurfaceKind::Airbrake:
        return kOutIn;
    case SurfaceKind::WaterDump:
        return kOpensShuts;
    case SurfaceKind::Other:
        break;
    }
    return kAny;
}

// docs/terms.md, control check; the control is moved as ControlWords::command() says.
ExpectedCalls expectedOf(const Surface& surface)
{
    using enum Movement;
    if (!surface.senseCall.empty())
        return {};
    switch (surface.kind) {
    case SurfaceKind::Aileron: // the stick to the left, to the right
        if (surface.side == Side::None)
            return {};
        return surface.side == Side::Left ? ExpectedCalls{Up, Down} : ExpectedCalls{Down, Up};
    case SurfaceKind::Elevator: // the stick back, forward
        return {Up, Down};
    case SurfaceKind::Rudder: // the left pedal, the right one
        return {Left, Right};
    case SurfaceKind::Flap: // to positive, to negative
        return {Down, Up};
    case SurfaceKind::Airbrake: // the lever back, forward
        return {Out, In};
    case SurfaceKind::WaterDump: // the lever to open, to shut
        return {Opens, Shuts};
    case SurfaceKind::Trim:
    case SurfaceKind::Other:
        break;
    }
    return {};
}

Answer answerToCall(const ExpectedCalls& expected, SurfaceCheckKind call, std::optional<Movement> seen)
{
    if (!seen)
        return Answer::CannotSee;
    const auto wanted = expected.of(call);
    return *seen == Movement::Nothing || (wanted && *seen != *wanted) ? Answer::No : Answer::Yes;
}

std::vector<SurfaceCheckKind> checksOf(const Surface& surface)
{
    const auto all = everyCheckOf(surface.kind);
    std::vector<SurfaceCheckKind> checks{all.begin(), all.end()};
    if (expectedOf(surface).areKnown())
        std::erase(checks, SurfaceCheckKind::Sense);
    return checks;
}

} // namespace rig
