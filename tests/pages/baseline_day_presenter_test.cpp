#include "app/pages/setup/baseline_day_presenter.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using namespace rig::test;

namespace {

// The small hangar on a day on which nobody flies.
class BaselineDay : public testing::Test
{
protected:
    BaselineSheet sheet() { return must(presenter.sheet(hangar.airframe, hangar.leftAileron)); }

    ReadingId read(int entersUm, std::optional<Correction> correction = {},
                   std::optional<PersonId> person = {})
    {
        store.clock().passMinutes(3);
        const GaugeReading taken{between(entersUm, entersUm + 50), Technique::Leaf};
        return must(presenter.keep(sheet(), person.value_or(hangar.oren), hangar.setA, taken, correction));
    }

    void readTimes(int times)
    {
        for (int i = 0; i < times; ++i)
            read(i % 3 ? 500 : 450);
    }

    DemonstrationSheet demonstration()
    {
        return must(presenter.demonstration(hangar.airframe, hangar.leftAileron, hangar.setA));
    }

    void showPartSeated(int entersUm)
    {
        must(presenter.keep(demonstration(), hangar.oren, hangar.setA,
                            {between(entersUm, entersUm + 50), Technique::Leaf}, hangar.vale));
    }

    TempStore store;
    Hangar hangar{store.records()};
    BaselineDayPresenter presenter{store.records(), store.clock()};
};

} // namespace

TEST_F(BaselineDay, HasNoBandFromFourReadings)
{
    readTimes(4);
    EXPECT_EQ(sheet().stage, BaselineStage::NoBand);
    EXPECT_FALSE(sheet().band);
    EXPECT_FALSE(sheet().narrowing);
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::TooFewReadings);
}

TEST_F(BaselineDay, HasAThinBandFromFive)
{
    readTimes(5);
    EXPECT_EQ(sheet().stage, BaselineStage::Thin);
    ASSERT_TRUE(sheet().narrowing);
    EXPECT_LT(sheet().narrowing->widthWithOneMore, sheet().narrowing->widthNow);
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::TooFewReadings);
}

TEST_F(BaselineDay, MayBeFrozenFromTen)
{
    readTimes(9);
    EXPECT_EQ(sheet().stage, BaselineStage::Thin);
    readTimes(1);
    EXPECT_EQ(sheet().stage, BaselineStage::Enough);
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::None);
}

TEST_F(BaselineDay, KeepsEachReadingAtOnce)
{
    read(500);
    store.close();
    store.reopen();
    BaselineDayPresenter again{store.records(), store.clock()};
    const BaselineSheet after = must(again.sheet(hangar.airframe, hangar.leftAileron));
    ASSERT_EQ(after.readings.size(), 1U);
    const Reading& kept = after.readings.front().reading;
    EXPECT_EQ(kept.interval, between(500, 550));
    EXPECT_EQ(kept.purpose, Purpose::Baseline);
    EXPECT_EQ(kept.state, SeatState::Locked);
    EXPECT_EQ(kept.gauge, hangar.setA);
    EXPECT_EQ(after.readings.front().person, "M. Oren");
    EXPECT_EQ(after.readings.front().gauge, "A");
}

TEST_F(BaselineDay, CountsWhoReadWithWhatAndWhen)
{
    readTimes(2);
    store.clock().passMinutes(24 * 60);
    read(500, {}, hangar.vale);
    EXPECT_EQ(sheet().people, 2);
    EXPECT_EQ(sheet().gauges, 1);
    EXPECT_EQ(sheet().days, 2);
}

TEST_F(BaselineDay, ACorrectedReadingStaysWithTheReasonAndNoLongerCounts)
{
    const ReadingId wrong = read(550);
    read(500, Correction{wrong, "0.55 read for 0.50"});
    const BaselineSheet after = sheet();
    ASSERT_EQ(after.readings.size(), 2U);
    EXPECT_EQ(after.readings.front().correctedBy, "0.55 read for 0.50");
    EXPECT_FALSE(after.readings.front().admitted);
    EXPECT_FALSE(after.readings.front().mayBeCorrected());
    EXPECT_TRUE(after.readings.back().admitted);
    EXPECT_EQ(after.admitted, 1);
}

TEST_F(BaselineDay, ACorrectionWithoutAReasonIsRefused)
{
    const ReadingId wrong = read(550);
    const auto refused = presenter.keep(sheet(), hangar.oren, hangar.setA,
                                        {between(500, 550), Technique::Leaf}, Correction{wrong, "  "});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problem().kind, ProblemKind::FactRefused);
    EXPECT_EQ(sheet().readings.size(), 1U);
}

TEST_F(BaselineDay, AnExcludedReadingStaysWithTheReasonAndTheName)
{
    readTimes(5);
    const ReadingId odd = read(900);
    must(presenter.exclude(odd, hangar.vale, "sleeve was held back"));
    const BaselineSheet after = sheet();
    ASSERT_EQ(after.readings.size(), 6U);
    EXPECT_EQ(after.readings.back().excluded, "sleeve was held back");
    EXPECT_EQ(after.readings.back().excludedBy, "T. Vale");
    EXPECT_FALSE(after.readings.back().admitted);
    EXPECT_EQ(after.admitted, 5);
}

TEST_F(BaselineDay, AnExclusionWithoutAReasonIsRefused)
{
    const ReadingId odd = read(900);
    EXPECT_FALSE(presenter.exclude(odd, hangar.vale, " "));
    EXPECT_EQ(sheet().admitted, 1);
}

TEST_F(BaselineDay, AFrozenBaselineCarriesTwoNamesAndMovesNoMore)
{
    readTimes(10);
    const BaselineSheet before = sheet();
    must(presenter.freeze(before, hangar.oren, hangar.vale));
    read(900);
    const BaselineSheet after = sheet();
    EXPECT_EQ(after.stage, BaselineStage::Frozen);
    EXPECT_EQ(after.obstacle, FreezeObstacle::AlreadyFrozen);
    ASSERT_TRUE(after.frozen && after.band);
    EXPECT_EQ(after.frozen->first, "M. Oren");
    EXPECT_EQ(after.frozen->second, "T. Vale");
    EXPECT_EQ(after.band->outer.upper, before.band->outer.upper);
    EXPECT_FALSE(after.narrowing) << "nothing narrows a frozen band";
}

TEST_F(BaselineDay, TheSamePersonTwiceFreezesNothing)
{
    readTimes(10);
    EXPECT_FALSE(presenter.freeze(sheet(), hangar.oren, hangar.oren));
    EXPECT_FALSE(sheet().frozen);
}

TEST_F(BaselineDay, ReadingsThatAreAllOpenCannotBeFrozen)
{
    const GaugeReading loose{{1000_um, std::nullopt}, Technique::ThickestLoose};
    for (int i = 0; i < 10; ++i)
        must(presenter.keep(sheet(), hangar.oren, hangar.setA, loose, {}));
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::NoBand);
    EXPECT_EQ(sheet().stage, BaselineStage::NoBand);
}

TEST_F(BaselineDay, AReadingUnlikeTheOthersStandsInTheWayUntilItIsExcluded)
{
    readTimes(10);
    const ReadingId odd = read(900);
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::Outlier);
    EXPECT_TRUE(sheet().readings.back().unlike);
    EXPECT_FALSE(sheet().readings.front().unlike);
    EXPECT_EQ(sheet().admitted, 11) << "the program drops nothing by itself";
    must(presenter.exclude(odd, hangar.oren, "two leaves read as one"));
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::None);
    EXPECT_FALSE(sheet().readings.back().unlike);
}

TEST_F(BaselineDay, StartsAgainAfterARefit)
{
    readTimes(6);
    Fitting refit;
    refit.coupling = hangar.leftAileron;
    refit.begins = store.clock().now().localDay();
    refit.reason = "ball and plunger replaced";
    must(store.records().add(refit));
    EXPECT_EQ(sheet().readings.size(), 0U);
    EXPECT_EQ(sheet().stage, BaselineStage::NoBand);
    EXPECT_EQ(sheet().fitting->reason, "ball and plunger replaced");
}

TEST_F(BaselineDay, ShowsEveryCouplingInUseWithWhatItHas)
{
    readTimes(5);
    const BaselineDayView view = must(presenter.view(hangar.airframe));
    ASSERT_EQ(view.couplings.size(), 2U);
    EXPECT_EQ(view.couplings.front().stage, BaselineStage::Thin);
    EXPECT_EQ(view.couplings.front().admitted, 5);
    EXPECT_EQ(view.couplings.back().stage, BaselineStage::NoBand);
}

TEST_F(BaselineDay, BeginsAtTheFirstCouplingThatStillNeedsReadings)
{
    EXPECT_EQ(must(presenter.view(hangar.airframe)).firstCoupling, hangar.leftAileron);
    readTimes(9);
    EXPECT_EQ(must(presenter.view(hangar.airframe)).firstCoupling, hangar.leftAileron) << "a thin band";
    readTimes(1);
    EXPECT_EQ(must(presenter.view(hangar.airframe)).firstCoupling, hangar.rightAileron);
    const auto right = must(presenter.sheet(hangar.airframe, hangar.rightAileron));
    for (int i = 0; i < 10; ++i)
        must(presenter.keep(right, hangar.oren, hangar.setA,
                            {i % 3 ? between(500, 550) : between(450, 500), Technique::Leaf}, {}));
    EXPECT_EQ(must(presenter.view(hangar.airframe)).firstCoupling, hangar.leftAileron) << "none does";
}

TEST_F(BaselineDay, FillsInTheLeafSetOnlyWhereThereIsNoOther)
{
    EXPECT_EQ(must(presenter.view(hangar.airframe)).onlyGauge, hangar.setA);
    Gauge setC = aLeafSet("C");
    setC.id = must(store.records().add(setC));
    must(presenter.keep(sheet(), hangar.vale, setC.id, {between(500, 550), Technique::Leaf}, {}));
    EXPECT_EQ(must(presenter.view(hangar.airframe)).onlyGauge, std::nullopt) << "one of two sets";
    setC.inUse = false;
    must(store.records().add(setC));
    EXPECT_EQ(must(presenter.view(hangar.airframe)).onlyGauge, hangar.setA) << "the other is out of use";
}

TEST_F(BaselineDay, SaysThatALeafSetIsInDoubt)
{
    GaugeCheck check;
    check.gauge = hangar.setA;
    check.day = store.clock().now().localDay();
    check.how = "micrometer";
    check.found = "tips worn";
    check.quarantineFrom = check.day;
    must(store.records().add(check));
    EXPECT_TRUE(must(presenter.view(hangar.airframe)).gauges.front().inDoubt);
}

TEST_F(BaselineDay, PartSeatedReadingsAreKeptApartFromTheBaseline)
{
    readTimes(10);
    const Band before = *sheet().band;
    showPartSeated(1600);
    EXPECT_EQ(sheet().admitted, 10);
    EXPECT_EQ(sheet().readings.size(), 10U);
    EXPECT_EQ(sheet().band->outer.upper, before.outer.upper);
    ASSERT_EQ(demonstration().readings.size(), 1U);
    const Reading kept = demonstration().readings.front().reading;
    EXPECT_EQ(kept.state, SeatState::PartSeated);
    EXPECT_EQ(kept.purpose, Purpose::Demonstration);
    EXPECT_EQ(kept.second, hangar.vale);
    EXPECT_EQ(sheet().partSeated, std::vector{between(1600, 1650)});
}

TEST_F(BaselineDay, ACorrectedPartSeatedReadingStaysWithTheReason)
{
    showPartSeated(1600);
    const ReadingId wrong = demonstration().readings.front().reading.id;
    must(presenter.keep(demonstration(), hangar.oren, hangar.setA, {between(1650, 1700), Technique::Leaf},
                        hangar.vale, Correction{wrong, "leaf read wrongly"}));
    const DemonstrationSheet after = demonstration();
    ASSERT_EQ(after.readings.size(), 2U);
    EXPECT_EQ(after.readings.front().correctedBy, "leaf read wrongly");
    EXPECT_EQ(after.partSeated, std::vector{between(1650, 1700)});
}

TEST_F(BaselineDay, CountsThePartSeatedReadingsOfEachCoupling)
{
    showPartSeated(1600);
    showPartSeated(1700);
    const BaselineDayView view = must(presenter.view(hangar.airframe));
    EXPECT_EQ(view.couplings.front().partSeated, 2);
    EXPECT_EQ(view.couplings.back().partSeated, 0);
}

TEST_F(BaselineDay, SaysHowFarTheGapTellsPartSeatedFromLocked)
{
    EXPECT_EQ(demonstration().witness.witness, Witness::NeverShown);
    readTimes(10);
    for (int i = 0; i < 4; ++i)
        showPartSeated(500);
    EXPECT_EQ(demonstration().witness.witness, Witness::None) << "both share the same gap";
}

TEST_F(BaselineDay, NoticesThatTheAircraftWasRiggedToday)
{
    EXPECT_FALSE(demonstration().riggedToday);
    must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_TRUE(demonstration().riggedToday);
    store.clock().passMinutes(24 * 60);
    EXPECT_FALSE(demonstration().riggedToday);
}
