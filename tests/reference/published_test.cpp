// Figures of tests/data/published/distribution_quantiles.json: definitions recomputed to 40 digits, with the
// printed tables of the NIST/SEMATECH e-Handbook (1.3.6.7.2 t, 1.3.6.7.4 chi-square, 1.3.5.17.1 Grubbs) and
// prediction factors after Hahn & Meeker, Statistical Intervals. Tolerances are the file's own where a
// function is tested directly. Where the factor comes out of the quadrature, 1e-5 mm as everywhere.

#include "core/numbers/admission.h"
#include "core/numbers/describe.h"
#include "core/numbers/distributions.h"
#include "core/numbers/grading.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

std::vector<json> casesNamed(const std::string& prefix)
{
    return publishedCases("distribution_quantiles.json", prefix);
}

// So wide a range of sigma that the posterior equals the textbook's.
SigmaPrior nearlyUnbounded()
{
    SigmaPrior prior;
    prior.sMin = 1e-6;
    prior.sMax = 1e8; // n = 2 still feels an end at 1e4
    return prior;
}

struct MeanAndDeviation
{
    double mean = 0;
    double deviation = 0;
};

MeanAndDeviation momentsOf(const std::vector<double>& values)
{
    const Description description = describe(values);
    return {description.mean.value(), description.sd.value()};
}

std::optional<IntervalPosterior> posteriorOfExact(const std::vector<double>& values)
{
    std::vector<Interval> readings;
    for (const double value : values)
        readings.push_back({value, value});
    return IntervalPosterior::of(intervalSetOf(readings), nearlyUnbounded());
}

// Unequal, without pattern in its spacing, some hundredths of a millimetre wide.
std::vector<double> someValues(int count)
{
    std::vector<double> values;
    for (int i = 0; i < count; ++i)
        values.push_back(0.5 + 0.03 * std::sin(1.7 * i * i + 0.3));
    return values;
}

} // namespace

TEST_OF_CASES(Published, StudentQuantiles, AgreeWithTheTable, casesNamed("q-t-"))
{
    const double df = oneCase["data"]["df"].get<double>();
    const double relative = oneCase["tolerance"]["value"].get<double>();
    ASSERT_FALSE(oneCase["expected"].empty());
    for (const auto& [key, expected] : oneCase["expected"].items()) {
        const double p = std::stod(key.substr(1)); // "p0.975"
        const double t = expected.get<double>();
        EXPECT_NEAR(studentQuantile(p, df), t, relative * t) << key;
        EXPECT_NEAR(studentQuantile(1 - p, df), -t, 1e-9 * t) << key; // 1 - p is rounded
        EXPECT_NEAR(studentBelow(t, df), p, 1e-11) << key;
    }
}

TEST_OF_CASES(Published, NormalQuantiles, AgreeWithTheTable, casesNamed("q-norm-"))
{
    const double p = oneCase["data"]["p"].get<double>();
    const double z = oneCase["expected"]["z"].get<double>();
    EXPECT_NEAR(normalQuantile(p), z, oneCase["tolerance"]["value"].get<double>());
    EXPECT_NEAR(normalBelow(z), p, 1e-14);
}

TEST_OF_CASES(Published, ChiSquareQuantiles, AgreeWithTheTable, casesNamed("q-chi2-"))
{
    const double df = oneCase["data"]["df"].get<double>();
    const double relative = oneCase["tolerance"]["value"].get<double>();
    ASSERT_FALSE(oneCase["expected"].empty());
    for (const auto& [key, expected] : oneCase["expected"].items()) {
        const double p = std::stod(key.substr(1)); // "p0.975"
        const double x = expected.get<double>();
        EXPECT_NEAR(chiSquareQuantile(p, df), x, relative * x) << key;
        EXPECT_NEAR(chiSquareBelow(x, df), p, 1e-11) << key;
    }
}

TEST_OF_CASES(Published, FisherQuantiles, AgreeWithTheTable, casesNamed("q-F-"))
{
    const json& data = oneCase["data"];
    const double df1 = data["df1"].get<double>();
    const double df2 = data["df2"].get<double>();
    const double p = data["p"].get<double>();
    const double f = oneCase["expected"]["F"].get<double>();
    EXPECT_NEAR(fisherQuantile(p, df1, df2), f, oneCase["tolerance"]["value"].get<double>() * f);
    EXPECT_NEAR(fisherBelow(f, df1, df2), p, 1e-11);
    EXPECT_NEAR(fisherAbove(f, df1, df2), 1 - p, 1e-11);
}

TEST_OF_CASES(Published, PredictionFactors, ComeOutOfTheBandsOfExactReadings, casesNamed("pred-"))
{
    const std::vector<double> values = someValues(oneCase["data"]["n"].get<int>());
    const auto [mean, deviation] = momentsOf(values);
    const auto posterior = posteriorOfExact(values);
    ASSERT_TRUE(posterior);
    for (const auto& [key, expected] : oneCase["expected"].items()) { // "two_sided_0.95"
        const double share = std::stod(key.substr(10));
        const double tail = key.starts_with("two") ? (1 - share) / 2 : 1 - share;
        const double reach = expected.get<double>() * deviation;
        EXPECT_NEAR(posterior->lowerQuantile(tail), mean - reach, 1e-5) << key;
        EXPECT_NEAR(posterior->upperQuantile(tail), mean + reach, 1e-5) << key;
    }
}

// Admission on exact readings is Grubbs' two-sided test: where the largest deviation is just the critical
// value, the reading's tail times n is just the level.
TEST_OF_CASES(Published, GrubbsCriticalValues, AreWhereAdmissionChangesItsMind, casesNamed("q-grubbs-"))
{
    const int n = oneCase["data"]["n"].get<int>();
    for (const char* level : {"0.05", "0.01"}) {
        const double critical = oneCase["expected"][std::string{"two_sided_"} + level].get<double>();
        // n - 1 values of mean m and deviation s and one at m + d have
        // G^2 = (n-1)^3 d^2 / n^2 / ((n-2) s^2 + (n-1) d^2 / n); solved here for d.
        const std::vector<double> others = someValues(n - 1);
        const auto [mean, deviation] = momentsOf(others);
        const double room = (n - 1.0) * (n - 1.0) / n - critical * critical;
        const double far = mean + deviation * critical * std::sqrt((n - 2.0) * n / ((n - 1.0) * room));
        std::vector<double> all = others;
        all.push_back(far);
        const auto [wholeMean, wholeDeviation] = momentsOf(all);
        ASSERT_NEAR((far - wholeMean) / wholeDeviation, critical, 1e-9);

        const auto posterior = posteriorOfExact(others);
        ASSERT_TRUE(posterior);
        const double wanted = std::stod(level);
        // The critical value has 12 digits; near its bound (n = 3) that leaves fewer of the level.
        EXPECT_NEAR(n * tailOf({far, far}, *posterior), wanted, 1e-3 * wanted);
    }
}

// The e-Handbook's example (1.3.5.17.1, data of Tietjen & Moore): the page asks one-sidedly whether the
// largest of eight masses belongs, admission asks of either side; both say that it does not. G itself is the
// largest deviation in units of the deviation.
TEST(HandbookOutlier, IsTheOneReadingThatDoesNotBelong)
{
    const json example = publishedCase("nist_handbook_examples.json", "nist-135171-grubbs");
    const auto values = example.at("data").at("x").get<std::vector<double>>();
    const double suspect = values.back();
    const auto [mean, deviation] = momentsOf(values);
    const double G = example.at("expected").at("G").get<double>();
    EXPECT_NEAR((suspect - mean) / deviation, G, example.at("tolerance").at("expected").get<double>() * G);

    std::vector<Interval> readings;
    for (const double value : values)
        readings.push_back({value, value});
    const auto findings = admissionOf(intervalSetOf(readings), nearlyUnbounded());
    ASSERT_EQ(findings.size(), values.size());
    for (const AdmissionFinding& finding : findings)
        EXPECT_EQ(finding.flag,
                  finding.reading.lower == suspect ? AdmissionFlag::Outlier : AdmissionFlag::None)
            << finding.reading.lower;
}
