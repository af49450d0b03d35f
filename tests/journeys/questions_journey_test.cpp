// A question from the reading that opens it to the person who closes it, and one that nobody closes: keyboard
// only, in the whole window.

#include "app/window/main_window.h"
#include "core/rigging/rigging_flow.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QComboBox>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

class QuestionsJourney : public testing::TestWithParam<Pace>
{
protected:
    QuestionsJourney()
    {
        Airframe airframe = must(store.records().airframes()).front();
        airframe.callName = "A. Quill";
        airframe.callPhone = "0700 0";
        must(store.records().add(airframe));
        must(store.records().add(aPerson("A. Quill")));
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        window.resize(1280, 800);
        window.show();
        open();
    }

    void open()
    {
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        Typist::look();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) { typist.press(key, with); }
    void type(const char* text) { typist.type(text); }
    void tabTo(const char* name) { typist.tabTo(name); }

    std::string text(const char* label)
    {
        Typist::look();
        return textOf(window, label);
    }

    bool isShown(Moments moment)
    {
        Typist::look();
        return window.page(moment)->isVisible();
    }

    void begin()
    {
        tabTo("leader");
        press(Qt::Key_Down); // M. Oren
        press(Qt::Key_Tab);
        press(Qt::Key_Return);
        tabTo("seasonNext"); // the first record of the year begins with its list
        press(Qt::Key_Return);
        passWhoConnected(window, typist);
    }

    bool barShown()
    {
        Typist::look();
        return part(window, "questionBar").isVisible();
    }
    std::string bar() { return barShown() ? text("questionBarText") : std::string{}; }

    RecordContent content()
    {
        Typist::look();
        const auto records = must(store.records().riggingRecords(hangar.airframe));
        return must(store.records().content(records.back().id));
    }

    std::string firstChoice()
    {
        Typist::look();
        auto* menu = part<QPushButton>(window, "registration").findChild<QMenu*>();
        emit menu->aboutToShow(); // as when somebody opens it
        return menu->actions().front()->text().toStdString();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Typing, QuestionsJourney, kPaces, nameOfPace);

} // namespace

TEST_P(QuestionsJourney, AnOutsideReadingIsResolvedByAnEngineer)
{
    EXPECT_FALSE(barShown());
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    EXPECT_NE(text("verdictCaution").find("Stop, leave it as it is, call A. Quill (0700 0)"),
              std::string::npos);
    EXPECT_EQ(bar(), "1 open question on QX-17: Left aileron, outside its band since 3 May 2026.");
    EXPECT_NE(firstChoice().find("1 open question"), std::string::npos) << firstChoice();
    type("m0.5"); // a later reading inside the band closes nothing
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Outside the band, and nobody has resolved it");
    EXPECT_EQ(text("verdictExplanation").find("This reading by itself: inside."), 0U);
    type("yy");
    EXPECT_FALSE(flowOfSleeve(content(), hangar.leftAileron, Turn::First).isDone()) << "it is left as it is";
    EXPECT_TRUE(barShown());

    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(isShown(Moments::Trends));
    EXPECT_TRUE(barShown());
    press(Qt::Key_6, Qt::ControlModifier);
    EXPECT_FALSE(isShown(Moments::Trends));
    EXPECT_EQ(text("questionTitle"), "Left aileron, outside its band");
    EXPECT_NE(text("questionStory").find("0.90–0.95 mm, read by M. Oren"), std::string::npos);
    EXPECT_NE(text("questionConsequence").find("Left aileron starts at the look"), std::string::npos);
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Down); // A. Quill
    Typist::look();
    EXPECT_EQ(part<QComboBox>(window, "decidedBy").currentText(), "A. Quill");
    press(Qt::Key_Tab);
    type("grit under the plunger");
    press(Qt::Key_Tab);
    type("cleaned, connected anew");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_NE(text("closeResult").find("Left aileron starts at the look"), std::string::npos);
    EXPECT_FALSE(barShown());
    EXPECT_EQ(firstChoice().find("open question"), std::string::npos) << firstChoice();
    EXPECT_EQ(content().interruptions.back().reason, InterruptionReason::QuestionClosed);

    press(Qt::Key_Escape);
    EXPECT_TRUE(isShown(Moments::Trends)) << "back where one was";
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_TRUE(flowOfSleeve(content(), hangar.leftAileron, Turn::First).interrupted);
    type("0.5"); // the leaves are shut again
    press(Qt::Key_Return);
    EXPECT_TRUE(flowOfSleeve(content(), hangar.leftAileron, Turn::First).readings.empty());
    press(Qt::Key_Escape);
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    type("yy");
    EXPECT_TRUE(flowOfSleeve(content(), hangar.leftAileron, Turn::First).isDone());
    EXPECT_FALSE(barShown()) << "the outside reading no longer blocks";
    EXPECT_FALSE(part(window, "problemBanner").isVisible()) << text("problemText");
}

TEST_P(QuestionsJourney, ACannotSeeStaysOpenUntilSomebodyHasSeenIt)
{
    begin();
    type("yc");
    const std::string said = "1 open question on QX-17: Left aileron, could not be seen since 3 May 2026.";
    EXPECT_EQ(bar(), said);
    EXPECT_NE(text("couplingNotice").find("Take a mirror or a light"), std::string::npos);
    type("y0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Cannot tell: the plunger was not seen");
    type("yy");
    for (const Qt::Key moment : {Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_1}) {
        press(moment, Qt::ControlModifier);
        EXPECT_EQ(bar(), said);
    }
    type("c"); // still without a mirror
    EXPECT_EQ(bar(), said);
    type("y"); // with one: the same question is asked again at the end
    EXPECT_FALSE(barShown());
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    EXPECT_TRUE(content().interruptions.empty()) << "nobody is sent back to the look for a mirror";
    open(); // the next morning
    EXPECT_FALSE(barShown());
}

TEST_P(QuestionsJourney, WhatWasFeltOpensNoQuestionAndStaysVisibleAsFelt)
{
    begin();
    type("yfy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    EXPECT_FALSE(barShown());
    Typist::look();
    const auto buttons = part(window, "tile1").findChildren<QPushButton*>();
    EXPECT_EQ(std::ranges::count_if(buttons, &QPushButton::isChecked), 1);
    for (const QPushButton* button : buttons)
        EXPECT_EQ(button->isChecked(), button->text().startsWith("Felt")) << button->text().toStdString();
}

TEST_P(QuestionsJourney, AStopIsToldToWhoeverWorksOnEveryPage)
{
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    type("yy");
    EXPECT_NE(bar().find("outside"), std::string::npos);
    const std::string told = bar();
    type("s");
    EXPECT_EQ(bar(), told);
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(bar(), told) << "on every page that they go to";
}

TEST_P(QuestionsJourney, TheLineNamesAsManyQuestionsAsFitAndClipsNothing)
{
    for (const QuestionKind kind : {QuestionKind::OutsideReading, QuestionKind::ReadingsDisagree,
                                    QuestionKind::SidesSwapped, QuestionKind::CannotSee}) {
        Question question;
        question.airframe = hangar.airframe;
        question.kind = kind;
        question.coupling = hangar.rightAileron;
        must(store.records().add(question));
    }
    open();
    EXPECT_NE(bar().find("4 open questions on QX-17: Right aileron, outside its band since 3 May 2026"),
              std::string::npos)
        << bar();
    EXPECT_NE(bar().find("more."), std::string::npos) << bar();
    for (const double scale : {1.0, 1.5, 2.0}) {
        window.setLook(lookAt(scale));
        Typist::look();
        expectNothingClipped(part(window, "questionBar"), 2);
        EXPECT_NE(bar().find("4 open questions"), std::string::npos) << bar();
    }
}

TEST_P(QuestionsJourney, AStopLeadsToItsOwnQuestionAndToNoOther)
{
    begin();
    type("n");               // the left aileron
    press(Qt::Key_PageDown); // the right one
    type("n");
    ASSERT_EQ(content().questions.size(), 2U);
    for (const CouplingId joint : {hangar.rightAileron, hangar.leftAileron}) {
        press(Qt::Key_6, Qt::ControlModifier);
        Typist::look();
        const std::string name = joint == hangar.leftAileron ? "Left aileron" : "Right aileron";
        EXPECT_EQ(text("questionTitle").find(name), 0U) << text("questionTitle");
        press(Qt::Key_Escape);
        Typist::look();
        press(Qt::Key_PageUp);
    }
}

TEST_P(QuestionsJourney, EscLeavesTheQuestionsWhereverTheFocusIs)
{
    press(Qt::Key_6, Qt::ControlModifier);
    Typist::look();
    for (const char* beside : {"registration", "fileMenu"}) {
        SCOPED_TRACE(beside);
        window.showQuestions();
        part(window, beside).setFocus();
        press(Qt::Key_Escape);
        EXPECT_TRUE(isShown(Moments::RiggedToday));
    }
}
