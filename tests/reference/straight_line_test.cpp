// Straight lines against certified values: NIST Statistical Reference Datasets, linear regression
// (tests/data/published/strd_regression.json), those two of its sets that are straight lines; and the
// prediction interval of the NIST/SEMATECH e-Handbook 4.5.1.2. The tolerances are the files' own: what a
// careful fit in doubles reaches, and for the printed answers 1e-4, as the page prints its data rounded.

#include "core/numbers/distributions.h"
#include "core/numbers/straight_line.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

StraightLine lineOf(const json& oneCase, bool throughOrigin)
{
    std::vector<double> x;
    std::vector<double> y;
    for (const json& row : oneCase.at("data").at("rows")) { // y stands first
        y.push_back(row.at(0).get<double>());
        x.push_back(row.at(1).get<double>());
    }
    const auto line = straightLine(x, y, throughOrigin);
    EXPECT_TRUE(line);
    return line.value_or(StraightLine{});
}

struct HandbookLine
{
    json example = publishedCase("nist_handbook_examples.json", "nist-4512-prediction");
    StraightLine line = straightLine(example.at("data").at("x").get<std::vector<double>>(),
                                     example.at("data").at("y").get<std::vector<double>>())
                            .value_or(StraightLine{});
};

} // namespace

TEST_OF_CASES(Published, StrdStraightLine, HasTheCertifiedFigures,
              (std::vector{publishedCase("strd_regression.json", "strd-lls-norris"),
                           publishedCase("strd_regression.json", "strd-lls-noint1")}))
{
    const json& expected = oneCase.at("expected");
    const json& anova = expected.at("anova");
    const bool throughOrigin = expected.at("parameter").size() == 1;
    const StraightLine line = lineOf(oneCase, throughOrigin);
    const auto expectCertified = [&](double actual, const json& certified, const char* tolerance) {
        const double value = certified.get<double>();
        EXPECT_NEAR(actual, value, oneCase.at("tolerance").at(tolerance).get<double>() * std::abs(value));
    };
    expectCertified(line.slope, expected.at("estimate").back(), "estimate");
    expectCertified(line.slopeError, expected.at("se").back(), "se");
    if (!throughOrigin) {
        expectCertified(line.intercept, expected.at("estimate").at(0), "estimate");
        expectCertified(line.interceptError, expected.at("se").at(0), "se");
    }
    expectCertified(line.residualSd, expected.at("residual_sd"), "residual_sd");
    expectCertified(line.rSquared.value(), expected.at("r_squared"), "r_squared");
    expectCertified(line.F.value(), anova.at("F"), "F");
    EXPECT_EQ(line.residualDf, anova.at("df_residual").get<int>());
}

TEST(HandbookPrediction, HasTheLineAndItsDeviation)
{
    const auto [example, line] = HandbookLine{};
    const json& expected = example.at("expected");
    const double relative = example.at("tolerance").at("value").get<double>();
    const auto expectNear = [&](double actual, const char* name) {
        const double value = expected.at(name).get<double>();
        EXPECT_NEAR(actual, value, relative * value) << name;
    };
    expectNear(line.intercept, "intercept");
    expectNear(line.slope, "slope");
    expectNear(line.residualSd, "residual_sd");
    EXPECT_EQ(line.residualDf, expected.at("df").get<int>());
}

// The file's t has nine right digits, so what it is multiplied with is held to 1e-9; t itself to its
// definition (incomplete beta function in 40-digit arithmetic).
TEST(HandbookPrediction, HasStudentsQuantile)
{
    EXPECT_NEAR(studentQuantile(0.975, 38), 2.02439416391196964, 1e-14);
}

// The page prints 193.5 for the upper bound at 45; its own figures give 193.417, which is tested.
TEST(HandbookPrediction, HasTheIntervalOfANewReading)
{
    const auto [example, line] = HandbookLine{};
    const double relative = example.at("tolerance").at("value").get<double>();
    const double t = studentQuantile(0.975, line.residualDf);
    const json& printed = example.at("published").at("rows");
    const json& rows = example.at("expected").at("rows");
    ASSERT_FALSE(rows.empty());
    ASSERT_EQ(rows.size(), printed.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const json& row = rows[i];
        SCOPED_TRACE(row.at("x").dump());
        const auto point = pointOn(line, row.at("x").get<double>());
        ASSERT_TRUE(point);
        const auto expectNear = [&row](double actual, const char* name, double allowed) {
            const double value = row.at(name).get<double>();
            EXPECT_NEAR(actual, value, allowed * value) << name;
        };
        expectNear(point->fit, "y_hat", relative);
        expectNear(point->fitError, "s_fit", relative);
        expectNear(point->predictionError, "s_pred", relative);
        expectNear(t * point->predictionError, "half_width", 1e-9);
        expectNear(point->fit - t * point->predictionError, "lower", 1e-9);
        expectNear(point->fit + t * point->predictionError, "upper", 1e-9);
        const double printedError = std::stod(printed[i].at("s_pred").get<std::string>());
        EXPECT_NEAR(point->predictionError, printedError, 1e-4 * printedError);
    }
}
