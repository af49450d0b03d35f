#include "core/airframe/id_source.h"
#include "core/rigging/rigging_flow.h"
#include "tests/support/sleeve_joint.h"

#include <gtest/gtest.h>
#include <vector>

using namespace rig;
using namespace rig::literals;

namespace {

// One coupling's record, written down answer by answer.
class Rigging
{
public:
    Rigging& answer(CheckKind kind, Answer answer, Turn turn = Turn::First)
    {
        Check check;
        check.id.bytes = m_ids.next(0);
        check.coupling = coupling;
        check.kind = kind;
        check.answer = answer;
        check.turn = turn;
        m_content.checks.push_back(check);
        return *this;
    }

    Rigging& look(Turn turn = Turn::First)
    {
        return answer(CheckKind::BallInSocket, Answer::Yes, turn)
            .answer(CheckKind::PlungerHome, Answer::Yes, turn)
            .answer(CheckKind::SleeveAtStop, Answer::Yes, turn);
    }

    Rigging& read(Gap enters, Gap refuses, Turn turn = Turn::First)
    {
        Reading reading;
        reading.id.bytes = m_ids.next(0);
        reading.coupling = coupling;
        reading.interval = {enters, refuses};
        reading.turn = turn;
        m_content.readings.push_back(reading);
        return *this;
    }

    Rigging& correct(Gap enters, Gap refuses)
    {
        const ReadingId wrong = m_content.readings.back().id;
        read(enters, refuses);
        m_content.readings.back().corrects = wrong;
        return *this;
    }

    Rigging& asFound()
    {
        m_content.readings.back().state = SeatState::PartSeated;
        return *this;
    }

    // The reading that was kept last.
    Rigging& strike(const std::string& reason)
    {
        m_content.exclusions.push_back({{}, m_content.readings.back().id, reason, {}});
        return *this;
    }

    Rigging& interrupt(Turn turn = Turn::First)
    {
        Interruption interruption;
        interruption.id.bytes = m_ids.next(0);
        interruption.coupling = coupling;
        interruption.turn = turn;
        m_content.interruptions.push_back(interruption);
        return *this;
    }

    CouplingFlow flow(Turn turn = Turn::First) const { return flowOf(m_content, joint, turn); }
    Rigging& of(CouplingKind kind, CouplingParts parts = {})
    {
        joint.kind = kind;
        joint.parts = parts;
        return *this;
    }
    const RecordContent& content() const { return m_content; }

    const CouplingId coupling{{1}};
    Coupling joint = test::sleeveJoint(coupling);

private:
    RecordContent m_content;
    IdSource m_ids{1};
};

} // namespace

TEST(CouplingFlow, BeginsWithTheBallInTheSocket)
{
    const CouplingFlow flow = Rigging{}.flow();
    EXPECT_EQ(flow.next, Step::Look);
    EXPECT_EQ(flow.ask, CheckKind::BallInSocket);
    EXPECT_FALSE(flow.mayMeasure());
    EXPECT_FALSE(flow.begun);
}

TEST(CouplingFlow, GoesLookMeasurePullDone)
{
    Rigging rigging;
    EXPECT_EQ(rigging.look().flow().next, Step::Measure);
    EXPECT_EQ(rigging.read(600_um, 650_um).flow().ask, CheckKind::Pull);
    EXPECT_EQ(rigging.answer(CheckKind::Pull, Answer::Yes).flow().ask, CheckKind::Secured);
    EXPECT_TRUE(rigging.answer(CheckKind::Secured, Answer::Yes).flow().isDone());
}

TEST(CouplingFlow, KeepsMeasuringShutWhenTheSocketIsEmptyOrNotSeen)
{
    for (const Answer answer : {Answer::No, Answer::CannotSee}) {
        const CouplingFlow flow = Rigging{}.answer(CheckKind::BallInSocket, answer).flow();
        EXPECT_FALSE(flow.mayMeasure());
        EXPECT_EQ(flow.next, Step::Look);
        EXPECT_TRUE(flow.hasDoubt());
    }
    EXPECT_EQ(Rigging{}.answer(CheckKind::BallInSocket, Answer::CannotSee).flow().ask,
              CheckKind::BallInSocket);
}

TEST(CouplingFlow, ANoStopsItAndAsksNothingElse)
{
    const auto expectStoppedAt = [](const Rigging& rigging, Step step) {
        const CouplingFlow flow = rigging.flow();
        EXPECT_EQ(flow.next, step);
        EXPECT_FALSE(flow.ask);
        EXPECT_FALSE(flow.mayMeasure());
        EXPECT_FALSE(flow.isDone());
    };
    for (const CheckKind kind : {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop})
        expectStoppedAt(Rigging{}.look().answer(kind, Answer::No), Step::Look);
    expectStoppedAt(Rigging{}.look().read(600_um, 650_um).answer(CheckKind::Pull, Answer::No), Step::Pull);
    expectStoppedAt(Rigging{}
                        .look()
                        .read(600_um, 650_um)
                        .answer(CheckKind::Pull, Answer::Yes)
                        .answer(CheckKind::Secured, Answer::No),
                    Step::Secure);
}

TEST(CouplingFlow, AReadingAsFoundIsNotTheLockedOneThatIsAskedFor)
{
    Rigging rigging;
    rigging.look().read(600_um, 650_um).asFound();
    EXPECT_EQ(rigging.flow().next, Step::Measure);
}

TEST(CouplingFlow, AsksForThePullEvenWhenTheGapWasReadBeforeTheLook)
{
    const CouplingFlow flow = Rigging{}.read(600_um, 650_um).answer(CheckKind::Pull, Answer::Yes).flow();
    EXPECT_EQ(flow.ask, CheckKind::BallInSocket);
}

TEST(CouplingFlow, GoesBackToTheLookAfterAnInterruptionAndKeepsTheMark)
{
    const CouplingFlow flow = Rigging{}.look().read(600_um, 650_um).interrupt().flow();
    EXPECT_EQ(flow.ask, CheckKind::BallInSocket);
    EXPECT_TRUE(flow.interrupted);
    EXPECT_FALSE(flow.begun);
    EXPECT_TRUE(flow.readings.empty());
}

TEST(CouplingFlow, WaitsToBeMeasuredOnceItsReadingIsStruck)
{
    const CouplingFlow flow = Rigging{}.look().read(600_um, 650_um).strike("read on the wrong joint").flow();
    EXPECT_EQ(flow.next, Step::Measure);
    EXPECT_TRUE(flow.readings.empty());
    EXPECT_FALSE(flow.last);
    ASSERT_EQ(flow.struck.size(), 1U) << "it stays to be read";
    EXPECT_EQ(flow.struck.front().strike.reason, "read on the wrong joint");
}

TEST(CouplingFlow, HasTheReadingBeforeTheStruckOneAgain)
{
    const CouplingFlow flow =
        Rigging{}.look().read(600_um, 650_um).read(900_um, 950_um).strike("the neighbour").flow();
    EXPECT_EQ(flow.next, Step::Pull);
    ASSERT_TRUE(flow.last);
    EXPECT_EQ(flow.last->interval.enters, 600_um);
}

TEST(CouplingFlow, DoesNotBringBackWhatAStruckReadingHadTakenThePlaceOf)
{
    const CouplingFlow flow =
        Rigging{}.look().read(600_um, 650_um).correct(700_um, 750_um).strike("the wrong joint").flow();
    EXPECT_EQ(flow.next, Step::Measure);
    EXPECT_FALSE(flow.last);
    EXPECT_EQ(flow.struck.size(), 1U);
}

TEST(CouplingFlow, KnowsWhatWasStruckAfterABreakThatNobodyLookedAtSince)
{
    const CouplingFlow flow = Rigging{}.look().read(600_um, 650_um).interrupt().strike("wrong joint").flow();
    EXPECT_EQ(flow.ask, CheckKind::BallInSocket);
    EXPECT_EQ(flow.struck.size(), 1U);
}

TEST(CouplingFlow, InterruptingOnePersonLeavesTheOtherWhereHeWas)
{
    const Rigging rigging = Rigging{}.look().look(Turn::Second).interrupt(Turn::Second);
    EXPECT_EQ(rigging.flow(Turn::First).next, Step::Measure);
    EXPECT_EQ(rigging.flow(Turn::Second).ask, CheckKind::BallInSocket);
}

TEST(CouplingFlow, LetsTheSecondPersonPullWithoutAnOwnReading)
{
    Rigging rigging;
    EXPECT_EQ(rigging.look(Turn::Second).flow(Turn::Second).ask, CheckKind::Pull);
    EXPECT_TRUE(rigging.answer(CheckKind::Pull, Answer::Yes, Turn::Second).flow(Turn::Second).isDone());
    EXPECT_EQ(rigging.flow(Turn::First).next, Step::Look) << "one person's work is never the other's";
}

TEST(CouplingFlow, ANoAnsweredAgainStaysOpenInTheRecord)
{
    const Rigging rigging = Rigging{}.answer(CheckKind::BallInSocket, Answer::No).look().read(600_um, 650_um);
    EXPECT_FALSE(rigging.flow().hasDoubt());
    EXPECT_TRUE(everSaidNo(rigging.content(), rigging.coupling));
}

TEST(CouplingFlow, WhatWasFeltCountsAsSeenAndStaysVisibleAsFelt)
{
    Rigging rigging;
    for (const CheckKind kind : {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop})
        rigging.answer(kind, Answer::Felt);
    EXPECT_TRUE(rigging.flow().mayMeasure());
    EXPECT_FALSE(rigging.flow().hasDoubt());
    EXPECT_EQ(answerOf(rigging.flow(), CheckKind::PlungerHome), Answer::Felt);
}

TEST(CouplingFlow, AsksAgainAtTheEndForWhatCouldNotBeSeen)
{
    Rigging rigging;
    rigging.look().answer(CheckKind::PlungerHome, Answer::CannotSee);
    EXPECT_TRUE(rigging.flow().mayMeasure()) << "the reading is kept";
    rigging.read(600_um, 650_um).answer(CheckKind::Pull, Answer::Yes).answer(CheckKind::Secured, Answer::Yes);
    EXPECT_TRUE(rigging.flow().isDone());
    EXPECT_EQ(rigging.flow().ask, CheckKind::PlungerHome);
    EXPECT_FALSE(rigging.answer(CheckKind::PlungerHome, Answer::Yes).flow().ask);
}

// What each kind is asked, in order: the look, the gap, the pull, the securing; and of the second person.
TEST(KindsOfCoupling, EachIsAskedItsOwnQuestions)
{
    using enum CheckKind;
    struct Row
    {
        const char* name;
        CouplingKind kind;
        CouplingParts parts;
        std::vector<CheckKind> look;
        bool gap, pull, secured;
    };
    const std::vector<Row> rows{
        {"sleeve", CouplingKind::Sleeve, {}, {BallInSocket, PlungerHome, SleeveAtStop}, true, true, true},
        {"pin", CouplingKind::Pin, {}, {BallInSocket, PlungerHome, PinThrough}, true, true, true},
        {"sleeve and pin",
         CouplingKind::SleeveAndPin,
         {},
         {BallInSocket, PlungerHome, SleeveAtStop, PinThrough},
         true,
         true,
         true},
        {"a ball joint has all three, whatever was said",
         CouplingKind::Sleeve,
         {false, false, false},
         {BallInSocket, PlungerHome, SleeveAtStop},
         true,
         true,
         true},
        {"by itself", CouplingKind::ByItself, {false, true, false}, {Engaged, NoStep}, false, true, false},
        {"by itself never has a gap",
         CouplingKind::ByItself,
         {true, false, true},
         {Engaged, NoStep},
         false,
         false,
         true},
        {"water ballast",
         CouplingKind::WaterBallast,
         {false, true, true},
         {LineConnected},
         false,
         true,
         true},
        {"water ballast with a gap",
         CouplingKind::WaterBallast,
         {true, true, false},
         {LineConnected},
         true,
         true,
         false},
        {"other, to be looked at only",
         CouplingKind::Other,
         {false, false, false},
         {Connected},
         false,
         false,
         false},
    };
    for (const Row& row : rows)
        for (const Turn turn : {Turn::First, Turn::Second}) {
            SCOPED_TRACE(std::string{row.name} + (turn == Turn::First ? ", first" : ", second"));
            const bool isFirst = turn == Turn::First;
            Rigging rigging;
            rigging.of(row.kind, row.parts);
            for (const CheckKind kind : row.look) {
                EXPECT_EQ(rigging.flow(turn).ask, kind);
                EXPECT_EQ(rigging.flow(turn).next, Step::Look);
                EXPECT_FALSE(rigging.flow(turn).mayMeasure());
                rigging.answer(kind, Answer::Yes, turn);
            }
            EXPECT_EQ(rigging.flow(turn).mayMeasure(), row.gap);
            if (row.gap && isFirst) {
                EXPECT_EQ(rigging.flow(turn).next, Step::Measure);
                rigging.read(600_um, 650_um, turn);
            }
            if (row.pull) {
                EXPECT_EQ(rigging.flow(turn).ask, Pull);
                rigging.answer(Pull, Answer::Yes, turn);
            }
            if (row.secured && isFirst) {
                EXPECT_EQ(rigging.flow(turn).ask, Secured);
                rigging.answer(Secured, Answer::Yes, turn);
            }
            EXPECT_TRUE(rigging.flow(turn).isDone());
            EXPECT_FALSE(rigging.flow(turn).ask);
        }
}

TEST(KindsOfCoupling, OneWithoutAGapStopsAtANoAndAsksAgainForWhatWasNotSeen)
{
    const Rigging stopped = Rigging{}.of(CouplingKind::ByItself).answer(CheckKind::Engaged, Answer::No);
    EXPECT_EQ(stopped.flow().next, Step::Look);
    EXPECT_FALSE(stopped.flow().ask);
    EXPECT_FALSE(stopped.flow().isDone());

    Rigging unseen;
    unseen.of(CouplingKind::ByItself, {false, false, false});
    unseen.answer(CheckKind::Engaged, Answer::CannotSee).answer(CheckKind::NoStep, Answer::Felt);
    EXPECT_TRUE(unseen.flow().isDone());
    EXPECT_TRUE(unseen.flow().hasDoubt());
    EXPECT_EQ(unseen.flow().ask, CheckKind::Engaged);
    EXPECT_FALSE(unseen.answer(CheckKind::Engaged, Answer::Felt).flow().ask);
}

TEST(CannotSee, IsClosedByWhoeverAnswersTheSameAgainAndHasSeenIt)
{
    IdSource ids{5};
    const RecordId record{{9}};
    const CouplingId coupling{{1}};
    std::vector<Check> checks;
    const auto say = [&](CheckKind kind, Answer given) {
        Check check;
        check.id.bytes = ids.next(0);
        check.record = record;
        check.coupling = coupling;
        check.kind = kind;
        check.answer = given;
        checks.push_back(check);
        return check;
    };
    const Check cannotSee = say(CheckKind::PlungerHome, Answer::CannotSee);
    Question question = *questionFrom(cannotSee, {});
    question.id.bytes = ids.next(0);
    std::vector<QuestionStory> stories{{question, {}}};
    say(CheckKind::BallInSocket, Answer::Yes);
    say(CheckKind::PlungerHome, Answer::CannotSee);
    settleWhatWasSeen(stories, checks);
    EXPECT_TRUE(stories.front().isOpen());
    EXPECT_EQ(notSeenAmong(stories, record, coupling), CheckKind::PlungerHome);

    say(CheckKind::PlungerHome, Answer::Felt);
    settleWhatWasSeen(stories, checks);
    ASSERT_FALSE(stories.front().isOpen());
    EXPECT_EQ(stories.front().resolution->answered, Answer::Felt);
    EXPECT_FALSE(notSeenAmong(stories, record, coupling));
    EXPECT_FALSE(questionFrom(checks.back(), {})) << "what was felt opens none";
}

TEST(CannotSee, OfAPaperIsClosedByWhoSawItAtTheMomentOfThePaperAndCopiedByWhoTyped)
{
    IdSource ids{6};
    const PersonId bo{{2}};
    const PersonId ida{{1}};
    RiggingRecord paper;
    paper.id = RecordId{{9}};
    paper.begins = Moment{8 * 3600};
    paper.enteredBy = ida;
    const auto said = [&](Answer given, Turn turn, PersonId person, std::optional<PersonId> copiedBy) {
        Check check;
        check.id.bytes = ids.next(0);
        check.record = paper.id;
        check.coupling = CouplingId{{1}};
        check.kind = CheckKind::PlungerHome;
        check.answer = given;
        check.turn = turn;
        check.person = person;
        check.when = paper.begins;
        check.copiedBy = copiedBy;
        check.stamp = {person, Moment{20 * 3600}};
        return check;
    };
    std::vector<Check> checks{said(Answer::CannotSee, Turn::First, ida, {})};
    Question question = *questionFrom(checks.front(), {});
    question.id.bytes = ids.next(0);
    checks.push_back(said(Answer::Yes, Turn::Second, bo, ida));
    checks.back().stamp.when.utcSeconds += 60;
    std::vector<QuestionStory> stories{{question, {}}};
    settleWhatWasSeen(stories, checks);
    takeMomentOfPaper(stories, paper);
    ASSERT_FALSE(stories.front().isOpen());
    const Resolution& closed = *stories.front().resolution;
    EXPECT_EQ(closed.person, bo);
    EXPECT_EQ(closed.when(), paper.begins);
    EXPECT_EQ(closed.copiedBy, ida);
    EXPECT_EQ(closed.stamp.by, ida) << "who entered it";
}
