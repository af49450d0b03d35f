// While the second person has not read for themselves, no page tells what the first person read today.

#include "app/pages/annual/annual_presenter.h"
#include "app/pages/questions/questions_page.h"
#include "app/pages/questions/questions_presenter.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/setup/setup_presenter.h"
#include "app/pages/trends/trends_page.h"
#include "app/pages/trends/trends_presenter.h"
#include "app/wording/rigged_words.h"
#include "core/store/ask.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// A band on the left aileron; a record of today in which the first person is at work there.
class BlindPages : public testing::Test
{
protected:
    BlindPages()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        record = must(store.records().add(hangar.record(store.clock().now())));
        look(Turn::First);
        first = read(450, Turn::First);
    }

    void answer(CheckKind kind, Turn turn)
    {
        Check check{{}, record, hangar.leftAileron, kind, Answer::Yes, turn, {}, store.clock().now(), {}};
        check.person = turn == Turn::First ? hangar.oren : hangar.vale;
        must(store.records().add(check));
    }

    void look(Turn turn)
    {
        for (const CheckKind kind :
             {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop})
            answer(kind, turn);
    }

    ReadingId read(int entersUm, Turn turn)
    {
        store.clock().passMinutes(1);
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), store.clock().now());
        reading.record = record;
        reading.turn = turn;
        reading.person = turn == Turn::First ? hangar.oren : hangar.vale;
        return must(store.records().add(reading, std::nullopt));
    }

    void finishFirst()
    {
        answer(CheckKind::Pull, Turn::First);
        answer(CheckKind::Secured, Turn::First);
    }

    QuestionId ask(QuestionKind kind)
    {
        Question question;
        question.airframe = hangar.airframe;
        question.kind = kind;
        question.record = record;
        question.coupling = hangar.leftAileron;
        question.reading = first;
        return must(store.records().add(question));
    }

    bool knowsTheFirst(const std::vector<Reading>& readings)
    {
        return std::ranges::find(readings, first, &Reading::id) != readings.end();
    }

    // On each page that draws or lists readings.
    void expectTold(bool told)
    {
        const TrendsView trends =
            must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
        std::vector<Reading> listed;
        for (const TrendsReading& one : trends.find(hangar.leftAileron)->readings)
            listed.push_back(one.reading);
        EXPECT_EQ(knowsTheFirst(listed), told);
        EXPECT_EQ(trends.closed.isEmpty(), told);
        const auto& spoken = trends.find(hangar.leftAileron)->standing.reading;
        EXPECT_EQ(spoken && spoken->id == first, told);
        const AnnualPresenter annual{store.records(), store.clock()};
        EXPECT_EQ(knowsTheFirst(must(annual.facts(hangar.airframe)).readingsOf(hangar.leftAileron)), told);
        const AnnualView view = must(annual.view(hangar.airframe, {}));
        EXPECT_EQ(view.counted.contains("What the first person found is hidden here: Left aileron."), !told);
        const auto row = std::ranges::find(view.rows, QString{"Left aileron"}, &AnnualRow::name);
        ASSERT_NE(row, view.rows.end());
        EXPECT_EQ(row->bar.reading.has_value(), told);
        for (const QuestionRow& asked : must(QuestionsPresenter{store.records()}.view(hangar.airframe)).rows)
            EXPECT_EQ(!asked.readings.empty(), told);
    }

    TempStore store;
    Hangar hangar{store.records()};
    RecordId record;
    ReadingId first;
};

} // namespace

TEST_F(BlindPages, TellTheReadingWhileOnlyTheFirstPersonIsAtWork)
{
    expectTold(true);
}

TEST_F(BlindPages, TellNothingOfItFromThenOnUntilTheSecondHasReadForThemselves)
{
    ask(QuestionKind::SidesSwapped); // its story would tell the figure
    finishFirst();
    expectTold(false);
    look(Turn::Second);
    expectTold(false);
    const ReadingId own = read(500, Turn::Second);
    const TrendsView now = must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
    EXPECT_TRUE(now.closed.isEmpty());
    const auto& readings = now.find(hangar.leftAileron)->readings;
    EXPECT_EQ(readings.back().reading.id, own);
    EXPECT_EQ(std::prev(readings.end(), 2)->reading.id, first);
}

TEST_F(BlindPages, TellItAgainWhenTheSecondHasFinishedWithoutAReading)
{
    finishFirst();
    look(Turn::Second);
    answer(CheckKind::Pull, Turn::Second);
    expectTold(true);
}

TEST_F(BlindPages, TellNothingOfItWhereTheSecondHasBegunBeforeTheFirstWasDone)
{
    answer(CheckKind::BallInSocket, Turn::Second);
    expectTold(false);
}

TEST_F(BlindPages, TellWhatLayOutsideToEverybody)
{
    ask(QuestionKind::OutsideReading);
    finishFirst();
    const TrendsView now = must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
    EXPECT_TRUE(now.closed.isEmpty());
    EXPECT_EQ(now.find(hangar.leftAileron)->standing.says, Says::Outside);
}

// Neither in the list nor by the count beside every page.
TEST_F(BlindPages, TellNotWhatTheFirstPersonCouldNotSee)
{
    ask(QuestionKind::CannotSee);
    QuestionsPresenter questions{store.records()};
    finishFirst();
    EXPECT_EQ(must(questions.open(hangar.airframe)).size(), 1U) << "the first person goes for a mirror";
    questions.setBlind(true);
    EXPECT_TRUE(must(questions.open(hangar.airframe)).empty());
    questions.setBlind(false);
    answer(CheckKind::BallInSocket, Turn::Second);
    EXPECT_TRUE(must(questions.open(hangar.airframe)).empty()) << "in every window from then on";
    const QuestionsView view = must(questions.view(hangar.airframe));
    EXPECT_TRUE(view.rows.empty());
    EXPECT_EQ(view.openCount, 0);
    QuestionsPage page{store.records()};
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    EXPECT_NE(textOf(page, "questionsMessage").find("hidden here: Left aileron"), std::string::npos);
    ask(QuestionKind::SidesSwapped);
    page.catchUp();
    EXPECT_NE(textOf(page, "closedToSecond").find("hidden here: Left aileron"), std::string::npos);
    read(500, Turn::Second);
    EXPECT_EQ(must(questions.open(hangar.airframe)).size(), 2U);
    page.catchUp();
    EXPECT_FALSE(part(page, "closedToSecond").isVisible());
}

// What an earlier rigging said of it is no green mark beside a finding that is kept back.
TEST_F(BlindPages, StandHiddenAndNeverAsTheRiggingBeforeDid)
{
    Reading before = hangar.reading(between(450, 500), store.clock().now());
    RiggingRecord earlier = hangar.record(store.clock().now());
    earlier.begins.utcSeconds -= 7 * 86400;
    before.when = earlier.begins;
    before.record = must(store.records().add(earlier));
    must(store.records().add(before, std::nullopt));
    must(store.records().add(
        RecordClose{{}, *before.record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    finishFirst();
    const TrendsView trends = must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
    EXPECT_EQ(trends.find(hangar.leftAileron)->standing.says, Says::Hidden);
    const AnnualView annual = must(AnnualPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
    const auto row = std::ranges::find(annual.rows, QString{"Left aileron"}, &AnnualRow::name);
    ASSERT_NE(row, annual.rows.end());
    EXPECT_EQ(row->says, Says::Hidden);
    EXPECT_EQ(row->saysInWords, "hidden");
    EXPECT_FALSE(row->bar.reading);
}

TEST_F(BlindPages, AgreeOnWhatIsHiddenBeforeAndFromTheSecondPersonsTurnOn)
{
    ask(QuestionKind::CannotSee);
    finishFirst();
    QuestionsPresenter questions{store.records()};
    const auto says = [&] {
        return must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}))
            .find(hangar.leftAileron)
            ->standing.says;
    };
    EXPECT_TRUE(must(questions.view(hangar.airframe)).closedToSecond.empty())
        << "nothing is said to be hidden beside what tells it";
    EXPECT_EQ(says(), Says::Asked);
    questions.setBlind(true);
    EXPECT_EQ(must(questions.view(hangar.airframe)).closedToSecond, std::vector<std::string>{"Left aileron"});
    EXPECT_TRUE(must(questions.view(hangar.airframe)).rows.empty());
    EXPECT_EQ(says(), Says::Hidden) << "on every page, not only among the questions";
}

TEST_F(BlindPages, AreNotLeftByTheKeyThatChangesTheTurn)
{
    finishFirst();
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    while (!part(page, "measuredBy").isVisible()) // to the joint, past the season's list and who connected
        typeSlowly(page, "\r");
    typeSlowly(page, "s");
    chooseIn(page, "measuredBy", 2);
    typeSlowly(page, "ys");
    EXPECT_FALSE(part(page, "verdictWord").isVisible());
    EXPECT_TRUE(page.isBlind());
    EXPECT_NE(textOf(page, "couplingNotice").find("under way"), std::string::npos)
        << textOf(page, "couplingNotice");
}

TEST_F(BlindPages, TellItOnceTheRecordIsClosedOrOfAnotherDay)
{
    finishFirst();
    store.clock().passMinutes(24 * 60);
    EXPECT_TRUE(
        must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {})).closed.isEmpty());
    must(store.records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    expectTold(true);
}

TEST_F(BlindPages, TellNoJointPlayThatWasFeltThereEither)
{
    JointPlay play;
    play.coupling = hangar.leftAileron;
    play.record = record;
    play.day = store.clock().now().localDay();
    play.along = {PlayFelt::Felt, Gap::micrometres(150)};
    play.person = hangar.oren;
    must(store.records().add(play));
    const AnnualPresenter annual{store.records(), store.clock()};
    const SetUpPresenter setUp{store.records(), store.clock()};
    EXPECT_EQ(must(annual.facts(hangar.airframe)).jointPlays.size(), 1U);
    finishFirst();
    EXPECT_TRUE(must(annual.facts(hangar.airframe)).jointPlays.empty());
    EXPECT_TRUE(must(setUp.view(hangar.airframe)).plays.empty());
    read(500, Turn::Second);
    EXPECT_EQ(must(annual.facts(hangar.airframe)).jointPlays.size(), 1U);
    EXPECT_EQ(must(setUp.view(hangar.airframe)).plays.size(), 1U);
}

TEST_F(BlindPages, TellNothingOfARiggingThatIsBeingTypedInFromPaperWhateverItsDay)
{
    must(store.records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    store.clock().passMinutes(3 * 24 * 60);
    RiggingRecord paper = hangar.record(store.clock().now());
    paper.enteredBy = hangar.oren;
    record = must(store.records().add(paper));
    store.clock().passMinutes(24 * 60);
    look(Turn::First);
    first = read(450, Turn::First);
    finishFirst();
    const AnnualPresenter annual{store.records(), store.clock()};
    const TrendsPresenter trends{store.records(), store.clock()};
    EXPECT_FALSE(knowsTheFirst(must(annual.facts(hangar.airframe)).readingsOf(hangar.leftAileron)));
    EXPECT_FALSE(must(trends.view(hangar.airframe, {})).closed.isEmpty());
    read(500, Turn::Second);
    EXPECT_TRUE(knowsTheFirst(must(annual.facts(hangar.airframe)).readingsOf(hangar.leftAileron)));
}

TEST_F(BlindPages, SayWhyAndHowItOpensOnTrends)
{
    finishFirst();
    TrendsPage page{store.records(), store.clock()};
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    ASSERT_TRUE(part(page, "closedToSecond").isVisible());
    const std::string said = textOf(page, "closedToSecond");
    EXPECT_NE(said.find("Left aileron"), std::string::npos);
    EXPECT_NE(said.find("It is shown when"), std::string::npos);
    read(500, Turn::Second);
    page.showAirframe(hangar.airframe);
    EXPECT_FALSE(part(page, "closedToSecond").isVisible());
}

TEST_F(BlindPages, SayThatASecondInspectionIsNotBegunUntilSomebodyIsChosenOrHasAnswered)
{
    finishFirst();
    RiggedTodayPresenter presenter{store.records(), store.clock()};
    RecordList list;
    RiggingSession session = sessionOf(record, hangar.oren, {});
    const auto said = [&] {
        const RiggedTodayView view = must(presenter.view(hangar.airframe));
        session.place = {RecordPlace::Kind::Coupling, hangar.leftAileron};
        list.display(view, session);
        for (const auto* row : list.findChildren<MarkRow*>())
            if (row->accessibleName() == RiggedWords::secondInspection())
                return row->accessibleDescription();
        return QString{};
    };
    EXPECT_EQ(said(), "not begun");
    session.turn = Turn::Second; // its page is open
    EXPECT_EQ(said(), "not begun");
    EXPECT_EQ(textOf(list, "recordProgress"), "Second inspection not begun");
    session.turn = Turn::First; // and left again
    EXPECT_EQ(said(), "not begun");
    EXPECT_EQ(textOf(list, "recordProgress"), "1 of 2 couplings done");
    session.second = hangar.vale;
    EXPECT_EQ(said(), "Second person: 0 of 2 done");
    session.second.reset();
    answer(CheckKind::BallInSocket, Turn::Second);
    EXPECT_EQ(said(), "Second person: 0 of 2 done") << "somebody has been at it";
}
