// Charts against worked examples of the NIST/SEMATECH e-Handbook (6.3.2.3 CUSUM, 6.3.2.4 EWMA;
// tests/data/published/nist_handbook_examples.json, recomputed there) and scores against Quesenberry's closed
// form. Recomputed paths hold to the file's tolerance, which is rounding of the file's digits; printed
// columns to half a unit of their second decimal, as the page rounds its data on the way. Where the page's
// limits come from a rounded factor, the value without that rounding is tested.

#include "core/numbers/drift.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

json handbookCase(const std::string& id)
{
    const json file = jsonFile("published/nist_handbook_examples.json");
    for (const json& oneCase : file.at("cases"))
        if (oneCase.at("id") == id)
            return oneCase;
    return {};
}

std::vector<double> lessTarget(const json& values, double target)
{
    std::vector<double> scores;
    for (const json& value : values)
        scores.push_back(value.get<double>() - target);
    return scores;
}

// Figures as printed; a dash stands for none.
void expectPrinted(const std::vector<double>& actual, const json& printed, double allowed)
{
    ASSERT_EQ(actual.size(), printed.size());
    for (std::size_t i = 0; i < actual.size(); ++i) {
        if (printed[i] == "-")
            continue;
        EXPECT_NEAR(actual[i], std::stod(printed[i].get<std::string>()), allowed) << i;
    }
}

void expectPath(const std::vector<double>& actual, const json& expected, double allowed)
{
    ASSERT_EQ(actual.size(), expected.size());
    for (std::size_t i = 0; i < actual.size(); ++i)
        EXPECT_NEAR(actual[i], expected[i].get<double>(), allowed) << i;
}

} // namespace

TEST(HandbookCusum, HasTheSamePathSignalAndOnset)
{
    const json example = handbookCase("nist-6323-cusum");
    const json& data = example.at("data");
    const Chart chart = chartOf(lessTarget(data.at("x"), data.at("target")),
                                {100, data.at("h").get<double>()}, {kEwmaWeight, data.at("k").get<double>()});
    expectPath(chart.cusumUp, example.at("expected").at("s_hi"), example.at("tolerance").at("s_hi"));
    expectPath(chart.cusumDown, example.at("expected").at("s_lo"), example.at("tolerance").at("s_lo"));
    const double printed = example.at("tolerance").at("published");
    expectPrinted(chart.cusumUp, example.at("published").at("s_hi_rounded"), printed);
    expectPrinted(chart.cusumDown, example.at("published").at("s_lo_rounded"), printed);
    ASSERT_TRUE(chart.cusumSignal);
    EXPECT_EQ(*chart.cusumSignal + 1, example.at("expected").at("first_signal"));
    EXPECT_EQ(chart.cusumOnset, 12U); // the thirteenth is the first above 0 for good
}

TEST(HandbookEwma, HasTheSamePathAndNoSignal)
{
    const json example = handbookCase("nist-6324-ewma");
    const json& data = example.at("data");
    const double start = data.at("start");
    const double s = data.at("s");
    const double weight = data.at("lambda");
    std::vector<double> scores = lessTarget(data.at("x"), start);
    for (double& score : scores)
        score /= s;
    const ChartLimits limits{data.at("width").get<double>(), 100};
    const Chart chart = chartOf(scores, limits, {weight, kCusumReference});
    std::vector<double> path{start}; // the page lists the start as well
    for (const double ewma : chart.ewma)
        path.push_back(start + s * ewma);
    expectPath(path, example.at("expected").at("ewma"), example.at("tolerance").at("ewma"));
    expectPrinted(path, example.at("published").at("ewma_rounded"), example.at("tolerance").at("published"));
    EXPECT_NEAR(start + s * limits.ewmaLimit(weight),
                example.at("expected").at("ucl_asymptotic").get<double>(), 1e-9);
    EXPECT_FALSE(chart.ewmaSignal);
}

TEST_OF_CASES(Method, QuesenberryScores, AreTheSequentialScoresOfExactReadings,
              oracleCases("method/drift.json", "/closed_form_Q"))
{
    const json& input = oneCase.at("input");
    SigmaPrior prior;
    prior.sMin = input.at("smin").get<double>();
    prior.sMax = input.at("smax").get<double>();
    const auto drift =
        sequentialDriftOf(intervalsOf(input.at("baseline")), intervalsOf(input.at("later")), prior);
    ASSERT_TRUE(drift);
    expectPath(drift->scores, oneCase.at("closed_form_Q"), oneCase.at("tolerance").at("score"));
}
