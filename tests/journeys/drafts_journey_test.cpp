// What stands typed when a signal ends the program is told at the next start.

#include "app/widgets/question_cover.h"
#include "app/window/main_window.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QApplication>
#include <QClipboard>
#include <QPlainTextEdit>
#include <QSettings>
#include <QTest>

using namespace rig;
using namespace rig::test;

namespace {

class DraftsJourney : public testing::Test
{
protected:
    DraftsJourney()
    {
        QSettings{}.clear();
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), {}));
        Question question;
        question.airframe = hangar.airframe;
        question.kind = QuestionKind::CannotSee;
        question.coupling = hangar.rightAileron;
        question.stamp.by = hangar.oren;
        must(store.records().add(question));
        store.close();
        start();
    }
    ~DraftsJourney() override { QSettings{}.clear(); }

    void start()
    {
        window = std::make_unique<MainWindow>(store.clock(), prompts);
        window->resize(1280, 800);
        window->show();
        window->openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window->activateWindow();
        Typist::look();
    }
    void typeAStatement(const char* words)
    {
        window->showMoment(Moments::Trends);
        Typist::look();
        Typist typist{*window};
        typist.press(Qt::Key_F);
        Typist::look();
        auto& said = part<QPlainTextEdit>(*window->page(Moments::Trends), "statementSaid");
        said.setFocus();
        typist.type(QLatin1String(words));
        Typist::look();
        ASSERT_EQ(said.toPlainText().toStdString(), words);
    }
    void end()
    {
        window->closeUnasked();
        EXPECT_TRUE(QTest::qWaitFor([this] { return !window->isVisible(); }));
        window.reset();
    }
    bool isTold() { return part(*window, "draftBar").isVisible(); }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    std::unique_ptr<MainWindow> window;
};

} // namespace

TEST_F(DraftsJourney, WhatWasTypedIsToldUntilSomebodyPutsItAway)
{
    EXPECT_FALSE(isTold());
    typeAStatement("a flat on the ball");
    end();
    for (int i = 0; i < 2; ++i) { // and again, where it was only looked at
        start();
        ASSERT_TRUE(isTold());
        EXPECT_NE(textOf(*window, "draftBarText")
                      .find("QX-17, Trends, Left aileron, What was found: “a flat on the ball”"),
                  std::string::npos)
            << textOf(*window, "draftBarText");
        window->close();
        window.reset();
    }
    start();
    part<QPushButton>(*window, "copyDrafts").click();
    EXPECT_NE(QApplication::clipboard()->text().indexOf("a flat on the ball"), -1);
    part<QPushButton>(*window, "forgetDrafts").click();
    EXPECT_FALSE(isTold());
    window.reset();
    start();
    EXPECT_FALSE(isTold());
}

TEST_F(DraftsJourney, NothingIsToldOfWhatWasSavedOrTurnedAway)
{
    end();
    start();
    EXPECT_FALSE(isTold()) << "nothing was typed";
    typeAStatement("a flat on the ball");
    prompts.confirmations.push_back(true);
    EXPECT_TRUE(window->close());
    EXPECT_EQ(prompts.asked.size(), 1U);
    window.reset();
    start();
    EXPECT_FALSE(isTold()) << "whoever closed it was asked";
}

TEST_F(DraftsJourney, WhatIsTypedAtAQuestionIsAskedAboutAndToldWithWhichItIs)
{
    window->showQuestions();
    Typist::look();
    Typist typist{*window};
    typist.press(Qt::Key_Return);
    part<QPlainTextEdit>(*window, "questionFound").setFocus();
    typist.type("a burr");
    Typist::look();
    EXPECT_FALSE(window->close());
    ASSERT_EQ(prompts.asked.size(), 1U);
    EXPECT_NE(prompts.asked[0].find("typed at a question and not saved"), std::string::npos)
        << prompts.asked[0];
    end();
    start();
    ASSERT_TRUE(isTold());
    EXPECT_NE(
        textOf(*window, "draftBarText").find("Right aileron, could not be seen, What was found: “a burr”"),
        std::string::npos)
        << textOf(*window, "draftBarText");
}

TEST_F(DraftsJourney, AReasonThatIsTypedIsToldToo)
{
    window->showMoment(Moments::Trends);
    Typist::look();
    new QuestionCover{*window->page(Moments::Trends),
                      {"Strike it", "Why was it no reading?", "Enter", "Leave"},
                      [](const QString&) {}};
    Typist typist{*window};
    typist.type("held askew");
    Typist::look();
    end();
    start();
    ASSERT_TRUE(isTold());
    EXPECT_NE(textOf(*window, "draftBarText").find("Why was it no reading?: “held askew”"), std::string::npos)
        << textOf(*window, "draftBarText");
}
