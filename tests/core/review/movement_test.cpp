#include "core/review/movement.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kMovesFrom = dayOf(2024, 3, 1);

// One coupling at 0.50 mm, rigged every third day.
class OneCoupling : public testing::Test
{
protected:
    OneCoupling() : coupling{told.addCoupling("Elevator", 0.50, kMovesFrom).id} {}

    void rigAt(double gap)
    {
        day += std::chrono::days{3};
        told.rig(day);
        told.read(coupling, gap);
    }
    // As the baseline reads, with a shift and a scatter of so many times its own.
    void rigSteadily(int riggings, double shift = 0, double times = 1)
    {
        static constexpr double kOff[] = {0.01, -0.02, 0.02, 0, -0.01, 0};
        for (int i = 0; i < riggings; ++i)
            rigAt(0.50 + shift + times * kOff[i % 6]);
    }
    FittingMovement movement(std::optional<Day> annual = {})
    {
        const RiggingNumbers numbers{told.facts};
        AirframeReadings all = readingsUntil(told.facts, numbers, day);
        const SeasonReview season = seasonReviewOf(told.facts, numbers, all);
        const ReviewPeriod period{from, day, annual, false, true};
        return *movementOf(all.couplings.front(), season, period,
                           annual ? riggingsToCome(numbers, day, *annual) : std::optional{0.0});
    }

    AirframeInMemory told;
    CouplingId coupling;
    Day day = kMovesFrom;
    Day from = kMovesFrom; // of the period
};

} // namespace

TEST_F(OneCoupling, ThatReadsAsItsBaselineDoesShowsNoMovement)
{
    rigSteadily(40);
    const FittingMovement still = movement(day + std::chrono::days{100});
    EXPECT_EQ(still.readings.size(), 40U);
    EXPECT_TRUE(still.path);
    EXPECT_TRUE(still.changes.empty());
    EXPECT_FALSE(still.told());
    EXPECT_FALSE(still.flag);
    EXPECT_FALSE(still.scatter->hasGrown);
    EXPECT_FALSE(still.scatter->hasShrunk);
    EXPECT_LT(std::abs(*still.excursion), 0.01);
    EXPECT_LT(still.forecast->chanceOutside, 0.02);
}

TEST_F(OneCoupling, ThatOpensIsToldAsADriftWithItsRateAndBeginning)
{
    rigSteadily(20);
    for (int i = 1; i <= 20; ++i)
        rigAt(0.50 + 0.004 * i);
    const FittingMovement drifting = movement(day + std::chrono::days{60});
    ASSERT_EQ(drifting.changes.size(), 1U);
    const PathChangeTold& drift = *drifting.told();
    EXPECT_EQ(drift.kind, ChangeKind::Drift);
    EXPECT_TRUE(drift.isUp());
    EXPECT_NEAR(drift.at, 21, 4);
    EXPECT_LE(drift.atLower, 21);
    EXPECT_GE(drift.atUpper, 19);
    EXPECT_EQ(drift.day, kMovesFrom + std::chrono::days{3 * static_cast<int>(drift.at)});
    EXPECT_FALSE(drift.step) << "a step it is not";
    EXPECT_NEAR(drift.rate->estimate, 0.4, 0.1) << "mm per 100 riggings";
    EXPECT_LT(drift.rate->interval.lower, 0.4);
    EXPECT_GT(drift.rate->interval.upper, 0.4);
    EXPECT_TRUE(drifting.flag && drifting.flag->isRaised);
    EXPECT_NEAR(*drifting.excursion, 0.08, 0.015);
    EXPECT_NEAR(drifting.forecast->riggings, 20, 1) << "one every third day";
    EXPECT_GT(drifting.forecast->chanceOutside, 0.9);
}

TEST_F(OneCoupling, ThatStepsIsToldAsAStepWithItsSizeAndPlace)
{
    rigSteadily(20);
    rigSteadily(20, 0.08);
    const FittingMovement stepped = movement();
    ASSERT_EQ(stepped.changes.size(), 1U);
    const PathChangeTold& step = *stepped.told();
    EXPECT_EQ(step.kind, ChangeKind::Step);
    EXPECT_EQ(step.at, 21);
    EXPECT_FALSE(step.rate);
    EXPECT_NEAR(step.step->estimate, 0.08, 0.015) << "read in steps of 0.02 mm";
    EXPECT_NEAR(*stepped.excursion, 0.08, 0.015);
    EXPECT_TRUE(stepped.singles.empty()) << "what the step explains lies outside by nothing else";
}

TEST_F(OneCoupling, ThatMovedBeforeThePeriodIsToldAsLongAsItStandsBesideItsBand)
{
    rigSteadily(20);
    rigSteadily(10, 0.08);
    from = day + std::chrono::days{1};
    rigSteadily(20, 0.08);
    const FittingMovement history = movement();
    ASSERT_EQ(history.changes.size(), 1U);
    EXPECT_EQ(history.changes.front().kind, ChangeKind::Step);
    ASSERT_TRUE(history.told());
    EXPECT_FALSE(history.told()->isOfPeriod);
    EXPECT_EQ(history.told()->at, 21);
    EXPECT_NEAR(*history.excursion, 0.08, 0.015) << "where it lies is told all the same";
}

TEST_F(OneCoupling, ThatCameToRestIsToldToHaveEndedItsDrift)
{
    rigSteadily(20);
    for (int i = 1; i <= 20; ++i)
        rigAt(0.50 + 0.006 * i);
    rigSteadily(24, 0.12);
    const FittingMovement rested = movement();
    ASSERT_TRUE(rested.told());
    EXPECT_EQ(rested.changes.size(), 1U);
    ASSERT_TRUE(rested.told()->endedAt);
    EXPECT_NEAR(*rested.told()->endedAt, 40, 4);
    EXPECT_EQ(rested.told()->kind, ChangeKind::Drift);
}

TEST_F(OneCoupling, ThatStepsTwiceIsToldBothTheLatestFirst)
{
    rigSteadily(24);
    rigSteadily(24, -0.12);
    rigSteadily(24, -0.04);
    const FittingMovement twice = movement();
    ASSERT_EQ(twice.changes.size(), 2U);
    EXPECT_NEAR(twice.changes[0].at, 25, 1);
    EXPECT_FALSE(twice.changes[0].isUp());
    EXPECT_NEAR(twice.told()->at, 49, 1);
    EXPECT_TRUE(twice.told()->isUp());
}

TEST_F(OneCoupling, OfWhichOneReadingIsWildDoesNotMove)
{
    rigSteadily(20);
    rigAt(1.0);
    rigSteadily(20);
    const FittingMovement wild = movement();
    EXPECT_TRUE(wild.changes.empty());
    EXPECT_FALSE(wild.scatter->hasGrown);
    ASSERT_EQ(wild.singles.size(), 1U);
    EXPECT_EQ(wild.readings[wild.singles.front().index].rigging, 21);
    EXPECT_NEAR(wild.singles.front().away, 0.5, 0.02);
    EXPECT_EQ(wild.singles.front().explainedBy, numbers::ExplainedBy::Nothing);
}

TEST_F(OneCoupling, HasNoForecastForAnAnnualThatIsOverdue)
{
    rigSteadily(20);
    EXPECT_TRUE(movement(day).forecast) << "due on the very day";
    EXPECT_TRUE(movement(day - std::chrono::days{1}).path);
    EXPECT_FALSE(movement(day - std::chrono::days{1}).forecast);
}

TEST_F(OneCoupling, WhoseScatterGrowsIsSaidToScatterMore)
{
    rigSteadily(20);
    rigSteadily(10, 0, 3);
    const FittingMovement wild = movement();
    EXPECT_TRUE(wild.scatter->hasGrown);
    EXPECT_TRUE(wild.changes.empty());
    EXPECT_EQ(wild.scatter->readings, 10);
    EXPECT_NEAR(wild.scatter->now, 3 * 0.014, 0.02) << "mm";
    EXPECT_LT(wild.scatter->before, 0.02);
}

TEST_F(OneCoupling, ReadFewTimesInThePeriodHasNoScatterOfIt)
{
    rigSteadily(20);
    from = day + std::chrono::days{1};
    rigSteadily(4, 0, 3);
    EXPECT_FALSE(movement().scatter);
}

TEST_F(OneCoupling, SetAsideByItsGaugesQuarantineIsLeftOut)
{
    rigSteadily(10);
    GaugeCheck check;
    check.gauge = told.facts.gauges[0].id;
    check.day = day;
    check.quarantineFrom = day - std::chrono::days{7};
    told.facts.gaugeChecks.push_back(check);
    EXPECT_EQ(movement().readings.size(), 7U);
    EXPECT_EQ(movement().path->riggings, 7);
}

TEST_F(OneCoupling, StartsAnewWithANewFitting)
{
    rigSteadily(12);
    rigSteadily(12, 0.08);
    EXPECT_TRUE(movement().told());
    told.addFitting(coupling, "ball replaced", 0.56, day + std::chrono::days{1});
    rigSteadily(12, 0.06);
    const FittingMovement after = movement();
    EXPECT_EQ(after.readings.size(), 12U);
    EXPECT_TRUE(after.changes.empty());
}

TEST_F(OneCoupling, ReadAtTooFewRiggingsForAChangeIsNotKnownToStandStill)
{
    rigSteadily(6);
    EXPECT_FALSE(movement().path);
    rigSteadily(1);
    EXPECT_TRUE(movement().path);
}

// Of a long history the latest riggings enter all, the earlier ones thinned out: a step of long ago is found.
TEST_F(OneCoupling, WithALongHistoryIsStillToldFromItsBaselineOn)
{
    rigSteadily(60);
    rigSteadily(360, 0.08);
    const FittingMovement history = movement();
    EXPECT_LE(history.path->riggings, static_cast<int>(kRiggingsOfSeason));
    ASSERT_EQ(history.changes.size(), 1U);
    EXPECT_EQ(history.changes.front().kind, ChangeKind::Step);
    EXPECT_NEAR(history.changes.front().at, 61, 4);
    EXPECT_EQ(history.readings.size(), 420U);
}

TEST_F(OneCoupling, WithFourBaselineReadingsHasNoMovement)
{
    AirframeInMemory few;
    const CouplingId trim = few.addCoupling("Trim", 0.4, kMovesFrom, 4).id;
    few.rig(kMovesFrom + std::chrono::days{9});
    few.read(trim, 0.4);
    const RiggingNumbers numbers{few.facts};
    AirframeReadings all = readingsUntil(few.facts, numbers, kMovesFrom + std::chrono::days{30});
    ASSERT_EQ(all.couplings.front().readings.size(), 1U);
    EXPECT_FALSE(all.couplings.front().readings.front().score);
    const SeasonReview season = seasonReviewOf(few.facts, numbers, all);
    const auto none = movementOf(all.couplings.front(), season,
                                 {kMovesFrom, kMovesFrom + std::chrono::days{30}, {}, false, true}, 0);
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->readings.empty());
    EXPECT_FALSE(none->chart);
    EXPECT_FALSE(none->path);
    EXPECT_FALSE(none->scatter);
}

TEST(RiggingsToCome, FollowThePaceOfTheLastYear)
{
    AirframeInMemory told;
    told.addCoupling("Elevator", 0.5, kMovesFrom);
    for (int i = 0; i < 73; ++i)
        told.rig(kMovesFrom + std::chrono::days{5 * i});
    const RiggingNumbers numbers{told.facts};
    const Day today = kMovesFrom + std::chrono::days{365};
    EXPECT_NEAR(riggingsToCome(numbers, today, today + std::chrono::days{50}).value_or(0), 10, 0.3);
    EXPECT_EQ(riggingsToCome(numbers, today, today), 0) << "the annual is due or past";
}

TEST(RiggingsToCome, AreNotKnownOfAFileThatIsTooYoungOrHasTooFewRiggings)
{
    using std::chrono::days;
    AirframeInMemory young;
    const auto atThePaceOf = [&young](int age) {
        return riggingsToCome(RiggingNumbers{young.facts}, kMovesFrom + days{age},
                              kMovesFrom + days{age + 60});
    };
    EXPECT_FALSE(atThePaceOf(100)) << "never rigged";
    for (const int day : {0, 20, 40})
        young.rig(kMovesFrom + days{day});
    EXPECT_FALSE(atThePaceOf(60)) << "three riggings";
    young.rig(kMovesFrom + days{55});
    EXPECT_FALSE(atThePaceOf(59)) << "a day too young";
    ASSERT_TRUE(atThePaceOf(60));
    EXPECT_NEAR(*atThePaceOf(60), 3, 1e-9);
}
