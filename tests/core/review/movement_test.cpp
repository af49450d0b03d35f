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
        const AirframeReadings all = readingsUntil(told.facts, numbers, day);
        const ReviewPeriod period{kMovesFrom, day, annual, false, true};
        return *movementOf(all.couplings.front(), period, annual ? riggingsToCome(numbers, day, *annual) : 0);
    }

    AirframeInMemory told;
    CouplingId coupling;
    Day day = kMovesFrom;
};

} // namespace

TEST_F(OneCoupling, ThatReadsAsItsBaselineDoesShowsNoMovement)
{
    rigSteadily(40);
    const FittingMovement still = movement(day + std::chrono::days{100});
    EXPECT_EQ(still.readings.size(), 40U);
    EXPECT_FALSE(still.drift);
    EXPECT_FALSE(still.hasStep());
    EXPECT_FALSE(still.scatter->hasGrown());
    EXPECT_FALSE(still.scatter->hasShrunk());
    EXPECT_LE(still.line->slope95.lower, 0);
    EXPECT_GE(still.line->slope95.upper, 0);
    EXPECT_LT(still.forecast->chanceOutside, 0.02);
}

TEST_F(OneCoupling, ThatOpensIsDatedNearTheRiggingWhereItBegan)
{
    rigSteadily(20);
    for (int i = 1; i <= 20; ++i)
        rigAt(0.50 + 0.004 * i);
    const FittingMovement drifting = movement(day + std::chrono::days{60});
    ASSERT_TRUE(drifting.drift);
    EXPECT_TRUE(drifting.drift->isUp);
    EXPECT_TRUE(drifting.drift->isRaised);
    EXPECT_NEAR(drifting.readings[drifting.drift->onset].rigging, 21, 4);
    EXPECT_EQ(drifting.lineFrom, drifting.drift->onset);
    EXPECT_NEAR(drifting.line->slope, 0.4, 0.1) << "mm per 100 riggings";
    EXPECT_NEAR(drifting.forecast->riggings, 20, 1) << "one every third day";
    EXPECT_GT(drifting.forecast->chanceOutside, 0.9);
}

TEST_F(OneCoupling, HasNoForecastForAnAnnualThatIsOverdue)
{
    rigSteadily(20);
    EXPECT_TRUE(movement(day).forecast) << "due on the very day";
    EXPECT_TRUE(movement(day - std::chrono::days{1}).line);
    EXPECT_FALSE(movement(day - std::chrono::days{1}).forecast);
}

TEST_F(OneCoupling, ThatClosesIsSaidToCloseAndAfterItsReturnToHaveClosed)
{
    rigSteadily(10);
    rigSteadily(12, -0.03);
    EXPECT_FALSE(movement().drift->isUp);
    rigSteadily(12);
    const FittingMovement back = movement();
    ASSERT_TRUE(back.drift);
    EXPECT_FALSE(back.drift->isRaised);
    EXPECT_EQ(back.lineFrom, 0U) << "the line is the whole period's again";
}

TEST_F(OneCoupling, ThatStepsIsSaidToStepBehindTheRightReading)
{
    rigSteadily(20);
    rigSteadily(20, 0.04);
    const FittingMovement stepped = movement();
    ASSERT_TRUE(stepped.hasStep());
    EXPECT_NEAR(*stepped.stepAt(), 21, 1);
}

TEST_F(OneCoupling, WhoseScatterDoublesIsSaidToScatterMore)
{
    rigSteadily(20);
    rigSteadily(10, 0, 2.2);
    const FittingMovement wild = movement();
    EXPECT_TRUE(wild.scatter->hasGrown());
    EXPECT_EQ(wild.scatter->readings, 10);
    EXPECT_EQ(wild.readings[wild.scatter->from].rigging, 21);
    EXPECT_NEAR(wild.scatter->now, 2.2 * 0.014, 0.012) << "mm";
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
}

TEST_F(OneCoupling, StartsAnewWithANewFitting)
{
    rigSteadily(12, 0.06);
    EXPECT_TRUE(movement().drift);
    told.addFitting(coupling, "ball replaced", 0.56, day + std::chrono::days{1});
    rigSteadily(12, 0.06);
    const FittingMovement after = movement();
    EXPECT_EQ(after.readings.size(), 12U);
    EXPECT_FALSE(after.drift);
}

TEST_F(OneCoupling, WithFourBaselineReadingsHasNoMovement)
{
    AirframeInMemory few;
    const CouplingId trim = few.addCoupling("Trim", 0.4, kMovesFrom, 4).id;
    few.rig(kMovesFrom + std::chrono::days{9});
    few.read(trim, 0.4);
    const RiggingNumbers numbers{few.facts};
    const AirframeReadings all = readingsUntil(few.facts, numbers, kMovesFrom + std::chrono::days{30});
    ASSERT_EQ(all.couplings.front().readings.size(), 1U);
    EXPECT_FALSE(all.couplings.front().readings.front().score);
    const auto none = movementOf(all.couplings.front(),
                                 {kMovesFrom, kMovesFrom + std::chrono::days{30}, {}, false, true}, 0);
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->readings.empty());
    EXPECT_FALSE(none->chart);
    EXPECT_FALSE(none->line);
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
    EXPECT_NEAR(riggingsToCome(numbers, today, today + std::chrono::days{50}), 10, 0.3);
    EXPECT_EQ(riggingsToCome(numbers, today, today), 0) << "the annual is due or past";
    // A file of ten days does not promise a rigging every other day for a year.
    AirframeInMemory young;
    young.rig(kMovesFrom);
    young.rig(kMovesFrom + std::chrono::days{4});
    EXPECT_NEAR(riggingsToCome(RiggingNumbers{young.facts}, kMovesFrom + std::chrono::days{9},
                               kMovesFrom + std::chrono::days{39}),
                2, 1e-9);
}
