// Run lengths against tests/data/published/arl_tables.json: tables of Lucas & Crosier 1982, Vance 1986,
// Waldmann 1986, Crowder 1987, Lucas & Saccucci 1990, Hawkins 1993, the e-Handbook and others, recomputed
// there by two independent solvers that agree to 2e-9. Recomputed values are held to the file's 1e-6, which
// is rounding of their digits; printed figures to 0.51 units of their last digit (one table prints 18.2 for
// 18.1496), unless the file marks them as a mismatch.

#include "core/numbers/run_length.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

std::vector<json> runLengthCases(const std::string& file, const std::string& prefix)
{
    const json whole = jsonFile("published/" + file);
    std::vector<json> found;
    for (const json& oneCase : whole.at("cases"))
        if (oneCase.at("id").get<std::string>().starts_with(prefix))
            found.push_back(oneCase);
    return found;
}

// The chart of a case, with its limit replaced when one is given.
std::optional<double> lengthOf(const json& data, double shift, std::optional<double> limit = {})
{
    if (data.at("chart") == "ewma")
        return averageRunLength(EwmaChart{data.at("lambda"), limit ? *limit : data.at("L").get<double>()},
                                shift);
    return averageRunLength(
        CusumChart{data.at("k"), limit ? *limit : data.at("h").get<double>(), data.at("sides") == 2}, shift);
}

// Of "500." and "8.38".
double lastDigitOf(const std::string& printed)
{
    const std::size_t point = printed.find('.');
    const std::size_t decimals = point == std::string::npos ? 0 : printed.size() - point - 1;
    return std::pow(10.0, -static_cast<double>(decimals));
}

} // namespace

TEST_OF_CASES(Published, RunLengthTables, Agree, runLengthCases("arl_tables.json", "arl-"))
{
    const json& data = oneCase.at("data");
    ASSERT_EQ(data.value("headstart", 0), 0);
    const double relative = oneCase.at("tolerance").at("arl");
    for (const json& row : oneCase.at("expected").at("rows")) {
        SCOPED_TRACE(row.dump());
        const double expected = row.at("arl");
        const auto length = lengthOf(data, row.at("shift"));
        ASSERT_TRUE(length);
        EXPECT_NEAR(*length, expected, relative * expected);
        if (row.contains("published") && !row.value("mismatch", false)) {
            const std::string printed = row.at("published");
            EXPECT_NEAR(*length, std::stod(printed), 0.51 * lastDigitOf(printed));
        }
    }
}

// The limit that gives a wanted run length lies within the file's tolerance when the run lengths on either
// side of it, that far away, lie on either side of the wanted one.
TEST_OF_CASES(Published, RunLengthDesigns, LieWhereTheRunLengthPassesTheWantedOne,
              runLengthCases("arl_tables.json", "design-"))
{
    const json& expected = oneCase.at("expected");
    const double limit = expected.contains("L") ? expected.at("L") : expected.at("h");
    const double allowed = oneCase.at("tolerance").at("value");
    const double wanted = oneCase.at("data").at("arl0");
    EXPECT_LT(*lengthOf(oneCase.at("data"), 0, limit - allowed), wanted);
    EXPECT_GT(*lengthOf(oneCase.at("data"), 0, limit + allowed), wanted);
}

// An EWMA that only knows the newest score is the chart of single scores; closed form, the file's 1e-9.
TEST(HandbookShewhart, IsTheEwmaOfWeightOne)
{
    const json example = runLengthCases("nist_handbook_examples.json", "nist-shewhart-arl").at(0);
    const double limit = example.at("data").at("limit_sigma");
    const json& rows = example.at("expected").at("rows");
    EXPECT_GE(rows.size(), 5U);
    for (const json& row : rows) {
        const double expected = row.at("arl");
        // The file gives nine digits.
        EXPECT_NEAR(*averageRunLength(EwmaChart{1, limit}, row.at("shift")), expected, 5e-9 * expected)
            << row;
    }
}

// The horizon that the limits of a frozen baseline were made for, at the end where its mean is known: 17.6 %
// (spc 0.6.7, xewma.sf), three digits given.
TEST(ChartHorizon, HasASixthOfFalseAlarmsWithinAHundredReadings)
{
    EXPECT_NEAR(*chanceOfSignalWithin(100, EwmaChart{0.2, 2.962}, 0), 0.176, 0.0005);
}
