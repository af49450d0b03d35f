#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/rigging_writer.h"
#include "tests/support/hangar.h"

#include <array>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using namespace rig::test;

namespace {

// The small hangar with twelve confirmed readings around 0.50 mm on the left aileron.
class RiggedToday : public testing::Test
{
protected:
    RiggedToday()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
    }

    RiggedTodayView view() { return must(presenter.view(hangar.airframe)); }

    void begin() { must(writer.begin(view(), hangar.oren)); }

    // Oren first and Vale second, with set A.
    RiggingSession at(CouplingId coupling, Turn turn)
    {
        RiggingSession session = sessionOf(view().record->id, hangar.oren, hangar.setA);
        session.second = hangar.vale;
        session.turn = turn;
        session.place = {RecordPlace::Kind::Coupling, coupling};
        return session;
    }

    CouplingSheet sheet(Turn turn = Turn::First) { return sheet(hangar.leftAileron, turn); }
    CouplingSheet sheet(CouplingId coupling, Turn turn)
    {
        return must(presenter.sheet(view(), at(coupling, turn)));
    }

    void answer(CheckKind kind, Answer given = Answer::Yes, Turn turn = Turn::First,
                std::optional<CouplingId> coupling = {})
    {
        store.clock().passMinutes(1);
        const SessionStep step = rig::answer(at(coupling.value_or(hangar.leftAileron), turn), *view().now,
                                             kind, given, store.clock().now());
        must(writer.write(hangar.airframe, step.facts, std::nullopt));
    }

    void look(Turn turn = Turn::First, std::optional<CouplingId> coupling = {})
    {
        for (const CheckKind kind :
             {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop})
            answer(kind, Answer::Yes, turn, coupling);
    }

    Judgement preview(const CouplingSheet& now, int entersUm)
    {
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), store.clock().now());
        reading.coupling = now.coupling.id;
        reading.fitting = now.fitting;
        return judgeIn(now.history, reading);
    }

    // Presses a leaf and keeps what was shown; `correction` takes the place of the last one.
    ReadingNews read(CouplingId coupling, Turn turn, int entersUm, const std::string& correction = {})
    {
        const CouplingSheet now = sheet(coupling, turn);
        RiggingSession session = wantAgain(at(coupling, turn), *view().now, store.clock().now()).session;
        if (!correction.empty())
            session = wantCorrected(session, *view().now, now.readings.back().reading, correction,
                                    store.clock().now())
                          .session;
        const GaugeReading taken{between(entersUm, entersUm + 50), Technique::Leaf};
        const auto reading =
            readingAt(session, *view().now, taken, *now.gauge, now.fitting, store.clock().now());
        EXPECT_TRUE(reading);
        painted = judgeIn(now.history, *reading);
        return must(writer.write(hangar.airframe, keep(press(session, *reading)).facts, painted));
    }

    Judgement read(int entersUm, const std::string& correction = {})
    {
        read(hangar.leftAileron, Turn::First, entersUm, correction);
        return painted;
    }

    void close(const std::vector<TickKind>& counted = {})
    {
        must(writer.close(view(), {hangar.oren, hangar.vale, "rain", counted}));
    }

    TempStore store;
    Hangar hangar{store.records()};
    RiggedTodayPresenter presenter{store.records(), store.clock()};
    RiggingWriter writer{store.records(), store.clock()};
    Judgement painted;
};

} // namespace

TEST_F(RiggedToday, BeginsWithoutARecord)
{
    const RiggedTodayView now = view();
    EXPECT_FALSE(now.record);
    EXPECT_EQ(now.couplings.size(), 2U);
    EXPECT_EQ(now.gauges.size(), 1U);
}

TEST_F(RiggedToday, JudgesBeforeSavingAsItDoesAfter)
{
    begin();
    look();
    const Judgement shown = read(500);
    EXPECT_EQ(shown.verdict, Verdict::Inside);
    const CouplingSheet after = sheet();
    ASSERT_EQ(after.readings.size(), 1U);
    EXPECT_EQ(after.readings.front().judgement.verdict, shown.verdict);
    EXPECT_EQ(after.flow.ask, CheckKind::Pull);
}

TEST_F(RiggedToday, KeepsWhatWasShownBesideTheReading)
{
    begin();
    look();
    read(900);
    const auto readings = must(store.records().readings(hangar.airframe));
    ASSERT_TRUE(readings.back().shown);
    EXPECT_EQ(readings.back().shown->judgement.verdict, Verdict::Outside);
    EXPECT_EQ(readings.back().shown->methodVersion, kMethodVersion);
}

TEST_F(RiggedToday, JudgesACouplingWithoutABaselineAsNoBandYet)
{
    begin();
    EXPECT_EQ(preview(sheet(hangar.rightAileron, Turn::First), 500).verdict, Verdict::NoBandYet);
}

TEST_F(RiggedToday, MeasuringAgainAddsAReadingAndNeverReplacesOne)
{
    begin();
    look();
    read(900);
    read(500);
    EXPECT_EQ(sheet().readings.size(), 2U);
    const CouplingProgress row = view().review.couplings.front();
    EXPECT_EQ(row.verdict, Verdict::Outside) << "the later inside reading takes nothing away";
}

TEST_F(RiggedToday, ACorrectedReadingStaysInTheFileWithItsReason)
{
    begin();
    look();
    read(550);
    read(500, "pressed the wrong leaf");
    const CouplingSheet now = sheet();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().reading.corrects, now.readings.front().reading.id);
    EXPECT_EQ(now.readings.back().reading.note, "pressed the wrong leaf");
}

TEST_F(RiggedToday, LeavesTheFirstPersonOutOfTheSecondPersonsChoice)
{
    begin();
    look();
    EXPECT_EQ(sheet(Turn::Second).notSecond, (std::map{std::pair{hangar.oren, NotSecond::DidItFirst}}));
    RiggingSession asOren = at(hangar.leftAileron, Turn::Second);
    asOren.second = hangar.oren;
    EXPECT_FALSE(must(presenter.sheet(view(), asOren)).person);
}

TEST_F(RiggedToday, ShowsTheSecondPersonNothingOfTheFirst)
{
    begin();
    look();
    read(500);
    const CouplingSheet second = sheet(Turn::Second);
    EXPECT_TRUE(second.readings.empty());
    EXPECT_FALSE(second.flow.begun);
}

TEST_F(RiggedToday, DoesNotShowTodaysReadingAmongTheEarlierOnes)
{
    begin();
    look();
    read(900);
    const CouplingSheet now = sheet();
    for (const TrendReading& one : now.lastTwelve.readings)
        EXPECT_LT(one.interval.enters, 900_um);
    EXPECT_EQ(now.lastTwelve.readings.size(), 12U);
}

TEST_F(RiggedToday, SendsACouplingLeftHalfWayBackToTheLookWhenTheFileIsOpenedAgain)
{
    begin();
    look();
    must(writer.resume(hangar.airframe));
    const CouplingSheet now = sheet();
    EXPECT_TRUE(now.flow.interrupted);
    EXPECT_EQ(now.flow.ask, CheckKind::BallInSocket);
}

TEST_F(RiggedToday, LeavesAFinishedCouplingAloneWhenTheFileIsOpenedAgain)
{
    begin();
    look();
    read(500);
    answer(CheckKind::Pull);
    answer(CheckKind::Secured);
    must(writer.resume(hangar.airframe));
    EXPECT_TRUE(sheet().flow.isDone());
    EXPECT_FALSE(sheet().flow.interrupted);
}

TEST_F(RiggedToday, DoesNotContinueARecordFromAnotherDayAndKeepsItAsAbandoned)
{
    begin();
    look();
    store.clock().passMinutes(24 * 60);
    ASSERT_TRUE(view().record);
    EXPECT_TRUE(view().record->fromAnotherDay);
    begin();
    EXPECT_FALSE(view().record->fromAnotherDay);
    EXPECT_FALSE(sheet().flow.begun) << "nothing is carried over from yesterday";
    EXPECT_EQ(must(store.records().closings(hangar.airframe)).front().closing, Closing::Abandoned);
}

TEST_F(RiggedToday, ClosesAsCompleteOnlyWhenNothingIsOpen)
{
    begin();
    look();
    read(500);
    answer(CheckKind::Pull);
    close();
    EXPECT_FALSE(view().record);
    ASSERT_TRUE(view().lastClose);
    EXPECT_EQ(view().lastClose->closing, Closing::LeftOpen);
}

namespace {

std::vector<QuestionKind> kindsOf(const std::vector<QuestionStory>& stories)
{
    std::vector<QuestionKind> kinds;
    for (const QuestionStory& story : stories)
        kinds.push_back(story.question.kind);
    return kinds;
}

} // namespace

TEST_F(RiggedToday, AsksOnceAboutWhatLiesOutsideAndWhatCannotBeSeen)
{
    begin();
    answer(CheckKind::BallInSocket, Answer::CannotSee);
    answer(CheckKind::BallInSocket, Answer::CannotSee);
    look();
    read(900);
    read(850);
    read(500);
    EXPECT_EQ(kindsOf(must(store.records().questions(hangar.airframe))),
              (std::vector{QuestionKind::CannotSee, QuestionKind::OutsideReading}));
}

TEST_F(RiggedToday, KeepsBothReadingsWhenTwoPeopleDisagreeAndAsks)
{
    begin();
    look();
    read(500);
    look(Turn::Second);
    const ReadingNews news = read(hangar.leftAileron, Turn::Second, 750);
    ASSERT_TRUE(news.pair);
    EXPECT_EQ(news.pair->verdict, numbers::PairVerdict::Disagree);
    EXPECT_NEAR(news.pair->smallestDifference, 0.2, 1e-9);
    EXPECT_EQ(must(store.records().readings(hangar.airframe)).size(), 12U + 2U);
    EXPECT_EQ(kindsOf(must(store.records().questions(hangar.airframe))).back(),
              QuestionKind::ReadingsDisagree);
}

TEST_F(RiggedToday, TellsTheSameIntervalOfTwoPeopleAsAgreeing)
{
    begin();
    look();
    read(450);
    look(Turn::Second);
    EXPECT_EQ(newsText(read(hangar.leftAileron, Turn::Second, 450)),
              QString{"Both readings agree: the same interval."});
    EXPECT_NE(newsText(read(hangar.leftAileron, Turn::Second, 500)),
              QString{"Both readings agree: the same interval."});
}

TEST_F(RiggedToday, AsksWhetherLeftAndRightWereSwapped)
{
    for (int i = 0; i < 12; ++i) { // the right aileron's own past, 0.3 mm wider
        Reading reading = hangar.reading(between(i % 3 ? 800 : 750, i % 3 ? 850 : 800), store.clock().now());
        reading.coupling = hangar.rightAileron;
        reading.fitting = hangar.rightFitting;
        reading.purpose = Purpose::Baseline;
        must(store.records().add(reading, std::nullopt));
    }
    begin();
    look();
    read(800);
    look(Turn::First, hangar.rightAileron);
    EXPECT_EQ(sheet(hangar.rightAileron, Turn::First).otherSidePersons, std::vector{hangar.oren});
    const ReadingNews news = read(hangar.rightAileron, Turn::First, 500);
    ASSERT_TRUE(news.looksLike);
    EXPECT_EQ(news.looksLike->id, hangar.leftAileron);
    EXPECT_EQ(kindsOf(must(store.records().questions(hangar.airframe))).back(), QuestionKind::SidesSwapped);
}

TEST_F(RiggedToday, CountsARiggingOnlyWhenItWasTakenApart)
{
    EXPECT_FALSE(view().mayStandRigged) << "nothing was rigged yet";
    begin();
    close();
    EXPECT_TRUE(view().mayStandRigged);
    must(writer.begin(view(), hangar.oren, RecordOrigin::Recheck));
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).back().origin, RecordOrigin::Recheck);
    close();
    must(writer.noteTakenApart(hangar.airframe, hangar.vale));
    EXPECT_FALSE(view().mayStandRigged);
    EXPECT_EQ(must(store.records().events(hangar.airframe)).back().stamp.by, hangar.vale)
        << "somebody states it";
    const Event event = must(store.records().events(hangar.airframe)).back();
    EXPECT_EQ(event.kind, EventKind::Derigged);
    EXPECT_TRUE(event.person) << "somebody states it";
}

TEST_F(RiggedToday, KeepsTheSeasonListAndTheCountsWithTheirNames)
{
    begin();
    EXPECT_TRUE(view().isFirstOfSeason);
    const RecordId record = view().record->id;
    for (const TickKind kind : seasonTicks())
        must(writer.tick(record, kind, hangar.oren));
    EXPECT_TRUE(view().review.seasonList.empty());
    close({TickKind::ToolsOut, TickKind::HatchesOn});
    const RecordContent content = must(store.records().content(record));
    EXPECT_EQ(content.ticks.size(), seasonTicks().size() + 2);
    EXPECT_EQ(content.ticks.back().person, hangar.oren);
    must(writer.begin(view(), hangar.oren));
    EXPECT_FALSE(view().isFirstOfSeason);
}

TEST_F(RiggedToday, SaysThatASetIsOverdueACheckAfterAMonth)
{
    GaugeCheck check;
    check.gauge = hangar.setA;
    check.day = store.clock().now().localDay();
    must(store.records().add(check));
    begin();
    EXPECT_FALSE(sheet().isGaugeOverdue);
    store.clock().passMinutes(32 * 24 * 60);
    begin();
    EXPECT_TRUE(sheet().isGaugeOverdue);
}

TEST_F(RiggedToday, NamesAShiftThatAllCouplingsShare)
{
    std::vector<CouplingId> couplings{hangar.leftAileron};
    for (const char* name : {"Left flap", "Right flap", "Elevator"}) {
        const CouplingId coupling = must(store.records().add(aCoupling(hangar.airframe, name)));
        Fitting fitting;
        fitting.coupling = coupling;
        fitting.begins = dayOf(2026, 3, 1);
        fitting.kind = FittingKind::First;
        const FittingId id = must(store.records().add(fitting));
        for (int i = 0; i < 12; ++i) {
            Reading reading =
                hangar.reading(between(i % 3 ? 500 : 450, i % 3 ? 550 : 500), store.clock().now());
            reading.coupling = coupling;
            reading.fitting = id;
            reading.purpose = Purpose::Baseline;
            must(store.records().add(reading, std::nullopt));
        }
        couplings.push_back(coupling);
    }
    begin();
    for (const CouplingId coupling : couplings) {
        look(Turn::First, coupling);
        read(coupling, Turn::First, 550);
    }
    ASSERT_TRUE(view().sharedShift);
    EXPECT_EQ(view().sharedShift->scores, 4);
    EXPECT_TRUE(view().sharedShift->isCalled);
    EXPECT_GT(view().sharedShift->mean, 0);
}

TEST_F(RiggedToday, LeavesAHalfDoneCouplingToTheOtherWindowThatIsOpen)
{
    begin();
    look();
    {
        const auto other = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
        must(writer.resume(hangar.airframe));
        EXPECT_FALSE(sheet().flow.interrupted) << "it may be at work there";
    }
    must(writer.resume(hangar.airframe));
    EXPECT_TRUE(sheet().flow.interrupted) << "nobody else is there";
}

TEST_F(RiggedToday, SendsNoJointBackToTheLookThatIsStopped)
{
    begin();
    Check no;
    no.record = view().record->id;
    no.coupling = hangar.leftAileron;
    no.kind = CheckKind::BallInSocket;
    no.answer = Answer::No;
    no.person = hangar.oren;
    must(writer.write(hangar.airframe, std::vector<SessionFact>{no}, {}));
    must(writer.resume(hangar.airframe));
    EXPECT_TRUE(sheet().stop);
    EXPECT_FALSE(sheet().flow.interrupted);
}

TEST_F(RiggedToday, GoesOnWithTheRecordThatAnotherWindowBeganInTheMeantime)
{
    const RiggedTodayView before = view();
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records records{*file, ids, store.clock()};
    RiggingWriter other{records, store.clock()};
    const RecordBegun first = must(other.begin(before, hangar.vale));
    EXPECT_FALSE(first.byAnotherWindow);
    const RecordBegun second = must(writer.begin(before, hangar.oren));
    EXPECT_TRUE(second.byAnotherWindow);
    EXPECT_EQ(second.record, first.record);
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).size(), 1U);
    ASSERT_TRUE(view().record);
    EXPECT_EQ(view().record->id, first.record);
}

TEST_F(RiggedToday, AReadingThatIsLeftOutOfTheBandIsNoneOfTheLastTwelve)
{
    begin();
    ASSERT_EQ(sheet().lastTwelve.readings.size(), 12U);
    Exclusion exclusion;
    exclusion.reading = must(store.records().readingsOf(hangar.leftAileron)).back().reading.id;
    exclusion.reason = "grit under the leaf";
    exclusion.stamp = {hangar.vale, store.clock().now()};
    must(store.records().add(exclusion));
    EXPECT_EQ(sheet().lastTwelve.readings.size(), 11U);
}
