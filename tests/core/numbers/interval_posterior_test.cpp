// Readings at the ends of what there is. What holds for any readings is tried in tests/property; figures are
// checked against independent results in tests/reference.

#include "core/numbers/distributions.h"
#include "core/numbers/grading.h"
#include "core/numbers/interval_posterior.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

namespace {

std::vector<double> figuresOf(const IntervalPosterior& posterior)
{
    const PredictiveBands bands = bandsOf(posterior);
    return {bands.inner.lower, bands.inner.upper,     bands.outer.lower,
            bands.outer.upper, bands.median,          posterior.meanMu(),
            posterior.sdMu(),  posterior.meanSigma(), posterior.logEvidence()};
}

} // namespace

TEST(IntervalPosterior, NarrowsWithMoreOfTheSameReadings)
{
    double before = kInfinity;
    for (const int count : {2, 3, 5, 10, 20, 40, 80}) {
        std::vector<Interval> readings;
        for (int i = 0; i < count; ++i)
            readings.push_back({i % 2 == 0 ? 0.5 : 0.55, i % 2 == 0 ? 0.55 : 0.6});
        const double width = bandsOf(*IntervalPosterior::of(intervalSetOf(readings))).outer.width();
        EXPECT_LT(width, before) << count;
        before = width;
    }
}

TEST(IntervalPosterior, StaysFiniteForReadingsThatNoCouplingHas)
{
    const std::vector<std::vector<Interval>> sets{
        {{0, 0}, {10, 10}, {0, 0}, {10, 10}, {5, 5}},
        {{0, 1e6}, {-1e6, 0}},
        {{0, 1e-12}, {0, 1e-12}, {0, 1e-12}},
        {{1000, 1000.05}, {1000, kInfinity}, {-kInfinity, 1000}},
        {{0.5, kInfinity}, {-kInfinity, 0.5}},
        {{0.4, kInfinity}, {-kInfinity, 0.6}},
        std::vector<Interval>(1000, {0.5, 0.55}),
    };
    for (const auto& readings : sets) {
        SCOPED_TRACE(&readings - sets.data());
        const auto posterior = IntervalPosterior::of(intervalSetOf(readings));
        ASSERT_TRUE(posterior);
        for (const double figure : figuresOf(*posterior))
            EXPECT_TRUE(std::isfinite(figure));
    }
}

TEST(IntervalPosterior, IsEmptyForAPriorWithoutARange)
{
    const IntervalSet set = intervalSetOf(std::vector<Interval>{{0.5, 0.55}});
    const auto withPrior = [&set](auto change) {
        SigmaPrior prior;
        change(prior);
        return IntervalPosterior::of(set, prior).has_value();
    };
    EXPECT_TRUE(withPrior([](SigmaPrior&) {}));
    EXPECT_FALSE(withPrior([](SigmaPrior& prior) { prior.sMin = 0; }));
    EXPECT_FALSE(withPrior([](SigmaPrior& prior) { prior.sMin = prior.sMax = 0.1; }));
    EXPECT_FALSE(withPrior([](SigmaPrior& prior) { prior.sMax = kInfinity; }));
    EXPECT_FALSE(withPrior([](SigmaPrior& prior) { prior.nu0 = -1; }));
    EXPECT_FALSE(withPrior([](SigmaPrior& prior) { prior.s0 = 0; }));
    EXPECT_FALSE(withPrior([](SigmaPrior& prior) { prior.s0 = std::nan(""); }));
}

// Exact readings and a scaled inverse chi-square prior: the next value follows Student's t with n - 1 + nu0
// degrees of freedom about the mean, variance pooled (Gelman et al., Bayesian Data Analysis, section 3.3,
// from memory).
TEST(IntervalPosterior, PoolsAPriorWithTheReadingsAsTheFormulaDoes)
{
    const std::vector<double> values{0.49, 0.50, 0.52, 0.53, 0.51};
    const double squares = 0.001; // sum of squares about the mean 0.51
    std::vector<Interval> readings;
    for (const double x : values)
        readings.push_back({x, x});
    for (const double nu0 : {1.0, 6.0, 10.0, 100.0, 1e4, 1e6}) {
        SigmaPrior prior;
        prior.nu0 = nu0;
        prior.s0 = 0.02;
        prior.sMin = 1e-4;
        prior.sMax = 1e3;
        const auto posterior = IntervalPosterior::of(intervalSetOf(readings), prior);
        ASSERT_TRUE(posterior);
        const double df = 4 + nu0;
        const double scale = std::sqrt((squares + nu0 * 0.02 * 0.02) / df * 1.2);
        EXPECT_NEAR(posterior->upperQuantile(0.025), 0.51 + studentQuantile(0.975, df) * scale, 1e-6) << nu0;
        EXPECT_NEAR(posterior->lowerQuantile(0.00135), 0.51 + studentQuantile(0.00135, df) * scale, 1e-6)
            << nu0;
    }
}

TEST(IntervalPosterior, EqualsTheTFormulaForAnyNumberOfExactReadings)
{
    for (const int count : {6, 20, 60, 200, 2000}) {
        std::vector<Interval> readings;
        for (int i = 0; i < count; ++i)
            readings.push_back({i % 2 == 0 ? 0.48 : 0.52, i % 2 == 0 ? 0.48 : 0.52});
        SigmaPrior prior;
        prior.sMin = 1e-6;
        prior.sMax = 1e4;
        const auto posterior = IntervalPosterior::of(intervalSetOf(readings), prior);
        ASSERT_TRUE(posterior);
        const double n = count;
        const double reach = 0.02 * std::sqrt(n / (n - 1)) * std::sqrt(1 + 1 / n);
        EXPECT_NEAR(posterior->upperQuantile(0.025), 0.5 + studentQuantile(0.975, n - 1) * reach, 1e-7)
            << count;
        EXPECT_NEAR(posterior->lowerQuantile(0.00135), 0.5 + studentQuantile(0.00135, n - 1) * reach, 1e-7)
            << count;
    }
}
