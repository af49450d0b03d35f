#pragma once

#include "app/calc/fields.h"
#include "core/numbers/movement.h"

namespace rig::calc {

// Chances of each kind, and for each that has one the places and sizes of the first and the second change.
Output movementFields(const numbers::Movement& movement);
Output estimateFields(const numbers::EstimateWithInterval& estimate);
Output forecastFields(const numbers::MovementForecast& forecast, bool hasBand);

} // namespace rig::calc
