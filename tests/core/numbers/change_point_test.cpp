// Corners and properties of the change point; figures are checked against independent results in
// tests/reference.

#include "core/numbers/change_point.h"
#include "tests/support/odd_numbers.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

using Intervals = std::vector<Interval>;

// Leaf readings of a gap of 0.5 mm that is `step` wider after the first `before`, and scatters by `sigma`.
Intervals steppedReadings(int before, int after, double step, double sigma, unsigned seed = 8)
{
    std::mt19937 random{seed};
    Intervals readings;
    for (int i = 0; i < before + after; ++i) {
        const double around = uniform(random) + uniform(random) + uniform(random) + uniform(random) - 2;
        const double gap = 0.5 + (i < before ? 0 : step) + 1.73 * sigma * around;
        const double leaf = std::floor(gap / 0.05) * 0.05;
        readings.push_back({leaf, leaf + 0.05});
    }
    return readings;
}

Intervals together(Intervals first, const Intervals& second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

} // namespace

TEST(ChangePoint, RefusesTooFewReadingsAndWrongSettings)
{
    const Interval leaf{0.5, 0.55};
    EXPECT_FALSE(changePointOf({}));
    EXPECT_FALSE(changePointOf(Intervals(7, leaf)));
    EXPECT_TRUE(changePointOf(Intervals(8, leaf)));
    EXPECT_FALSE(changePointOf(together(Intervals(7, leaf), {{-kInfinity, kInfinity}})));
    EXPECT_FALSE(changePointOf(Intervals(9, {0.5, kInfinity})));
    EXPECT_FALSE(changePointOf(Intervals(9, {-kInfinity, 0.5})));
    EXPECT_FALSE(changePointOf(together(Intervals(9, leaf), {{0.6, 0.5}})));
    EXPECT_FALSE(changePointOf(together(Intervals(9, leaf), {{0.6, std::nan("")}})));
    EXPECT_FALSE(changePointOf(Intervals(8, leaf), {.minSegment = 5, .sigmaFloor = {}}));
    EXPECT_FALSE(changePointOf(Intervals(8, leaf), {.minSegment = 1, .sigmaFloor = {}}));
    EXPECT_FALSE(changePointOf(Intervals(8, leaf), {.sigmaFloor = -1}));
    EXPECT_FALSE(changePointOf(Intervals(8, {0.5, 0.5}), {.sigmaFloor = 0})) << "no scatter and no floor";
}

TEST(ChangePoint, FindsNoneWhereAllReadingsAreOneStep)
{
    const auto change = changePointOf(Intervals(20, {0.5, 0.55}));
    ASSERT_TRUE(change);
    EXPECT_NEAR(change->likelihoodRatio, 0, 1e-9);
    EXPECT_EQ(change->p, 1);
    EXPECT_EQ(change->splitAfter, 3) << "the earliest of equals";
    EXPECT_EQ(change->likelySplits.size(), 15u); // all splits alike: 95 % of 15 needs 15
    EXPECT_FALSE(change->ranks);
}

TEST(ChangePoint, FindsAStepOfTheMean)
{
    const Intervals readings = steppedReadings(14, 11, 0.12, 0.02);
    const auto change = changePointOf(readings);
    ASSERT_TRUE(change);
    EXPECT_EQ(change->splitAfter, 14);
    EXPECT_LT(change->p, 1e-4);
    ASSERT_TRUE(change->ranks);
    EXPECT_EQ(change->ranks->splitAfter, 14);
    EXPECT_LT(change->ranks->p, 0.01);
    EXPECT_TRUE(std::ranges::is_sorted(change->likelySplits));
    EXPECT_TRUE(std::ranges::count(change->likelySplits, 14));
}

TEST(ChangePoint, LooksTheSameFromBothEndsAndUpsideDown)
{
    const Intervals readings = steppedReadings(9, 16, 0.1, 0.02);
    const auto change = changePointOf(readings);
    const auto backwards = changePointOf(Intervals{readings.rbegin(), readings.rend()});
    Intervals mirrored = readings;
    for (Interval& reading : mirrored)
        reading = {1 - reading.upper, 1 - reading.lower};
    const auto upsideDown = changePointOf(mirrored);
    ASSERT_TRUE(change && backwards && upsideDown);
    EXPECT_NEAR(backwards->likelihoodRatio, change->likelihoodRatio, 1e-9);
    EXPECT_EQ(backwards->splitAfter, 25 - change->splitAfter);
    EXPECT_NEAR(upsideDown->likelihoodRatio, change->likelihoodRatio, 1e-9);
    EXPECT_EQ(upsideDown->splitAfter, change->splitAfter);
    EXPECT_EQ(upsideDown->ranks->k, change->ranks->k);
}

TEST(ChangePoint, FollowsShiftAndScale)
{
    const Intervals readings = steppedReadings(9, 16, 0.1, 0.02);
    const auto change = changePointOf(readings, {.sigmaFloor = 0.0125});
    for (const double scale : {1e-6, 25.4, 1e6}) {
        Intervals moved = readings;
        for (Interval& reading : moved)
            reading = {scale * (reading.lower - 0.4), scale * (reading.upper - 0.4)};
        const auto after = changePointOf(moved, {.sigmaFloor = scale * 0.0125});
        ASSERT_TRUE(change && after);
        EXPECT_NEAR(after->likelihoodRatio, change->likelihoodRatio, 1e-8);
        EXPECT_EQ(after->splitAfter, change->splitAfter);
        EXPECT_EQ(after->likelySplits, change->likelySplits);
    }
}

// Written out for exact readings: n ln(one sum of squares / the other), and the t of two samples.
TEST(ChangePoint, IsTheLargestTwoSampleTOnExactReadings)
{
    std::vector<double> values;
    for (int i = 0; i < 30; ++i)
        values.push_back(0.5 + (i < 18 ? 0 : 0.04) + 0.03 * std::sin(1.7 * i * i));
    const auto squaresOf = [&](std::size_t from, std::size_t to) {
        double mean = 0;
        for (std::size_t i = from; i < to; ++i)
            mean += values[i] / static_cast<double>(to - from);
        double sum = 0;
        for (std::size_t i = from; i < to; ++i)
            sum += (values[i] - mean) * (values[i] - mean);
        return sum;
    };
    double largest = 0;
    double t = 0;
    for (std::size_t k = 3; k <= 27; ++k) {
        const double within = squaresOf(0, k) + squaresOf(k, 30);
        largest = std::max(largest, 30 * std::log(squaresOf(0, 30) / within));
        t = std::max(t, std::sqrt(28 * (squaresOf(0, 30) / within - 1)));
    }
    Intervals readings;
    for (const double value : values)
        readings.push_back({value, value});
    const auto change = changePointOf(readings, {.sigmaFloor = 0});
    ASSERT_TRUE(change);
    EXPECT_NEAR(change->likelihoodRatio, largest, 1e-9);
    EXPECT_NEAR(change->equivalentT, t, 1e-9);
}

TEST(ChangePoint, CountsSplitsAmongTheReadingsGiven)
{
    const Interval nothing{-kInfinity, kInfinity};
    Intervals readings = steppedReadings(10, 10, 0.15, 0.01);
    const auto plain = changePointOf(readings);
    readings.insert(readings.begin(), 2, nothing);
    readings.insert(readings.begin() + 15, nothing);
    const auto change = changePointOf(readings);
    ASSERT_TRUE(plain && change);
    EXPECT_EQ(plain->splitAfter, 10);
    EXPECT_EQ(change->splitAfter, 12);
    EXPECT_EQ(change->ranks->splitAfter, 12);
    EXPECT_EQ(change->readings, 20);
    EXPECT_EQ(change->likelihoodRatio, plain->likelihoodRatio);
}

TEST(ChangePoint, SeesAGapThatOutgrewTheThickestLeaf)
{
    const auto change = changePointOf(together(Intervals(12, {0.5, 0.55}), Intervals(5, {0.8, kInfinity})));
    ASSERT_TRUE(change);
    EXPECT_EQ(change->splitAfter, 12);
    EXPECT_LT(change->p, 1e-4);
    EXPECT_FALSE(change->ranks) << "the closed readings are all one step";
}

TEST(ChangePoint, SeesReadingsThatAreOpenUpwardsAndThenDownwards)
{
    const auto change =
        changePointOf(together(Intervals(6, {0.5, kInfinity}), Intervals(6, {-kInfinity, 0.3})));
    EXPECT_FALSE(change) << "one mean alone has no maximum: sigma grows without end";
    const auto mixed = changePointOf(
        together(together(Intervals(6, {0.5, kInfinity}), {{0.3, 0.35}}), Intervals(6, {-kInfinity, 0.3})));
    ASSERT_TRUE(mixed);
    EXPECT_GE(mixed->splitAfter, 6);
    EXPECT_LE(mixed->splitAfter, 7);
}

TEST(ChangePoint, SeldomFindsAStepWhereThereIsNone)
{
    int found = 0;
    for (unsigned seed = 0; seed < 200; ++seed) {
        const auto change = changePointOf(steppedReadings(20, 0, 0, 0.03, seed));
        ASSERT_TRUE(change) << seed;
        found += change->p < 0.05 ? 1 : 0;
    }
    EXPECT_LE(found, 14); // 3.3 % of 200 (docs/method.md E) and three standard errors
}

TEST(ChangePoint, TakesTwoThousandReadings)
{
    const auto change = changePointOf(steppedReadings(1200, 800, 0.02, 0.03));
    ASSERT_TRUE(change);
    EXPECT_NEAR(change->splitAfter, 1200, 40);
    EXPECT_LT(change->p, 1e-6);
    EXPECT_NEAR(change->ranks->splitAfter, 1200, 40);
}

TEST(ChangePoint, GivesFiniteFiguresOrNoneForAnyFiniteReadings)
{
    std::mt19937 random{23};
    int changes = 0;
    for (int i = 0; i < 600; ++i) {
        SCOPED_TRACE(i);
        const auto value = [&] {
            return i % 3 == 0 ? (uniform(random) - 0.5) * std::pow(10.0, 60 * uniform(random) - 30)
                              : std::floor(6 * uniform(random)) * 0.05;
        };
        Intervals readings;
        for (std::size_t k = 0; k < 8 + random() % 8; ++k) {
            const double a = value();
            const double b = random() % 3 == 0 ? a : value();
            readings.push_back({random() % 6 == 0 ? -kInfinity : std::min(a, b),
                                random() % 6 == 0 ? kInfinity : std::max(a, b)});
        }
        const auto change = changePointOf(readings);
        if (!change)
            continue;
        ++changes;
        EXPECT_TRUE(std::isfinite(change->likelihoodRatio) && std::isfinite(change->equivalentT));
        EXPECT_TRUE(change->p >= 0 && change->p <= 1);
        EXPECT_FALSE(change->likelySplits.empty());
    }
    EXPECT_GT(changes, 350);
}
