// Properties that hold for any readings. The readings are drawn with a fixed seed; figures are checked
// against independent results in tests/reference.

#include "core/numbers/distributions.h"
#include "core/numbers/grading.h"
#include "core/numbers/interval_posterior.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <random>
#include <vector>

using namespace rig::numbers;

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

struct Drawn
{
    std::vector<Interval> readings;
    double step = 0;
};

// Three to thirty readings by leaf, taper gauge or exactly, some left open, now and then one far away. The
// engine's own bits are used, not a library distribution, so that every machine draws the same.
Drawn draw(std::mt19937& random)
{
    const auto uniform = [&random] { return static_cast<double>(random()) / 4294967296.0; };
    const double steps[] = {0, 0.01, 0.05};
    Drawn drawn;
    drawn.step = steps[random() % 3];
    const std::size_t count = 3 + random() % 28;
    const double mean = 0.2 + uniform();
    const double sigma = 0.005 + 0.06 * uniform();
    while (drawn.readings.size() < count) {
        double x = mean + sigma * (uniform() + uniform() + uniform() + uniform() - 2) * 1.73;
        if (random() % 40 == 0)
            x += 0.3;
        if (drawn.step == 0)
            drawn.readings.push_back({x, x});
        else if (random() % 25 == 0)
            drawn.readings.push_back({std::floor(x / drawn.step) * drawn.step, kInfinity});
        else
            drawn.readings.push_back(
                {std::floor(x / drawn.step) * drawn.step, (std::floor(x / drawn.step) + 1) * drawn.step});
    }
    return drawn;
}

// Calls `check` with forty sets of readings and their posterior.
template <typename Check> void forDrawnReadings(const Check& check)
{
    std::mt19937 random{20240317};
    for (int i = 0; i < 40; ++i) {
        SCOPED_TRACE(i);
        const Drawn drawn = draw(random);
        const IntervalSet set = intervalSetOf(drawn.readings);
        if (set.status != ReadingsStatus::Ok)
            continue; // all open
        const auto posterior = IntervalPosterior::of(set);
        ASSERT_TRUE(posterior);
        check(drawn, *posterior);
    }
}

std::vector<double> figuresOf(const IntervalPosterior& posterior)
{
    const PredictiveBands bands = bandsOf(posterior);
    return {bands.inner.lower, bands.inner.upper,     bands.outer.lower,
            bands.outer.upper, bands.median,          posterior.meanMu(),
            posterior.sdMu(),  posterior.meanSigma(), posterior.logEvidence()};
}

} // namespace

TEST(IntervalPosterior, DoesNotDependOnTheOrderOfReadingsBitForBit)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        std::vector<Interval> reversed = drawn.readings;
        std::ranges::reverse(reversed);
        EXPECT_EQ(figuresOf(*IntervalPosterior::of(intervalSetOf(reversed))), figuresOf(posterior));
        std::ranges::rotate(reversed, reversed.begin() + 2);
        EXPECT_EQ(figuresOf(*IntervalPosterior::of(intervalSetOf(reversed))), figuresOf(posterior));
    });
}

TEST(IntervalPosterior, GivesTheSameBitsEachTime)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        EXPECT_EQ(figuresOf(*IntervalPosterior::of(intervalSetOf(drawn.readings))), figuresOf(posterior));
    });
}

TEST(IntervalPosterior, MovesWithItsReadings)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        constexpr double kShift = 0.375;
        std::vector<Interval> shifted = drawn.readings;
        for (Interval& reading : shifted)
            reading = {reading.lower + kShift, reading.upper + kShift};
        const PredictiveBands before = bandsOf(posterior);
        const PredictiveBands after = bandsOf(*IntervalPosterior::of(intervalSetOf(shifted)));
        EXPECT_NEAR(after.inner.lower, before.inner.lower + kShift, 1e-6);
        EXPECT_NEAR(after.inner.upper, before.inner.upper + kShift, 1e-6);
        EXPECT_NEAR(after.outer.lower, before.outer.lower + kShift, 1e-6);
        EXPECT_NEAR(after.outer.upper, before.outer.upper + kShift, 1e-6);
    });
}

// The default range of sigma is in millimetres, so only a range that grows along keeps the scale.
TEST(IntervalPosterior, GrowsWithItsReadingsWhenTheRangeOfSigmaGrowsToo)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        constexpr double kScale = 2.54;
        std::vector<Interval> scaled = drawn.readings;
        for (Interval& reading : scaled)
            reading = {reading.lower * kScale, reading.upper * kScale};
        SigmaPrior prior;
        prior.sMin = posterior.sMin() * kScale;
        prior.sMax = posterior.sMax() * kScale;
        const PredictiveBands before = bandsOf(posterior);
        const PredictiveBands after = bandsOf(*IntervalPosterior::of(intervalSetOf(scaled), prior));
        EXPECT_NEAR(after.inner.lower, before.inner.lower * kScale, 1e-6);
        EXPECT_NEAR(after.inner.upper, before.inner.upper * kScale, 1e-6);
        EXPECT_NEAR(after.outer.lower, before.outer.lower * kScale, 1e-6);
        EXPECT_NEAR(after.outer.upper, before.outer.upper * kScale, 1e-6);
    });
}

TEST(IntervalPosterior, MirrorsWithItsReadings)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        std::vector<Interval> mirrored;
        for (const Interval& reading : drawn.readings)
            mirrored.push_back({-reading.upper, -reading.lower});
        const PredictiveBands before = bandsOf(posterior);
        const PredictiveBands after = bandsOf(*IntervalPosterior::of(intervalSetOf(mirrored)));
        EXPECT_NEAR(after.inner.lower, -before.inner.upper, 1e-6);
        EXPECT_NEAR(after.outer.upper, -before.outer.lower, 1e-6);
        EXPECT_NEAR(after.median, -before.median, 1e-6);
    });
}

TEST(IntervalPosterior, HasOnlyFiniteFiguresInTheirOrder)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        for (const double figure : figuresOf(posterior))
            EXPECT_TRUE(std::isfinite(figure));
        const PredictiveBands bands = bandsOf(posterior);
        EXPECT_LT(bands.outer.lower, bands.inner.lower);
        EXPECT_LT(bands.inner.lower, bands.median);
        EXPECT_LT(bands.median, bands.inner.upper);
        EXPECT_LT(bands.inner.upper, bands.outer.upper);
        EXPECT_GE(posterior.meanSigma(), posterior.sMin());
        EXPECT_LE(posterior.meanSigma(), posterior.sMax());
        EXPECT_GT(posterior.sdMu(), 0);
    });
}

TEST(IntervalPosterior, TailsAddUpAndFallOutwards)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        double before = 0;
        for (double x = -1; x < 3; x += 0.05) {
            const double below = posterior.below(x);
            EXPECT_NEAR(below + posterior.above(x), 1, 1e-12);
            EXPECT_GE(below, before);
            before = below;
        }
        EXPECT_EQ(posterior.below(-kInfinity), 0);
        EXPECT_EQ(posterior.below(kInfinity), 1);
        EXPECT_EQ(posterior.above(-kInfinity), 1);
        EXPECT_EQ(posterior.above(kInfinity), 0);
        EXPECT_EQ(posterior.between({-kInfinity, kInfinity}), 1);
        EXPECT_EQ(posterior.density(kInfinity), 0);
    });
}

TEST(IntervalPosterior, QuantilesAreWhereTheTailsSay)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        for (const double tail : {1e-6, 0.00135, 0.025, 0.5, 0.9}) {
            EXPECT_NEAR(posterior.below(posterior.lowerQuantile(tail)), tail, 1e-4 * tail);
            EXPECT_NEAR(posterior.above(posterior.upperQuantile(tail)), tail, 1e-4 * tail);
        }
    });
}

TEST(IntervalPosterior, DensityIsTheSlopeOfTheTail)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        for (const double tail : {0.00135, 0.1, 0.5}) {
            const double x = posterior.upperQuantile(tail);
            const double slope = posterior.between({x - 1e-5, x + 1e-5}) / 2e-5;
            EXPECT_NEAR(posterior.density(x), slope, 1e-5 * slope);
        }
    });
}

TEST(IntervalPosterior, ExtraVarianceWidensTheBands)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        const PredictiveBands own = bandsOf(posterior);
        const PredictiveBands other = bandsOf(posterior, 1e-4);
        EXPECT_LT(other.inner.lower, own.inner.lower);
        EXPECT_GT(other.inner.upper, own.inner.upper);
        EXPECT_LT(other.outer.lower, own.outer.lower);
        EXPECT_GT(other.outer.upper, own.outer.upper);
    });
}

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
