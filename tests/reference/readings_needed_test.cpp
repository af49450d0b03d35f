// c4 against the constants of tests/data/published/control_chart_constants.json (ISO 7870-2, recomputed;
// tolerance the file's own 1e-10, printed values to half a unit of their last digit), and mean half-widths of
// bands against the table of docs/method.md H (to half a unit of its last digit).

#include "core/numbers/readings_needed.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

class ChartConstants : public testing::TestWithParam<json>
{
};

} // namespace

// The printed 1/c4 is off in its last digit for several n (the cases' "mismatches"), so only c4 is held to
// print.
TEST_P(ChartConstants, HaveTheSameC4)
{
    const auto actual = c4(GetParam().at("data").at("n").get<int>());
    ASSERT_TRUE(actual);
    const double expected = GetParam().at("expected").at("c4").get<double>();
    EXPECT_NEAR(*actual, expected, GetParam().at("tolerance").at("expected").get<double>() * expected);
    EXPECT_NEAR(*actual, std::stod(GetParam().at("published_rounded").at("c4").get<std::string>()), 5.001e-5);
}

INSTANTIATE_TEST_SUITE_P(Published, ChartConstants,
                         testing::ValuesIn(publishedCases("control_chart_constants.json")), caseName);

TEST(MeanHalfWidthOfMethod, HasThePrintedTable)
{
    struct Row
    {
        int n;
        double inner, outer;
    };
    constexpr int kSoManyThatItMakesNoDifference = 1'000'000;
    for (const auto& [n, inner, outer] :
         {Row{3, 4.40, 19.65}, Row{4, 3.28, 9.50}, Row{5, 2.86, 6.82}, Row{6, 2.64, 5.66}, Row{8, 2.42, 4.64},
          Row{10, 2.31, 4.18}, Row{12, 2.24, 3.92}, Row{15, 2.18, 3.69}, Row{20, 2.12, 3.49},
          Row{25, 2.08, 3.38}, Row{30, 2.06, 3.31}, Row{50, 2.02, 3.18},
          Row{kSoManyThatItMakesNoDifference, 1.96, 3.00}}) {
        EXPECT_NEAR(meanHalfWidth(n, 0.95).value(), inner, 0.005) << n;
        EXPECT_NEAR(meanHalfWidth(n, 0.9973).value(), outer, 0.005) << n;
    }
}
