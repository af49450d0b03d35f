#include "core/numbers/offsets.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>

using namespace rig::numbers;

namespace {

using Scores = std::vector<LabelledScore>;
using enum OffsetFactor;
using enum OffsetsState;

// Noise without a pattern that any factor could take up.
double wiggle(int i)
{
    return 0.3 * std::sin(2.3 * i * i + 1);
}

// Both persons read the same joint with the same set on each of ten days; the first half a unit higher, give
// or take 0.1 in turn.
Scores twoPersonsTenDays()
{
    Scores scores;
    for (int day = 0; day < 10; ++day) {
        const double noise = day % 2 == 0 ? 0.1 : -0.1;
        scores.push_back({0.2 * day + 0.5 + noise, 1, 1, day});
        scores.push_back({0.2 * day, 2, 1, day});
    }
    return scores;
}

} // namespace

TEST(Offsets, ComparePersonsWithinTheirDays)
{
    const auto offsets = offsetsOf(twoPersonsTenDays());
    ASSERT_TRUE(offsets);
    ASSERT_EQ(offsets->persons.state, Estimated);
    ASSERT_EQ(offsets->persons.levels.size(), 2U);
    const auto& [first, second] = std::tie(offsets->persons.levels[0], offsets->persons.levels[1]);
    EXPECT_EQ(first.label, 1);
    EXPECT_EQ(first.readings, 10);
    EXPECT_NEAR(first.estimate, 0.25, 1e-14);
    EXPECT_NEAR(second.estimate, -0.25, 1e-14);
    // By hand: 20 readings less 10 days less one difference. Each reading is 0.05 off its fit.
    EXPECT_EQ(offsets->degreesOfFreedom, 9);
    EXPECT_NEAR(offsets->residualDeviation, std::sqrt(20 * 0.05 * 0.05 / 9), 1e-14);
    // Half a difference of two means of ten: s / sqrt(20).
    const double error = offsets->residualDeviation / std::sqrt(20);
    EXPECT_NEAR(first.standardError, error, 1e-14);
    EXPECT_NEAR(first.interval.lower, 0.25 - 2.2621571628 * error, 1e-10); // t with 9 degrees, 97.5 %
    EXPECT_NEAR(first.interval.upper, 0.25 + 2.2621571628 * error, 1e-10);
}

TEST(Offsets, WeighEachLevelByItsReadings)
{
    // One day, ten readings against thirty: m1 less the mean of all is 3/4 of the difference, its error
    // s sqrt(30 / (40 x 10)).
    Scores scores;
    for (int i = 0; i < 40; ++i)
        scores.push_back({(i < 10 ? 0.8 : 0) + (i % 2 == 0 ? 0.1 : -0.1), i < 10 ? 1 : 2, 1, 1});
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    ASSERT_EQ(offsets->persons.levels.size(), 2U);
    EXPECT_NEAR(offsets->persons.levels[0].estimate, 0.6, 1e-14);
    EXPECT_NEAR(offsets->persons.levels[1].estimate, -0.2, 1e-14);
    EXPECT_EQ(offsets->degreesOfFreedom, 38);
    EXPECT_NEAR(offsets->persons.levels[0].standardError, offsets->residualDeviation * std::sqrt(0.075),
                1e-14);
}

TEST(Offsets, FindPersonAndSetBehindUnequalDays)
{
    const double person[] = {0.4, -0.1, 0.9};
    const double leafSet[] = {-0.3, 0.5};
    Scores scores;
    for (int i = 0; i < 90; ++i) {
        const int who = (i / 2) % 3;
        const int with = (i * i + i / 7) % 2;
        const int day = i / 8;
        scores.push_back({person[who] + leafSet[with] + 0.7 * std::cos(day), who, with, day});
    }
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    EXPECT_NEAR(offsets->residualDeviation, 0, 1e-13); // nothing but the three factors
    for (const FactorOffsets* factor : {&offsets->persons, &offsets->leafSets}) {
        ASSERT_EQ(factor->state, Estimated);
        const double* truth = factor == &offsets->persons ? person : leafSet;
        double mean = 0;
        double sum = 0;
        for (const LevelOffset& level : factor->levels) {
            mean += level.readings / 90.0 * truth[level.label];
            sum += level.readings * level.estimate;
        }
        EXPECT_NEAR(sum, 0, 1e-12);
        for (const LevelOffset& level : factor->levels)
            EXPECT_NEAR(level.estimate, truth[level.label] - mean, 1e-13) << level.label;
    }
}

TEST(Offsets, DoNotDependOnTheOrderOrTheNamesOfLevels)
{
    Scores scores;
    for (int i = 0; i < 60; ++i)
        scores.push_back({wiggle(i) + 0.2 * (i % 3), i % 3, (i / 3) % 2, i / 12});
    const auto offsets = offsetsOf(scores);
    std::ranges::reverse(scores);
    for (LabelledScore& score : scores)
        score = {score.score, 100 - score.person, score.leafSet, -7 * score.day};
    const auto others = offsetsOf(scores);
    ASSERT_TRUE(offsets && others);
    ASSERT_EQ(offsets->persons.levels.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(offsets->persons.levels[i].estimate, others->persons.levels[2 - i].estimate, 1e-13);
        EXPECT_NEAR(offsets->persons.levels[i].standardError, others->persons.levels[2 - i].standardError,
                    1e-13);
    }
}

TEST(Offsets, SayNothingOfOnePersonOrOneSet)
{
    const auto offsets = offsetsOf(twoPersonsTenDays());
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->leafSets.state, OneLevel);
    EXPECT_TRUE(offsets->leafSets.levels.empty());
}

TEST(Offsets, DoNotTellAPersonFromTheSetThatIsAlwaysHis)
{
    Scores scores = twoPersonsTenDays();
    for (LabelledScore& score : scores)
        score.leafSet = score.person + 10;
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.state, CannotBeToldApart);
    EXPECT_EQ(offsets->persons.hiddenBehind, std::vector{LeafSet});
    EXPECT_EQ(offsets->leafSets.state, CannotBeToldApart);
    EXPECT_EQ(offsets->leafSets.hiddenBehind, std::vector{Person});
    EXPECT_TRUE(offsets->persons.levels.empty());
}

TEST(Offsets, DoNotTellPersonsApartWhoNeverReadOnTheSameDay)
{
    Scores scores;
    for (int i = 0; i < 60; ++i)
        scores.push_back({wiggle(i), (i / 6) % 2, i % 2, i / 6});
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.state, CannotBeToldApart);
    EXPECT_EQ(offsets->persons.hiddenBehind, std::vector{Day});
    EXPECT_EQ(offsets->leafSets.state, Estimated); // both sets were in use on each day
}

TEST(Offsets, NameNothingWhereItTakesMoreThanOneFactor)
{
    Scores scores;
    for (int i = 0; i < 60; ++i)
        scores.push_back({wiggle(i), (i / 6) % 2, (i / 6) % 2, i / 6});
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.state, CannotBeToldApart);
    EXPECT_TRUE(offsets->persons.hiddenBehind.empty());
}

TEST(Offsets, DoNotCompareTwoCrewsThatNeverMet)
{
    Scores scores;
    for (int i = 0; i < 80; ++i) {
        const int day = i / 8;
        scores.push_back({wiggle(i), i % 2 + 2 * (day % 2), 1, day});
    }
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.state, CannotBeToldApart);
    EXPECT_EQ(offsets->persons.hiddenBehind, std::vector{Day});
}

TEST(Offsets, ShowALevelFromTenReadingsOn)
{
    Scores scores = twoPersonsTenDays();
    for (int day = 0; day < 9; ++day)
        scores.push_back({0.2 * day + 0.9, 3, 1, day});
    const auto offsets = offsetsOf(scores);
    ASSERT_TRUE(offsets);
    ASSERT_EQ(offsets->persons.levels.size(), 2U);
    EXPECT_EQ(offsets->persons.levels[1].label, 2);
    // The third person's nine still count among all readings.
    EXPECT_LT(offsets->persons.levels[0].estimate, 0.1);
}

TEST(Offsets, ClaimNothingWithoutAReadingToSpare)
{
    const auto offsets = offsetsOf(Scores{{0.1, 1, 1, 1}, {0.4, 2, 1, 1}});
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->degreesOfFreedom, 0);
    EXPECT_EQ(offsets->persons.state, NoDegreesOfFreedom);
    EXPECT_TRUE(offsets->persons.levels.empty());
}

TEST(Offsets, DoNotExistWithoutScores)
{
    EXPECT_FALSE(offsetsOf({}));
    EXPECT_FALSE(offsetsOf(Scores{{std::numeric_limits<double>::quiet_NaN(), 1, 1, 1}}));
    Scores huge = twoPersonsTenDays();
    huge[0].score = 1e300;
    EXPECT_FALSE(offsetsOf(huge));
}
