#include "app/pages/questions/question_row_text.h"
#include "app/pages/questions/questions_presenter.h"
#include "app/wording/stop_words.h"
#include "core/rigging/rigging_flow.h"
#include "tests/support/hangar.h"
#include "tests/support/sleeve_joint.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class Questions : public testing::Test
{
protected:
    Questions() : quill{must(records().add(aPerson("A. Quill")))} {}

    Records& records() { return store.records(); }
    QuestionsView view() { return must(presenter.view(hangar.airframe)); }
    std::vector<OpenQuestion> open() { return must(presenter.open(hangar.airframe)); }

    RecordId aRecord()
    {
        store.clock().passMinutes(1);
        return must(records().add(hangar.record(store.clock().now())));
    }

    void finish(RecordId record)
    {
        must(records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    }

    // An answer of the look, with the question that it opens.
    QuestionId answered(RecordId record, Answer answer, Turn turn = Turn::First)
    {
        Check check;
        check.record = record;
        check.coupling = hangar.leftAileron;
        check.kind = CheckKind::PlungerHome;
        check.answer = answer;
        check.turn = turn;
        check.person = turn == Turn::First ? hangar.oren : hangar.vale;
        check.when = store.clock().now();
        check.stamp.by = check.person;
        must(records().add(check));
        const auto question = questionFrom(check, hangar.airframe);
        return question ? must(records().add(*question)) : QuestionId{};
    }

    ReadingId aReading(RecordId record, int entersUm, Turn turn)
    {
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), store.clock().now());
        reading.record = record;
        reading.turn = turn;
        reading.person = turn == Turn::First ? hangar.oren : hangar.vale;
        return must(records().add(reading, std::nullopt));
    }

    QuestionId asked(QuestionKind kind, std::optional<RecordId> record = {},
                     std::optional<ReadingId> reading = {})
    {
        Question question;
        question.airframe = hangar.airframe;
        question.kind = kind;
        question.record = record;
        question.coupling = hangar.leftAileron;
        question.reading = reading;
        question.stamp.by = hangar.oren;
        return must(records().add(question));
    }

    CloseEntry decision() const { return {quill, hangar.oren, "grit under the plunger", "cleaned"}; }

    Closed closed(QuestionId question)
    {
        return must(presenter.close(hangar.airframe, question, decision()));
    }

    CouplingFlow flow(RecordId record, Turn turn)
    {
        return flowOfSleeve(must(records().content(record)), hangar.leftAileron, turn);
    }

    TempStore store;
    Hangar hangar{store.records()};
    PersonId quill;
    QuestionsPresenter presenter{store.records()};
};

using Lacks = std::vector<CloseLack>;

} // namespace

TEST_F(Questions, AreNoneOnAFreshAirframe)
{
    EXPECT_TRUE(view().rows.empty());
    EXPECT_TRUE(open().empty());
}

TEST_F(Questions, OfAnAirframeThatTheFileDoesNotKnowAreNotToBeHad)
{
    EXPECT_FALSE(presenter.view(AirframeId{}));
}

TEST_F(Questions, TellWhatWasAnsweredWhereAndByWhom)
{
    const RecordId record = aRecord();
    answered(record, Answer::CannotSee);
    const QuestionsView now = view();
    ASSERT_EQ(now.rows.size(), 1U);
    const QuestionRow& row = now.rows.front();
    EXPECT_EQ(row.place, "Left aileron");
    EXPECT_EQ(row.answer, Answer::CannotSee);
    EXPECT_EQ(row.story.question.check, CheckKind::PlungerHome);
    EXPECT_EQ(row.statedBy, "M. Oren");
    EXPECT_TRUE(row.ofOpenRecord);
    ASSERT_TRUE(row.record);
    EXPECT_EQ(now.openCount, 1);
    ASSERT_EQ(open().size(), 1U);
    EXPECT_EQ(open().front().place, "Left aileron");
    EXPECT_EQ(open().front().question.day(), dayOf(2026, 5, 2));
}

TEST_F(Questions, OfARiggingFromPaperBearItsDayAndNoHour)
{
    RiggingRecord paper = hangar.record(noonOf(dayOf(2026, 4, 4)));
    paper.enteredBy = hangar.oren;
    answered(must(records().add(paper)), Answer::No);
    const QuestionRow row = view().rows.front();
    EXPECT_EQ(open().front().question.day(), dayOf(2026, 4, 4));
    EXPECT_EQ(stateOf(row), QString{"open since 4 April 2026"});
    EXPECT_TRUE(
        storyOf(row).contains("Stated by M. Oren on the paper of 4 April 2026, typed in on 2 May 2026."))
        << storyOf(row).join(" | ").toStdString();
}

TEST_F(Questions, OfAPaperAreClosedByWhoSawItAtTheMomentOfThePaper)
{
    RiggingRecord paper = hangar.record(noonOf(dayOf(2026, 4, 4)));
    paper.enteredBy = hangar.oren;
    const RecordId record = must(records().add(paper));
    answered(record, Answer::CannotSee);
    Check seen{{},          record,       hangar.leftAileron, CheckKind::PlungerHome,
               Answer::Yes, Turn::Second, hangar.vale,        paper.begins,
               {}};
    seen.stamp.by = hangar.vale;
    seen.copiedBy = hangar.oren;
    must(records().add(seen));
    finish(record); // before it nothing is told of a joint that the second person is at
    const QuestionsView now = view();
    ASSERT_EQ(now.rows.size(), 1U);
    const QuestionRow& row = now.rows.front();
    EXPECT_EQ(stateOf(row).toStdString(), "closed 4 April 2026 by T. Vale");
    EXPECT_TRUE(storyOf(row).contains(
        "Closed by T. Vale on the paper of 4 April 2026, 12:00, copied on 2 May 2026 by M. Oren."))
        << storyOf(row).join(" | ").toStdString();
}

TEST_F(Questions, TellThatAReadingOutsideWasASlipAndThatTheStopStays)
{
    takeTwelve(store, hangar);
    const RecordId record = aRecord();
    const auto read = [&](int entersUm, std::optional<ReadingId> corrects) {
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), store.clock().now());
        reading.record = record;
        reading.corrects = corrects;
        reading.note = corrects ? "slip of the finger" : "";
        reading.stamp.by = hangar.oren;
        return must(records().add(reading, std::nullopt));
    };
    const ReadingId slip = read(1700, {});
    asked(QuestionKind::OutsideReading, record, slip);
    EXPECT_FALSE(view().rows.front().slip);
    read(500, slip);
    const QStringList story = storyOf(view().rows.front());
    EXPECT_TRUE(story.contains("It was corrected to 0.50–0.55 mm by M. Oren: “slip of the finger”."))
        << story.join(" | ").toStdString();
    EXPECT_TRUE(story.contains(StopWords::stays()));
}

TEST_F(Questions, ShowBothReadingsThatDisagreeInTheOrderOfTaking)
{
    const RecordId record = aRecord();
    aReading(record, 500, Turn::First);
    asked(QuestionKind::ReadingsDisagree, record, aReading(record, 700, Turn::Second));
    const QuestionsView now = view();
    ASSERT_EQ(now.rows.front().readings.size(), 2U);
    EXPECT_EQ(now.rows.front().readings[0].interval.enters, Gap::micrometres(500));
    EXPECT_EQ(now.rows.front().readings[0].person, "M. Oren");
    EXPECT_EQ(now.rows.front().readings[1].interval.enters, Gap::micrometres(700));
    EXPECT_EQ(now.rows.front().readings[1].person, "T. Vale");
}

TEST_F(Questions, SayHowASurfaceWasAnswered)
{
    Surface rudder;
    rudder.airframe = hangar.airframe;
    rudder.name = "Rudder";
    const SurfaceId surface = must(records().add(rudder));
    SurfaceCheck check{{},         aRecord(),   surface,     SurfaceCheckKind::Sense,
                       Answer::No, hangar.vale, hangar.oren, {}};
    must(records().add(check));
    must(records().add(*questionFrom(check, hangar.airframe)));
    check.answer = Answer::Yes; // later, and no part of the question
    must(records().add(check));
    const QuestionRow row = view().rows.front();
    EXPECT_EQ(row.place, "Rudder");
    EXPECT_EQ(row.answer, Answer::No);
    EXPECT_FALSE(row.startsAgain);
}

TEST_F(Questions, CountTheReadingsThatAGaugeInDoubtTook)
{
    const auto readOn = [this](Day day) {
        must(records().add(hangar.reading(between(500, 550), noonOf(day)), std::nullopt));
    };
    readOn(dayOf(2026, 4, 1));
    readOn(dayOf(2026, 4, 20));
    readOn(dayOf(2026, 4, 21));
    must(records().add(
        GaugeCheck{{}, hangar.setA, dayOf(2026, 5, 2), "micrometer", "worn", dayOf(2026, 4, 20), {}}));
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::GaugeQuarantined;
    question.gauge = hangar.setA;
    must(records().add(question));
    const QuestionRow row = view().rows.front();
    EXPECT_EQ(row.place, "A");
    ASSERT_TRUE(row.inDoubt);
    EXPECT_EQ(row.inDoubt->count, 2);
    EXPECT_EQ(row.inDoubt->from, dayOf(2026, 4, 20));
}

TEST_F(Questions, StandOldestFirstAndClosedOnesLastWithTheLatestOnTop)
{
    const QuestionId first = asked(QuestionKind::OutsideReading);
    const QuestionId second = asked(QuestionKind::SidesSwapped);
    const QuestionId third = asked(QuestionKind::ReadingsDisagree);
    const QuestionId fourth = asked(QuestionKind::CannotSee);
    closed(first);
    closed(third);
    std::vector<QuestionId> order;
    for (const QuestionRow& row : view().rows)
        order.push_back(row.story.question.id);
    EXPECT_EQ(order, (std::vector{second, fourth, third, first}));
    EXPECT_EQ(view().openCount, 2);
    EXPECT_EQ(open().size(), 2U);
}

TEST_F(Questions, AreNotClosedWithoutAPersonAFindingAndADeed)
{
    const QuestionId id = asked(QuestionKind::OutsideReading);
    EXPECT_EQ(must(presenter.close(hangar.airframe, id, {})).lacks,
              (Lacks{CloseLack::Person, CloseLack::Found, CloseLack::Done}));
    CloseEntry blank = decision();
    blank.found = " \n ";
    EXPECT_EQ(must(presenter.close(hangar.airframe, id, blank)).lacks, Lacks{CloseLack::Found});
    EXPECT_EQ(view().openCount, 1);
}

TEST_F(Questions, KeepWhoDecidedWhatWasFoundAndDoneAndWhoEnteredIt)
{
    const QuestionId id = asked(QuestionKind::OutsideReading);
    EXPECT_TRUE(closed(id).isClosed());
    const QuestionRow row = view().rows.front();
    ASSERT_TRUE(row.story.resolution);
    EXPECT_EQ(row.decidedBy, "A. Quill");
    EXPECT_EQ(row.enteredBy, "M. Oren");
    EXPECT_EQ(row.story.resolution->found, "grit under the plunger");
    EXPECT_EQ(row.story.resolution->done, "cleaned");
}

TEST_F(Questions, AreClosedOnce)
{
    const QuestionId id = asked(QuestionKind::OutsideReading);
    closed(id);
    EXPECT_EQ(closed(id).lacks, Lacks{CloseLack::AlreadyClosed});
}

TEST_F(Questions, ClosedSendTheCouplingBackToTheLookForBothWhoHaveBegun)
{
    const RecordId record = aRecord();
    const QuestionId id = answered(record, Answer::No);
    answered(record, Answer::Yes, Turn::Second);
    EXPECT_TRUE(view().rows.front().startsAgain);
    EXPECT_TRUE(closed(id).startsAgain);
    for (const Turn turn : {Turn::First, Turn::Second}) {
        EXPECT_TRUE(flow(record, turn).interrupted);
        EXPECT_FALSE(flow(record, turn).begun);
    }
    const auto interruptions = must(records().content(record)).interruptions;
    ASSERT_EQ(interruptions.size(), 2U);
    EXPECT_EQ(interruptions.front().reason, InterruptionReason::QuestionClosed);
}

TEST_F(Questions, ClosedInterruptNobodyWhoHasNotBegun)
{
    const RecordId record = aRecord();
    const QuestionId id = answered(record, Answer::No);
    closed(id);
    EXPECT_TRUE(flow(record, Turn::First).interrupted);
    EXPECT_FALSE(flow(record, Turn::Second).interrupted);
}

TEST_F(Questions, OfAnEarlierRecordSendTheCouplingBackToTheLookInTodays)
{
    const RecordId earlier = aRecord();
    const QuestionId id = answered(earlier, Answer::No);
    finish(earlier);
    const RecordId today = aRecord();
    answered(today, Answer::Yes);
    EXPECT_FALSE(view().rows.front().ofOpenRecord);
    EXPECT_TRUE(view().rows.front().startsAgain);
    EXPECT_TRUE(closed(id).startsAgain);
    EXPECT_TRUE(flow(today, Turn::First).interrupted);
    EXPECT_FALSE(flow(earlier, Turn::First).interrupted);
}

TEST_F(Questions, AreClosedWithoutAnyOpenRecord)
{
    const RecordId record = aRecord();
    const QuestionId id = answered(record, Answer::No);
    finish(record);
    const Closed done = closed(id);
    EXPECT_TRUE(done.isClosed());
    EXPECT_FALSE(done.startsAgain);
    EXPECT_TRUE(must(records().content(record)).interruptions.empty());
}

TEST_F(Questions, KeepNothingWhenSomethingOfTheClosingIsRefused)
{
    const RecordId record = aRecord();
    const QuestionId id = answered(record, Answer::No);
    CloseEntry stranger = decision();
    stranger.decidedBy = PersonId{{1}};
    EXPECT_FALSE(presenter.close(hangar.airframe, id, stranger));
    EXPECT_EQ(view().openCount, 1);
    EXPECT_TRUE(must(records().content(record)).interruptions.empty());
}

TEST_F(Questions, AboutSwappedSidesSendBothSidesBackToTheLook)
{
    const RecordId record = aRecord();
    aReading(record, 500, Turn::First);
    Reading other = hangar.reading(between(800, 850), store.clock().now());
    other.record = record;
    other.coupling = hangar.rightAileron;
    other.fitting = hangar.rightFitting;
    must(records().add(other, std::nullopt));
    ASSERT_TRUE(closed(asked(QuestionKind::SidesSwapped, record)).startsAgain);
    EXPECT_TRUE(flow(record, Turn::First).interrupted);
    EXPECT_TRUE(flowOfSleeve(must(records().content(record)), hangar.rightAileron, Turn::First).interrupted);
}

TEST_F(Questions, AboutASurfaceThatMovedTheWrongWaySendEveryJointOfItsCircuitBackToTheLook)
{
    const RecordId record = aRecord();
    answered(record, Answer::Yes);
    answered(record, Answer::Yes, Turn::Second);
    Surface aileron;
    aileron.airframe = hangar.airframe;
    aileron.name = "Right aileron surface";
    aileron.kind = SurfaceKind::Aileron;
    aileron.side = Side::Right;
    SurfaceCheck check;
    check.record = record;
    check.surface = must(records().add(aileron));
    check.kind = SurfaceCheckKind::CalledOneWay;
    check.answer = Answer::No;
    check.seen = Movement::Down;
    check.person = hangar.vale;
    check.cockpit = hangar.oren;
    check.stamp.by = hangar.vale;
    must(records().add(check));
    const QuestionId id = must(records().add(*questionFrom(check, hangar.airframe)));
    EXPECT_EQ(view().rows.front().called, Movement::Down);
    EXPECT_TRUE(closed(id).isClosed());
    for (const Turn turn : {Turn::First, Turn::Second})
        EXPECT_TRUE(flow(record, turn).interrupted);
}

TEST_F(Questions, AreCountedByOneFunctionForTheBarTheChooserAndThePage)
{
    const RecordId record = aRecord();
    const QuestionId closed = answered(record, Answer::No);
    asked(QuestionKind::OutsideReading, record);
    must(presenter.close(hangar.airframe, closed, decision()));
    const auto all = must(records().questions(hangar.airframe));
    EXPECT_EQ(all.size(), 2U);
    EXPECT_EQ(openAmong(all).size(), 1U);
    EXPECT_EQ(open().size(), 1U);
    EXPECT_EQ(view().openCount, 1);
}
