// c4 against the constants of tests/data/published/control_chart_constants.json (ISO 7870-2, recomputed;
// tolerance the file's own 1e-10, printed values to half a unit of their last digit), and mean half-widths of
// bands against the table of docs/method.md H (to half a unit of its last digit).

#include "core/numbers/readings_needed.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

// The printed 1/c4 is off in its last digit for several n (the cases' "mismatches"), so only c4 is held to
// print.
TEST_OF_CASES(Published, ChartConstants, HaveTheSameC4, publishedCases("control_chart_constants.json"))
{
    const auto actual = c4(oneCase.at("data").at("n").get<int>());
    ASSERT_TRUE(actual);
    const double expected = oneCase.at("expected").at("c4").get<double>();
    EXPECT_NEAR(*actual, expected, oneCase.at("tolerance").at("expected").get<double>() * expected);
    EXPECT_NEAR(*actual, std::stod(oneCase.at("published_rounded").at("c4").get<std::string>()), 5.001e-5);
}

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
