// Where the quadrature has a closed form: exact readings and so wide a range of sigma that the band is the
// textbook's prediction interval (tests/data/README.md).

#include "core/numbers/grading.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

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
