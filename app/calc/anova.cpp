#include "app/calc/fields.h"
#include "core/numbers/one_way.h"

namespace rig::calc {

// {groups}
Output answerAnova(CaseInput& input)
{
    const std::vector<std::vector<double>> groups = input.numberGroups("groups");
    bool hasRepeats = false;
    for (const std::vector<double>& group : groups) {
        if (group.empty())
            input.fail("\"groups\" has an empty group: leave it out");
        hasRepeats = hasRepeats || group.size() > 1;
    }
    if (groups.size() < 2)
        input.fail("\"groups\" has too few groups: give 2 or more");
    if (!hasRepeats)
        input.fail("\"groups\" has one number in each group: give 2 or more in at least one");
    if (!input.isGood())
        return {};
    const auto result = numbers::oneWay(groups);
    if (!result) {
        input.fail(
            "\"groups\" has figures too large or too small to compute with: give them in another unit");
        return {};
    }
    return {{"ms_between", result->msBetween},
            {"ms_within", result->msWithin},
            {"F", orNull(result->F)},
            {"r_squared", orNull(result->rSquared)},
            {"residual_sd", result->residualSd}};
}

} // namespace rig::calc
