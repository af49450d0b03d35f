// Somebody types ahead of the screen, as those do who have rigged this aircraft a hundred times: no key
// waits for what the program puts off, in the whole window. What was pressed stands where it was pressed,
// also when the file is busy for two seconds.

#include "app/pages/prompts.h"
#include "app/widgets/question_cover.h"
#include "app/window/main_window.h"
#include "core/rigging/rigging_flow.h"
#include "tests/support/file_held.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

#include <algorithm>
#include <array>

using namespace rig;
using namespace rig::test;

namespace {

// Each has a band of its own, so far from the others' that a reading on the wrong one cannot lie inside.
struct Joint
{
    const char* name;
    int gap; // the leaf that always enters
    CouplingId id;
};

class TypedAhead : public testing::TestWithParam<Pace>
{
protected:
    TypedAhead()
    {
        for (std::size_t i = 0; i < joints.size(); ++i)
            giveBaseline(joints[i], i);
        store.clock().passMinutes(24 * 60);
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        typist.goTo("leader");
        typist.press(Qt::Key_Down); // M. Oren
        typist.press(Qt::Key_Tab);
        typist.press(Qt::Key_Return);
        typist.goTo("seasonNext");
        typist.press(Qt::Key_Return);
        passWhoConnected(window, typist);
        Typist::look();
    }

    void giveBaseline(Joint& joint, std::size_t at)
    {
        const std::array fittings{hangar.leftFitting, hangar.rightFitting};
        joint.id = at == 0 ? hangar.leftAileron : hangar.rightAileron;
        FittingId fitting = at < 2 ? fittings[at] : FittingId{};
        if (at == 2) {
            joint.id = must(store.records().add(aCoupling(hangar.airframe, joint.name)));
            Fitting first;
            first.coupling = joint.id;
            first.begins = dayOf(2026, 3, 1);
            fitting = must(store.records().add(first));
        }
        for (int i = 0; i < 12; ++i) {
            const int enters = i % 3 ? joint.gap : joint.gap - 50;
            Reading reading = hangar.reading(between(enters, enters + 50), store.clock().now());
            reading.coupling = joint.id;
            reading.fitting = fitting;
            reading.purpose = Purpose::Baseline;
            must(store.records().add(reading, std::nullopt));
        }
    }

    void chooseSecond()
    {
        typist.goTo("measuredBy");
        typist.press(Qt::Key_Down); // the first of those who may be second
    }

    RecordContent content()
    {
        Typist::look();
        return must(store.records().content(must(store.records().riggingRecords(hangar.airframe)).back().id));
    }

    // The one reading of this joint by the first or the second person, with the verdict that was shown.
    void expectOneReading(const Joint& joint, Turn turn, Verdict shown = Verdict::Inside)
    {
        Typist::look();
        std::vector<KeptReading> found;
        for (const KeptReading& kept : must(store.records().readingsOf(joint.id)))
            if (kept.reading.purpose == Purpose::Rigging && kept.reading.turn == turn)
                found.push_back(kept);
        ASSERT_EQ(found.size(), 1U) << joint.name;
        EXPECT_EQ(found.front().reading.interval, between(joint.gap, joint.gap + 50)) << joint.name;
        EXPECT_EQ(found.front().reading.person, turn == Turn::First ? hangar.oren : hangar.vale)
            << joint.name;
        ASSERT_TRUE(found.front().shown) << joint.name;
        EXPECT_EQ(found.front().shown->judgement.verdict, shown) << joint.name;
    }

    void expectDone(const Joint& joint, Turn turn)
    {
        expectOneReading(joint, turn);
        EXPECT_TRUE(flowOfSleeve(content(), joint.id, turn).isDone()) << joint.name;
    }

    void expectUntouched(const Joint& joint)
    {
        const RecordContent now = content();
        EXPECT_EQ(std::ranges::count(now.readings, joint.id, &Reading::coupling), 0) << joint.name;
        EXPECT_EQ(std::ranges::count(now.checks, joint.id, &Check::coupling), 0) << joint.name;
    }

    std::string onPage(const char* label)
    {
        Typist::look();
        return textOf(*window.page(Moments::RiggedToday), label);
    }

    // To what is asked next in a window of its own.
    static void answerNext(const char* button)
    {
        QTimer::singleShot(
            0, qApp, [button] { part<QPushButton>(*QApplication::activeModalWidget(), button).click(); });
    }

    void expectNoProblem()
    {
        EXPECT_FALSE(part(window, "problemBanner").isVisible()) << textOf(window, "problemText");
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::array<Joint, 3> joints{
        {{"Left aileron", 500, {}}, {"Right aileron", 700, {}}, {"Elevator", 300, {}}}};
    WindowPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Typing, TypedAhead, kPaces, nameOfPace);

constexpr const char* kThreeJoints = "yyy0.50\nyy\nyyy0.70\nyy\nyyy0.30\nyy\n";

} // namespace

TEST_P(TypedAhead, ThreeCouplingsHaveTheirOwnReadingsAndVerdicts)
{
    typist.type(kThreeJoints);
    for (const Joint& joint : joints)
        expectDone(joint, Turn::First);
    EXPECT_EQ(content().readings.size(), 3U);
    EXPECT_TRUE(content().questions.empty());
    EXPECT_EQ(onPage("recordProgress"), "Second inspection not begun");
    expectNoProblem();
}

TEST_P(TypedAhead, PageDownAfterEnterLeavesTheReadingWhereItWasTaken)
{
    typist.type("yyy0.50\n");
    typist.press(Qt::Key_PageDown);
    expectOneReading(joints[0], Turn::First);
    expectUntouched(joints[1]);
    EXPECT_EQ(onPage("couplingTitle"), "Right aileron");
}

TEST_P(TypedAhead, AClickOnAnotherCouplingAfterEnterLeavesTheReadingWhereItWasTaken)
{
    typist.type("yyy0.50\n");
    typist.click(part(window, "recordRow3"));
    expectOneReading(joints[0], Turn::First);
    expectUntouched(joints[1]);
    EXPECT_EQ(onPage("couplingTitle"), "Right aileron");
}

TEST_P(TypedAhead, ASecondPersonCalledAfterEnterLosesNoReading)
{
    typist.type("yyy0.50\ns");
    expectOneReading(joints[0], Turn::First);
    EXPECT_EQ(content().readings.size(), 1U);
}

TEST_P(TypedAhead, TheSecondPersonsReadingsAreHisOwn)
{
    typist.type(kThreeJoints);
    typist.goTo("recordRow5");
    typist.press(Qt::Key_Space);
    chooseSecond();
    typist.type("yyy0.50\ny\nyyy0.70\ny\nyyy0.30\ny\n");
    for (const Joint& joint : joints) {
        expectOneReading(joint, Turn::First);
        expectDone(joint, Turn::Second);
    }
    EXPECT_EQ(content().readings.size(), 6U);
    expectNoProblem();
}

TEST_P(TypedAhead, AControlCheckHasEveryAnswerAtItsSurface)
{
    typist.goTo("recordRow6");
    typist.press(Qt::Key_Space);
    typist.press(Qt::Key_Return); // the usual surfaces
    typist.goTo("atSurface");
    typist.press(Qt::Key_Down);
    typist.press(Qt::Key_Tab);
    typist.press(Qt::Key_Down); // M. Oren again, and nothing may be tried
    typist.press(Qt::Key_Down); // T. Vale
    typist.type("yy↑↓yyyy\nyy↓↑yyyy\nyy↑↓yyy\nyy↑↓yyy\nyy↑↓yyyy\nyy←→yyyy\n↑↓yyy\n");
    EXPECT_EQ(content().surfaceChecks.size(), 51U);
    EXPECT_EQ(part(window, "recordRow6").accessibleDescription(), "7 of 7 surfaces");
    EXPECT_EQ(onPage("couplingTitle"), "Left aileron") << "the second inspection";
    expectNoProblem();
}

TEST_P(TypedAhead, TheCloseKeepsBothNames)
{
    typist.type(kThreeJoints);
    typist.goTo("recordRow7");
    typist.press(Qt::Key_Space);
    typist.goTo("toolsCounted");
    typist.type(" ");
    typist.press(Qt::Key_Tab);
    typist.type(" "); // hatches
    typist.press(Qt::Key_Tab);
    typist.press(Qt::Key_Down); // M. Oren
    typist.press(Qt::Key_Tab);
    typist.press(Qt::Key_Down);
    typist.press(Qt::Key_Down); // T. Vale
    typist.press(Qt::Key_Tab);
    typist.type("in the rain");
    typist.press(Qt::Key_Tab);
    typist.press(Qt::Key_Return);
    const RecordContent closed = content();
    ASSERT_TRUE(closed.close);
    EXPECT_EQ(closed.close->first, hangar.oren);
    EXPECT_EQ(closed.close->second, hangar.vale);
    EXPECT_EQ(closed.close->note, "in the rain");
    EXPECT_EQ(closed.readings.size(), 3U);
    expectNoProblem();
}

TEST_P(TypedAhead, ThreeCouplingsWaitForAFileThatIsBusy)
{
    typist.type("yyy");
    Typist::look();
    const FileHeld held{store.path()};
    typist.type("0.50\nyy\nyyy0.70\nyy\nyyy0.30\nyy\n");
    for (const Joint& joint : joints)
        expectDone(joint, Turn::First);
    EXPECT_FALSE(held.isHeld()) << "the save did not wait";
    EXPECT_EQ(content().readings.size(), 3U);
    expectNoProblem();
}

TEST_P(TypedAhead, PageDownWhileTheFileIsBusyLeavesTheReadingWhereItWasTaken)
{
    typist.type("yyy");
    Typist::look();
    const FileHeld held{store.path()};
    typist.type("0.50\n");
    typist.press(Qt::Key_PageDown);
    expectOneReading(joints[0], Turn::First);
    EXPECT_FALSE(held.isHeld()) << "the save did not wait";
    expectUntouched(joints[1]);
    EXPECT_EQ(onPage("couplingTitle"), "Right aileron");
    expectNoProblem();
}

TEST_P(TypedAhead, ALetterInsideAFigureSpoilsTheFigureAndAnswersNothing)
{
    typist.type("yyy0.50\nm"); // to be measured again; the pull waits for its answer
    for (const char* spoilt : {"0y.50\n", "0.n5\n", "0.5c\n", "0.5s\n", "0.5x\n"}) {
        SCOPED_TRACE(spoilt);
        typist.type(spoilt);
        EXPECT_FALSE(onPage("typedMeaning").empty());
        const RecordContent now = content();
        EXPECT_EQ(now.readings.size(), 1U);
        EXPECT_EQ(now.checks.size(), 3U) << "nothing but the look was answered";
        EXPECT_TRUE(now.exclusions.empty());
        EXPECT_TRUE(now.questions.empty());
    }
    typist.type("0.50\nyy\n"); // the next figure begins anew
    EXPECT_EQ(content().readings.size(), 2U);
    EXPECT_TRUE(flowOfSleeve(content(), joints[0].id, Turn::First).isDone());
    expectNoProblem();
}

TEST_P(TypedAhead, AnAnswerInsideTheFirstFigureIsNotLeftOutOfIt)
{
    typist.type("yyy0.y50\n");
    EXPECT_TRUE(content().readings.empty()) << "never 0.50";
    EXPECT_NE(onPage("typedMeaning").find("y"), std::string::npos) << onPage("typedMeaning");
}

TEST_P(TypedAhead, AReasonIsWholeAndTheFigureBehindItIsInItsPlace)
{
    typist.type("yyy0.50\nxread on the wrong joint\n0.45\nyy\n");
    const RecordContent now = content();
    ASSERT_EQ(now.exclusions.size(), 1U);
    EXPECT_EQ(now.exclusions.front().reason, "read on the wrong joint");
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.exclusions.front().reading, now.readings.front().id);
    EXPECT_EQ(now.readings.back().interval, between(450, 500));
    EXPECT_FALSE(now.readings.back().corrects);
    EXPECT_TRUE(flowOfSleeve(now, joints[0].id, Turn::First).isDone());
    expectUntouched(joints[1]);
    expectNoProblem();
}

TEST_P(TypedAhead, AFigureBehindAReasonIsTheCorrection)
{
    typist.type("yyy0.45\nwpressed the neighbour\n0.50\nyy\nyyy0.70\n");
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 3U);
    EXPECT_EQ(now.readings[1].corrects, now.readings[0].id);
    EXPECT_EQ(now.readings[1].note, "pressed the neighbour");
    EXPECT_EQ(now.readings[1].interval, between(500, 550));
    expectOneReading(joints[1], Turn::First);
    expectNoProblem();
}

TEST_P(TypedAhead, AFigureThatIsTypedInPlaceOfAReasonIsNone)
{
    typist.type("yyy0.45\nw0.50\nyy\nyyy0.70\n");
    Typist::look();
    EXPECT_TRUE(QuestionCover::standsOn(window)) << "why is still asked";
    EXPECT_TRUE(part(window, "promptRefused").isVisible());
    EXPECT_EQ(content().readings.size(), 1U);
    typist.type("pressed the neighbour\n0.50\nyy\n");
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings[1].corrects, now.readings[0].id);
    EXPECT_EQ(now.readings[1].note, "pressed the neighbour");
    EXPECT_EQ(now.readings[1].interval, between(500, 550));
    EXPECT_TRUE(flowOfSleeve(now, joints[0].id, Turn::First).isDone());
    expectUntouched(joints[1]);
    expectNoProblem();
}

TEST_P(TypedAhead, TurningAwayFromAReasonLosesNoKeyEither)
{
    typist.type("yyy0.50\nxld");
    typist.press(Qt::Key_Escape);
    typist.type("yy\nyyy0.70\n");
    EXPECT_TRUE(content().exclusions.empty());
    EXPECT_TRUE(content().interruptions.empty()) << "the page's own Esc";
    expectDone(joints[0], Turn::First);
    expectOneReading(joints[1], Turn::First);
}

TEST_P(TypedAhead, NoKeyOfTheWindowWorksWhileAReasonIsAskedFor)
{
    typist.type("yyy0.50\nx");
    for (const Qt::Key key : {Qt::Key_2, Qt::Key_5, Qt::Key_6, Qt::Key_N, Qt::Key_O, Qt::Key_Q})
        typist.press(key, Qt::ControlModifier);
    for (const Qt::Key key : {Qt::Key_F9, Qt::Key_F1, Qt::Key_PageDown, Qt::Key_PageUp})
        typist.press(key);
    typist.click(part(window, "moment2"));
    typist.type(" \nheld");
    Typist::look();
    EXPECT_TRUE(QuestionCover::standsOn(window));
    EXPECT_TRUE(window.isVisible());
    EXPECT_TRUE(window.page(Moments::RiggedToday)->isVisible());
    EXPECT_FALSE(QApplication::activePopupWidget());
    typist.type("\n0.50\n");
    ASSERT_EQ(content().exclusions.size(), 1U);
    EXPECT_EQ(content().exclusions.front().reason, "held");
    EXPECT_EQ(content().readings.size(), 2U);
    EXPECT_FALSE(QuestionCover::standsOn(window));
}

TEST_P(TypedAhead, TabGoesRoundWithinTheQuestion)
{
    typist.type("yyy0.50\nxheld");
    std::vector<QString> seen;
    for (int i = 0; i < 3; ++i) {
        typist.press(Qt::Key_Tab);
        Typist::look();
        seen.push_back(typist.focused());
    }
    EXPECT_EQ(seen, (std::vector<QString>{"promptTake", "promptLeave", "promptLine"}));
    typist.press(Qt::Key_Backtab, Qt::ShiftModifier);
    typist.press(Qt::Key_Return); // leaves
    EXPECT_TRUE(content().exclusions.empty());
    EXPECT_FALSE(QuestionCover::standsOn(window));
}

TEST_P(TypedAhead, ACloseOfTheWindowAsksOnceAboutAReasonThatIsTyped)
{
    typist.type("yyy0.50\nxheld");
    Typist::look();
    answerNext("promptLeave");
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(QuestionCover::standsOn(window));
    EXPECT_EQ(part<QLineEdit>(window, "promptLine").text(), "held");
    answerNext("promptYes");
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(must(store.records().exclusions(hangar.airframe)).empty());
}

TEST_P(TypedAhead, ACloseOfTheWindowAsksNothingWhereNoReasonIsTyped)
{
    typist.type("yyy0.50\nx");
    Typist::look();
    EXPECT_TRUE(window.close());
}

TEST_P(TypedAhead, AQuestionGoesWithThePageThatAsked)
{
    typist.type("yyy0.50\nxheld");
    Typist::look();
    window.openDemo();
    EXPECT_FALSE(QuestionCover::standsOn(window));
    typist.type("\n");
    EXPECT_TRUE(content().exclusions.empty());
    expectNoProblem();
}

TEST_P(TypedAhead, AQuestionCoversTheWindowInEverySize)
{
    typist.type("yyy0.50\nx");
    Typist::look();
    for (const QSize size : {QSize{1024, 740}, QSize{1600, 1000}}) {
        window.resize(size);
        Typist::look();
        EXPECT_EQ(part(window, "questionCover").geometry(), QRect({}, size));
        EXPECT_LE(std::abs(part(window, "questionCard").geometry().center().x() - size.width() / 2), 1);
        EXPECT_EQ(typist.focused(), "promptLine");
    }
}
