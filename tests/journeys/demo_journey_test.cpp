// Somebody looks at the demonstration: every page, every airframe, and a reading taken.

#include "app/window/main_window.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"

#include <QComboBox>
#include <QMenu>
#include <QPushButton>

#include <set>

using namespace rig;
using namespace rig::test;

namespace {

class Demonstration : public testing::Test
{
protected:
    Demonstration()
    {
        clock.set(dayOf(2026, 11, 2));
        window.resize(1280, 800);
        window.show();
        window.openDemo();
        QApplication::processEvents();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(window.focusWidget() ? window.focusWidget() : &window, key, with);
        QApplication::processEvents();
    }

    void type(const char* text)
    {
        for (const char* c = text; *c; ++c)
            QTest::keyClick(window.focusWidget() ? window.focusWidget() : &window, *c);
        QApplication::processEvents();
    }

    FixedClock clock;
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
};

} // namespace

TEST_F(Demonstration, ShowsEveryPageOfEveryAirframeWithoutAProblem)
{
    const auto actions = part<QPushButton>(window, "registration").findChild<QMenu*>()->actions();
    ASSERT_EQ(actions.size(), 3);
    std::set<std::string> registrations;
    for (qsizetype i = 0; i < actions.size(); ++i) {
        part<QPushButton>(window, "registration").findChild<QMenu*>()->actions().at(i)->trigger();
        registrations.insert(part<QPushButton>(window, "registration").text().toStdString());
        for (const Qt::Key moment : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}) {
            press(moment, Qt::ControlModifier);
            EXPECT_FALSE(part(window, "problemBanner").isVisible()) << textOf(window, "problemText");
        }
    }
    window.openDemo(); // another copy; the first is left alone
    EXPECT_FALSE(part(window, "problemBanner").isVisible());
    EXPECT_NE(window.windowTitle(), QString{});
    EXPECT_EQ(registrations, (std::set<std::string>{"QX-17", "QX-42", "QX-88"}));
}

TEST_F(Demonstration, JudgesAReadingOfTodayAgainstTheInventedPast)
{
    auto& leader = part<QComboBox>(window, "leader");
    leader.setFocus();
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    EXPECT_NE(textOf(window, "startMissing").find("taken apart"), std::string::npos);
    press(Qt::Key_Space); // taken apart and rigged again
    part<QPushButton>(window, "begin").setFocus();
    press(Qt::Key_Return);
    auto& gauge = part<QComboBox>(window, "measuredWith");
    gauge.setFocus();
    press(Qt::Key_Down);
    type("yyy0.45");
    press(Qt::Key_Return);
    EXPECT_EQ(textOf(window, "verdictWord"), "Inside the band");
    type("yy");
    press(Qt::Key_Return);
    type("yyy0.1");
    press(Qt::Key_Return);
    EXPECT_EQ(textOf(window, "verdictWord"), "Outside the band");
    EXPECT_NE(textOf(window, "verdictCaution").find("call A. Quill"), std::string::npos);
}
