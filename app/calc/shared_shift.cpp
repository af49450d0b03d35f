#include "core/numbers/shared_shift.h"

#include "app/calc/kinds.h"

namespace rig::calc {

// {scores}
Output answerSharedShift(CaseInput& input)
{
    const std::vector<double> scores = input.neededNumbersIn("scores");
    if (!input.isGood())
        return {};
    const auto shift = numbers::sharedShiftOf(scores);
    if (!shift)
        return {{"n", 0}, {"called", false}};
    return {{"n", shift->scores},
            {"mean", shift->mean},
            {"median", shift->median},
            {"z", shift->z},
            {"p", shift->p},
            {"same_sign_share", shift->sameSignShare},
            {"called", shift->isCalled}};
}

} // namespace rig::calc
