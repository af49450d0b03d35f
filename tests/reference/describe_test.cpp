// Plain figures against certified values: NIST Statistical Reference Datasets, univariate
// (tests/data/published/strd_univariate.json), and the individuals of the NIST/SEMATECH e-Handbook 6.3.2.2
// and the days of 2.4.4. The tolerances are the files' own: for StRD twice what storing the decimals as
// doubles costs and no less than 2e-13, for the handbook the rounding of the file's digits, for what is
// printed half a unit of the last digit.

#include "core/numbers/describe.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

std::vector<double> valuesOf(const json& list)
{
    return list.get<std::vector<double>>();
}

double rootMeanSquare(const std::vector<double>& values)
{
    double sum = 0;
    for (const double value : values)
        sum += value * value;
    return std::sqrt(sum / static_cast<double>(values.size()));
}

} // namespace

TEST_OF_CASES(Published, StrdUnivariate, HasTheCertifiedFigures, publishedCases("strd_univariate.json"))
{
    const Description description = describe(valuesOf(oneCase.at("data")));
    const json& expected = oneCase.at("expected");
    const auto expectCertified = [&](const char* name, const std::optional<double>& actual) {
        ASSERT_TRUE(actual) << name;
        const double value = expected.at(name).get<double>();
        EXPECT_NEAR(*actual, value, oneCase.at("tolerance").at(name).get<double>() * std::abs(value)) << name;
    };
    EXPECT_EQ(description.n, expected.at("n").get<int>());
    expectCertified("mean", description.mean);
    expectCertified("sd_n_minus_1", description.sd);
    expectCertified("lag1_autocorrelation", description.lag1Autocorrelation);
}

TEST(HandbookIndividuals, HaveTheirMeanAndDeviation)
{
    const json example = publishedCase("nist_handbook_examples.json", "nist-6322-individuals");
    const Description description = describe(valuesOf(example.at("data").at("x")));
    EXPECT_NEAR(description.mean.value(), example.at("expected").at("mean").get<double>(), 1e-9);
    EXPECT_NEAR(description.sd.value(), example.at("expected").at("sd_n_minus_1").get<double>(), 1e-9);
    EXPECT_NEAR(*description.mean, std::stod(example.at("published").at("mean").get<std::string>()), 5e-5);
}

// The nested study as far as means and deviations go: days within runs, and runs. Its two printed deviations
// of runs, 0.027280 and 0.027560, are rounded to four digits; the recomputed ones are tested.
TEST(HandbookNestedStudy, HasTheDeviationsOfItsDaysAndRuns)
{
    const json example = publishedCase("nist_handbook_examples.json", "nist-244-nested-one-item");
    const json& expected = example.at("expected");
    const json& runs = example.at("data").at("runs");
    const auto expectNear = [&expected](double actual, const char* name) {
        const double value = expected.at(name).get<double>();
        EXPECT_NEAR(actual, value, 1e-10 * value) << name;
    };
    const Description first = describe(valuesOf(runs[0].at("day_mean")));
    const Description second = describe(valuesOf(runs[1].at("day_mean")));
    expectNear(first.sd.value(), "s2_run1");
    expectNear(second.sd.value(), "s2_run2");
    expectNear(rootMeanSquare({*first.sd, *second.sd}), "s2_day_to_day");
    expectNear(describe(std::vector{first.mean.value(), second.mean.value()}).sd.value(), "s3_run_to_run");
}
