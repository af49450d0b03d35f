#include "core/numbers/distributions.h"
#include "core/numbers/movement.h"
#include "tests/support/noise.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <gtest/gtest.h>

using namespace rig::numbers;
using rig::tests::noiseAt;

namespace {

using enum MovementKind;

using FittingSeries = std::vector<SeriesReading>;

// A baseline of 12, then `riggings`, read in steps of 0.01 mm.
FittingSeries seriesOf(int riggings, const std::function<double(int)>& moved, double step = 0.01)
{
    FittingSeries series;
    for (int i = -11; i <= riggings; ++i) {
        const double gap = 0.62 + 0.02 * noiseAt(i + 200) + (i > 0 ? moved(i) : 0);
        const double below = step > 0 ? std::floor(gap / step) * step : gap;
        series.push_back({{below, below + step}, static_cast<double>(std::max(0, i))});
    }
    return series;
}

double steady(int)
{
    return 0;
}
double stepAt51(int rigging)
{
    return rigging >= 51 ? 0.09 : 0;
}
double driftFrom40(int rigging)
{
    return 0.0035 * std::max(0, rigging - 40);
}

FittingSeries mirrored(FittingSeries series)
{
    for (SeriesReading& reading : series)
        reading.interval = {2 - reading.interval.upper, 2 - reading.interval.lower};
    return series;
}

} // namespace

TEST(Movement, OfASteadyFittingIsNone)
{
    const auto movement = movementOf(seriesOf(90, steady));
    ASSERT_TRUE(movement);
    EXPECT_EQ(movement->readings, 102);
    EXPECT_EQ(movement->riggings, 90);
    EXPECT_GT(movement->first.steady, 0.9);
    EXPECT_EQ(movement->first.likeliest(), Steady);
    EXPECT_FALSE(isMovementTold(*movement, true));
    EXPECT_EQ(movement->second.moved(), 0);
    EXPECT_NEAR(movement->meanAt(91), 0.62, 0.005);
}

TEST(Movement, ChancesAddUpAndWaysShareThem)
{
    for (const auto& moved : {steady, stepAt51, driftFrom40}) {
        const auto movement = movementOf(seriesOf(90, moved));
        ASSERT_TRUE(movement);
        const auto& [s, p, d] = std::tie(movement->first.steady, movement->first.step, movement->first.drift);
        EXPECT_NEAR(s + p + d, 1, 1e-12);
        EXPECT_NEAR(movement->second.steady + movement->second.moved(), 1, 1e-12);
        double sum = 0;
        for (const MovementWay& way : movement->ways)
            sum += way.chance;
        EXPECT_NEAR(sum, 1, 1e-12);
    }
}

TEST(Movement, TellsAStepItsPlaceAndItsSize)
{
    const auto movement = movementOf(seriesOf(90, stepAt51));
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.step, 0.99);
    EXPECT_TRUE(isMovementTold(*movement, false));
    const auto place = placeOf(*movement, Step);
    ASSERT_TRUE(place);
    EXPECT_NEAR(place->mode, 51, 1);
    EXPECT_LE(place->lower(), 51);
    EXPECT_GE(place->upper(), 51);
    const auto size = sizeOf(*movement, Step);
    ASSERT_TRUE(size);
    EXPECT_NEAR(size->estimate, 0.09, 0.008);
    EXPECT_LT(size->interval.lower, 0.09);
    EXPECT_GT(size->interval.upper, 0.09);
    EXPECT_NEAR(size->interval.width(), 2 * 1.984 * 0.02 * std::sqrt(1 / 62.0 + 1 / 40.0), 0.004);
    EXPECT_EQ(movement->second.likeliest(), Steady);
}

TEST(Movement, TellsADriftItsBeginningItsRateAndWhereItLeads)
{
    const auto movement = movementOf(seriesOf(90, driftFrom40));
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.drift, 0.99);
    const auto place = placeOf(*movement, Drift);
    ASSERT_TRUE(place);
    EXPECT_LE(place->lower(), 40);
    EXPECT_GE(place->upper(), 40);
    const auto rate = sizeOf(*movement, Drift);
    ASSERT_TRUE(rate);
    EXPECT_LT(rate->interval.lower, 0.35);
    EXPECT_GT(rate->interval.upper, 0.35);
    const auto now = rateNowOf(*movement);
    ASSERT_TRUE(now);
    EXPECT_NEAR(now->estimate, rate->estimate, 0.02);
    const MovementForecast forecast = forecastOf(*movement, 110, {0.5, 0.75});
    EXPECT_EQ(forecastPlaceOf(*movement, 110).mean, forecast.mean.estimate);
    EXPECT_EQ(forecastPlaceOf(*movement, 110).reading, forecast.reading.interval);
    EXPECT_NEAR(forecast.mean.estimate, 0.62 + 0.0035 * 70, 0.02);
    EXPECT_GT(forecast.chanceOutside, 0.99);
    EXPECT_LT(forecast.reading.interval.lower, forecast.mean.interval.lower);
}

TEST(Movement, MirroredReadingsMirrorIt)
{
    for (const auto& moved : {stepAt51, driftFrom40}) {
        const FittingSeries series = seriesOf(90, moved);
        const auto one = movementOf(series);
        const auto other = movementOf(mirrored(series));
        ASSERT_TRUE(one && other);
        const MovementKind kind = one->first.likeliest();
        EXPECT_NEAR(one->first.of(kind), other->first.of(kind), 1e-6);
        EXPECT_EQ(placeOf(*one, kind)->set, placeOf(*other, kind)->set);
        EXPECT_NEAR(sizeOf(*one, kind)->estimate, -sizeOf(*other, kind)->estimate, 1e-6);
    }
}

TEST(Movement, ShiftedReadingsShiftItsLevelOnly)
{
    FittingSeries series = seriesOf(90, stepAt51);
    const auto one = movementOf(series);
    for (SeriesReading& reading : series)
        reading.interval = {reading.interval.lower + 3, reading.interval.upper + 3};
    const auto other = movementOf(series);
    ASSERT_TRUE(one && other);
    EXPECT_NEAR(one->first.step, other->first.step, 1e-6);
    EXPECT_NEAR(one->meanAt(80) + 3, other->meanAt(80), 1e-7);
}

TEST(Movement, IsNeitherMadeNorHiddenByAWildReading)
{
    FittingSeries still = seriesOf(90, steady);
    still.at(80).interval = {1.2, 1.21};
    const auto steadyOne = movementOf(still);
    ASSERT_TRUE(steadyOne);
    EXPECT_GT(steadyOne->first.steady, 0.9);

    FittingSeries stepped = seriesOf(90, stepAt51);
    const auto before = movementOf(stepped);
    stepped.at(85).interval = {0.1, 0.11};
    const auto after = movementOf(stepped);
    ASSERT_TRUE(before && after);
    EXPECT_GT(after->first.step, 0.99);
    EXPECT_NEAR(sizeOf(*after, Step)->estimate, sizeOf(*before, Step)->estimate, 0.002);
}

TEST(Movement, ADriftThatEndedHasASecondChange)
{
    const auto rising = [](int rigging) { return 0.006 * std::clamp(rigging - 20, 0, 30); };
    const auto movement = movementOf(seriesOf(120, rising));
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.drift, 0.9);
    EXPECT_GT(movement->second.drift, 0.9);
    const auto end = placeOf(*movement, Drift, 1);
    ASSERT_TRUE(end);
    EXPECT_NEAR(end->mode, 50, 4);
    const auto now = rateNowOf(*movement);
    ASSERT_TRUE(now);
    EXPECT_LT(now->interval.lower, 0);
    EXPECT_GT(now->interval.upper, 0);
    EXPECT_NEAR(movement->meanAt(130), 0.62 + 0.18, 0.01);
}

TEST(Movement, TwoStepsAreTwo)
{
    const auto moved = [](int rigging) {
        return (rigging >= 31 ? 0.1 : 0.0) + (rigging >= 61 ? -0.07 : 0.0);
    };
    const auto movement = movementOf(seriesOf(90, moved));
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.step, 0.9);
    EXPECT_GT(movement->second.step, 0.9);
    EXPECT_NEAR(placeOf(*movement, Step, 0)->mode, 31, 1);
    EXPECT_NEAR(placeOf(*movement, Step, 1)->mode, 61, 1);
    EXPECT_NEAR(sizeOf(*movement, Step, 1)->estimate, -0.07, 0.012);
}

TEST(Movement, CoarseLeavesTellItTooLater)
{
    const auto moved = [](int rigging) { return rigging >= 51 ? 0.12 : 0.0; };
    const auto movement = movementOf(seriesOf(90, moved, 0.05));
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.step, 0.9);
    const auto size = sizeOf(*movement, Step);
    EXPECT_LT(size->interval.lower, 0.12);
    EXPECT_GT(size->interval.upper, 0.12);
}

TEST(Movement, AGapThatOutgrewTheThickestLeafMoved)
{
    FittingSeries series = seriesOf(60, [](int rigging) { return rigging >= 41 ? 0.3 : 0.0; });
    for (SeriesReading& reading : series)
        if (reading.rigging >= 41)
            reading.interval = {0.75, kInfinity};
    const auto movement = movementOf(series);
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.moved(), 0.99);
}

// Without a movement it is the prediction interval of readings with a common mean, to what the two per cent
// of other ways and the wild share leave.
TEST(Movement, ASteadyForecastIsTheNextReadings)
{
    const FittingSeries series = seriesOf(90, steady, 0);
    const auto movement = movementOf(series);
    ASSERT_TRUE(movement);
    double mean = 0;
    for (const SeriesReading& reading : series)
        mean += reading.interval.lower / 102;
    double squares = 0;
    for (const SeriesReading& reading : series)
        squares += std::pow(reading.interval.lower - mean, 2);
    const double s = std::sqrt(squares / 101);
    const double reach = studentQuantile(0.975, 101) * s * std::sqrt(1 + 1 / 102.0);
    const MovementForecast forecast = forecastOf(*movement, 100, {mean - reach, mean + reach});
    EXPECT_NEAR(forecast.reading.interval.lower, mean - reach, 0.002);
    EXPECT_NEAR(forecast.reading.interval.upper, mean + reach, 0.002);
    EXPECT_NEAR(forecast.chanceOutside, 0.05, 0.01);
}

TEST(Movement, TooFewRiggingsHaveNone)
{
    const auto movement = movementOf(seriesOf(6, [](int) { return 0.3; }));
    ASSERT_TRUE(movement);
    EXPECT_EQ(movement->first.steady, 1);
    EXPECT_FALSE(placeOf(*movement, Step));
    EXPECT_FALSE(sizeOf(*movement, Drift));
    EXPECT_FALSE(rateNowOf(*movement));
}

// EM comes slowly to where many readings may be wild or not, as the last ten here, three times wider.
TEST(Movement, IsFoundWhereReadingsMayBeWildOrNot)
{
    for (const int row : {1003, 1472, 1491}) {
        FittingSeries series;
        for (int i = 0; i < 100; ++i) {
            const double below = 0.6 + (i < 90 ? 0.02 : 0.07) * noiseAt(1000 * row + i);
            series.push_back({{below, below + 0.01}, static_cast<double>(std::max(0, i - 11))});
        }
        EXPECT_TRUE(movementOf(series, MovementDepth::Steady)) << row;
    }
}

TEST(Movement, NeedsReadings)
{
    EXPECT_FALSE(movementOf({}));
    EXPECT_FALSE(movementOf(FittingSeries{{{0.6, 0.5}, 1}, {{0.5, 0.6}, 2}}));
    EXPECT_FALSE(movementOf(FittingSeries{{{0.6, kInfinity}, 1}, {{0.5, kInfinity}, 2}}));
    EXPECT_TRUE(movementOf(FittingSeries{{{0.5, 0.6}, 0}}));
}

TEST(Movement, MeansInOneSweepAreTheSame)
{
    const auto movement = movementOf(seriesOf(90, driftFrom40));
    ASSERT_TRUE(movement);
    const std::vector<double> riggings{0, 0, 3, 39, 40, 41, 60, 90, 120};
    const std::vector<double> means = movement->meansAt(riggings);
    for (std::size_t i = 0; i < riggings.size(); ++i)
        EXPECT_NEAR(means[i], movement->meanAt(riggings[i]), 1e-12);
}

// What the quick search tells lies near what the full one does.
TEST(Movement, QuickIsNearFull)
{
    for (const auto& moved : {stepAt51, driftFrom40}) {
        const FittingSeries series = seriesOf(90, moved);
        const auto quick = movementOf(series, MovementDepth::Quick);
        const auto full = movementOf(series);
        ASSERT_TRUE(quick && full);
        EXPECT_EQ(quick->first.likeliest(), full->first.likeliest());
        EXPECT_NEAR(quick->meanAt(90), full->meanAt(90), 0.002);
    }
}
