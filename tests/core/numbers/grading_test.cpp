#include "core/numbers/grading.h"

#include <gtest/gtest.h>
#include <vector>

using namespace rig::numbers;

namespace {

IntervalPosterior tenLeafReadings()
{
    std::vector<Interval> readings(8, {0.5, 0.55});
    readings.resize(10, {0.45, 0.5});
    return *IntervalPosterior::of(intervalSetOf(readings));
}

} // namespace

TEST(Place, IsOutsideOnlyWhenTheWholeReadingLiesBeyond)
{
    struct Row
    {
        Interval reading;
        Place expected;
    };
    const Interval band{0.4, 0.6};
    const Row table[] = {
        {{0.3, 0.39}, Place::OutsideLow},
        {{0.3, 0.4}, Place::OutsideLow},
        {{0.3, 0.41}, Place::StraddlesLow},
        {{0.4, 0.6}, Place::Inside},
        {{0.45, 0.5}, Place::Inside},
        {{0.39, 0.61}, Place::Covers},
        {{0.4, 0.61}, Place::StraddlesHigh},
        {{0.59, 0.7}, Place::StraddlesHigh},
        {{0.6, 0.7}, Place::OutsideHigh},
        {{0.7, kInfinity}, Place::OutsideHigh},
        {{0.5, kInfinity}, Place::StraddlesHigh},
        {{-kInfinity, kInfinity}, Place::Covers},
        {{-kInfinity, 0.4}, Place::OutsideLow},
        // An exact value must lie strictly beyond.
        {{0.4, 0.4}, Place::Inside},
        {{0.6, 0.6}, Place::Inside},
        {{0.39999, 0.39999}, Place::OutsideLow},
        {{0.60001, 0.60001}, Place::OutsideHigh},
    };
    for (const Row& row : table)
        EXPECT_EQ(placeOf(row.reading, band), row.expected)
            << row.reading.lower << " to " << row.reading.upper;
}

TEST(Grading, IsWhollyOutsideTheInnerBandJustWhenTheTailIsBelowAFifthOfAQuarter)
{
    const IntervalPosterior posterior = tenLeafReadings();
    const PredictiveBands bands = bandsOf(posterior);
    for (double lower = 0.3; lower < 0.75; lower += 0.0007) {
        const Grading grading = gradingOf({lower, lower + 0.03}, posterior, bands);
        EXPECT_EQ(isOutside(grading.inner), grading.tail <= 2 * kInnerTail) << lower;
        EXPECT_EQ(isOutside(grading.outer), grading.tail <= 2 * kOuterTail) << lower;
        EXPECT_EQ(grading.tail, tailOf({lower, lower + 0.03}, posterior)) << lower;
    }
}

TEST(Score, RisesWithTheReadingAndStaysWithinFour)
{
    const IntervalPosterior posterior = tenLeafReadings();
    for (const double width : {0.0, 0.01, 0.05}) {
        double before = -4;
        for (double lower = -1; lower < 2; lower += 0.01) {
            const double score = scoreOf({lower, lower + width}, posterior);
            EXPECT_GE(score, before - 1e-12) << lower;
            EXPECT_LE(score, 4) << lower;
            before = score;
        }
        EXPECT_EQ(before, 4);
    }
}

TEST(Score, OfEverythingIsNothing)
{
    EXPECT_NEAR(scoreOf({-kInfinity, kInfinity}, tenLeafReadings()), 0, 1e-15);
}

TEST(Score, AveragesToNothingOverALeafGrid)
{
    // Conditional expected values of a standard normal, weighted by their cells, add up to its mean.
    const IntervalPosterior posterior = tenLeafReadings();
    double sum = 0;
    for (int leaf = 4; leaf < 17; ++leaf) {
        const Interval cell{0.05 * leaf, 0.05 * (leaf + 1)};
        sum += posterior.between(cell) * scoreOf(cell, posterior);
    }
    EXPECT_NEAR(sum, 0, 1e-5);
}
