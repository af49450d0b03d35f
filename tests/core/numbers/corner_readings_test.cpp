// Baselines at the ends of what a hangar brings forth. Each expectation follows from symmetry or from a
// closed form, not from the program.

#include "core/numbers/distributions.h"
#include "core/numbers/grading.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

namespace {

IntervalPosterior posteriorOf(const std::vector<Interval>& readings)
{
    return *IntervalPosterior::of(intervalSetOf(readings));
}

std::vector<Interval> times(int count, const Interval& reading)
{
    return std::vector<Interval>(static_cast<std::size_t>(count), reading);
}

std::vector<Interval> joined(std::vector<Interval> first, const std::vector<Interval>& second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

} // namespace

TEST(CornerReadings, AllInOneStepCentreOnItAndKeepTheScatterOfTheGauge)
{
    const IntervalPosterior posterior = posteriorOf(times(12, {0.5, 0.55}));
    const PredictiveBands bands = bandsOf(posterior);
    EXPECT_NEAR(bands.median, 0.525, 1e-6);
    EXPECT_NEAR(bands.outer.lower + bands.outer.upper, 1.05, 1e-6);
    EXPECT_NEAR(posterior.sMin(), 0.05 / 4, 1e-12);
    // Never narrower than the normal of the smallest scatter that the gauge can speak for.
    EXPECT_GT(bands.outer.width(), 2 * 3 * 0.05 / 4);
    EXPECT_EQ(gradingOf({0.5, 0.55}, posterior, bands).grade, Grade::Normal);
    EXPECT_EQ(gradingOf({0.65, 0.7}, posterior, bands).grade, Grade::Outside);
}

TEST(CornerReadings, OnOneSideOnlyHaveNoBandAndOneClosedReadingGivesThemOne)
{
    EXPECT_FALSE(IntervalPosterior::of(intervalSetOf(times(9, {1.0, kInfinity}))));
    const PredictiveBands bands =
        bandsOf(posteriorOf(joined(times(9, {1.0, kInfinity}), times(1, {1.0, 1.05}))));
    EXPECT_TRUE(std::isfinite(bands.outer.lower) && std::isfinite(bands.outer.upper));
    EXPECT_GT(bands.outer.upper, 1.05);
}

TEST(CornerReadings, InTwoStepsEvenlyCentreOnTheLeafBetweenThem)
{
    const PredictiveBands bands = bandsOf(posteriorOf(joined(times(6, {0.5, 0.55}), times(6, {0.55, 0.6}))));
    EXPECT_NEAR(bands.median, 0.55, 1e-6);
    EXPECT_NEAR(bands.inner.lower + bands.inner.upper, 1.1, 1e-6);
}

TEST(CornerReadings, InTwoStepsFarApartFillTheRoomBetweenThem)
{
    const IntervalPosterior posterior = posteriorOf(joined(times(5, {0.3, 0.35}), times(5, {0.9, 0.95})));
    EXPECT_TRUE(posterior.sigmaAtCap()); // wilder than a gap can be followed
    EXPECT_NEAR(bandsOf(posterior).median, 0.625, 1e-6);
    EXPECT_EQ(gradingOf({0.6, 0.65}, posterior, bandsOf(posterior)).grade, Grade::Normal);
}

// With so many readings nothing is left to learn: the band is that of the normal whose steps have these
// shares.
TEST(CornerReadings, TwoThousandGiveTheBandOfTheKnownNormal)
{
    constexpr double kMean = 0.53;
    constexpr double kSigma = 0.04;
    std::vector<Interval> readings;
    for (int cell = 0; cell < 30; ++cell) {
        const Interval step{0.05 * cell, 0.05 * (cell + 1)};
        const double share =
            normalBelow((step.upper - kMean) / kSigma) - normalBelow((step.lower - kMean) / kSigma);
        readings = joined(readings, times(static_cast<int>(std::lround(2000 * share)), step));
    }
    ASSERT_NEAR(static_cast<double>(readings.size()), 2000, 3);
    const PredictiveBands bands = bandsOf(posteriorOf(readings));
    // Counts are rounded to whole readings; a scatter of 0.04 is known to 0.0008 from 2000 steps.
    EXPECT_NEAR(bands.median, kMean, 5e-4);
    EXPECT_NEAR(bands.inner.width(), 2 * 1.96 * kSigma, 2e-3);
    EXPECT_NEAR(bands.outer.width(), 2 * 3.0 * kSigma, 3e-3);
}

TEST(CornerReadings, NearNothingReachBelowZeroAndAreJudgedThere)
{
    const IntervalPosterior posterior = posteriorOf(joined(times(9, {0, 0.05}), times(1, {0.05, 0.1})));
    const PredictiveBands bands = bandsOf(posterior);
    EXPECT_LT(bands.outer.lower, 0); // the raw edge; the screen shows 0
    EXPECT_NE(gradingOf({0, 0.05}, posterior, bands).grade, Grade::Outside);
    EXPECT_EQ(gradingOf({0.5, 0.55}, posterior, bands).grade, Grade::Outside);
}

TEST(CornerReadings, ThatDifferByLessThanAMicrometreKeepTheSmallestScatter)
{
    std::vector<Interval> readings;
    for (int i = 0; i < 20; ++i)
        readings.push_back({0.6 + 1e-9 * i, 0.6 + 1e-9 * i});
    const IntervalPosterior posterior = posteriorOf(readings);
    EXPECT_EQ(posterior.sMin(), 0.005);
    EXPECT_GE(posterior.meanSigma(), 0.005);
    EXPECT_LT(posterior.meanSigma(), 0.0055);
    EXPECT_NEAR(bandsOf(posterior).median, 0.6, 1e-6);
}

TEST(CornerReadings, ThatScatterByCentimetresAreCalledWilderThanCanBeFollowed)
{
    std::vector<Interval> readings;
    for (int i = 0; i < 10; ++i)
        readings.push_back({5.0 * i, 5.0 * i});
    const IntervalPosterior posterior = posteriorOf(readings);
    EXPECT_TRUE(posterior.sigmaAtCap());
    EXPECT_NEAR(bandsOf(posterior).median, 22.5, 1e-3);
}

TEST(CornerReadings, InBracketsOfManyWidthsAreTakenEachAsWhatItSays)
{
    // A wide bracket adds next to nothing to what fine ones know.
    std::vector<Interval> fine;
    for (int i = 0; i < 10; ++i)
        fine.push_back({0.5 + 0.01 * (i % 3), 0.51 + 0.01 * (i % 3)});
    const PredictiveBands before = bandsOf(posteriorOf(fine));
    const PredictiveBands after = bandsOf(posteriorOf(joined(fine, times(3, {0, 2}))));
    EXPECT_NEAR(after.outer.lower, before.outer.lower, 1e-6);
    EXPECT_NEAR(after.outer.upper, before.outer.upper, 1e-6);
}
