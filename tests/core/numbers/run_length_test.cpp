#include "core/numbers/distributions.h"
#include "core/numbers/interval.h"
#include "core/numbers/run_length.h"
#include "tests/support/odd_numbers.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;
using namespace rig::tests;

TEST(RunLength, IsThatOfSingleScoresWhenOnlyTheNewestCounts)
{
    for (const double shift : {0.0, 0.7, -2.0}) {
        const double signal = normalBelow(-3 - shift) + normalBelow(-3 + shift);
        EXPECT_NEAR(*averageRunLength(EwmaChart{1, 3}, shift), 1 / signal, 1e-9 / signal) << shift;
    }
}

TEST(RunLength, IsOneReadingForAHugeShift)
{
    EXPECT_NEAR(*averageRunLength(EwmaChart{}, 40), 1, 1e-12);
    EXPECT_NEAR(*averageRunLength(CusumChart{}, 40), 1, 1e-12);
    EXPECT_NEAR(*averageRunLength(CusumChart{}, -40), 1, 1e-12);
}

TEST(RunLength, IsTheSameUpAndDownForTwoSidedCharts)
{
    for (const double shift : {0.3, 1.0, 3.0}) {
        EXPECT_NEAR(*averageRunLength(EwmaChart{}, shift), *averageRunLength(EwmaChart{}, -shift), 1e-9);
        EXPECT_NEAR(*averageRunLength(CusumChart{}, shift), *averageRunLength(CusumChart{}, -shift), 1e-9);
    }
}

TEST(RunLength, GrowsByOneReadingForEachStepOfTheLimitOnceTheScoresDriveIt)
{
    // Scores that climb by 1 on average: where the start no longer matters, 60 more take 60 readings (Wald's
    // equation). The longer chart needs more than 80 nodes.
    const double shorter = *averageRunLength(CusumChart{0.5, 40, false}, 1.5);
    const double longer = *averageRunLength(CusumChart{0.5, 100, false}, 1.5);
    EXPECT_NEAR(longer - shorter, 60, 1e-6);
}

TEST(RunLength, AddsUpFromTheChancesOfNoSignalYet)
{
    double sum = 0;
    for (int readings = 0; readings < 400; ++readings)
        sum += 1 - *chanceOfSignalWithin(readings, EwmaChart{}, 1);
    EXPECT_NEAR(sum, *averageRunLength(EwmaChart{}, 1), 1e-9);
}

TEST(SignalChance, OfTheFirstReadingIsTheTailBeyondTheLimit)
{
    EXPECT_EQ(*chanceOfSignalWithin(0, EwmaChart{}, 0), 0);
    // |0.2 z| > 2.962 / 3
    EXPECT_NEAR(*chanceOfSignalWithin(1, EwmaChart{}, 0), 2 * normalBelow(-5 * 2.962 / 3), 1e-12);
}

TEST(RunLength, RefusesImpossibleCharts)
{
    for (const EwmaChart& chart :
         {EwmaChart{0, 3}, EwmaChart{-0.2, 3}, EwmaChart{1.01, 3}, EwmaChart{0.2, 0}, EwmaChart{0.2, -3},
          EwmaChart{0.2, kInfinity}, EwmaChart{kNotANumber, 3}}) {
        EXPECT_FALSE(averageRunLength(chart, 0)) << chart.weight << ' ' << chart.limit;
        EXPECT_FALSE(chanceOfSignalWithin(10, chart, 0)) << chart.weight << ' ' << chart.limit;
    }
    for (const CusumChart& chart :
         {CusumChart{-0.1, 5}, CusumChart{0.5, 0}, CusumChart{0.5, -1}, CusumChart{0.5, kInfinity},
          CusumChart{kNotANumber, 5}, CusumChart{kInfinity, 5}})
        EXPECT_FALSE(averageRunLength(chart, 0)) << chart.reference << ' ' << chart.limit;
    for (const double shift : {kInfinity, -kInfinity, kNotANumber}) {
        EXPECT_FALSE(averageRunLength(EwmaChart{}, shift));
        EXPECT_FALSE(averageRunLength(CusumChart{}, shift));
    }
    EXPECT_FALSE(chanceOfSignalWithin(-1, EwmaChart{}, 0));
}

TEST(RunLength, RefusesWhatItCannotFollow)
{
    EXPECT_FALSE(averageRunLength(EwmaChart{0.2, 12}, 0)); // longer than doubles can tell from for ever
    EXPECT_FALSE(averageRunLength(CusumChart{0.5, 40}, 0));
    EXPECT_FALSE(averageRunLength(CusumChart{0.5, 5, false}, -8));
    EXPECT_FALSE(averageRunLength(EwmaChart{1e-5, 3}, 1)); // thousands of steps across
    EXPECT_FALSE(averageRunLength(CusumChart{0.5, 1e6}, 1));
}
