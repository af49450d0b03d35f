// What holds for the band of any readings. Their figures are checked against independent results in
// tests/reference.

#include "core/numbers/grading.h"
#include "tests/property/drawn.h"

#include <algorithm>
#include <cmath>

namespace bench = rig::bench;
using namespace rig::numbers;
using namespace rig::tests;

namespace {

// Edges come from an iteration that stops at 1e-8 mm, over nodes that lie differently in each case.
constexpr double kSameEdge = 1e-6; // mm

PredictiveBands bandsOfReadings(const std::vector<Interval>& readings, const SigmaPrior& prior = {})
{
    return bandsOf(*IntervalPosterior::of(intervalSetOf(readings), prior));
}

std::vector<double> figuresOf(const IntervalPosterior& posterior)
{
    const PredictiveBands bands = bandsOf(posterior);
    return {bands.inner.lower, bands.inner.upper,     bands.outer.lower,
            bands.outer.upper, bands.median,          posterior.meanMu(),
            posterior.sdMu(),  posterior.meanSigma(), posterior.logEvidence()};
}

void expectBands(const PredictiveBands& actual, const PredictiveBands& expected)
{
    EXPECT_NEAR(actual.inner.lower, expected.inner.lower, kSameEdge);
    EXPECT_NEAR(actual.inner.upper, expected.inner.upper, kSameEdge);
    EXPECT_NEAR(actual.outer.lower, expected.outer.lower, kSameEdge);
    EXPECT_NEAR(actual.outer.upper, expected.outer.upper, kSameEdge);
    EXPECT_NEAR(actual.median, expected.median, kSameEdge);
}

// Every figure of the bands after x -> slope x + shift, slope > 0.
PredictiveBands carried(const PredictiveBands& bands, double slope, double shift)
{
    const auto at = [slope, shift](double x) { return slope * x + shift; };
    return {{at(bands.inner.lower), at(bands.inner.upper)},
            {at(bands.outer.lower), at(bands.outer.upper)},
            at(bands.median)};
}

std::vector<Interval> carried(std::vector<Interval> readings, double slope, double shift)
{
    for (Interval& reading : readings)
        reading = {slope * reading.lower + shift, slope * reading.upper + shift};
    return readings;
}

} // namespace

TEST(AnyBand, DoesNotDependOnTheOrderOfReadingsBitForBit)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        std::vector<Interval> other = drawn.readings;
        std::ranges::reverse(other);
        std::ranges::rotate(other, other.begin() + 2);
        EXPECT_EQ(figuresOf(*IntervalPosterior::of(intervalSetOf(other))), figuresOf(posterior));
    });
}

TEST(AnyBand, MovesWithItsReadings)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        expectBands(bandsOfReadings(carried(drawn.readings, 1, 0.375)),
                    carried(bandsOf(posterior), 1, 0.375));
    });
}

// The default range of sigma is in millimetres, so only a range that grows along keeps the scale.
TEST(AnyBand, GrowsWithItsReadingsWhenTheRangeOfSigmaGrowsToo)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        constexpr double kInch = 2.54;
        SigmaPrior prior;
        prior.sMin = posterior.sMin() * kInch;
        prior.sMax = posterior.sMax() * kInch;
        expectBands(bandsOfReadings(carried(drawn.readings, kInch, 0), prior),
                    carried(bandsOf(posterior), kInch, 0));
    });
}

TEST(AnyBand, MirrorsWithItsReadings)
{
    forDrawnReadings([](const Drawn& drawn, const IntervalPosterior& posterior) {
        std::vector<Interval> mirrored;
        for (const Interval& reading : drawn.readings)
            mirrored.push_back({-reading.upper, -reading.lower});
        const PredictiveBands before = bandsOf(posterior);
        expectBands(bandsOfReadings(mirrored), {{-before.inner.upper, -before.inner.lower},
                                                {-before.outer.upper, -before.outer.lower},
                                                -before.median});
    });
}

TEST(AnyBand, HasOnlyFiniteFiguresInTheirOrder)
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

TEST(AnyBand, ComesFromTailsThatAddUpAndFallOutwards)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        double before = 0;
        for (double x = -1; x < 3; x += 0.5) {
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

TEST(AnyBand, HasItsEdgesWhereTheTailsSay)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        for (const double tail : {1e-6, 0.00135, 0.025, 0.5, 0.9}) {
            EXPECT_NEAR(posterior.below(posterior.lowerQuantile(tail)), tail, 1e-4 * tail);
            EXPECT_NEAR(posterior.above(posterior.upperQuantile(tail)), tail, 1e-4 * tail);
        }
    });
}

TEST(AnyBand, HasADensityThatIsTheSlopeOfTheTail)
{
    forDrawnReadings([](const Drawn&, const IntervalPosterior& posterior) {
        for (const double tail : {0.00135, 0.1, 0.5}) {
            const double x = posterior.upperQuantile(tail);
            const double slope = posterior.between({x - 1e-5, x + 1e-5}) / 2e-5;
            EXPECT_NEAR(posterior.density(x), slope, 1e-5 * slope);
        }
    });
}

TEST(AnyBand, IsWiderForAReadingWithAnotherGauge)
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

// A bracket of width w has a variance of w^2 / 12 of its own, and the band excuses the scatter of the
// readings by it (Sheppard's correction; from memory). Narrower brackets about the same middles may take back
// that much and no more; the last hundredth is for the floor and the cap of sigma.
TEST(AnyBand, IsWidenedByNarrowerBracketsOnlyByWhatTheWiderOnesHadExcused)
{
    bench::Draws draws{20240318};
    forDrawnReadings([&draws](const Drawn& drawn, const IntervalPosterior& posterior) {
        const double share = draws.uniform();
        std::vector<Interval> narrower = drawn.readings;
        for (Interval& reading : narrower) {
            const double middle = 0.5 * (reading.lower + reading.upper);
            const double half = 0.5 * share * reading.width();
            if (reading.isClosed())
                reading = {middle - half, middle + half};
        }
        const double excused = drawn.kind.step * drawn.kind.step * (1 - share * share) / 12;
        const double most = std::sqrt(1 + excused / (posterior.meanSigma() * posterior.meanSigma()));
        const double before = bandsOf(posterior).outer.width();
        EXPECT_LE(bandsOfReadings(narrower).outer.width(), 1.01 * most * before);
    });
}

TEST(AnyBand, IsNarrowerFromFinerLeavesOnTheWhole)
{
    double coarse = 0;
    double fine = 0;
    forDrawnReadings([&](const Drawn& drawn, const IntervalPosterior& posterior) {
        if (drawn.kind.step != bench::kLeaves.step)
            return;
        std::vector<Interval> finer;
        for (const double gap : drawn.gaps)
            finer.push_back(bench::readingOf(gap, bench::kTaper));
        coarse += bandsOf(posterior).outer.width();
        fine += bandsOfReadings(finer).outer.width();
    });
    EXPECT_LT(fine, coarse);
}

TEST(AnyGrade, NeverTurnsBackAsAReadingMovesAway)
{
    bench::Draws draws{20240319};
    forDrawnReadings([&draws](const Drawn& drawn, const IntervalPosterior& posterior) {
        const PredictiveBands bands = bandsOf(posterior);
        const double width = draws.uniform() < 0.5 ? drawn.kind.step : 0.1 * draws.uniform();
        const double step = 0.2 * bands.outer.width() * draws.uniform();
        for (const double direction : {-1.0, 1.0}) {
            Grading before;
            before.grade = Grade::Normal;
            for (int i = 0; i < 12; ++i) {
                const double middle = bands.median + direction * i * step;
                const Grading now = gradingOf({middle - 0.5 * width, middle + 0.5 * width}, posterior, bands);
                EXPECT_LE(now.grade, before.grade) << i; // the enumeration falls from Outside to Normal
                EXPECT_LE(now.tail, before.tail + 1e-12) << i;
                before = now;
            }
        }
    });
}
