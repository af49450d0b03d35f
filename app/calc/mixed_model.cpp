#include "app/calc/fields.h"
#include "core/numbers/mixed_fit.h"

namespace rig::calc {

// "y", a "group" for each, whose effects are random, and "columns", each with an entry for each y; "weight"
// may be left out. The answer has each column's effect with its error and Satterthwaite's degrees of freedom,
// and the same of each of "contrasts".
Output answerMixedModel(CaseInput& input)
{
    const std::vector<double> values = input.neededNumbersIn("y");
    const std::vector<int> groups = input.labels("group");
    const auto columns = input.numberGroups("columns");
    const std::vector<double> weights = input.numbersIn("weight");
    const auto contrasts =
        input.has("contrasts") ? input.numberGroups("contrasts") : std::vector<std::vector<double>>{};
    if (groups.size() != values.size() || (!weights.empty() && weights.size() != values.size()))
        input.fail("\"group\" and \"weight\" need one entry for each \"y\"");
    for (const auto& column : columns)
        if (column.size() != values.size())
            input.fail("each of \"columns\" needs one entry for each \"y\"");
    for (const auto& contrast : contrasts)
        if (contrast.size() != columns.size())
            input.fail("each of \"contrasts\" needs one entry for each of \"columns\"");
    if (!input.isGood())
        return {};
    std::vector<numbers::GroupedValue> given;
    for (std::size_t i = 0; i < values.size(); ++i)
        given.push_back({values[i], weights.empty() ? 1 : weights[i], groups[i]});
    const auto fit = numbers::MixedFit::of(given, columns);
    if (!fit) {
        input.fail(
            "there is no such fit: give weights above 0, columns that do not depend on each other, and more "
            "values than columns that differ");
        return {};
    }
    const auto fieldsOf = [&](const std::vector<double>& along) {
        const numbers::MixedContrast contrast = fit->contrast(along);
        return Output{{"estimate", contrast.estimate},
                      {"se", contrast.standardError},
                      {"df", contrast.degreesOfFreedom}};
    };
    Output effects = Output::array();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        std::vector<double> along(columns.size(), 0.0);
        along[i] = 1;
        effects.push_back(fieldsOf(along));
    }
    Output asked = Output::array();
    for (const auto& contrast : contrasts)
        asked.push_back(fieldsOf(contrast));
    return {{"var_group", fit->groupVariance()},
            {"var_residual", fit->residualVariance()},
            {"loglik_reml", fit->logLikelihood()},
            {"effects", effects},
            {"contrasts", asked}};
}

} // namespace rig::calc
