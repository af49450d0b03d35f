#include "app/calc/movement_fields.h"

namespace rig::calc {
namespace {

using numbers::Movement;
using numbers::MovementKind;

Output chanceFields(const numbers::KindChances& chances)
{
    return {{"steady", chances.steady}, {"step", chances.step}, {"drift", chances.drift}};
}

// Null where no way has such a change.
Output changeFields(const Movement& movement, MovementKind kind, std::size_t change)
{
    const auto place = placeOf(movement, kind, change);
    const auto size = sizeOf(movement, kind, change);
    if (!place || !size)
        return nullptr;
    return {{"at", place->mode},
            {"at_set", place->set},
            {kind == MovementKind::Step ? "mm" : "mm_per_100", size->estimate},
            {"ci95", pairOf(size->interval)}};
}

Output orNullOf(const std::optional<numbers::EstimateWithInterval>& estimate)
{
    return estimate ? estimateFields(*estimate) : Output(nullptr);
}

} // namespace

Output estimateFields(const numbers::EstimateWithInterval& estimate)
{
    return {{"estimate", estimate.estimate}, {"ci95", pairOf(estimate.interval)}};
}

Output movementFields(const Movement& movement)
{
    const numbers::MovementWay& way = movement.likeliestWay();
    return {{"n", movement.readings},
            {"riggings", movement.riggings},
            {"chance", chanceFields(movement.first)},
            {"second_chance", chanceFields(movement.second)},
            {"step", changeFields(movement, MovementKind::Step, 0)},
            {"drift", changeFields(movement, MovementKind::Drift, 0)},
            {"second_step", changeFields(movement, MovementKind::Step, 1)},
            {"second_drift", changeFields(movement, MovementKind::Drift, 1)},
            {"rate_now", orNullOf(rateNowOf(movement))},
            {"level", way.coefficients[0]},
            {"sigma", way.sigma}};
}

Output forecastFields(const numbers::MovementForecast& forecast, bool hasBand)
{
    return {{"mean", estimateFields(forecast.mean)},
            {"reading", estimateFields(forecast.reading)},
            {"p_outside", hasBand ? Output(forecast.chanceOutside) : Output(nullptr)}};
}

} // namespace rig::calc
