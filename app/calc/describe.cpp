#include "core/numbers/describe.h"

#include "app/calc/fields.h"

namespace rig::calc {

// {x}
Output answerDescribe(CaseInput& input)
{
    const std::vector<double> x = input.neededNumbersIn("x");
    if (!input.isGood())
        return {};
    const numbers::Description description = numbers::describe(x);
    return {{"n", description.n},
            {"mean", orNull(description.mean)},
            {"sd_n_minus_1", orNull(description.sd)},
            {"lag1_autocorrelation", orNull(description.lag1Autocorrelation)}};
}

} // namespace rig::calc
