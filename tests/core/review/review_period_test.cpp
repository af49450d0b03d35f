#include "core/review/review_period.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

TEST(ReviewPeriods, BeginWithTheLastAnnualAndGoBackFromAnnualToAnnual)
{
    AirframeInMemory told;
    told.addCoupling("Trim", 0.5, dayOf(2024, 3, 1));
    told.happen(EventKind::Annual, dayOf(2025, 2, 20));
    told.happen(EventKind::Annual, dayOf(2026, 2, 20));
    told.facts.airframe.annualDue = dayOf(2027, 2, 20);
    const auto periods = reviewPeriods(told.facts, dayOf(2026, 10, 31));
    ASSERT_EQ(periods.size(), 4U);
    EXPECT_EQ(periods[0],
              (ReviewPeriod{dayOf(2026, 2, 20), dayOf(2026, 10, 31), dayOf(2027, 2, 20), true, true}));
    EXPECT_EQ(periods[1],
              (ReviewPeriod{dayOf(2025, 2, 20), dayOf(2026, 2, 19), dayOf(2026, 2, 20), true, false}));
    EXPECT_EQ(periods[2],
              (ReviewPeriod{dayOf(2024, 3, 1), dayOf(2025, 2, 19), dayOf(2025, 2, 20), false, false}));
    EXPECT_EQ(periods[3],
              (ReviewPeriod{dayOf(2024, 3, 1), dayOf(2026, 10, 31), dayOf(2027, 2, 20), false, true}));
}

TEST(ReviewPeriods, AreTheWholeFileWithoutAnAnnual)
{
    AirframeInMemory told;
    told.addCoupling("Trim", 0.5, dayOf(2024, 3, 1));
    const auto periods = reviewPeriods(told.facts, dayOf(2024, 6, 1));
    ASSERT_EQ(periods.size(), 1U);
    EXPECT_EQ(periods[0], (ReviewPeriod{dayOf(2024, 3, 1), dayOf(2024, 6, 1), {}, false, true}));
}

TEST(ReviewPeriods, OfAnEmptyFileAreToday)
{
    const AirframeInMemory told;
    const auto periods = reviewPeriods(told.facts, dayOf(2024, 6, 1));
    ASSERT_EQ(periods.size(), 1U);
    EXPECT_EQ(periods[0].from, dayOf(2024, 6, 1));
    EXPECT_EQ(periods[0].to, dayOf(2024, 6, 1));
}

TEST(ReviewPeriods, AnAnnualOfOneCouplingOrInTheFutureEndsNone)
{
    AirframeInMemory told;
    told.addCoupling("Trim", 0.5, dayOf(2024, 3, 1));
    told.happen(EventKind::Annual, dayOf(2024, 9, 1));
    told.facts.events.back().coupling = told.facts.couplings[0].id;
    told.happen(EventKind::Annual, dayOf(2025, 2, 1));
    EXPECT_EQ(reviewPeriods(told.facts, dayOf(2024, 12, 1)).size(), 1U);
}
