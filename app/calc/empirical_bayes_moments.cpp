#include "app/calc/kinds.h"
#include "core/numbers/variance_prior.h"

#include <cmath>

namespace rig::calc {

// {s2, df}
Output answerEmpiricalBayesMoments(CaseInput& input)
{
    const std::vector<double> variances = input.neededNumbersIn("s2");
    const std::vector<double> degreesOfFreedom = input.neededNumbersIn("df");
    if (!input.isGood())
        return {};
    const auto prior = numbers::variancePriorOf(variances, degreesOfFreedom);
    if (!prior) {
        input.fail(
            "\"s2\" and \"df\" need the same length, two or more: give \"s2\" not below 0, more than half of "
            "them above 0, and \"df\" above 0");
        return {};
    }
    const bool isFinite = std::isfinite(prior->degreesOfFreedom);
    return {{"prior_var", prior->variance},
            {"prior_df", isFinite ? Output(prior->degreesOfFreedom) : Output("Inf")},
            {"posterior_var", prior->posteriorVariances}};
}

} // namespace rig::calc
