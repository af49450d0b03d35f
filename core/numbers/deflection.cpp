#include "core/numbers/deflection.h"

#include <cmath>
#include <numbers>

namespace rig::numbers {

namespace {

constexpr double kDegreesPerRadian = 180 / std::numbers::pi;

bool isRadius(double radius)
{
    return std::isfinite(radius) && radius > 0;
}

// Beyond it the way shrinks again, or comes round.
double mostDegrees(Travel kind)
{
    switch (kind) {
    case Travel::StraightLine:
        return 180;
    case Travel::Perpendicular:
        return 90;
    case Travel::Arc:
        break;
    }
    return HUGE_VAL;
}

std::optional<double> finite(double value)
{
    return std::isfinite(value) ? std::optional{value} : std::nullopt;
}

} // namespace

std::optional<double> travelOf(double degrees, double radius, Travel kind)
{
    if (!isRadius(radius) || !std::isfinite(degrees) || std::abs(degrees) > mostDegrees(kind))
        return std::nullopt;
    const double angle = degrees / kDegreesPerRadian;
    switch (kind) {
    case Travel::StraightLine:
        return finite(2 * radius * std::sin(angle / 2));
    case Travel::Perpendicular:
        return finite(radius * std::sin(angle));
    case Travel::Arc:
        break;
    }
    return finite(radius * angle);
}

std::optional<double> degreesOf(double travel, double radius, Travel kind)
{
    if (!isRadius(radius) || !std::isfinite(travel))
        return std::nullopt;
    const double share = travel / radius;
    switch (kind) {
    case Travel::StraightLine:
        return std::abs(share) > 2 ? std::nullopt
                                   : std::optional{2 * std::asin(share / 2) * kDegreesPerRadian};
    case Travel::Perpendicular:
        return std::abs(share) > 1 ? std::nullopt : std::optional{std::asin(share) * kDegreesPerRadian};
    case Travel::Arc:
        break;
    }
    return finite(share * kDegreesPerRadian);
}

} // namespace rig::numbers
