#include "app/calc/fields.h"
#include "core/numbers/rank_trend.h"

namespace rig::calc {
namespace {

std::vector<double> listIn(CaseInput& input, const char* name)
{
    if (!input.has(name))
        input.fail(std::string{"\""} + name + "\" is missing: give a list of numbers");
    return input.numbersIn(name);
}

} // namespace

// {t, y}
Output answerMannKendallTheilSen(CaseInput& input)
{
    const std::vector<double> t = listIn(input, "t");
    const std::vector<double> y = listIn(input, "y");
    if (t.size() != y.size())
        input.fail("\"t\" has not as many entries as \"y\": give one of each for a reading");
    if (t.size() < 3)
        input.fail("\"t\" has too few entries: give at least 3");
    if (!input.isGood())
        return {};
    const auto trend = numbers::rankTrendOf(t, y);
    if (!trend) {
        input.fail(
            "\"t\" has no two different entries, or a figure is too large or too small to compute with: "
            "give readings of different times");
        return {};
    }
    return {{"n", trend->readings},
            {"S", trend->s},
            {"var_S", trend->varianceOfS},
            {"tau_b", trend->tauB ? Output(*trend->tauB) : Output(nullptr)},
            {"p", trend->p},
            {"p_exact", trend->isExactP},
            {"slope", trend->slope},
            {"intercept", trend->intercept},
            {"slope_ci95", pairOf(trend->slope95)}};
}

} // namespace rig::calc
