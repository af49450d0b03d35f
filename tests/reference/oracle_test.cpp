// Every case of tests/data/method, answered by the functions behind rigband-calc and held field by field to
// answers that were worked out apart from this program (tests/data/README.md says how each). The tolerances
// are the file's own, but for the edges of bands where a file gives none: 1e-5 mm, a hundredth of the finest
// gauge. What has no tolerance of its own, such as a count, a word or an index, is the same.

#include "app/calc/kinds.h"
#include "tests/support/oracle.h"

#include <filesystem>
#include <map>

using namespace rig::calc;
using namespace rig::tests;
using nlohmann::json;

namespace {

// The names of two entries of a file's "tolerance": absolute, and relative to the expected value. The larger
// of the two holds.
struct Allowance
{
    const char* absolute = nullptr;
    const char* relative = nullptr;
};

// By the name of a field, or of the field around it; "" is for all other numbers of the file.
using Allowances = std::map<std::string, Allowance>;

// The files give no absolute tolerance for a covariance that is 0 but for rounding.
constexpr const char* kSmallestCovariance = "smallest_covariance";
constexpr Allowance kProbability{"probability_abs", "probability_rel"};

const std::map<std::string, Allowances>& allowances()
{
    static const std::map<std::string, Allowances> kTable{
        {"band",
         {{"", {"band_mm"}},
          {"mean_mu", {"mean_mm"}},
          {"sd_mu", {"mean_mm"}},
          {"mean_sigma", {"mean_mm"}},
          {"log_evidence", {"log_evidence_abs"}},
          {"score_z", {"score"}},
          {"p", kProbability},
          {"p_high", kProbability},
          {"p_low", kProbability},
          {"p_tail", kProbability}}},
        {"discrimination",
         {{"", kProbability},
          {"band95", {"band_mm"}},
          {"band9973", {"band_mm"}},
          {"best_single_leaf", {}},
          {"reading", {}},
          {"log10_lr", {"log10_lr"}},
          {"log10_lr_uncapped", {"log10_lr"}}}},
        {"drift", {{"", {"score"}}, {"ewma", {"chart"}}, {"cusum_up", {"chart"}}, {"cusum_down", {"chart"}}}},
        {"empirical_bayes_interval",
         {{"log_marginal", {"log_marginal_abs"}},
          {"s0", {nullptr, "s0_rel"}},
          {"nu0", {nullptr, "nu0_rel"}}}},
        {"empirical_bayes_moments", {{"", {nullptr, "rel"}}}},
        {"trend",
         {{"", {"level_mm"}},
          {"t_mean", {nullptr, "slope_rel"}},
          {"slope_per_year", {"slope_abs", "slope_rel"}},
          {"slope_ci95", {"slope_abs", "slope_rel"}},
          {"slope_p", {"probability_abs"}},
          {"sigma_ml", {nullptr, "sigma_rel"}},
          {"sigma_adj", {nullptr, "sigma_rel"}},
          {"loglik", {"level_mm"}},
          {"cov_ml", {kSmallestCovariance, "cov_rel"}},
          {"p_reading_outside_at_inspection", {"probability_abs"}},
          {"p_mean_outside_at_inspection", {"probability_abs"}},
          {"day_line_crosses", {"day"}},
          {"day_pi95_touches", {"day"}},
          {"day_mean_ci95_touches", {"day"}}}},
        {"changepoint",
         {{"", {"lr"}},
          {"p", {"p_abs", "p_rel"}},
          {"p_bonferroni", {"p_abs", "p_rel"}},
          {"p_gombay_horvath", {"p_abs", "p_rel"}},
          {"pettitt_p", {nullptr, "pettitt_p_rel"}}}},
        {"mann_kendall_theil_sen", {{"", {nullptr, "exact_rel"}}, {"p", {nullptr, "p_rel"}}}},
        {"anova_rr", {{"", {nullptr, "rel"}}}},
        {"arl", {{"", {nullptr, "rel"}}}},
        {"budget", {{"", {"abs"}}}},
        {"shared_shift", {{"", {"abs"}}}},
        {"repeat_pair", {{"", {"abs"}}}},
        {"mixed_model", {{"", {"small", "rel"}}, {"df", {nullptr, "df_rel"}}}},
    };
    return kTable;
}

// Fields that are no answer of this program: what another one found by a different method.
bool isAside(const std::string& field)
{
    return field == "lme4_reml";
}

class Comparison
{
public:
    Comparison(const Allowances& allowances, const json& tolerance)
        : m_allowances{allowances}, m_tolerance{tolerance}
    {
    }

    void expectSame(const json& actual, const json& expected, const std::string& field) const
    {
        SCOPED_TRACE(field);
        if (expected.is_number()) {
            ASSERT_TRUE(actual.is_number()) << actual;
            const double value = expected.get<double>();
            EXPECT_NEAR(actual.get<double>(), value, allowed(field, value));
        } else if (expected.is_array()) {
            ASSERT_TRUE(actual.is_array()) << actual;
            ASSERT_EQ(actual.size(), expected.size());
            for (std::size_t i = 0; i < expected.size(); ++i)
                expectSame(actual[i], expected[i], field);
        } else if (expected.is_object()) {
            ASSERT_TRUE(actual.is_object()) << actual;
            for (const auto& [name, value] : expected.items()) {
                if (isAside(name))
                    continue;
                ASSERT_TRUE(actual.contains(name)) << name;
                expectSame(actual[name], value, name);
            }
            for (const auto& [name, value] : actual.items())
                EXPECT_TRUE(expected.contains(name)) << name;
        } else {
            EXPECT_EQ(actual, expected);
        }
    }

private:
    double allowed(const std::string& field, double value) const
    {
        const auto own = m_allowances.find(field);
        const Allowance& allowance = own != m_allowances.end() ? own->second : m_allowances.at("");
        const double absolute = allowance.absolute ? toleranceOf(allowance.absolute) : 0;
        const double relative = allowance.relative ? toleranceOf(allowance.relative) : 0;
        return std::max(absolute, relative * std::abs(value));
    }

    double toleranceOf(const std::string& name) const
    {
        if (name == kSmallestCovariance)
            return 1e-12;
        return name == "band_mm" ? m_tolerance.value(name, 1e-5) : m_tolerance.at(name).get<double>();
    }

    const Allowances& m_allowances;
    const json& m_tolerance;
};

// Every case of every kind, with "kind" and "tolerance" beside its id.
std::vector<json> allCases()
{
    std::vector<json> all;
    for (const auto& [name, unused] : allowances()) {
        for (json oneCase : oracleCases("method/" + name + ".json")) {
            oneCase["kind"] = name;
            oneCase["id"] = name + "_" + oneCase["id"].get<std::string>();
            all.push_back(oneCase);
        }
    }
    return all;
}

} // namespace

TEST_OF_CASES(Method, Oracle, Agrees, allCases())
{
    const std::string name = oneCase["kind"];
    const auto kind = std::ranges::find(kinds(), name, &Kind::name);
    ASSERT_NE(kind, kinds().end());
    CaseInput input{oneCase["input"]};
    const json output = kind->answer(input);
    ASSERT_TRUE(input.isGood()) << input.error();
    Comparison{allowances().at(name), oneCase["tolerance"]}.expectSame(output, oneCase["expected"], name);
}

// A file that nobody reads would prove nothing.
TEST(OracleFiles, AreAllRead)
{
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator{std::string{RIG_TEST_DATA} + "/method"}) {
        EXPECT_TRUE(allowances().contains(entry.path().stem().string())) << entry.path();
        ++files;
    }
    EXPECT_EQ(files, allowances().size());
}

// The two ways to estimate components agree where none is held at 0 (lme4's own convergence is about 1e-5).
TEST(MeasurerStudyOracle, AgreesWithRestrictedMaximumLikelihood)
{
    int compared = 0;
    for (const json& oneCase : oracleCases("method/anova_rr.json")) {
        const json& other = oneCase["expected"]["lme4_reml"];
        if (other.is_null())
            continue;
        ++compared;
        CaseInput input{oneCase["input"]};
        const json output = std::ranges::find(kinds(), "anova_rr", &Kind::name)->answer(input);
        const double relative = oneCase["tolerance"]["lme4_rel"].get<double>();
        const auto expectNear = [relative](const json& actual, const json& expected) {
            const double value = expected.get<double>();
            EXPECT_NEAR(actual.get<double>(), value, relative * value);
        };
        expectNear(output["var_interaction"], other["p:o"]);
        expectNear(output["var_part"], other["p"]);
        expectNear(output["var_operator"], other["o"]);
        expectNear(output["var_repeatability"], other["Residual"]);
    }
    EXPECT_EQ(compared, 2);
}
