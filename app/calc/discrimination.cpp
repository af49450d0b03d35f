#include "core/numbers/discrimination.h"

#include "app/calc/fields.h"

#include <algorithm>
#include <cmath>

namespace rig::calc {
namespace {

using numbers::Interval;
using numbers::IntervalPosterior;

struct States
{
    IntervalPosterior locked;
    IntervalPosterior halfHome;
};

// Errors of a gauge that gives whole steps: locked readings that would lie outside, half-home ones that would
// not.
void addCells(Output& output, const States& states, const numbers::PredictiveBands& bands,
              const std::vector<double>& boundaries)
{
    std::vector<Interval> steps;
    steps.reserve(boundaries.size());
    for (const double size : boundaries)
        steps.push_back({size, size});
    const Interval outer = numbers::unseenBetween(bands.outer, steps);
    const Interval inner = numbers::unseenBetween(bands.inner, steps);
    const auto falseAlarm = [&states](const Interval& unseen) {
        return states.locked.below(unseen.lower) + states.locked.above(unseen.upper);
    };
    output["false_alarm_cells_9973"] = falseAlarm(outer);
    output["false_alarm_cells_95"] = falseAlarm(inner);
    output["miss_cells_9973"] = states.halfHome.between(outer);
    output["miss_cells_95"] = states.halfHome.between(inner);
}

void addBestLeaf(Output& output, const States& states, const std::vector<double>& boundaries)
{
    output["half_home_is_larger"] = numbers::isLarger(states.locked, states.halfHome);
    const auto best = numbers::bestDividingLeaf(states.locked, states.halfHome, boundaries);
    if (!best)
        return;
    output["best_single_leaf"] = best->size;
    output["best_single_leaf_false_alarm"] = best->falseAlarm;
    output["best_single_leaf_miss"] = best->miss;
}

Output judgedByStates(const std::vector<Interval>& readings, const States& states)
{
    Output list = Output::array();
    for (const Interval& reading : readings) {
        const auto ratio = numbers::logLikelihoodRatio(reading, states.locked, states.halfHome);
        Output one{{"reading", pairOf(reading)}, {"log10_lr", nullptr}, {"log10_lr_uncapped", nullptr}};
        if (ratio)
            one["log10_lr"] = std::clamp(*ratio, -numbers::kLogRatioCap, numbers::kLogRatioCap);
        if (ratio && std::isfinite(*ratio))
            one["log10_lr_uncapped"] = *ratio;
        list.push_back(one);
    }
    return list;
}

} // namespace

// {locked, half_home, leaf_boundaries?, judge?, prior_l?, prior_h?}; without boundaries the figures that need
// them are left out.
Output answerDiscrimination(CaseInput& input)
{
    const auto locked = posteriorOf(input, "locked", input.prior("prior_l"));
    const auto halfHome = posteriorOf(input, "half_home", input.prior("prior_h"));
    std::vector<double> boundaries = input.numbersIn("leaf_boundaries");
    const std::vector<Interval> toJudge = input.readingsToJudge("judge");
    if (!std::ranges::is_sorted(boundaries))
        input.fail("\"leaf_boundaries\" do not rise");
    if (!locked || !halfHome || !input.isGood())
        return {};

    const States states{*locked, *halfHome};
    const numbers::PredictiveBands bands = numbers::bandsOf(states.locked);
    Output output{{"band95", pairOf(bands.inner)},
                  {"band9973", pairOf(bands.outer)},
                  {"miss_true_gap_9973", states.halfHome.between(bands.outer)},
                  {"miss_true_gap_95", states.halfHome.between(bands.inner)}};
    if (!boundaries.empty())
        addCells(output, states, bands, boundaries);
    addBestLeaf(output, states, boundaries);
    output["judged"] = judgedByStates(toJudge, states);
    return output;
}

} // namespace rig::calc
