#include "app/calc/kinds.h"
#include "core/numbers/run_length.h"

namespace rig::calc {
namespace {

double needed(CaseInput& input, const char* name)
{
    const auto number = input.number(name);
    if (!number)
        input.fail(std::string{"\""} + name + "\" is missing: give a number");
    return number.value_or(0);
}

std::optional<double> ewmaAnswer(CaseInput& input, double shift, bool isTwoSided)
{
    const numbers::EwmaChart chart{needed(input, "lambda"), needed(input, "L")};
    if (!isTwoSided)
        input.fail("\"two_sided\" is false: an EWMA is two-sided here, give true");
    if (const auto limits = input.word("limits"); limits && *limits != "fixed")
        input.fail("\"limits\" is \"" + *limits + "\": give \"fixed\"");
    if (!(chart.weight > 0 && chart.weight <= 1))
        input.fail("\"lambda\" must be above 0 and not above 1");
    if (!(chart.limit > 0))
        input.fail("\"L\" must be above 0");
    return input.isGood() ? numbers::averageRunLength(chart, shift) : std::nullopt;
}

std::optional<double> cusumAnswer(CaseInput& input, double shift, bool isTwoSided)
{
    const numbers::CusumChart chart{needed(input, "k"), needed(input, "h"), isTwoSided};
    if (chart.reference < 0)
        input.fail("\"k\" must not be below 0");
    if (!(chart.limit > 0))
        input.fail("\"h\" must be above 0");
    return input.isGood() ? numbers::averageRunLength(chart, shift) : std::nullopt;
}

} // namespace

// {chart, shift, two_sided, lambda and L and limits?, or k and h}; chart is "ewma" or "cusum".
Output answerArl(CaseInput& input)
{
    const std::string chart = input.word("chart").value_or("");
    const double shift = needed(input, "shift");
    const bool isTwoSided = input.flag("two_sided");
    if (!input.has("two_sided"))
        input.fail("\"two_sided\" is missing: give true or false");
    std::optional<double> length;
    if (chart == "ewma")
        length = ewmaAnswer(input, shift, isTwoSided);
    else if (chart == "cusum")
        length = cusumAnswer(input, shift, isTwoSided);
    else
        input.fail("\"chart\" must be \"ewma\" or \"cusum\"");
    if (!length) {
        input.fail(
            "the run is longer than 1e9 readings, or the chart too long for its step: give a smaller limit, "
            "or a larger lambda");
        return {};
    }
    return {{"arl", *length}};
}

} // namespace rig::calc
