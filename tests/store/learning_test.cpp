#include "core/lesson/sign_off_standing.h"
#include "core/store/connection.h"
#include "core/store/facts_book.h"
#include "core/store/records.h"
#include "tests/support/hangar.h"

#include <array>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class Learning : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};

    Records& records() { return store.records(); }
    LearningFacts facts() { return must(records().learning(hangar.airframe)); }
    Day today() { return store.clock().now().localDay(); }

    Photo photo(PhotoOf of = PhotoOf::Locked)
    {
        Photo made;
        made.coupling = hangar.leftAileron;
        made.of = of;
        made.day = today();
        made.person = hangar.oren;
        made.width = 1600;
        made.height = 1200;
        return made;
    }
    PhotoId keep(const Photo& made, const std::string& bytes = std::string{"\xff\xd8\0\xd9", 4})
    {
        return must(records().add(made, PhotoImage{{bytes}}));
    }
    LessonRoundId round(int asks)
    {
        LessonRound made;
        made.airframe = hangar.airframe;
        made.person = hangar.vale;
        made.asks = asks;
        return must(records().add(made));
    }
    RecordId rigged(PersonId second)
    {
        RecordClose close;
        close.record = must(records().add(hangar.record(store.clock().now())));
        close.first = hangar.oren;
        close.second = second;
        must(records().add(close));
        return close.record;
    }
    SupervisedRigging supervised(RecordId record) const
    {
        return {{}, record, hangar.vale, hangar.oren, {}, {}};
    }
    template <typename T> static void expectRefused(const Result<T>& result)
    {
        ASSERT_FALSE(result);
        EXPECT_EQ(result.problem().kind, ProblemKind::FactRefused) << describe(result.problem());
    }
};

} // namespace

TEST_F(Learning, PhotoComesBackByteForByteAndTheListWithoutIt)
{
    const PhotoId id = keep(photo());
    const LearningFacts known = facts();
    ASSERT_EQ(known.photos.size(), 1U);
    EXPECT_EQ(known.photos[0].width, 1600);
    ASSERT_TRUE(known.photo(hangar.leftAileron, PhotoOf::Locked));
    EXPECT_FALSE(known.photo(hangar.leftAileron, PhotoOf::Empty));
    EXPECT_FALSE(known.photo(hangar.rightAileron, PhotoOf::Locked));
    EXPECT_EQ(must(records().image(id)).jpeg.bytes, std::string("\xff\xd8\0\xd9", 4));
    const auto none = records().image(PhotoId{});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.problem().kind, ProblemKind::NotFound);
}

TEST_F(Learning, OfTwoPhotosOfOneKindTheOneSavedLastIsShownUntilItIsWithdrawn)
{
    const PhotoId first = keep(photo());
    const PhotoId second = keep(photo());
    EXPECT_EQ(facts().photo(hangar.leftAileron, PhotoOf::Locked)->id, second);
    PhotoWithdrawn withdrawn;
    withdrawn.photo = second;
    withdrawn.person = hangar.oren;
    expectRefused(records().add(withdrawn)); // without a reason
    withdrawn.reason = "the other wing";
    must(records().add(withdrawn));
    EXPECT_EQ(facts().photo(hangar.leftAileron, PhotoOf::Locked)->id, first);
    EXPECT_EQ(must(records().image(second)).jpeg.bytes.size(), 4U) << "it stays in the file";
    expectRefused(records().add(withdrawn));
}

TEST_F(Learning, PhotoWithoutAnImageOrOfNobodyOrLargerThanAnyIsRefused)
{
    expectRefused(records().add(photo(), PhotoImage{}));
    expectRefused(records().add(photo(), PhotoImage{{std::string(4'000'001, 'x')}}));
    Photo made = photo();
    made.person = PersonId{};
    expectRefused(records().add(made, PhotoImage{{"x"}}));
    made = photo();
    made.width = 1601;
    expectRefused(records().add(made, PhotoImage{{"x"}}));
    made = photo();
    made.day += std::chrono::days{3};
    expectRefused(records().add(made, PhotoImage{{"x"}}));
    EXPECT_TRUE(facts().photos.empty());
}

TEST_F(Learning, AnswersStandInTheOrderTheyWereGiven)
{
    const LessonRoundId id = round(2);
    SeatingAnswer answer;
    answer.round = id;
    answer.coupling = hangar.leftAileron;
    answer.shown = JointState::PartSeated;
    answer.gap = Gap::micrometres(1720);
    answer.expected = SeatingCall::NotLocked;
    answer.said = SeatingCall::Locked;
    answer.sure = true;
    must(records().add(answer));
    answer.said = SeatingCall::NotLocked;
    must(records().add(answer));
    RecallAnswer recall;
    recall.round = id;
    recall.of = RecallOf::Order;
    recall.asked = "after Left aileron";
    recall.expected = "Right aileron";
    recall.said = "Elevator";
    recall.coupling = hangar.leftAileron;
    must(records().add(recall));
    const LearningFacts known = facts();
    ASSERT_EQ(known.rounds.size(), 1U);
    ASSERT_EQ(known.seatingAnswers.size(), 2U);
    EXPECT_TRUE(isMissed(known.seatingAnswers[0], JointState::PartSeated));
    EXPECT_TRUE(isRight(known.seatingAnswers[1]));
    ASSERT_EQ(known.recallAnswers.size(), 1U);
    EXPECT_FALSE(isRight(known.recallAnswers[0]));
}

TEST_F(Learning, AnswerAboutAnotherAirframeIsRefused)
{
    const AirframeId other = must(records().add(anAirframe("QX-42")));
    SeatingAnswer answer;
    answer.round = round(1);
    answer.coupling = must(records().add(aCoupling(other, "Left aileron")));
    expectRefused(records().add(answer));
    EXPECT_TRUE(must(records().learning(other)).rounds.empty());
}

TEST_F(Learning, NobodySignsForThemselvesOrIsTheirOwnMentor)
{
    SignOff signOff;
    signOff.airframe = hangar.airframe;
    signOff.person = signOff.signer = hangar.oren;
    signOff.day = today();
    expectRefused(records().add(signOff));
    signOff.person = hangar.vale;
    signOff.months = 0;
    expectRefused(records().add(signOff));
    signOff.months = 6;
    must(records().add(signOff));
    EXPECT_EQ(facts().signOffs.at(0).months, 6);
    signOff.kind = SignOffKind::Withdrawn;
    expectRefused(records().add(signOff)); // without saying why
    SupervisedRigging rigging = supervised(rigged(hangar.vale));
    rigging.mentor = hangar.vale;
    expectRefused(records().add(rigging));
    rigging.mentor = hangar.oren;
    must(records().add(rigging));
    EXPECT_EQ(facts().supervisedRiggings.size(), 1U);
    expectRefused(records().add(rigging)); // told before
}

TEST_F(Learning, WhomTheRecordDoesNotNameWasThereOnlyWhereSomebodySaysWhatTheyDid)
{
    const PersonId iver = must(records().add(aPerson("J. Iver")));
    SupervisedRigging rigging = supervised(rigged(hangar.vale));
    rigging.mentor = iver;
    expectRefused(records().add(rigging));
    rigging.note = "stood by and watched every joint";
    must(records().add(rigging));
    rigging = supervised(rigged(hangar.vale));
    rigging.learner = iver;
    rigging.mentor = hangar.vale;
    expectRefused(records().add(rigging));
    RecordClose close;
    close.record = must(records().add(hangar.record(store.clock().now())));
    must(records().add(SideConnected{{}, close.record, Side::Left, {iver}, {}}));
    rigging.record = close.record;
    expectRefused(records().add(rigging)); // it is not closed
    close.second = hangar.vale;
    must(records().add(close));
    must(records().add(rigging));
    close.closing = Closing::Abandoned;
    close.record = must(records().add(hangar.record(store.clock().now())));
    must(records().add(close));
    expectRefused(records().add(supervised(close.record)));
}

TEST_F(Learning, SupervisedRiggingThatIsTakenBackCountsForNothingAndStaysToBeRead)
{
    const RecordId record = rigged(hangar.vale);
    LearningTakenBack back;
    back.person = hangar.oren;
    expectRefused(records().add(back)); // of nothing
    back.supervised = must(records().add(supervised(record)));
    expectRefused(records().add(back)); // without a reason
    back.reason = "another rigging";
    must(records().add(back));
    expectRefused(records().add(back)); // twice
    const LearningFacts known = facts();
    EXPECT_TRUE(known.supervisedRiggings.empty());
    ASSERT_EQ(known.supervisedTakenBack.size(), 1U);
    EXPECT_EQ(known.supervisedTakenBack[0].fact.record, record);
    EXPECT_EQ(known.supervisedTakenBack[0].back.reason, "another rigging");
    EXPECT_EQ(progressOf(hangar.vale, {}, known.supervisedRiggings, {}, {}).supervised, 0);
    must(records().add(supervised(record))); // it may be told anew
    EXPECT_EQ(facts().supervisedRiggings.size(), 1U);
}

TEST_F(Learning, PlaceOfAStudyIsReadOnceByWhoWasAsked)
{
    CrossedStudy study;
    study.airframe = hangar.airframe;
    StudyPlace place;
    place.study = must(records().add(study));
    place.coupling = hangar.leftAileron;
    place.person = hangar.oren;
    PracticeReading reading;
    reading.place = must(records().add(place));
    reading.coupling = hangar.leftAileron;
    reading.person = hangar.vale;
    reading.gauge = hangar.setA;
    reading.interval = between(450, 500);
    reading.when = store.clock().now();
    expectRefused(records().add(reading));
    reading.person = hangar.oren;
    must(records().add(reading));
    expectRefused(records().add(reading));
    EXPECT_EQ(facts().practiceReadings.size(), 1U);
    LearningTakenBack back;
    back.practice = facts().practiceReadings[0].id;
    back.reason = "Wrong leaf";
    back.person = hangar.vale;
    expectRefused(records().add(back)); // vale did not read it
    back.person = hangar.oren;
    must(records().add(back));
    EXPECT_TRUE(facts().practiceReadings.empty());
    EXPECT_EQ(facts().practiceTakenBack.size(), 1U);
    reading.interval = between(500, 450);
    expectRefused(records().add(reading));
    reading.interval = between(500, 550);
    must(records().add(reading)); // the place is free again
    EXPECT_EQ(facts().practiceReadings.at(0).interval, between(500, 550));
    EXPECT_TRUE(must(records().readings(hangar.airframe)).empty()) << "it counts for nothing else";
}

TEST_F(Learning, IsHeldUntilSomethingIsSaved)
{
    const LearningFacts* held = must(records().book().learning(hangar.airframe));
    EXPECT_TRUE(held->photos.empty());
    EXPECT_EQ(must(records().book().learning(hangar.airframe)), held);
    keep(photo());
    EXPECT_EQ(must(records().book().learning(hangar.airframe))->photos.size(), 1U);
}

TEST_F(Learning, RowThatCannotBeIsNamedAndNotReadAsSomethingElse)
{
    SignOff signOff;
    signOff.airframe = hangar.airframe;
    signOff.person = hangar.vale;
    signOff.signer = hangar.oren;
    signOff.day = today();
    must(records().add(signOff));
    StoreFile::Connection& connection = store.file().connection(); // changed by hand: nothing holds it back
    must(connection.run("PRAGMA ignore_check_constraints = ON"));
    must(connection.run("DROP TRIGGER sign_off_no_update"));
    must(connection.run("UPDATE sign_off SET months = 0"));
    const auto read = records().learning(hangar.airframe);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.problem().kind, ProblemKind::DamagedFile);
    EXPECT_EQ(read.problem().detail, "sign_off.months: out of its range");
}

TEST_F(Learning, WhatNoCheckWouldLetThroughIsNamedWhereItIsRead)
{
    SignOff signOff;
    signOff.airframe = hangar.airframe;
    signOff.person = hangar.vale;
    signOff.signer = hangar.oren;
    signOff.day = today();
    must(records().add(signOff));
    must(records().add(supervised(rigged(hangar.vale))));
    StoreFile::Connection& connection = store.file().connection(); // changed by hand: nothing holds it back
    must(connection.run("PRAGMA ignore_check_constraints = ON"));
    for (const auto& [table, wrong, right] :
         {std::array{"sign_off", "signer = person", "signer = stated_by"},
          std::array{"supervised_rigging", "mentor = learner", "mentor = stated_by"}}) {
        const auto set = [&, table = table](const char* what) {
            must(connection.run(QStringLiteral("UPDATE %1 SET %2").arg(table, what)));
        };
        must(connection.run(QStringLiteral("DROP TRIGGER %1_no_update").arg(table)));
        set("stated_by = (SELECT min(id) FROM person)"); // Oren
        set(wrong);
        const auto read = records().learning(hangar.airframe);
        ASSERT_FALSE(read) << table;
        EXPECT_EQ(read.problem().kind, ProblemKind::DamagedFile);
        EXPECT_TRUE(read.problem().detail.starts_with(std::string{table} + ": the same person twice"))
            << read.problem().detail;
        set(right);
        EXPECT_TRUE(records().learning(hangar.airframe));
    }
}
