#include "app/pages/trends/readings_model.h"
#include "app/pages/trends/trends_presenter.h"
#include "app/wording/trend_words.h"
#include "app/wording/trends_page_words.h"
#include "core/store/facts_book.h"
#include "tests/pages/trends_scene.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class Trends : public testing::Test
{
protected:
    TrendsView view() { return must(presenter.view(hangar.airframe)); }
    CouplingTrend leftAileron() { return *view().find(hangar.leftAileron); }

    std::vector<double> riggings()
    {
        std::vector<double> all;
        for (const TrendsReading& one : leftAileron().readings)
            all.push_back(one.rigging);
        return all;
    }

    TrendsScene scene;
    TempStore& store{scene.store};
    Hangar& hangar{scene.hangar};
    TrendsPresenter presenter{store.records(), store.clock()};
};

} // namespace

TEST_F(Trends, CountOnFromTheRiggingsBeforeTheFileBegan)
{
    Airframe airframe = must(store.records().airframes()).front();
    airframe.riggingsBefore = 210;
    must(store.records().add(airframe));
    scene.rig(dayOf(2026, 4, 11), 500);
    scene.rig(dayOf(2026, 4, 4), 500);

    const CouplingTrend trend = leftAileron();
    ASSERT_EQ(trend.readings.size(), 2U);
    EXPECT_EQ(trend.readings[0].riggingNumber, 211);
    EXPECT_EQ(trend.readings[0].reading.when.localDay(), dayOf(2026, 4, 4));
    EXPECT_EQ(trend.readings[1].riggingNumber, 212);
}

TEST_F(Trends, ShowOnItsDayWhatPlayWasFeltAtTheJointAndByWhom)
{
    scene.rig(dayOf(2026, 4, 4), 500);
    JointPlay play;
    play.coupling = hangar.leftAileron;
    play.day = dayOf(2026, 4, 5);
    play.along = {PlayFelt::Felt, Gap::micrometres(150)};
    play.across = {PlayFelt::None};
    play.person = hangar.vale;
    must(store.records().add(play));

    const TrendsView all = view();
    const std::vector<TrendEvent>& events = all.find(hangar.leftAileron)->series.events;
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events.front().when.localDay(), dayOf(2026, 4, 5));
    EXPECT_EQ(TrendWords::eventWithoutDate(events.front()).toStdString(),
              "joint play: along the rod play, 0.15 mm; sideways no play (T. Vale)");
    EXPECT_TRUE(all.find(hangar.rightAileron)->series.events.empty());
}

TEST_F(Trends, CountARiggingAlsoWhenThisCouplingWasNotReadInIt)
{
    scene.record(dayOf(2026, 4, 4));
    scene.rig(dayOf(2026, 4, 11), 500);
    EXPECT_EQ(riggings(), (std::vector<double>{2}));
}

TEST_F(Trends, DoNotCountAnAbandonedRecord)
{
    scene.abandon(scene.rig(dayOf(2026, 4, 4), 500));
    scene.rig(dayOf(2026, 4, 5), 500);

    const CouplingTrend trend = leftAileron();
    ASSERT_EQ(trend.readings.size(), 2U); // the abandoned reading was still read
    EXPECT_FALSE(trend.readings[0].riggingNumber);
    EXPECT_GT(trend.readings[0].rigging, 0);
    EXPECT_LT(trend.readings[0].rigging, 1);
    EXPECT_EQ(trend.readings[1].riggingNumber, 1);
}

TEST_F(Trends, StandReadingsOutsideRiggingsBetweenTheirNeighboursInTheOrderOfTheirTimes)
{
    scene.rig(dayOf(2026, 4, 4), 500);
    scene.rig(dayOf(2026, 4, 11), 500);
    for (const int hour : {9, 10, 11}) {
        Reading shown = scene.reading(1500, dayOf(2026, 4, 6), hour);
        shown.purpose = Purpose::Demonstration;
        shown.state = SeatState::PartSeated;
        scene.add(shown);
    }
    EXPECT_EQ(riggings(), (std::vector<double>{1, 1.25, 1.5, 1.75, 2}));
}

TEST_F(Trends, StandReadingsAfterTheLastRiggingWithinOneRiggingOfIt)
{
    scene.rig(dayOf(2026, 4, 4), 500);
    scene.baselineDay(dayOf(2026, 6, 1));
    const std::vector<double> all = riggings();
    ASSERT_EQ(all.size(), 13U);
    EXPECT_DOUBLE_EQ(all[1], 1 + 1.0 / 13);
    EXPECT_DOUBLE_EQ(all.back(), 1 + 12.0 / 13);
}

TEST_F(Trends, CountEachDayOfATableBroughtInAsOneRigging)
{
    RiggingRecord table = hangar.record(TrendsScene::at(dayOf(2026, 10, 1), 9));
    table.origin = RecordOrigin::ImportedTable;
    const RecordId record = must(store.records().add(table));
    for (const Day day : {dayOf(2026, 4, 4), dayOf(2026, 4, 4), dayOf(2026, 4, 12)}) {
        Reading one = scene.reading(500, day);
        one.record = record;
        scene.add(one);
    }
    scene.rig(dayOf(2026, 4, 8), 500);
    EXPECT_EQ(riggings(), (std::vector<double>{1, 1, 2, 3}));
}

TEST_F(Trends, PutAFittingBeforeTheReadingsOfItsDayAndAnEventAfterIt)
{
    scene.rig(dayOf(2026, 4, 4), 500);
    const FittingId second = scene.refit(dayOf(2026, 6, 6), "sleeve refitted");
    scene.event(dayOf(2026, 6, 6), EventKind::Greased, "lock", hangar.leftAileron);
    scene.rig(dayOf(2026, 6, 6), 500, second);

    const TrendSeries series = leftAileron().series;
    ASSERT_EQ(series.fittings.size(), 2U);
    ASSERT_EQ(series.events.size(), 1U);
    EXPECT_LT(1, series.fittings[1].rigging);
    EXPECT_LT(series.fittings[1].rigging, series.events[0].rigging);
    EXPECT_LT(series.events[0].rigging, 2);
    EXPECT_EQ(TrendWords::eventWithoutDate(series.events[0]), "greased: lock");
    EXPECT_EQ(series.fittings[1].begins.localDay(), dayOf(2026, 6, 6));
}

TEST_F(Trends, BeginAFittingBeforeTheMorningOfItsDayAlsoFarEastOfGreenwich)
{
    Reading early = hangar.reading(between(500, 550), {});
    early.when = {noonOf(dayOf(2026, 3, 1)).utcSeconds - 4 * 3600 - 12 * 3600, 12 * 3600}; // 08:00 there
    scene.add(early);
    const CouplingTrend trend = leftAileron();
    ASSERT_EQ(trend.readings[0].reading.when.localDay(), dayOf(2026, 3, 1));
    EXPECT_LT(trend.series.fittings[0].begins, trend.readings[0].reading.when);
    EXPECT_EQ(trend.series.fittings[0].begins.localDay(), dayOf(2026, 3, 1));
    EXPECT_LT(trend.series.fittings[0].rigging, trend.readings[0].rigging);
}

TEST_F(Trends, ShowEventsOfTheWholeAirframeAndOfThisCouplingOnly)
{
    scene.event(dayOf(2026, 5, 1), EventKind::Cleaned, "right one", hangar.rightAileron);
    scene.event(dayOf(2026, 6, 1), EventKind::Cleaned, "");
    scene.event(dayOf(2026, 2, 20), EventKind::Annual, "");
    const TrendSeries series = leftAileron().series;
    ASSERT_EQ(series.events.size(), 2U);
    EXPECT_EQ(TrendWords::eventWithoutDate(series.events[0]), "annual");
    EXPECT_EQ(TrendWords::eventWithoutDate(series.events[1]), "cleaned");
}

TEST_F(Trends, JudgeEachReadingAgainstItsOwnFitting)
{
    scene.baselineDay(kBaselineDay);
    scene.rig(dayOf(2026, 4, 4), 500);
    const FittingId second = scene.refit(dayOf(2026, 6, 6), "sleeve refitted");
    scene.baselineDay(dayOf(2026, 6, 6), second, 300);
    scene.rig(dayOf(2026, 6, 7), 800, second);
    scene.rig(dayOf(2026, 6, 8), 500, second);

    const CouplingTrend trend = leftAileron();
    std::vector<Verdict> verdicts;
    for (const TrendsReading& one : trend.readings)
        if (one.riggingNumber)
            verdicts.push_back(one.judgement.verdict);
    EXPECT_EQ(verdicts, (std::vector{Verdict::Inside, Verdict::Inside, Verdict::Outside}));
    ASSERT_TRUE(trend.series.fittings[0].band);
    ASSERT_TRUE(trend.series.fittings[1].band);
    EXPECT_LT(trend.series.fittings[0].band->inner.upper, trend.series.fittings[1].band->inner.lower);
}

TEST_F(Trends, SayWhereTheBandOfTodaysFittingComesFrom)
{
    scene.baselineDay(kBaselineDay);
    const FittingId second = scene.refit(dayOf(2026, 6, 6), "sleeve refitted");
    scene.baselineDay(dayOf(2026, 6, 6), second);
    Reading late = scene.reading(500, dayOf(2026, 6, 9));
    late.purpose = Purpose::Baseline;
    late.fitting = second;
    scene.add(late);

    const BandOrigin origin = leftAileron().origin;
    EXPECT_EQ(origin.fittingNumber, 2);
    EXPECT_EQ(origin.fittingReason, "sleeve refitted");
    EXPECT_EQ(origin.confirmedReadings, 13);
    EXPECT_EQ(origin.firstDay, dayOf(2026, 6, 6));
    EXPECT_EQ(origin.lastDay, dayOf(2026, 6, 9));
    EXPECT_FALSE(origin.isFrozen);
    EXPECT_TRUE(origin.band);
}

TEST_F(Trends, DoNotSpeakOfAFittingThatBeginsTomorrow)
{
    scene.refit(dayOf(2026, 11, 2), "planned");
    EXPECT_EQ(leftAileron().origin.fittingNumber, 1);
}

TEST_F(Trends, KeepAStruckReadingWithTheReasonButSetAside)
{
    scene.baselineDay(kBaselineDay);
    scene.rig(dayOf(2026, 4, 4), 900);
    Exclusion strike;
    strike.reading = leftAileron().readings.back().reading.id;
    strike.reason = "read on the wrong joint";
    strike.stamp.by = hangar.oren;
    must(store.records().add(strike));

    const CouplingTrend trend = leftAileron();
    EXPECT_TRUE(trend.readings.back().isStruckThrough());
    EXPECT_EQ(trend.readings.back().note, "struck: read on the wrong joint");
    EXPECT_TRUE(trend.series.readings.back().setAside);
    EXPECT_EQ(trend.counts.outside, 0);
    EXPECT_EQ(trend.counts.outsideSetAside, 1); // it happened
}

TEST_F(Trends, KeepASupersededReadingWithTheReasonButSetAside)
{
    scene.baselineDay(kBaselineDay);
    const RecordId record = scene.rig(dayOf(2026, 4, 4), 900);
    Reading right = scene.reading(500, dayOf(2026, 4, 4), 11);
    right.record = record;
    right.corrects = leftAileron().readings.back().reading.id;
    right.note = "wrong leaf read off";
    scene.add(right);

    const CouplingTrend trend = leftAileron();
    const TrendsReading& wrong = trend.readings[12];
    EXPECT_TRUE(wrong.superseded);
    EXPECT_EQ(wrong.supersededReason, "wrong leaf read off");
    EXPECT_EQ(trend.series.readings[12].note, "corrected: wrong leaf read off");
    EXPECT_EQ(wrong.judgement.verdict, Verdict::Outside);
    EXPECT_TRUE(trend.series.readings[12].setAside);
    EXPECT_FALSE(trend.series.readings[13].setAside);
    EXPECT_EQ(trend.counts.all(), 1);
    EXPECT_EQ(trend.counts.outside, 0);
    EXPECT_EQ(trend.counts.outsideSetAside, 1); // it happened
}

TEST_F(Trends, SetAReadingAsideThatANamedPersonLeftOutOfTheBand)
{
    scene.baselineDay(kBaselineDay);
    Exclusion exclusion;
    exclusion.reading = leftAileron().readings[3].reading.id;
    exclusion.reason = "leaf tilted";
    exclusion.stamp.by = hangar.oren;
    must(store.records().add(exclusion));

    const CouplingTrend trend = leftAileron();
    EXPECT_TRUE(trend.readings[3].excluded);
    EXPECT_EQ(trend.readings[3].excludedReason, "leaf tilted");
    EXPECT_FALSE(trend.readings[3].ofBaseline);
    EXPECT_TRUE(trend.readings[4].ofBaseline);
    EXPECT_EQ(trend.origin.confirmedReadings, 11);
}

TEST_F(Trends, LeaveAFrozenBandAsItWasWhenAReadingOfItIsExcludedLater)
{
    scene.baselineDay(kBaselineDay);
    FrozenBaseline frozen;
    frozen.fitting = hangar.leftFitting;
    for (const TrendsReading& one : leftAileron().readings)
        frozen.readings.push_back(one.reading.id);
    frozen.first = hangar.oren;
    frozen.second = hangar.vale;
    must(store.records().add(frozen));
    Exclusion exclusion;
    exclusion.reading = frozen.readings[0];
    exclusion.reason = "too late";
    exclusion.stamp.by = hangar.oren;
    must(store.records().add(exclusion));

    const CouplingTrend trend = leftAileron();
    EXPECT_TRUE(trend.origin.isFrozen);
    EXPECT_TRUE(trend.readings[0].ofBaseline);
    EXPECT_FALSE(trend.readings[0].isSetAside());
}

TEST_F(Trends, ShowPartSeatedReadingsButNeverJudgeThem)
{
    scene.baselineDay(kBaselineDay);
    Reading shown = scene.reading(500, dayOf(2026, 3, 8));
    shown.purpose = Purpose::Demonstration;
    shown.state = SeatState::PartSeated;
    scene.add(shown);

    const CouplingTrend trend = leftAileron();
    EXPECT_EQ(trend.series.readings.back().state, SeatState::PartSeated);
    EXPECT_FALSE(trend.readings.back().isJudged());
    EXPECT_EQ(trend.counts.all(), 0);
    EXPECT_EQ(trend.counts.partSeatedAtRigging, 0);
    EXPECT_EQ(trend.standing.says, Says::NotRead) << "at a rigging";
}

TEST_F(Trends, SayWhenARiggingFoundTheCouplingPartSeated)
{
    scene.baselineDay(kBaselineDay);
    Reading found = scene.reading(1500, dayOf(2026, 4, 4));
    found.record = scene.record(dayOf(2026, 4, 4));
    found.state = SeatState::PartSeated;
    scene.add(found);

    const CouplingTrend trend = leftAileron();
    EXPECT_EQ(trend.standing.says, Says::PartSeated);
    EXPECT_EQ(trend.counts.partSeatedAtRigging, 1);
}

TEST_F(Trends, OneFoundNotSecuredInsideTheBandTakesNothingFromTheReadingsBefore)
{
    scene.baselineDay(kBaselineDay);
    scene.rig(dayOf(2026, 4, 4), 500);
    Question saidNo;
    saidNo.airframe = hangar.airframe;
    saidNo.kind = QuestionKind::AnsweredNo;
    saidNo.record = scene.record(dayOf(2026, 4, 11));
    saidNo.coupling = hangar.leftAileron;
    saidNo.check = CheckKind::SleeveAtStop;
    must(store.records().add(saidNo));
    Reading found = scene.reading(500, dayOf(2026, 4, 11));
    found.record = saidNo.record;
    found.state = SeatState::PartSeated; // the file knows no more
    const ReadingId id = must(store.records().add(found, std::nullopt));
    EXPECT_EQ(must(store.records().reading(id)).reading.state, SeatState::NotSecured);
    EXPECT_EQ(must(store.records().content(*saidNo.record)).readings.front().state, SeatState::NotSecured);

    const CouplingTrend trend = leftAileron();
    EXPECT_EQ(trend.readings[12].judgement.verdict, Verdict::Inside);
    EXPECT_EQ(trend.readings.back().reading.state, SeatState::NotSecured);
    EXPECT_FALSE(trend.readings.back().isJudged());
    EXPECT_EQ(trend.counts.partSeatedAtRigging, 0);
    EXPECT_EQ(trend.counts.notSecuredAtRigging, 1);
    EXPECT_TRUE(must(store.records().book().airframe(hangar.airframe))
                    ->history(hangar.leftAileron)
                    .partSeated.empty());
}

TEST_F(Trends, CannotTellWhileTheGaugeIsInQuarantine)
{
    scene.baselineDay(kBaselineDay);
    scene.rig(dayOf(2026, 7, 10), 500);
    scene.rig(dayOf(2026, 7, 12), 500);
    scene.rig(dayOf(2026, 8, 12), 500);
    GaugeCheck bad;
    bad.gauge = hangar.setA;
    bad.day = dayOf(2026, 7, 20);
    bad.how = "micrometer";
    bad.found = "worn tips";
    bad.quarantineFrom = dayOf(2026, 7, 11);
    bad.stamp.by = hangar.oren;
    must(store.records().add(bad));
    GaugeCheck good = bad;
    good.day = dayOf(2026, 8, 1);
    good.found = "new leaves";
    good.quarantineFrom.reset();
    must(store.records().add(good));

    const CouplingTrend trend = leftAileron();
    ASSERT_EQ(trend.readings.size(), 15U);
    EXPECT_EQ(trend.readings[12].judgement.verdict, Verdict::Inside);
    EXPECT_EQ(trend.readings[13].judgement.verdict, Verdict::CannotTell);
    EXPECT_EQ(trend.readings[13].judgement.reason, Reason::GaugeQuarantined);
    EXPECT_EQ(trend.readings[14].judgement.verdict, Verdict::Inside);
    EXPECT_EQ(trend.counts.cannotTell, 1);
    EXPECT_EQ(trend.counts.inside, 2);
}

TEST_F(Trends, LetTheLastRiggingSpeakByItsGravestReading)
{
    scene.baselineDay(kBaselineDay);
    const RecordId record = scene.rig(dayOf(2026, 4, 4), 900);
    Reading again = scene.reading(500, dayOf(2026, 4, 4), 11);
    again.record = record;
    scene.add(again);

    const CouplingTrend trend = leftAileron();
    EXPECT_EQ(trend.standing.says, Says::Outside);
    ASSERT_TRUE(trend.standing.reading);
    EXPECT_EQ(trend.standing.reading->id, trend.readings[12].reading.id);
    EXPECT_EQ(trend.standing.among, 2);
}

TEST_F(Trends, ForgetNoOutsideReadingInTheCountWhenALaterRiggingIsInside)
{
    scene.baselineDay(kBaselineDay);
    scene.abandon(scene.rig(dayOf(2026, 4, 4), 900));
    scene.rig(dayOf(2026, 4, 5), 500);
    const CouplingTrend trend = leftAileron();
    EXPECT_EQ(trend.standing.says, Says::WasOutside);
    EXPECT_EQ(trend.standing.verdict(), std::nullopt);
    EXPECT_EQ(trend.counts.outside, 1);
    EXPECT_EQ(trend.counts.all(), 2);
}

TEST_F(Trends, JudgeNothingWithoutABand)
{
    scene.rig(dayOf(2026, 4, 4), 500);
    const CouplingTrend trend = leftAileron();
    EXPECT_EQ(trend.standing.says, Says::NoBandYet);
    EXPECT_EQ(trend.counts.noBand, 1);
    EXPECT_FALSE(trend.origin.band);
    EXPECT_EQ(trend.origin.confirmedReadings, 0);
}

TEST_F(Trends, ShowACouplingWithoutReadings)
{
    const CouplingTrend* right = nullptr;
    const TrendsView now = view();
    right = now.find(hangar.rightAileron);
    ASSERT_TRUE(right);
    EXPECT_TRUE(right->readings.empty());
    EXPECT_EQ(right->standing.says, Says::NotRead);
    EXPECT_EQ(right->series.fittings.size(), 1U);
}

TEST_F(Trends, LeaveOutACouplingTakenOutOfUse)
{
    Coupling coupling = must(store.records().couplings(hangar.airframe)).front();
    coupling.inUse = false;
    must(store.records().add(coupling));
    EXPECT_EQ(view().couplings.size(), 1U);
}

TEST_F(Trends, CarryTheDayOfTheAnnual)
{
    Airframe airframe = must(store.records().airframes()).front();
    airframe.annualDue = dayOf(2027, 2, 20);
    must(store.records().add(airframe));
    ASSERT_TRUE(leftAileron().series.annualDue);
    EXPECT_EQ(leftAileron().series.annualDue->localDay(), dayOf(2027, 2, 20));
}

TEST_F(Trends, AreNotToBeHadOfAnAirframeTheFileDoesNotKnow)
{
    EXPECT_FALSE(presenter.view(AirframeId{}));
}

// A table that did not tell when leaves noon in the file: nobody has read it at noon.
TEST(ReadingOfATable, ShowsNoHourInTheTableOfTrends)
{
    TempStore store;
    const Hangar hangar{store.records()};
    const Day day = store.clock().now().localDay();
    Reading reading = hangar.reading(between(450, 500), noonOf(day));
    reading.record = must(store.records().add(hangar.record(noonOf(day))));
    reading.technique = Technique::Table;
    must(store.records().add(reading, std::nullopt));
    const TrendsView view = must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
    ReadingsModel model;
    model.display(view.find(hangar.leftAileron)->readings);
    ASSERT_EQ(model.rowCount(), 1);
    const auto when = model.index(0, static_cast<int>(ReadingColumn::When));
    EXPECT_FALSE(model.data(when, Qt::DisplayRole).toString().contains("12:00"));
    EXPECT_FALSE(model.data(when, Qt::ToolTipRole).toString().contains("12:00"));
    EXPECT_FALSE(model.copyText(ReadingColumn::When, 0).contains("12:00"));
    EXPECT_FALSE(
        TrendWords::reading(view.find(hangar.leftAileron)->series.readings.front()).contains("12:00"));
}

TEST(CountsOfTrends, TellHowManyOfThoseOutsideWentTheWayOfAll)
{
    TrendsPageWords::Counts counts;
    counts.judged = 40;
    counts.outside = 3;
    EXPECT_FALSE(TrendsPageWords::counts(counts).contains("same way"));
    counts.outsideTogether = 2;
    EXPECT_TRUE(TrendsPageWords::counts(counts).contains(
        "2 of those outside were read when all or nearly all couplings went the same way."));
}
