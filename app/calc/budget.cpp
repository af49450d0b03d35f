#include "app/calc/fields.h"
#include "core/numbers/leaf_uncertainty.h"

#include <algorithm>

namespace rig::calc {

// {bracket, leaf_tolerances, film?, temperature_c?, s_r?, shared_tolerance?}
Output answerBudget(CaseInput& input)
{
    numbers::LeafReading reading;
    reading.bracket = input.reading("bracket");
    reading.leafTolerances = input.neededNumbersIn("leaf_tolerances");
    reading.sharedTolerance = input.flag("shared_tolerance");
    reading.film = input.size("film", 0);
    reading.kelvinFrom20 = input.number("temperature_c").value_or(20) - 20;
    reading.repeatSd = input.size("s_r", 0);
    if (!reading.bracket.isClosed())
        input.fail("\"bracket\" is open: give both bounds, what is open has no uncertainty");
    if (std::ranges::any_of(reading.leafTolerances, [](double tolerance) { return tolerance < 0; }))
        input.fail("\"leaf_tolerances\" has a negative entry: give T of +-T");
    if (!input.isGood())
        return {};
    const auto result = numbers::leafUncertainty(reading);
    if (!result) {
        input.fail("\"bracket\" or another figure is too large to compute with: give lengths in mm");
        return {};
    }
    return {{"midpoint", result->midpoint},
            {"u_bracket", result->bracket},
            {"u_leaf", result->leaves},
            {"u_film", result->films},
            {"u_temperature", result->temperature},
            {"u_feel", result->feel},
            {"u_combined", result->combined},
            {"largest_rectangular_half_width", result->largestRectangularHalfWidth},
            {"u95", result->halfWidth95},
            {"u_set", result->leaves}};
}

} // namespace rig::calc
