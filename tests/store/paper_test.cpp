// A rigging from paper, as the file keeps it.

#include "core/store/airframe_facts.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class PaperInTheFile : public testing::Test
{
protected:
    PaperInTheFile()
    {
        RiggingRecord wanted = hangar.record(noonOf(dayOf(2026, 4, 4)));
        wanted.enteredBy = hangar.oren;
        record = must(store.records().add(wanted));
    }

    Check answerOf(Turn turn, PersonId person, std::optional<PersonId> copiedBy)
    {
        Check check;
        check.record = record;
        check.coupling = hangar.leftAileron;
        check.answer = Answer::Yes;
        check.turn = turn;
        check.person = person;
        check.when = noonOf(dayOf(2026, 4, 4));
        check.copiedBy = copiedBy;
        return check;
    }

    TempStore store;
    Hangar hangar{store.records()};
    RecordId record;
};

} // namespace

TEST_F(PaperInTheFile, KeepsTheDayOnThePaperAndWhenItWasTyped)
{
    const RecordContent content = must(store.records().content(record));
    EXPECT_EQ(content.record.enteredBy, hangar.oren);
    EXPECT_EQ(content.record.begins.localDay(), dayOf(2026, 4, 4));
    EXPECT_EQ(content.record.stamp.when, store.clock().now());
}

TEST_F(PaperInTheFile, SaysWhoCopied)
{
    must(store.records().add(answerOf(Turn::Second, hangar.vale, hangar.oren)));
    Reading reading = hangar.reading(between(500, 550), noonOf(dayOf(2026, 4, 4)));
    reading.record = record;
    reading.turn = Turn::Second;
    reading.person = hangar.vale;
    reading.copiedBy = hangar.oren;
    must(store.records().add(reading, std::nullopt));
    const RecordContent content = must(store.records().content(record));
    EXPECT_EQ(content.checks.at(0).copiedBy, hangar.oren);
    EXPECT_EQ(content.readings.at(0).copiedBy, hangar.oren);
}

TEST_F(PaperInTheFile, TakesNoCopyOfAFirstPersonNorOfOneself)
{
    EXPECT_FALSE(store.records().add(answerOf(Turn::First, hangar.vale, hangar.oren)));
    EXPECT_FALSE(store.records().add(answerOf(Turn::Second, hangar.vale, hangar.vale)));
    EXPECT_TRUE(store.records().add(answerOf(Turn::Second, hangar.vale, std::nullopt)));
}

TEST_F(PaperInTheFile, TakesACopyFromNobodyButWhoeverTypedTheRecordIn)
{
    const PersonId quill = must(store.records().add(aPerson("A. Quill")));
    EXPECT_FALSE(store.records().add(answerOf(Turn::Second, hangar.vale, quill)));
    EXPECT_FALSE(store.records().add(answerOf(Turn::Second, hangar.vale, PersonId{{9}}))) << "nobody";
    must(store.records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    record = must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_FALSE(store.records().add(answerOf(Turn::Second, hangar.vale, hangar.oren)))
        << "a rigging at the laptop has nothing to copy";
    Reading reading = hangar.reading(between(500, 550), store.clock().now());
    reading.turn = Turn::Second;
    reading.person = hangar.vale;
    reading.copiedBy = hangar.oren;
    EXPECT_FALSE(store.records().add(reading, std::nullopt)) << "of no record";
    reading.record = record;
    EXPECT_FALSE(store.records().add(reading, std::nullopt));
}

TEST_F(PaperInTheFile, AQuestionThatCameUpThereIsOfTheDayOnThePaper)
{
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::AnsweredNo;
    question.record = record;
    question.coupling = hangar.leftAileron;
    question.check = CheckKind::PlungerHome;
    must(store.records().add(question));
    question.kind = QuestionKind::Asked;
    question.text = "Who has the key of the hatch?";
    question.stamp.by = hangar.oren;
    must(store.records().add(question));
    for (const auto& stories : {must(store.records().questions(hangar.airframe)),
                                must(store.records().content(record)).questions}) {
        ASSERT_EQ(stories.size(), 2U);
        EXPECT_EQ(stories.front().question.day(), dayOf(2026, 4, 4));
        EXPECT_EQ(stories.front().question.stamp.when, store.clock().now()) << "when it was typed";
        EXPECT_EQ(stories.back().question.day(), store.clock().now().localDay()) << "somebody asks it today";
    }
}
