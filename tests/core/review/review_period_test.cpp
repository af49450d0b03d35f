#include "core/review/review_period.h"

#include "core/review/rigging_numbers.h"
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

namespace {

const PeriodOffer* offerOf(const std::vector<PeriodOffer>& offers, PeriodKind kind, int number,
                           std::optional<CouplingId> coupling = {})
{
    for (const PeriodOffer& offer : offers)
        if (offer.period.kind == kind && offer.number == number && offer.coupling == coupling)
            return &offer;
    return nullptr;
}

// A coupling refitted in 2025, two riggings in 2024 and twelve in 2025, an annual early in 2026.
class TwoSeasons
{
public:
    TwoSeasons()
    {
        coupling = told.addCoupling("Trim", 0.5, dayOf(2024, 3, 1)).id;
        for (const Day day : {dayOf(2024, 5, 1), dayOf(2024, 6, 1)})
            rig(day);
        told.addFitting(coupling, "ball replaced", 0.6, dayOf(2025, 4, 1));
        for (int i = 0; i < 12; ++i)
            rig(dayOf(2025, 5, 1) + std::chrono::days{7 * i});
        told.happen(EventKind::Annual, dayOf(2026, 2, 20));
        told.facts.airframe.annualDue = dayOf(2027, 2, 20);
    }

    std::vector<PeriodOffer> offers(Day today = dayOf(2026, 3, 1)) const
    {
        return offeredPeriods(told.facts, today);
    }

    AirframeInMemory told;
    CouplingId coupling;

private:
    void rig(Day day)
    {
        told.rig(day);
        told.read(coupling, 0.5);
    }
};

} // namespace

TEST(PeriodOffers, HoldEachYearInWhichSomebodyRiggedNewestFirst)
{
    const TwoSeasons seasons;
    const auto offers = seasons.offers();
    const PeriodOffer* last = offerOf(offers, PeriodKind::BySeason, 2025);
    const PeriodOffer* first = offerOf(offers, PeriodKind::BySeason, 2024);
    ASSERT_TRUE(last && first);
    EXPECT_LT(last, first);
    EXPECT_EQ(last->period, (ReviewPeriod{dayOf(2025, 1, 1), dayOf(2025, 12, 31), dayOf(2026, 2, 20), false,
                                          false, PeriodKind::BySeason}));
    EXPECT_FALSE(offerOf(offers, PeriodKind::BySeason, 2026)) << "nobody has rigged yet";
}

TEST(PeriodOffers, HoldAnOldFittingByItself)
{
    const TwoSeasons seasons;
    const auto offers = seasons.offers();
    const PeriodOffer* old = offerOf(offers, PeriodKind::ByFitting, 1, seasons.coupling);
    const PeriodOffer* now = offerOf(offers, PeriodKind::ByFitting, 2, seasons.coupling);
    ASSERT_TRUE(old && now);
    EXPECT_EQ(old->period.from, dayOf(2024, 3, 1));
    EXPECT_EQ(old->period.to, dayOf(2025, 3, 31));
    EXPECT_EQ(now->period.from, dayOf(2025, 4, 1));
    EXPECT_EQ(now->period.to, dayOf(2026, 3, 1));
    EXPECT_TRUE(now->period.isCurrent);
}

TEST(PeriodOffers, HoldTheLastRiggingsWhereThereAreMore)
{
    const TwoSeasons seasons;
    const auto offers = seasons.offers();
    const PeriodOffer* ten = offerOf(offers, PeriodKind::LastRiggings, 10);
    ASSERT_TRUE(ten);
    EXPECT_EQ(ten->period.from, dayOf(2025, 5, 15)) << "the third of the twelve";
    EXPECT_FALSE(offerOf(offers, PeriodKind::LastRiggings, 20));
}

TEST(PeriodOffers, BeginWithTheFirstThatHoldsReadings)
{
    TwoSeasons seasons;
    const AirframeFacts& facts = seasons.told.facts;
    PeriodOffer chosen = chosenAmong(seasons.offers(), {}, facts);
    EXPECT_EQ(chosen.period.to, dayOf(2026, 2, 19)) << "nothing was read since the annual";
    seasons.told.rig(dayOf(2026, 2, 27));
    seasons.told.read(seasons.coupling, 0.5);
    chosen = chosenAmong(seasons.offers(), {}, facts);
    EXPECT_TRUE(chosen.period.isCurrent);
    EXPECT_EQ(chosen.period.from, dayOf(2026, 2, 20));
}

TEST(PeriodOffers, BeginWithTheCurrentOneWhereSomethingWasAskedInIt)
{
    TwoSeasons seasons;
    Question question;
    question.stamp.when = noonOf(dayOf(2026, 2, 25));
    seasons.told.facts.questions.push_back({question, {}});
    EXPECT_TRUE(chosenAmong(seasons.offers(), {}, seasons.told.facts).period.isCurrent);
}

TEST(PeriodOffers, StayChosenWhileDaysPassAndFallBackWhenTheyAreGone)
{
    TwoSeasons seasons;
    const AirframeFacts& facts = seasons.told.facts;
    const auto before = seasons.offers();
    const Day later = dayOf(2026, 3, 20);
    for (const PeriodOffer& offer : before) {
        const PeriodOffer again = chosenAmong(seasons.offers(later), offer, facts);
        EXPECT_TRUE(again.isSameChoiceAs(offer));
        EXPECT_EQ(again.period.to, offer.period.isCurrent ? later : offer.period.to);
    }
    PeriodOffer gone = before.front();
    gone.period.from -= std::chrono::days{1};
    EXPECT_EQ(chosenAmong(before, gone, facts).period.to, dayOf(2026, 2, 19));
}

TEST(PeriodOffers, AreAnyDaysWithTheAnnualThatCameAfterThem)
{
    const TwoSeasons seasons;
    const PeriodOffer days =
        chosenAmong(seasons.offers(), anyDays(dayOf(2025, 6, 1), dayOf(2025, 6, 30)), seasons.told.facts);
    EXPECT_EQ(days.period.from, dayOf(2025, 6, 1));
    EXPECT_EQ(days.period.annual, dayOf(2026, 2, 20));
    EXPECT_FALSE(days.period.isCurrent);
    const PeriodOffer again = chosenAmong(seasons.offers(), days, seasons.told.facts);
    EXPECT_EQ(again.period, days.period);
}

TEST(PeriodOffers, AreAnyNumberOfLastRiggings)
{
    const TwoSeasons seasons;
    const RiggingNumbers numbers{seasons.told.facts};
    const auto offers = seasons.offers();
    const Day today = offers.front().period.to;
    const PeriodOffer three = chosenAmong(offers, lastRiggings(3), seasons.told.facts);
    EXPECT_EQ(three.number, 3);
    EXPECT_EQ(numbers.within(three.period.from, three.period.to), 3);
    EXPECT_EQ(three.period.to, today);
    EXPECT_TRUE(three.period.isCurrent);

    const PeriodOffer all = chosenAmong(offers, lastRiggings(kMostLastRiggings), seasons.told.facts);
    EXPECT_EQ(all.period.from, numbers.firstDay());
    EXPECT_EQ(all.number, kMostLastRiggings);
}

TEST(PeriodOffers, OfAnEmptyFileAreToday)
{
    const AirframeInMemory told;
    const auto offers = offeredPeriods(told.facts, dayOf(2024, 6, 1));
    ASSERT_EQ(offers.size(), 1U);
    EXPECT_EQ(chosenAmong(offers, {}, told.facts).period.to, dayOf(2024, 6, 1));
}
