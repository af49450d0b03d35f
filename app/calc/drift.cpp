#include "core/numbers/drift.h"

#include "app/calc/fields.h"

namespace rig::calc {
namespace {

// Places count from 1 for a reader.
Output placeOrNull(const std::optional<std::size_t>& place)
{
    return place ? Output(*place + 1) : Output(nullptr);
}

Output outputOf(const numbers::DriftCharts& drift)
{
    return {{"L", drift.limits.ewma},
            {"h", drift.limits.cusum},
            {"ewma_limit", drift.limits.ewmaLimit()},
            {"scores", drift.scores},
            {"ewma", drift.chart.ewma},
            {"cusum_up", drift.chart.cusumUp},
            {"cusum_down", drift.chart.cusumDown},
            {"ewma_first_signal", placeOrNull(drift.chart.ewmaSignal)},
            {"cusum_first_signal", placeOrNull(drift.chart.cusumSignal)},
            {"cusum_onset", placeOrNull(drift.chart.cusumOnset)}};
}

} // namespace

// {baseline, later, mode?, nu0?, s0?, smin?, smax?}; mode is "frozen", or "sequential" while the reference
// still grows.
Output answerDrift(CaseInput& input)
{
    const std::vector<numbers::Interval> first = input.readings("baseline");
    const std::vector<numbers::Interval> later = input.readingsToJudge("later");
    const std::string mode = input.word("mode").value_or("frozen");
    const numbers::SigmaPrior prior = input.prior();
    const auto baseline = posteriorOf(input, "baseline", prior);
    if (!input.has("later"))
        input.fail("\"later\" is missing: give the readings after the baseline as a list of [lower, upper]");
    if (mode != "frozen" && mode != "sequential")
        input.fail("\"mode\" is \"" + mode + "\": give \"frozen\" or \"sequential\"");
    if (!input.isGood() || !baseline)
        return {};

    const auto drift = mode == "frozen" ? numbers::driftOf(*baseline, later)
                                        : numbers::sequentialDriftOf(first, later, prior);
    if (!drift) {
        input.fail(mode == "frozen" ? "\"baseline\" has too few readings for a chart: give 5 or more"
                                    : "\"baseline\" has too few readings to begin with: give 2 or more");
        return {};
    }
    return outputOf(*drift);
}

} // namespace rig::calc
