#include "app/calc/movement_fields.h"

namespace rig::calc {

// One coupling of one fitting: "readings" as pairs, "rigging" with the number of each, null for those of the
// baseline. With "forecast_at", a rigging to come: where the path and a reading will lie, and with "band" the
// chance of a reading beyond it.
Output answerMovement(CaseInput& input)
{
    const std::vector<numbers::Interval> readings = input.readings("readings");
    const auto riggings = input.numbersOrNull("rigging");
    const auto at = input.number("forecast_at");
    const numbers::Interval band = input.has("band")
                                       ? input.reading("band")
                                       : numbers::Interval{-numbers::kInfinity, numbers::kInfinity};
    if (readings.size() != riggings.size())
        input.fail(
            "\"rigging\" has not as many entries as \"readings\": give one for each, null in a baseline");
    if (!input.isGood())
        return {};
    std::vector<numbers::SeriesReading> series;
    for (std::size_t i = 0; i < readings.size(); ++i)
        series.push_back({readings[i], riggings[i].value_or(0)});
    const auto movement = numbers::movementOf(series);
    if (!movement) {
        input.fail(
            "\"readings\" tell of no path: give some that are closed, in order and of sizes that occur");
        return {};
    }
    Output output = movementFields(*movement);
    if (at)
        output["forecast"] = forecastFields(forecastOf(*movement, *at, band), input.has("band"));
    return output;
}

} // namespace rig::calc
