#include "app/calc/fields.h"
#include "core/numbers/straight_line.h"

namespace rig::calc {

// {x, y, through_origin?}; estimate and se are [intercept, slope], or [slope] through the origin.
Output answerLine(CaseInput& input)
{
    const std::vector<double> x = input.neededNumbersIn("x");
    const std::vector<double> y = input.neededNumbersIn("y");
    const bool throughOrigin = input.flag("through_origin");
    if (x.size() != y.size())
        input.fail("\"x\" has not as many entries as \"y\": give one of each for a point");
    if (x.size() < (throughOrigin ? 2 : 3))
        input.fail(throughOrigin ? "\"x\" has too few entries: give 2 or more"
                                 : "\"x\" has too few entries: give 3 or more");
    if (!input.isGood())
        return {};
    const auto line = numbers::straightLine(x, y, throughOrigin);
    if (!line) {
        input.fail(throughOrigin
                       ? "\"x\" is 0 throughout, or the figures are too large or too small to compute "
                         "with: give an x that is not 0"
                       : "\"x\" is the same throughout, or the figures are too large or too small to "
                         "compute with: give two different x");
        return {};
    }
    Output estimate = Output::array({line->slope});
    Output error = Output::array({line->slopeError});
    if (!throughOrigin) {
        estimate.insert(estimate.begin(), line->intercept);
        error.insert(error.begin(), line->interceptError);
    }
    return {{"estimate", estimate},
            {"se", error},
            {"residual_sd", line->residualSd},
            {"r_squared", orNull(line->rSquared)},
            {"F", orNull(line->F)}};
}

} // namespace rig::calc
