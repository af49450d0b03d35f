#include "app/calc/kinds.h"
#include "core/numbers/fleet_prior.h"

namespace rig::calc {

// {groups, nu0_min?, nu0_max?}
Output answerEmpiricalBayesInterval(CaseInput& input)
{
    std::vector<numbers::IntervalSet> couplings;
    for (const std::vector<numbers::Interval>& group : input.groups("groups"))
        couplings.push_back(numbers::intervalSetOf(group));
    const double nu0Min = input.number("nu0_min").value_or(1);
    const double nu0Max = input.number("nu0_max").value_or(10);
    if (!(nu0Min > 0 && nu0Min <= nu0Max))
        input.fail("\"nu0_min\" must be above 0 and not above \"nu0_max\"");
    if (!input.isGood())
        return {};
    const auto prior = numbers::fleetPriorOf(couplings, nu0Min, nu0Max);
    if (!prior) {
        input.fail(
            "\"groups\" has no group with a band: give each group readings with a lower and an upper bound");
        return {};
    }
    return {{"usable", prior->isUsable},
            {"nu0", prior->nu0},
            {"s0", prior->s0},
            {"log_marginal", prior->logMarginal},
            {"at_lower_bound", prior->atLowerBound},
            {"at_upper_bound", prior->atUpperBound}};
}

} // namespace rig::calc
