// Published trends, changes of mean and prediction intervals: tests/data/published/trend_and_change.json (a
// series worked by hand, Page's data of 1955, the Nile) and case 4.5.1.2 of nist_handbook_examples.json. Each
// case carries its source. The tolerances are the files' own.

#include "core/numbers/change_point.h"
#include "core/numbers/interval_trend.h"
#include "core/numbers/rank_trend.h"
#include "tests/support/oracle.h"

#include <numeric>

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

std::vector<json> publishedCases()
{
    const json file = jsonFile("published/trend_and_change.json");
    return file.at("cases").get<std::vector<json>>();
}

std::vector<Interval> exactly(const std::vector<double>& values)
{
    std::vector<Interval> readings;
    for (const double value : values)
        readings.push_back({value, value});
    return readings;
}

// The times of the published series: 1, 2, 3 and so on.
std::vector<double> stepsFor(const std::vector<double>& values)
{
    std::vector<double> steps(values.size());
    std::iota(steps.begin(), steps.end(), 1.0);
    return steps;
}

std::vector<double> sortedSlopes(const std::vector<double>& values)
{
    std::vector<double> slopes;
    for (std::size_t i = 0; i < values.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            slopes.push_back((values[i] - values[j]) / static_cast<double>(i - j));
    std::ranges::sort(slopes);
    return slopes;
}

std::vector<double> seriesOf(const json& oneCase)
{
    return oneCase["data"]["x"];
}

// With the tolerance of the case.
void expectAsIn(const json& oneCase, double actual, const json& expected)
{
    const double value = expected.get<double>();
    EXPECT_NEAR(actual, value, oneCase["tolerance"]["value"].get<double>() * std::abs(value));
}

class PredictionOfTheHandbook : public testing::Test
{
protected:
    void SetUp() override
    {
        const json file = jsonFile("published/nist_handbook_examples.json");
        for (const json& oneCase : file.at("cases"))
            if (oneCase.at("id") == "nist-4512-prediction")
                m_case = oneCase;
        ASSERT_TRUE(m_case.is_object());
        const std::vector<double> y = m_case["data"]["y"];
        m_trend = intervalTrendOf(m_case["data"]["x"].get<std::vector<double>>(), exactly(y), 1);
        ASSERT_TRUE(m_trend);
    }
    void expectFigure(double actual, const json& expected) const
    {
        const double value = expected.get<double>();
        EXPECT_NEAR(actual, value, m_case["tolerance"]["value"].get<double>() * std::abs(value));
    }

    json m_case;
    std::optional<IntervalTrend> m_trend;
};

} // namespace

TEST_OF_CASES(Published, PublishedTrend, HasItsMannKendallFigures, publishedCases())
{
    const json& mk = oneCase["expected"]["mk"];
    const auto trend = rankTrendOf(stepsFor(seriesOf(oneCase)), seriesOf(oneCase));
    ASSERT_TRUE(trend);
    EXPECT_EQ(trend->s, mk["S"].get<double>());
    expectAsIn(oneCase, trend->varianceOfS, mk["var_S"]);
    expectAsIn(oneCase, trend->tauB.value(), mk["tau_b"]);
    EXPECT_FALSE(trend->isExactP) << "all of them have ties";
    const double p = mk["p_two_sided"].get<double>();
    EXPECT_NEAR(trend->p, p, oneCase["tolerance"]["p"].get<double>() * p);
}

// The published limits lie between the two slopes next to a broken rank; docs/method.md D takes the slope at
// the rounded rank, so one of the two.
TEST_OF_CASES(Published, PublishedTrend, HasItsSlopeAndTheSlopesAtTheRoundedRanks, publishedCases())
{
    const json& sen = oneCase["expected"]["sen"];
    const auto trend = rankTrendOf(stepsFor(seriesOf(oneCase)), seriesOf(oneCase));
    ASSERT_TRUE(trend);
    expectAsIn(oneCase, trend->slope, sen["slope"]);
    expectAsIn(oneCase, trend->intercept, sen["intercept_median_of_residuals_x_from_1"]);

    const std::vector<double> slopes = sortedSlopes(seriesOf(oneCase));
    const auto expectAtRank = [&](double actual, double rank, const json& between) {
        const auto below = static_cast<std::size_t>(std::floor(rank)) - 1;
        EXPECT_EQ(actual, slopes[static_cast<std::size_t>(std::round(rank)) - 1]);
        EXPECT_LE(slopes[below], between.get<double>() + 1e-12);
        EXPECT_GE(slopes[below + 1], between.get<double>() - 1e-12);
    };
    expectAtRank(trend->slope95.lower, sen["rank_lower"], sen["ci95_lower_gilbert"]);
    expectAtRank(trend->slope95.upper, sen["rank_upper"], sen["ci95_upper_gilbert"]);
}

TEST_OF_CASES(Published, PublishedTrend, HasItsPettittFigures, publishedCases())
{
    const json& pettitt = oneCase["expected"]["pettitt"];
    const auto change = changePointOf(exactly(seriesOf(oneCase)), {.minSegment = 3, .sigmaFloor = 0});
    ASSERT_TRUE(change && change->ranks);
    EXPECT_EQ(change->ranks->k, pettitt["K"].get<double>());
    EXPECT_EQ(change->ranks->splitAfter, pettitt["change_after_index"].get<int>());
    expectAsIn(oneCase, change->ranks->p, pettitt["p_approx"]);
}

TEST(PublishedChange, OfTheNileLiesAfter1898ByLikelihoodToo)
{
    for (const json& oneCase : publishedCases()) {
        if (oneCase["id"] != "trend-nile")
            continue;
        const auto change = changePointOf(exactly(oneCase["data"]["x"]), {.minSegment = 3, .sigmaFloor = 0});
        ASSERT_TRUE(change);
        EXPECT_EQ(1870 + change->splitAfter, oneCase["published"]["change_after_year"].get<int>());
        return;
    }
    FAIL() << "the Nile is missing";
}

TEST_F(PredictionOfTheHandbook, HasItsLine)
{
    const json& expected = m_case["expected"];
    expectFigure(m_trend->slope, expected["slope"]);
    expectFigure(m_trend->level - m_trend->slope * m_trend->meanDay, expected["intercept"]);
    expectFigure(m_trend->sigma, expected["residual_sd"]);
    // The file's t has nine right digits: its tail is 0.02499999996, the program's 0.025 to 1e-14.
    EXPECT_NEAR(m_trend->t95, expected["t"].get<double>(), 1e-9);
    EXPECT_EQ(m_trend->readings - 2, expected["df"].get<int>());
}

TEST_F(PredictionOfTheHandbook, HasItsIntervals)
{
    ASSERT_EQ(m_case["expected"]["rows"].size(), 3u);
    for (const json& row : m_case["expected"]["rows"]) {
        SCOPED_TRACE(row["x"].dump());
        const auto prediction = m_trend->predictionAt(row["x"]);
        ASSERT_TRUE(prediction);
        expectFigure(prediction->fit, row["y_hat"]);
        expectFigure(prediction->meanError, row["s_fit"]);
        expectFigure(prediction->readingError, row["s_pred"]);
        expectFigure(prediction->reading95.lower, row["lower"]);
        expectFigure(prediction->reading95.upper, row["upper"]);
    }
}
