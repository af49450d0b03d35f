#include "core/store/airframe_facts.h"
#include "tests/report/told_record.h"

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

bool lists(const RecordSummary& summary, OpenItemKind kind, const std::string& name)
{
    return std::ranges::any_of(summary.notDone,
                               [&](const OpenItem& item) { return item.kind == kind && item.name == name; });
}

} // namespace

TEST(RecordSummary, NamesWhoLedWhoClosedAndWhatTheySaid)
{
    ToldRecord told;
    told.close();
    const RecordSummary summary = told.summary();
    EXPECT_EQ(summary.leader, "M. Oren");
    EXPECT_EQ(summary.first, "M. Oren");
    EXPECT_EQ(summary.second, "T. Vale");
    ASSERT_TRUE(summary.close);
    EXPECT_EQ(summary.close->note, "wind from the north");
    EXPECT_EQ(summary.couplings.size(), 2U);
}

TEST(RecordSummary, KeepsAnswersFromBeforeAnInterruptionAndThoseGivenAgain)
{
    ToldRecord told;
    told.answer(CheckKind::BallInSocket, Answer::Yes);
    told.interrupt();
    told.answer(CheckKind::BallInSocket, Answer::CannotSee);
    told.answer(CheckKind::BallInSocket, Answer::Yes);
    const auto answers = told.summary().couplings.front().answers;
    ASSERT_EQ(answers.size(), 3U);
    EXPECT_EQ(answers[0].standing, AnswerStanding::BeforeInterruption);
    EXPECT_EQ(answers[1].standing, AnswerStanding::AnsweredAgain);
    EXPECT_EQ(answers[2].standing, AnswerStanding::Counts);
    EXPECT_EQ(told.summary().couplings.front().interruptions.size(), 1U);
}

TEST(RecordSummary, KeepsAStruckReadingWithTheReasonAndWithoutAnyInItsPlace)
{
    ToldRecord told;
    told.strike(told.read(900, Verdict::Outside));
    const RecordSummary summary = told.summary();
    const SummaryCoupling& coupling = summary.couplings.front();
    ASSERT_EQ(coupling.readings.size(), 1U);
    ASSERT_TRUE(coupling.readings[0].replaced);
    EXPECT_TRUE(coupling.readings[0].replaced->isStruck);
    EXPECT_EQ(coupling.readings[0].replaced->reason, "read on the wrong joint");
    EXPECT_EQ(coupling.readings[0].replaced->by, "M. Oren");
    EXPECT_FALSE(coupling.last());
}

TEST(RecordSummary, AReadingStruckAfterTheCloseStandsAsItDidAtTheClose)
{
    ToldRecord told;
    told.lookAndPull(Turn::First);
    const ReadingId slip = told.read(500, Verdict::Inside);
    told.close();
    told.strike(slip);
    const RecordSummary summary = told.summary();
    EXPECT_TRUE(summary.couplings.front().readings.front().replaced);
    EXPECT_EQ(summary.couplings.front().standing.says, Says::Inside);
}

TEST(RecordSummary, KeepsASupersededReadingWithTheReasonAndWhatWasShownThen)
{
    ToldRecord told;
    const ReadingId wrong = told.read(900, Verdict::Outside);
    told.read(500, Verdict::Inside, wrong);
    const RecordSummary summary = told.summary();
    const SummaryCoupling& coupling = summary.couplings.front();
    ASSERT_EQ(coupling.readings.size(), 2U);
    ASSERT_TRUE(coupling.readings[0].replaced);
    EXPECT_EQ(coupling.readings[0].replaced->reason, "the wrong leaf was pressed");
    EXPECT_EQ(coupling.readings[0].replaced->by, "M. Oren");
    ASSERT_TRUE(coupling.readings[0].shown);
    EXPECT_EQ(coupling.readings[0].shown->judgement.verdict, Verdict::Outside);
    ASSERT_TRUE(coupling.last());
    EXPECT_EQ(coupling.last()->reading.interval, between(500, 550));
    EXPECT_EQ(coupling.last()->gauge, "A");
}

TEST(RecordSummary, JudgesAnewFromTheFactsOfTodayAndKeepsWhatWasShownBesideIt)
{
    ToldRecord told;
    told.read(500, Verdict::Inside);
    told.close();
    told.leaveOutTheBaseline();
    const RecordSummary summary = told.summary();
    const SummaryCoupling& coupling = summary.couplings.front();
    EXPECT_EQ(coupling.readings.front().judgement.verdict, Verdict::NoBandYet);
    EXPECT_EQ(coupling.readings.front().shown->judgement.verdict, Verdict::Inside);
    EXPECT_EQ(coupling.standing.says, Says::NoBandYet);
    EXPECT_TRUE(lists(summary, OpenItemKind::NotJudged, "Left aileron"));
}

TEST(RecordSummary, StandsAsItStoodAtTheCloseWhateverWasResolvedLater)
{
    ToldRecord told;
    const QuestionId question = told.ask(QuestionKind::OutsideReading, told.read(900, Verdict::Outside));
    told.read(500, Verdict::Inside);
    told.close();
    told.resolve(question);
    const RecordSummary summary = told.summary();
    EXPECT_EQ(summary.couplings.front().standing.says, Says::Outside);
    EXPECT_TRUE(lists(summary, OpenItemKind::OutsideReading, "Left aileron"));
}

TEST(RecordSummary, DoesNotTakeAPartSeatedReadingForTheOneThatStands)
{
    ToldRecord told;
    const ReadingId wrong = told.read(900, Verdict::Outside);
    told.read(500, Verdict::Inside);
    told.read(900, Verdict::Outside, wrong, SeatState::PartSeated);
    const RecordSummary summary = told.summary();
    ASSERT_TRUE(summary.couplings.front().last());
    EXPECT_EQ(summary.couplings.front().last()->reading.interval, between(500, 550));
    EXPECT_EQ(summary.couplings.front().partSeated.size(), 1U);
}

TEST(RecordSummary, WasAskedWhatItsCouplingsAskedThenAndIsCompleteThoughOneIsAnotherKindSince)
{
    ToldRecord told;
    for (const Turn turn : {Turn::First, Turn::Second})
        told.lookAndPull(turn);
    told.read(500, Verdict::Inside);
    told.close(Closing::Complete);
    Coupling left = must(told.store.records().couplings(told.hangar.airframe)).front();
    left.kind = CouplingKind::SleeveAndPin;
    must(told.store.records().add(left));
    const RecordSummary summary = told.summary();
    EXPECT_FALSE(lists(summary, OpenItemKind::NotLooked, "Left aileron")) << "nobody was asked for a pin";
    EXPECT_EQ(summary.couplings.front().standing.says, Says::Inside);
}

TEST(RecordSummary, ListsWhatIsNotDone)
{
    ToldRecord told;
    told.lookAndPull(Turn::First);
    told.close();
    const RecordSummary summary = told.summary();
    EXPECT_TRUE(lists(summary, OpenItemKind::NotMeasured, "Left aileron"));
    EXPECT_TRUE(lists(summary, OpenItemKind::NotLooked, "Right aileron"));
    EXPECT_TRUE(lists(summary, OpenItemKind::NoSurfaces, ""));
}

TEST(RecordSummary, ShowsAQuestionClosedAfterwardsAndStillListsItAsOpenAtTheClose)
{
    ToldRecord told;
    const QuestionId question = told.ask(QuestionKind::OutsideReading, told.read(900, Verdict::Outside));
    told.close();
    told.resolve(question);
    const RecordSummary summary = told.summary();
    ASSERT_EQ(summary.questions.size(), 1U);
    EXPECT_EQ(summary.questions.front().place, "Left aileron");
    EXPECT_EQ(summary.questions.front().resolvedBy, "T. Vale");
    ASSERT_TRUE(summary.questions.front().resolution);
    EXPECT_EQ(summary.questions.front().resolution->found, "grit under the sleeve");
    EXPECT_TRUE(lists(summary, OpenItemKind::OutsideReading, "Left aileron"));
}

TEST(RecordSummary, DoesNotAskForACouplingThatWasAddedLater)
{
    ToldRecord told;
    told.close();
    must(told.store.records().add(aCoupling(told.hangar.airframe, "Elevator")));
    EXPECT_EQ(told.summary().couplings.size(), 2U);
}

TEST(RecordSummary, KeepsACouplingTakenOutOfUseThatWasReadThen)
{
    ToldRecord told;
    told.read(500, Verdict::Inside);
    told.close();
    for (Coupling coupling : must(told.store.records().couplings(told.hangar.airframe))) {
        coupling.inUse = false;
        must(told.store.records().add(coupling));
    }
    const RecordSummary summary = told.summary();
    ASSERT_EQ(summary.couplings.size(), 1U);
    EXPECT_EQ(summary.couplings.front().coupling.name, "Left aileron");
}

TEST(RecordSummary, FindsTheLastRecordThatWasNotLeftBehind)
{
    ToldRecord told;
    EXPECT_FALSE(lastClosedRecord(must(factsOf(told.store.records(), told.hangar.airframe))));
    told.close();
    RecordClose abandoned;
    abandoned.record = must(told.store.records().add(told.hangar.record(told.now())));
    abandoned.closing = Closing::Abandoned;
    must(told.store.records().add(abandoned));
    EXPECT_EQ(lastClosedRecord(must(factsOf(told.store.records(), told.hangar.airframe))), told.record);
}
