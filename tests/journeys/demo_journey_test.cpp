// Somebody looks at the demonstration: every page, every airframe, and a reading taken.

#include "app/pages/prompts.h"
#include "app/widgets/trend_widget.h"
#include "app/window/main_window.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>

#include <set>

using namespace rig;
using namespace rig::test;

namespace {

class Demonstration : public testing::TestWithParam<Pace>
{
protected:
    Demonstration()
    {
        clock.set(dayOf(2026, 11, 2));
        window.resize(1280, 800);
        window.show();
        window.openDemo();
        Typist::look();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) { typist.press(key, with); }
    void type(const char* text) { typist.type(text); }

    std::string text(const char* label)
    {
        Typist::look();
        return textOf(window, label);
    }

    FixedClock clock;
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Typing, Demonstration, kPaces, nameOfPace);

} // namespace

TEST_P(Demonstration, ShowsEveryPageOfEveryAirframeWithoutAProblem)
{
    const auto actions = part<QPushButton>(window, "registration").findChild<QMenu*>()->actions();
    ASSERT_EQ(actions.size(), 3);
    std::set<std::string> registrations;
    for (qsizetype i = 0; i < actions.size(); ++i) {
        part<QPushButton>(window, "registration").findChild<QMenu*>()->actions().at(i)->trigger();
        registrations.insert(part<QPushButton>(window, "registration").text().toStdString());
        for (const Qt::Key moment : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}) {
            press(moment, Qt::ControlModifier);
            Typist::look();
            EXPECT_FALSE(part(window, "problemBanner").isVisible()) << text("problemText");
        }
    }
    window.openDemo(); // another copy; the first is left alone
    EXPECT_FALSE(part(window, "problemBanner").isVisible());
    EXPECT_NE(window.windowTitle(), QString{});
    EXPECT_EQ(registrations, (std::set<std::string>{"QX-17", "QX-42", "QX-88"}));
}

TEST_P(Demonstration, LeadsFromReadingToReadingByKeysFromTheMomentThatTrendsIsOpened)
{
    press(Qt::Key_2, Qt::ControlModifier);
    Typist::look();
    auto& chart = part<TrendWidget>(*window.page(Moments::Trends), "chart");
    const int before = chart.chosenReading();
    press(Qt::Key_Up);
    Typist::look();
    EXPECT_NE(chart.chosenReading(), before);
}

TEST(ANotice, LongerThanItsWindowIsScrolledThroughByKeys)
{
    QWidget window;
    window.resize(600, 500);
    window.show();
    Typist::look();
    bool isScrolled = false;
    QTimer::singleShot(0, &window, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_TRUE(dialog);
        EXPECT_LE(dialog->height(), 500);
        const auto* area = dialog->findChild<QScrollArea*>("promptScroll");
        isScrolled = area && area->verticalScrollBar()->maximum() > 0;
        dialog->reject();
    });
    WindowPrompts{}.tell(&window, QStringLiteral("A key and what it does.\n").repeated(60));
    EXPECT_TRUE(isScrolled);
}

TEST_P(Demonstration, SaysAllThatIsMissingBeforeARiggingCanBegin)
{
    typist.goTo("begin");
    press(Qt::Key_Return);
    EXPECT_NE(text("startMissing").find("who leads"), std::string::npos) << text("startMissing");
    EXPECT_NE(text("startMissing").find("taken apart"), std::string::npos) << text("startMissing");
}

TEST_P(Demonstration, JudgesAReadingOfTodayAgainstTheInventedPast)
{
    typist.goTo("leader");
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    EXPECT_NE(text("startMissing").find("taken apart"), std::string::npos);
    press(Qt::Key_Space); // taken apart and rigged again
    typist.goTo("begin");
    press(Qt::Key_Return);
    passWhoConnected(window, typist);
    typist.goTo("measuredWith");
    press(Qt::Key_Down);
    type("yyy0.45");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    type("yy");
    press(Qt::Key_Return);
    type("yyy0.1");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Outside the band");
    EXPECT_NE(text("verdictCaution").find("call A. Quill"), std::string::npos);
}
