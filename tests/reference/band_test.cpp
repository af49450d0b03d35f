// Bands, grades, scores and admission against an independent quadrature (tests/data/README.md), inside the
// tolerances that the file states: 1e-5 mm is a hundredth of the finest gauge; probabilities to 1e-6 or a
// thousandth.

#include "tests/support/method_names.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

SigmaPrior priorOf(const json& input)
{
    SigmaPrior prior;
    prior.nu0 = input.value("nu0", prior.nu0);
    prior.s0 = input.value("s0", prior.s0);
    if (input.contains("smin"))
        prior.sMin = input["smin"].get<double>();
    if (input.contains("smax"))
        prior.sMax = input["smax"].get<double>();
    return prior;
}

class BandOracle : public testing::TestWithParam<json>
{
protected:
    const json& input() const { return GetParam()["input"]; }
    const json& expected() const { return GetParam()["expected"]; }
    double allowed(const char* name) const { return GetParam()["tolerance"][name].get<double>(); }
    IntervalSet readings() const { return intervalSetOf(intervalsOf(input().at("readings"))); }
    std::optional<IntervalPosterior> posterior() const
    {
        return IntervalPosterior::of(readings(), priorOf(input()));
    }
    double extraVariance() const { return input().value("u_set2", 0.0); }
};

} // namespace

TEST_P(BandOracle, AgreesOnWhetherThereIsABandAtAll)
{
    EXPECT_EQ(nameOf(readings().status), expected().at("status"));
    EXPECT_EQ(posterior().has_value(), expected().at("status") == "OK");
}

TEST_P(BandOracle, AgreesOnTheBandsAndThePosterior)
{
    const auto found = posterior();
    if (expected().at("status") != "OK") {
        EXPECT_FALSE(found);
        return;
    }
    ASSERT_TRUE(found);
    EXPECT_EQ(found->readings(), expected().at("n"));
    EXPECT_NEAR(found->sMin(), expected().at("s_min_used").get<double>(), 1e-12);
    EXPECT_NEAR(found->sMax(), expected().at("s_max_used").get<double>(), 1e-12);
    EXPECT_NEAR(found->medianWidth(), expected().at("delta_median").get<double>(), 1e-12);
    const PredictiveBands bands = bandsOf(*found, extraVariance());
    expectBand(bands.inner, expected().at("band95"), allowed("band_mm"));
    expectBand(bands.outer, expected().at("band9973"), allowed("band_mm"));
    EXPECT_NEAR(bands.median, expected().at("predictive_median").get<double>(), allowed("band_mm"));
    EXPECT_NEAR(found->meanMu(), expected().at("mean_mu").get<double>(), allowed("mean_mm"));
    EXPECT_NEAR(found->sdMu(), expected().at("sd_mu").get<double>(), allowed("mean_mm"));
    EXPECT_NEAR(found->meanSigma(), expected().at("mean_sigma").get<double>(), allowed("mean_mm"));
    EXPECT_EQ(found->sigmaAtCap(), expected().at("sigma_at_cap"));
    EXPECT_NEAR(found->logEvidence(), expected().at("log_evidence").get<double>(),
                allowed("log_evidence_abs"));
}

TEST_P(BandOracle, AgreesOnEveryReadingJudged)
{
    const auto found = posterior();
    if (!expected().contains("judged")) {
        EXPECT_FALSE(found);
        return;
    }
    ASSERT_TRUE(found);
    const json& tolerance = GetParam()["tolerance"];
    const PredictiveBands bands = bandsOf(*found, extraVariance());
    for (const json& one : expected().at("judged")) {
        SCOPED_TRACE(one.at("reading").dump());
        const Interval reading = intervalOf(one.at("reading"));
        const Grading grading = gradingOf(reading, *found, bands, extraVariance());
        expectProbability(grading.high, one.at("p_high"), tolerance);
        expectProbability(grading.low, one.at("p_low"), tolerance);
        expectProbability(grading.tail, one.at("p_tail"), tolerance);
        EXPECT_EQ(nameOf(grading.inner), one.at("state95"));
        EXPECT_EQ(nameOf(grading.outer), one.at("state9973"));
        EXPECT_EQ(nameOf(grading.grade), one.at("grade"));
        EXPECT_NEAR(scoreOf(reading, *found, extraVariance()), one.at("score_z").get<double>(),
                    allowed("score"));
    }
}

INSTANTIATE_TEST_SUITE_P(Method, BandOracle, testing::ValuesIn(oracleCases("method/band.json")), caseName);

class AdmissionOracle : public BandOracle
{
};

TEST_P(AdmissionOracle, AgreesOnWhichReadingsBelongToTheBaseline)
{
    const std::vector<AdmissionFinding> findings = admissionOf(readings(), priorOf(input()));
    const json& wanted = expected().at("admission");
    ASSERT_EQ(findings.size(), wanted.size());
    for (std::size_t i = 0; i < findings.size(); ++i) {
        SCOPED_TRACE(wanted[i].at("reading").dump());
        EXPECT_EQ(findings[i].reading, intervalOf(wanted[i].at("reading")));
        EXPECT_EQ(nameOf(findings[i].flag), wanted[i].at("flag"));
        ASSERT_TRUE(findings[i].tail);
        expectProbability(*findings[i].tail, wanted[i].at("p"), GetParam()["tolerance"]);
    }
}

INSTANTIATE_TEST_SUITE_P(Method, AdmissionOracle,
                         testing::ValuesIn(oracleCases("method/band.json", "/expected/admission")), caseName);

class ClosedFormOracle : public BandOracle
{
};

TEST_P(ClosedFormOracle, EqualsTheTFormulaOnExactReadings)
{
    const auto found = posterior();
    ASSERT_TRUE(found);
    const PredictiveBands bands = bandsOf(*found);
    expectBand(bands.inner, GetParam()["closed_form_t"].at("0.95"), allowed("band_mm"));
    expectBand(bands.outer, GetParam()["closed_form_t"].at("0.9973"), allowed("band_mm"));
}

INSTANTIATE_TEST_SUITE_P(Method, ClosedFormOracle,
                         testing::ValuesIn(oracleCases("method/band.json", "/closed_form_t")), caseName);
