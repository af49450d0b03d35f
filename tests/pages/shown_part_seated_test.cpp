#include "app/pages/questions/question_row_text.h"
#include "app/pages/questions/questions_presenter.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/setup/baseline_day_presenter.h"
#include "tests/support/hangar.h"
#include "tests/support/sleeve_joint.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

using StillLacks = std::vector<CloseLack>;

// The left aileron was left part-seated on trestles.
class ShownPartSeated : public testing::Test
{
protected:
    ShownPartSeated() : quill{must(store.records().add(aPerson("A. Quill")))} { demonstrate(); }

    void demonstrate()
    {
        store.clock().passMinutes(1);
        const auto sheet = must(setUp.demonstration(hangar.airframe, hangar.leftAileron, hangar.setA));
        shown = must(
            setUp.keep(sheet, hangar.oren, hangar.setA, {between(800, 850), Technique::Leaf}, hangar.vale));
        store.clock().passMinutes(1);
    }

    RecordId rig()
    {
        store.clock().passMinutes(1);
        return must(store.records().add(hangar.record(store.clock().now())));
    }

    RecordId fromPaper(Day day)
    {
        RiggingRecord record = hangar.record(noonOf(day));
        record.enteredBy = hangar.oren;
        return must(store.records().add(record));
    }

    // All of it, on the day that stood on the paper.
    void inspect(RecordId record, Day day)
    {
        when = noonOf(day);
        inspectFirst(record);
        inspectSecond(record);
        when.reset();
        must(store.records().add(
            RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    }

    Moment moment() { return when.value_or(store.clock().now()); }

    void answer(RecordId record, CheckKind kind, Turn turn)
    {
        Check check{{}, record, hangar.leftAileron, kind, Answer::Yes, turn, {}, moment(), {}};
        check.person = turn == Turn::First ? hangar.oren : hangar.vale;
        must(store.records().add(check));
    }

    void look(RecordId record, Turn turn)
    {
        for (const CheckKind kind :
             {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop})
            answer(record, kind, turn);
    }

    void inspectFirst(RecordId record)
    {
        look(record, Turn::First);
        Reading reading = hangar.reading(between(450, 500), moment());
        reading.record = record;
        must(store.records().add(reading, std::nullopt));
        answer(record, CheckKind::Pull, Turn::First);
        answer(record, CheckKind::Secured, Turn::First);
    }

    void inspectSecond(RecordId record)
    {
        look(record, Turn::Second);
        answer(record, CheckKind::Pull, Turn::Second);
    }

    QuestionsView view() { return must(questions.view(hangar.airframe)); }
    const Question& question(const QuestionsView& now) { return now.rows.front().story.question; }

    StillLacks tryToClose(std::optional<PersonId> by)
    {
        const CloseEntry entry{by, {}, "locked again", "gone through whole"};
        return must(questions.close(hangar.airframe, question(view()).id, entry)).lacks;
    }

    TempStore store;
    Hangar hangar{store.records()};
    PersonId quill;
    ReadingId shown;
    std::optional<Moment> when; // of what is done; empty: now
    BaselineDayPresenter setUp{store.records(), store.clock()};
    QuestionsPresenter questions{store.records()};
};

} // namespace

TEST_F(ShownPartSeated, OpensOneQuestionThatIsToldLikeTheOthers)
{
    demonstrate();
    const QuestionsView now = view();
    ASSERT_EQ(now.openCount, 1) << "one question, however often it is shown";
    EXPECT_EQ(question(now).kind, QuestionKind::ShownPartSeated);
    EXPECT_EQ(titleOf(now.rows.front()).toStdString(), "Left aileron, shown part-seated on purpose");
    EXPECT_EQ(must(questions.open(hangar.airframe)).size(), 1U);
    rig();
    const RiggedTodayView today =
        must(RiggedTodayPresenter{store.records(), store.clock()}.view(hangar.airframe));
    EXPECT_EQ(today.standings.at(hangar.leftAileron).says, Says::Asked);
    EXPECT_EQ(today.standings.at(hangar.leftAileron).asked, QuestionKind::ShownPartSeated);
    EXPECT_FALSE(today.now->find(hangar.leftAileron)->stop) << "it has to be gone through";
}

TEST_F(ShownPartSeated, IsClosedOnlyAfterTheWholeInspectionAndByANamedPerson)
{
    EXPECT_EQ(tryToClose(quill), StillLacks{CloseLack::Inspection});
    EXPECT_TRUE(consequenceOf(view().rows.front()).contains("second person"));
    const RecordId record = rig();
    inspectFirst(record);
    EXPECT_EQ(tryToClose(quill), StillLacks{CloseLack::Inspection}) << "no second person yet";
    inspectSecond(record);
    EXPECT_EQ(tryToClose({}), StillLacks{CloseLack::Person});
    EXPECT_EQ(tryToClose(quill), StillLacks{});
    EXPECT_EQ(view().openCount, 0);
    EXPECT_TRUE(flowOfSleeve(must(store.records().content(record)), hangar.leftAileron, Turn::First).isDone())
        << "nobody has been at the joint for it";
    EXPECT_TRUE(storyOf(view().rows.front()).join(' ').contains("M. Oren and T. Vale have gone"));
}

TEST_F(ShownPartSeated, IsNotClosedByAnInspectionFromBeforeOrOneThatWasCutInTwo)
{
    const RecordId record = rig();
    inspectFirst(record);
    demonstrate();
    inspectSecond(record);
    EXPECT_EQ(tryToClose(quill), StillLacks{CloseLack::Inspection}) << "the first person's was before";
    must(store.records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    const RecordId next = rig();
    inspectFirst(next);
    inspectSecond(next);
    EXPECT_EQ(tryToClose(quill), StillLacks{});
}

TEST_F(ShownPartSeated, IsNotAskedAgainByACorrectionOnPaper)
{
    const RecordId record = rig();
    inspectFirst(record);
    inspectSecond(record);
    ASSERT_EQ(tryToClose(quill), StillLacks{});
    const auto sheet = must(setUp.demonstration(hangar.airframe, hangar.leftAileron, hangar.setA));
    must(setUp.keep(sheet, hangar.oren, hangar.setA, {between(850, 900), Technique::Leaf}, hangar.vale,
                    Correction{shown, "wrong leaf"}));
    EXPECT_EQ(view().openCount, 0);
}

TEST_F(ShownPartSeated, IsNotClosedByAnEarlierRiggingThatWasTypedInFromPaperAfterwards)
{
    inspect(fromPaper(dayOf(2026, 4, 4)), dayOf(2026, 4, 4));
    EXPECT_EQ(tryToClose(quill), StillLacks{CloseLack::Inspection}) << "it was rigged before it was shown";
    store.clock().set(dayOf(2026, 5, 20));
    inspect(fromPaper(dayOf(2026, 5, 16)), dayOf(2026, 5, 16));
    EXPECT_EQ(tryToClose(quill), StillLacks{});
}

TEST_F(ShownPartSeated, IsNotClosedByWhatAnEarlierReadingIsPutRightWith)
{
    const RecordId record = rig();
    inspectFirst(record);
    const Reading before = must(store.records().content(record)).readings.front();
    demonstrate();
    look(record, Turn::First);
    Reading right = before;
    right.id = {};
    right.corrects = before.id;
    right.note = "wrong leaf";
    must(store.records().add(right, std::nullopt));
    answer(record, CheckKind::Pull, Turn::First);
    answer(record, CheckKind::Secured, Turn::First);
    inspectSecond(record);
    EXPECT_EQ(tryToClose(quill), StillLacks{CloseLack::Inspection}) << "its gap was read before it was shown";
}

TEST_F(ShownPartSeated, OnceClosedTellsOfTheInspectionThatItWasClosedWith)
{
    const RecordId record = rig();
    inspectFirst(record);
    inspectSecond(record);
    ASSERT_EQ(tryToClose(quill), StillLacks{});
    const auto closedWith = view().rows.front().inspected;
    ASSERT_TRUE(closedWith);
    must(store.records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    const RecordId next = rig();
    inspectFirst(next);
    inspectSecond(next);
    EXPECT_EQ(view().rows.front().inspected->when, closedWith->when);
    demonstrate();
    EXPECT_EQ(view().rows.back().inspected->when, closedWith->when) << "shown again, under another question";
    EXPECT_FALSE(view().rows.front().inspected);
}
