#include "app/calc/fields.h"
#include "core/numbers/change_point.h"

#include <cmath>

namespace rig::calc {
namespace {

// The settings in the case, for readings of which `count` say something.
numbers::ChangePointSettings settingsIn(CaseInput& input, int count)
{
    numbers::ChangePointSettings settings;
    settings.sigmaFloor = input.number("sigma_floor");
    if (settings.sigmaFloor.value_or(0) < 0)
        input.fail("\"sigma_floor\" is negative: give 0 or more, or leave it out");
    const double segment = input.number("min_segment").value_or(settings.minSegment);
    if (!(segment >= 2 && 2 * segment <= count && std::floor(segment) == segment))
        input.fail("\"min_segment\" does not fit: give a whole number from 2 to half the readings");
    else
        settings.minSegment = static_cast<int>(segment);
    return settings;
}

void addRanks(Output& output, const std::optional<numbers::RankChange>& ranks)
{
    output["pettitt_K"] = ranks ? Output(ranks->k) : Output(nullptr);
    output["pettitt_split_after"] = ranks ? Output(ranks->splitAfter) : Output(nullptr);
    output["pettitt_p"] = ranks ? Output(ranks->p) : Output(nullptr);
}

} // namespace

// {readings, min_segment?, sigma_floor?}
Output answerChangePoint(CaseInput& input)
{
    const std::vector<numbers::Interval> readings = input.readings("readings");
    const numbers::IntervalSet set = numbers::intervalSetOf(readings);
    if (set.status != numbers::ReadingsStatus::Ok)
        input.fail(std::string{"\"readings\" have no change point: "} + nameOf(set.status) +
                   "; put the bounds right, or add readings that have the missing one");
    if (set.readings < numbers::kReadingsForChangePoint)
        input.fail("\"readings\" are too few for a change point: give at least 8 with a bound");
    const numbers::ChangePointSettings settings = settingsIn(input, set.readings);
    if (!input.isGood())
        return {};
    const auto change = numbers::changePointOf(readings, settings);
    if (!change) {
        input.fail("\"readings\" have no scatter to hold a change against, or are too large or too small to "
                   "compute with: give a \"sigma_floor\" above 0");
        return {};
    }
    Output output{{"n", change->readings},
                  {"split_after", change->splitAfter},
                  {"lr", change->likelihoodRatio},
                  {"t_equiv", change->equivalentT},
                  {"p_bonferroni", change->pBonferroni},
                  {"p_gombay_horvath", change->pGombayHorvath},
                  {"p", change->p},
                  {"split_set95", change->likelySplits}};
    addRanks(output, change->ranks);
    return output;
}

} // namespace rig::calc
