#include "core/numbers/variance_prior.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

using namespace rig::numbers;

namespace {

const std::vector<double> kUnlike{0.0032, 0.0023, 0.0015, 0.00018, 0.00073, 0.00066};

} // namespace

TEST(VariancePrior, IsTheCommonVarianceWhereNothingDiffers)
{
    const auto prior = variancePriorOf(std::vector<double>(6, 0.04), std::vector<double>(6, 9));
    ASSERT_TRUE(prior);
    EXPECT_TRUE(std::isinf(prior->degreesOfFreedom));
    EXPECT_NEAR(prior->variance, 0.04, 1e-15);
    for (const double variance : prior->posteriorVariances)
        EXPECT_NEAR(variance, 0.04, 1e-15);
}

TEST(VariancePrior, DrawsEachVarianceTowardsItself)
{
    const auto prior = variancePriorOf(kUnlike, std::vector<double>(kUnlike.size(), 9));
    ASSERT_TRUE(prior);
    EXPECT_TRUE(std::isfinite(prior->degreesOfFreedom));
    for (std::size_t i = 0; i < kUnlike.size(); ++i) {
        const double expected =
            (9 * kUnlike[i] + prior->degreesOfFreedom * prior->variance) / (9 + prior->degreesOfFreedom);
        EXPECT_NEAR(prior->posteriorVariances[i], expected, 1e-12 * expected);
    }
}

TEST(VariancePrior, FollowsTheUnitOfLength)
{
    std::vector<double> inOtherUnits;
    for (const double variance : kUnlike)
        inOtherUnits.push_back(1e6 * variance);
    const std::vector<double> degrees{3, 4, 5, 6, 7, 8};
    const auto prior = variancePriorOf(kUnlike, degrees);
    const auto scaled = variancePriorOf(inOtherUnits, degrees);
    ASSERT_TRUE(prior && scaled);
    EXPECT_NEAR(scaled->degreesOfFreedom, prior->degreesOfFreedom, 1e-9 * prior->degreesOfFreedom);
    EXPECT_NEAR(scaled->variance, 1e6 * prior->variance, 1e-9 * scaled->variance);
}

TEST(VariancePrior, TakesAVarianceOfNothing)
{
    const auto prior =
        variancePriorOf(std::vector<double>{0, 0.002, 0.001, 0.0015}, std::vector<double>(4, 5));
    ASSERT_TRUE(prior);
    EXPECT_GT(prior->posteriorVariances[0], 0);
    EXPECT_LT(prior->posteriorVariances[0], 0.001);
}

TEST(VariancePrior, RefusesWhatHasNoAnswer)
{
    const double notANumber = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    struct Row
    {
        const char* why;
        std::vector<double> variances, degrees;
    };
    for (const Row& row :
         {Row{"nothing", {}, {}}, Row{"one", {0.1}, {5}}, Row{"unequal lengths", {0.1, 0.2}, {5}},
          Row{"a negative variance", {0.1, -0.2}, {5, 5}}, Row{"no degrees", {0.1, 0.2}, {5, 0}},
          Row{"no number", {0.1, notANumber}, {5, 5}}, Row{"no bound", {0.1, infinity}, {5, 5}},
          Row{"endless degrees", {0.1, 0.2}, {5, infinity}}, Row{"mostly nothing", {0, 0, 0.1}, {5, 5, 5}},
          Row{"too small for doubles", {0.1, 0.2}, {5, 1e-320}}})
        EXPECT_FALSE(variancePriorOf(row.variances, row.degrees)) << row.why;
}
