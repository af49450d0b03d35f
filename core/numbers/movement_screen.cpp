#include "core/numbers/movement_screen.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {

MovementScreen::MovementScreen(std::span<const PseudoReading> readings, std::span<const double> riggings)
    : m_from(readings.size() + 1)
{
    double weight = 0;
    for (const PseudoReading& reading : readings) {
        weight += reading.weight;
        m_originV += reading.weight * reading.value;
    }
    m_originV = weight > 0 ? m_originV / weight : 0;
    for (const double rigging : riggings)
        m_u.push_back(std::max(0.0, rigging) / kRateUnit);
    for (std::size_t i = readings.size(); i-- > 0;) {
        const double w = readings[i].weight;
        const double v = readings[i].value - m_originV;
        const double u = m_u[i];
        const Sums& after = m_from[i + 1];
        m_from[i] = {after.w + w, after.u + w * u, after.uu + w * u * u, after.v + w * v,
                     after.uv + w * u * v};
        m_squares += w * v * v;
    }
}

const MovementScreen::Sums& MovementScreen::from(ChangePlace place) const
{
    return m_from[place.kind == MovementKind::Drift ? place.index + 1 : place.index];
}

double MovementScreen::withOne(ChangePlace place) const
{
    const Sums& sums = from(place);
    return place.kind == MovementKind::Drift ? sums.u - m_u[place.index] * sums.w : sums.w;
}

double MovementScreen::withValue(ChangePlace place) const
{
    const Sums& sums = from(place);
    return place.kind == MovementKind::Drift ? sums.uv - m_u[place.index] * sums.v : sums.v;
}

double MovementScreen::product(ChangePlace first, ChangePlace second) const
{
    const Sums& sums = from(second);
    const bool firstIsLine = first.kind == MovementKind::Drift;
    const bool secondIsLine = second.kind == MovementKind::Drift;
    const double a = m_u[first.index];
    const double b = m_u[second.index];
    if (firstIsLine && secondIsLine)
        return sums.uu - (a + b) * sums.u + a * b * sums.w;
    if (firstIsLine)
        return sums.u - a * sums.w;
    return secondIsLine ? sums.u - b * sums.w : sums.w;
}

double MovementScreen::squaresLeft(ChangePlace first, ChangePlace second) const
{
    constexpr double kNothing = 1e-12; // of a shape's own squares, left once the others are taken out
    const double weight = m_from.front().w;
    double squares = m_squares;
    if (!(weight > 0))
        return kInfinity;
    const double level = m_from.front().v / weight;
    squares -= level * m_from.front().v;
    if (first.kind == MovementKind::Steady)
        return std::max(0.0, squares);
    const double oneFirst = withOne(first);
    const double own = product(first, first);
    const double leftFirst = own - oneFirst * oneFirst / weight;
    const double valueFirst = withValue(first) - oneFirst * level;
    if (!(leftFirst > kNothing * own))
        return kInfinity;
    squares -= valueFirst * valueFirst / leftFirst;
    if (second.kind == MovementKind::Steady)
        return std::max(0.0, squares);
    const double oneSecond = withOne(second);
    const double ownSecond = product(second, second);
    const double both = product(first, second) - oneFirst * oneSecond / weight;
    const double leftSecond = ownSecond - oneSecond * oneSecond / weight - both * both / leftFirst;
    const double valueSecond = withValue(second) - oneSecond * level - both * valueFirst / leftFirst;
    if (!(leftSecond > kNothing * ownSecond))
        return kInfinity;
    return std::max(0.0, squares - valueSecond * valueSecond / leftSecond);
}

MovementScreen::Solution MovementScreen::solved(ChangePlace first, ChangePlace second) const
{
    const bool hasFirst = first.kind != MovementKind::Steady;
    const bool hasSecond = second.kind != MovementKind::Steady;
    Matrix3 products{};
    products[0][0] = m_from.front().w;
    products[1][1] = hasFirst ? product(first, first) : 1;
    products[2][2] = hasSecond ? product(second, second) : 1;
    products[1][0] = hasFirst ? withOne(first) : 0;
    products[2][0] = hasSecond ? withOne(second) : 0;
    products[2][1] = hasFirst && hasSecond ? product(first, second) : 0;
    const Vector3 right{m_from.front().v, hasFirst ? withValue(first) : 0, hasSecond ? withValue(second) : 0};
    Solution solution;
    const auto root = choleskyOf(products);
    if (!root) {
        solution.squares = kInfinity;
        return solution;
    }
    solution.coefficients = choleskySolution(*root, right);
    solution.squares = m_squares;
    for (std::size_t i = 0; i < 3; ++i)
        solution.squares -= solution.coefficients[i] * right[i];
    solution.squares = std::max(0.0, solution.squares);
    solution.coefficients[0] += m_originV;
    const std::size_t count = 1 + (hasFirst ? 1 : 0) + (hasSecond ? 1 : 0);
    for (std::size_t i = 0; i < count; ++i) {
        Vector3 unit{};
        unit[i] = 1;
        solution.covariance[i] = choleskySolution(*root, unit);
    }
    return solution;
}

} // namespace rig::numbers
