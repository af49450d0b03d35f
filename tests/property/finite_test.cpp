// Whatever finite figures are handed in, each kind of rigband-calc answers with finite figures, with null, or
// with a sentence: never with one that is no number.

#include "app/bench/draws.h"
#include "app/calc/kinds.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>

using nlohmann::json;
using rig::bench::Draws;

namespace {

constexpr int kInputs = RIG_DRAWS / 4; // of each kind; there are nineteen

// Mostly what a hangar could bring forth; now and then of any size a double has.
double figure(Draws& draws)
{
    const double sign = draws.uniform() < 0.1 ? -1 : 1;
    const double kind = draws.uniform();
    if (kind < 0.7)
        return sign * std::round(draws.uniform() * 100) / 50;
    if (kind < 0.8)
        return 0;
    return sign * std::pow(10.0, kind < 0.95 ? 24 * draws.uniform() - 12 : 630 * draws.uniform() - 322);
}

int whole(Draws& draws, int below)
{
    return static_cast<int>(below * draws.uniform());
}

json pair(Draws& draws)
{
    const double lower = figure(draws);
    const double upper = draws.uniform() < 0.2 ? lower : lower + std::abs(figure(draws));
    const bool isOpenBelow = draws.uniform() < 0.03;
    const bool isOpenAbove = draws.uniform() < 0.05 || !std::isfinite(upper);
    return {isOpenBelow ? json{} : json(lower), isOpenAbove ? json{} : json(upper)};
}

json closedPair(Draws& draws)
{
    const double lower = figure(draws);
    const double upper = lower + std::abs(figure(draws));
    return {lower, std::isfinite(upper) ? upper : lower};
}

template <typename Make> json list(Draws& draws, int count, const Make& make)
{
    json made = json::array();
    for (int i = 0; i < count; ++i)
        made.push_back(make(draws));
    return made;
}

// Each time-like list rises half of the time.
json times(Draws& draws, int count)
{
    json made = list(draws, count, figure);
    if (draws.uniform() < 0.5)
        std::sort(made.begin(), made.end());
    return made;
}

using Make = json (*)(Draws&);

json band(Draws& draws)
{
    json input{{"readings", list(draws, whole(draws, 12), pair)}, {"judge", list(draws, 2, pair)}};
    if (draws.uniform() < 0.1)
        input["loo"] = true;
    if (draws.uniform() < 0.2)
        input.update({{"nu0", std::abs(figure(draws))}, {"s0", figure(draws)}});
    if (draws.uniform() < 0.2)
        input.update({{"smin", figure(draws)}, {"smax", figure(draws)}});
    return input;
}

json discrimination(Draws& draws)
{
    json leaves = list(draws, whole(draws, 8), figure);
    std::sort(leaves.begin(), leaves.end());
    return {{"locked", list(draws, 1 + whole(draws, 6), pair)},
            {"half_home", list(draws, 1 + whole(draws, 6), pair)},
            {"leaf_boundaries", leaves},
            {"judge", list(draws, 2, pair)}};
}

json drift(Draws& draws)
{
    return {{"baseline", list(draws, 3 + whole(draws, 8), pair)},
            {"later", list(draws, whole(draws, 6), pair)},
            {"mode", draws.uniform() < 0.8 ? "frozen" : "sequential"}};
}

json fleet(Draws& draws)
{
    json groups = json::array();
    for (int i = whole(draws, 4); i > 0; --i)
        groups.push_back(list(draws, whole(draws, 6), pair));
    return {{"groups", groups}, {"nu0_min", 1}, {"nu0_max", 10}};
}

json fleetMoments(Draws& draws)
{
    const int count = whole(draws, 8);
    return {{"s2", list(draws, count, figure)}, {"df", list(draws, count, figure)}};
}

json trend(Draws& draws)
{
    const int count = whole(draws, 14);
    return {{"t_days", times(draws, count)},
            {"readings", list(draws, count, pair)},
            {"band", closedPair(draws)},
            {"predict_at", list(draws, 2, figure)},
            {"inspection_day", figure(draws)}};
}

json changePoint(Draws& draws)
{
    json input{{"readings", list(draws, whole(draws, 16), pair)}};
    if (draws.uniform() < 0.3)
        input.update({{"min_segment", whole(draws, 6)}, {"sigma_floor", figure(draws)}});
    return input;
}

json rankTrend(Draws& draws)
{
    const int count = whole(draws, 14);
    return {{"t", times(draws, count)}, {"y", list(draws, count, figure)}};
}

// Balanced half of the time.
json measurers(Draws& draws)
{
    json parts = json::array();
    json people = json::array();
    const int repeats = 1 + whole(draws, 3);
    for (int i = 0; i < 9 * repeats; ++i) {
        parts.push_back(1 + i / repeats % 3);
        people.push_back(1 + i / repeats / 3);
    }
    if (draws.uniform() < 0.5)
        parts[0] = 2;
    return {{"y", list(draws, 9 * repeats, figure)}, {"part", parts}, {"operator", people}};
}

json runLength(Draws& draws)
{
    return {{"chart", draws.uniform() < 0.5 ? "ewma" : "cusum"},
            {"lambda", draws.uniform() < 0.5 ? 1 - draws.uniform() : figure(draws)},
            {"L", figure(draws)},
            {"k", figure(draws)},
            {"h", figure(draws)},
            {"shift", figure(draws)},
            {"two_sided", draws.uniform() < 0.5}};
}

json budget(Draws& draws)
{
    return {{"bracket", closedPair(draws)},
            {"leaf_tolerances", list(draws, whole(draws, 4), figure)},
            {"film", figure(draws)},
            {"temperature_c", figure(draws)},
            {"s_r", figure(draws)}};
}

json scores(Draws& draws)
{
    return {{"scores", list(draws, whole(draws, 9), figure)}};
}

json twoReadings(Draws& draws)
{
    return {{"first", pair(draws)},
            {"second", pair(draws)},
            {"s_r", figure(draws)},
            {"s_R", figure(draws)},
            {"two_persons", draws.uniform() < 0.5}};
}

json numbers(Draws& draws)
{
    return {{"x", list(draws, whole(draws, 8), figure)}};
}

json line(Draws& draws)
{
    const int count = whole(draws, 8);
    return {{"x", list(draws, count, figure)},
            {"y", list(draws, count, figure)},
            {"through_origin", draws.uniform() < 0.5}};
}

json groups(Draws& draws)
{
    json made = json::array();
    for (int i = whole(draws, 5); i > 0; --i)
        made.push_back(list(draws, whole(draws, 5), figure));
    return {{"groups", made}};
}

// Baseline first, then riggings one by one.
json riggings(int baseline, int count)
{
    json made = json::array();
    for (int i = 0; i < count; ++i)
        made.push_back(i < baseline ? json{} : json(i - baseline + 1));
    return made;
}

json movement(Draws& draws)
{
    const int count = whole(draws, 24);
    json input{{"readings", list(draws, count, pair)}, {"rigging", riggings(whole(draws, 6), count)}};
    if (draws.uniform() < 0.5)
        input.update({{"forecast_at", figure(draws)}, {"band", closedPair(draws)}});
    return input;
}

json label(Draws& draws)
{
    return whole(draws, 2);
}

json plainPair(Draws& draws)
{
    const double lower = whole(draws, 20) / 20.0;
    return {lower, lower + 0.05};
}

json season(Draws& draws)
{
    const int count = 4 + whole(draws, 40);
    return {{"readings", list(draws, count, draws.uniform() < 0.7 ? plainPair : pair)},
            {"rigging", riggings(2, count)},
            {"coupling", list(draws, count, label)},
            {"person", list(draws, count, label)},
            {"gauge", list(draws, count, label)},
            {"day", list(draws, count, label)}};
}

json mixedModel(Draws& draws)
{
    const int count = whole(draws, 12);
    return {{"y", list(draws, count, figure)},
            {"group", list(draws, count, label)},
            {"columns", {list(draws, count, label), list(draws, count, figure)}}};
}

const std::map<std::string, Make>& makers()
{
    static const std::map<std::string, Make> kTable{
        {"band", band},
        {"discrimination", discrimination},
        {"drift", drift},
        {"empirical_bayes_interval", fleet},
        {"empirical_bayes_moments", fleetMoments},
        {"trend", trend},
        {"changepoint", changePoint},
        {"mann_kendall_theil_sen", rankTrend},
        {"anova_rr", measurers},
        {"arl", runLength},
        {"budget", budget},
        {"shared_shift", scores},
        {"repeat_pair", twoReadings},
        {"describe", numbers},
        {"line", line},
        {"anova", groups},
        {"mixed_model", mixedModel},
        {"movement", movement},
        {"season", season},
    };
    return kTable;
}

bool isFinite(const json& value)
{
    if (value.is_number_float())
        return std::isfinite(value.get<double>());
    return !value.is_structured() || std::ranges::all_of(value, isFinite);
}

std::string kindName(const testing::TestParamInfo<rig::calc::Kind>& kind)
{
    return std::string{kind.param.name};
}

class AnyKind : public testing::TestWithParam<rig::calc::Kind>
{
};

} // namespace

TEST_P(AnyKind, AnswersFiniteInputWithFiniteFigures)
{
    const Make make = makers().at(std::string{GetParam().name});
    Draws draws{20240320};
    int answered = 0;
    for (int i = 0; i < kInputs && !HasFailure(); ++i) {
        const json given = make(draws);
        rig::calc::CaseInput input{given};
        const json answer = GetParam().answer(input);
        if (!input.isGood())
            continue;
        ++answered;
        EXPECT_TRUE(isFinite(answer)) << given.dump() << '\n' << answer.dump();
    }
    EXPECT_GT(answered, kInputs / 20); // refusing everything would prove nothing
}

INSTANTIATE_TEST_SUITE_P(Calc, AnyKind,
                         testing::ValuesIn(rig::calc::kinds().begin(), rig::calc::kinds().end()), kindName);
