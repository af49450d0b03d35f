// Where the quadrature has a closed form: exact readings and so wide a range of sigma that the band is the
// textbook's prediction interval (tests/data/README.md).

#include "core/numbers/distributions.h"
#include "core/numbers/grading.h"
#include "tests/support/oracle.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

// With no hit the bound is 1 - (1 - confidence)^(1/n): 95 %, 45 % and 9.5 % for 1, 5 and 30 (docs/method.md
// B). Else it is the share under which `hits` or fewer have that chance, which the binomial sum gives back.
// 1e-12: sums of a few terms.
TEST(ClopperPearson, IsTheShareUnderWhichSoFewWouldStillBeSeen)
{
    for (const int n : {1, 5, 30})
        EXPECT_NEAR(shareAtMost(0, n, 0.95), 1 - std::pow(0.05, 1.0 / n), 1e-12) << n;
    EXPECT_NEAR(shareAtMost(0, 1, 0.95), 0.95, 5e-4);
    EXPECT_NEAR(shareAtMost(0, 5, 0.95), 0.45, 5e-3);
    EXPECT_NEAR(shareAtMost(0, 30, 0.95), 0.095, 5e-4);
    const double share = shareAtMost(2, 10, 0.95);
    double seen = 0;
    const double ways[] = {1, 10, 45};
    for (int k = 0; k <= 2; ++k)
        seen += ways[k] * std::pow(share, k) * std::pow(1 - share, 10 - k);
    EXPECT_NEAR(seen, 0.05, 1e-12);
    EXPECT_EQ(shareAtMost(3, 3, 0.95), 1);
    EXPECT_TRUE(std::isnan(shareAtMost(0, 0, 0.95)));
    EXPECT_TRUE(std::isnan(shareAtMost(4, 3, 0.95)));
}

// 1e-5 mm is the tolerance of every edge: a hundredth of the finest gauge.
TEST_OF_CASES(Method, TFormula, IsWhatTheBandOfExactReadingsComesTo,
              oracleCases("method/band.json", "/closed_form_t"))
{
    const json& input = oneCase["input"];
    SigmaPrior prior;
    prior.sMin = input.at("smin").get<double>();
    prior.sMax = input.at("smax").get<double>();
    const auto posterior = IntervalPosterior::of(intervalSetOf(intervalsOf(input.at("readings"))), prior);
    ASSERT_TRUE(posterior);
    const PredictiveBands bands = bandsOf(*posterior);
    expectBand(bands.inner, oneCase["closed_form_t"].at("0.95"), 1e-5);
    expectBand(bands.outer, oneCase["closed_form_t"].at("0.9973"), 1e-5);
}
