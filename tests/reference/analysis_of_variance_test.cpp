// Analysis of variance against certified values (NIST Statistical Reference Datasets, ANOVA,
// tests/data/published/strd_anova.json) and against studies of measurers from open data
// (repeatability_reproducibility.json). The tolerances are the files' own. StRD's are twice what storing the
// decimals as doubles costs, no less than 2e-13: at least nine digits for every set but SmLs07 and SmLs08.
// Those have thirteen constant leading digits, of which a double keeps none to spare, and four digits are all
// that their stored values determine.

#include "core/numbers/measurer_study.h"
#include "core/numbers/one_way.h"
#include "core/numbers/reading_pair.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

constexpr const char* kStudies = "repeatability_reproducibility.json";

using Groups = std::vector<std::vector<double>>;

std::vector<StudyReading> readingsOf(const json& rows)
{
    std::vector<StudyReading> readings;
    for (const json& row : rows)
        for (std::size_t i = 2; i < row.size(); ++i)
            readings.push_back({row[i].get<double>(), row[0].get<int>(), row[1].get<int>()});
    return readings;
}

void expectRelative(double actual, const json& expected, double relative)
{
    const double value = expected.get<double>();
    EXPECT_NEAR(actual, value, relative * std::abs(value));
}

} // namespace

TEST_OF_CASES(Published, StrdAnova, HasTheCertifiedFigures, publishedCases("strd_anova.json"))
{
    const auto result = oneWay(oneCase.at("data").at("groups").get<Groups>());
    ASSERT_TRUE(result);
    const json& expected = oneCase.at("expected");
    const auto expectCertified = [&](const char* name, double actual) {
        SCOPED_TRACE(name);
        expectRelative(actual, expected.at(name), oneCase.at("tolerance").at(name).get<double>());
    };
    EXPECT_EQ(result->dfBetween, expected.at("df_between").get<int>());
    EXPECT_EQ(result->dfWithin, expected.at("df_within").get<int>());
    expectCertified("ms_between", result->msBetween);
    expectCertified("ms_within", result->msWithin);
    expectCertified("ss_between", result->msBetween * result->dfBetween);
    expectCertified("ss_within", result->msWithin * result->dfWithin);
    expectCertified("F", result->F.value());
    expectCertified("r_squared", result->rSquared.value());
    expectCertified("residual_sd", result->residualSd);
}

// Cano, Moguerza & Redchuk 2012, the full table: this program pools nothing, so the reduced one is not its
// answer.
TEST(CrossedStudy, HasThePublishedTable)
{
    const json oneCase = publishedCase(kStudies, "rr-crossed-3x3x3-a");
    const auto study = measurerStudy(readingsOf(oneCase.at("data").at("rows"))).study;
    ASSERT_TRUE(study);
    const json& full = oneCase.at("expected").at("full");
    const double relative = oneCase.at("tolerance").at("value").get<double>();
    const StudyRow* const rows[] = {&study->parts, &study->persons, &study->interaction, &study->repeats};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(rows[i]->df, full.at("df")[i].get<int>());
        expectRelative(rows[i]->meanSquare, full.at("ms")[i], relative);
    }
    expectRelative(study->interactionF.value(), full.at("F_interaction"), relative);
    expectRelative(study->interactionP.value(), full.at("p_interaction"), relative);
    expectRelative(study->repeatVariance, full.at("var_repeat"), relative);
    EXPECT_EQ(study->interactionVariance, 0);
    expectRelative(study->personVariance, full.at("var_operator"), relative);
    expectRelative(study->partVariance, full.at("var_part"), relative);
}

// Nine laboratories with two results each, ISO 5725-2: s_L^2 = (between - within) / 2, s_R^2 = s_L^2 + s_r^2.
TEST(OneWayStudy, HasTheLimitsOfItsLaboratories)
{
    const json oneCase = publishedCase(kStudies, "rr-oneway-apricot");
    const auto result = oneWay(oneCase.at("data").at("groups").get<Groups>());
    ASSERT_TRUE(result);
    const json& expected = oneCase.at("expected");
    const double relative = oneCase.at("tolerance").at("value").get<double>();
    const double between = (result->msBetween - result->msWithin) / expected.at("n_bar").get<double>();
    expectRelative(result->msBetween, expected.at("ms_between"), relative);
    expectRelative(result->msWithin, expected.at("ms_within"), relative);
    expectRelative(result->residualSd, expected.at("s_r"), relative);
    expectRelative(kDifferenceFactor * result->residualSd, expected.at("repeatability_limit_2p8"), relative);
    expectRelative(kDifferenceFactor * std::sqrt(between + result->msWithin),
                   expected.at("reproducibility_limit_2p8"), relative);
}
