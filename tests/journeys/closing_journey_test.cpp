// The end of the program: what is typed and not saved is asked about, and a signal asks nothing.

#include "app/window/end_signals.h"
#include "app/window/main_window.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QDialog>
#include <QLineEdit>
#include <QSignalSpy>

#include <csignal>

using namespace rig;
using namespace rig::test;

namespace {

class EndOfTheProgram : public testing::Test
{
protected:
    EndOfTheProgram()
    {
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), Shown{}));
        store.close();
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        window.showMoment(Moments::SetUp);
        Typist::look();
    }

    // A serial number is typed, and not saved.
    void halfType()
    {
        typist.press(Qt::Key_1, Qt::AltModifier);
        typist.goTo("serial");
        typist.type("15-");
        Typist::look();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window};
};

} // namespace

TEST_F(EndOfTheProgram, AsksAboutWhatIsTypedInSetUpAndNamesThePart)
{
    halfType();
    EXPECT_FALSE(window.close());
    ASSERT_EQ(prompts.asked.size(), 1U);
    EXPECT_NE(prompts.asked[0].find("Typed in Set up and not saved: Airframe."), std::string::npos)
        << prompts.asked[0];
    EXPECT_EQ(part<QLineEdit>(window, "serial").text(), "15-");
    prompts.confirmations.push_back(true);
    EXPECT_TRUE(window.close());
}

TEST_F(EndOfTheProgram, AsksNothingWhenNothingIsTyped)
{
    typist.press(Qt::Key_2, Qt::AltModifier);
    typist.press(Qt::Key_1, Qt::AltModifier);
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(prompts.asked.empty());
}

TEST_F(EndOfTheProgram, AsksNothingOnceItWasSaved)
{
    halfType();
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(prompts.asked.empty());
}

TEST_F(EndOfTheProgram, ASignalIsToldAsAnEventAndKillsNobody)
{
    EndSignals endings;
    QSignalSpy ended{&endings, &EndSignals::ended};
    for (const int one : {SIGTERM, SIGHUP, SIGINT}) {
        ended.clear();
        std::raise(one);
        EXPECT_TRUE(ended.wait(5000)) << one;
    }
}

TEST_F(EndOfTheProgram, AtASignalTheWindowClosesWithoutAQuestion)
{
    halfType();
    window.closeUnasked();
    EXPECT_FALSE(window.isVisible());
    EXPECT_TRUE(prompts.asked.empty());
}

TEST_F(EndOfTheProgram, AtASignalWhatIsAskedIsTurnedAwayAndThePressEndsFirst)
{
    bool wasOpenAtTheEnd = false;
    {
        QDialog asking{&window};
        QTimer::singleShot(0, &window, &MainWindow::closeUnasked);
        asking.exec();
        wasOpenAtTheEnd = window.isVisible();
    }
    EXPECT_TRUE(wasOpenAtTheEnd) << "whoever asked still stands on the window";
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window.isVisible(); }, 5000));
}
