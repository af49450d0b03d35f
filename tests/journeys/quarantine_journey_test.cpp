// A bad leaf set, from the check in Set up to the questions about it and the marked readings: keyboard only,
// in the whole window.

#include "app/window/main_window.h"
#include "tests/pages/quarantine_scene.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QAbstractButton>
#include <QLineEdit>
#include <QTableView>

using namespace rig;
using namespace rig::test;

namespace {

class QuarantineJourney : public testing::TestWithParam<Pace>
{
protected:
    QuarantineJourney()
    {
        scene.check(scene.setB, dayOf(2026, 3, 31));
        scene.read(650, scene.hangar.setA, dayOf(2026, 4, 20));
        window.resize(1280, 800);
        window.show();
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
    std::string effect() { return text("doubtEffect"); }

    TempStore store;
    QuarantineScene scene{store};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Typing, QuarantineJourney, kPaces, nameOfPace);

} // namespace

TEST_P(QuarantineJourney, ABadLeafSetIsPutInDoubtBackToItsLastGoodCheck)
{
    EXPECT_FALSE(part(window, "questionBar").isVisible());
    press(Qt::Key_5, Qt::ControlModifier);
    press(Qt::Key_4, Qt::AltModifier);
    press(Qt::Key_Down); // from leaf set A to B
    tabTo("noteCheck");
    press(Qt::Key_Return);
    tabTo("checkHow");
    type("micrometer");
    tabTo("checkFound");
    type("tips worn by 0.10");
    tabTo("checkUsable");
    EXPECT_FALSE(part(window, "doubtEffect").isVisible());
    press(Qt::Key_Down);
    Typist::look();
    EXPECT_EQ(part<QLineEdit>(window, "doubtedFrom").text(), "2026-04-01");
    EXPECT_NE(effect().find("It marks 4 readings on one airframe as in doubt:"), std::string::npos)
        << effect();
    EXPECT_NE(effect().find("Left aileron: the band "), std::string::npos) << effect();
    EXPECT_NE(effect().find("It opens 2 questions."), std::string::npos) << effect();

    tabTo("doubtedFrom");
    press(Qt::Key_End);
    press(Qt::Key_Backspace); // 2026-04-0: a day that is none keeps nothing
    EXPECT_EQ(effect(), "Type the day from which the set is in doubt.");
    press(Qt::Key_Return);
    EXPECT_TRUE(scene.questions().empty());
    type("2");
    EXPECT_NE(effect().find("No further reading comes in doubt."), std::string::npos) << effect();
    press(Qt::Key_Backspace);
    type("1");
    press(Qt::Key_Return);
    Typist::look();
    EXPECT_EQ(scene.questions().size(), 2U);
    EXPECT_EQ(text("questionBarText"),
              "2 open questions on QX-17: Gauge B, readings in doubt since 2 May 2026; Left aileron, its "
              "band is in doubt since 2 May 2026.");

    press(Qt::Key_6, Qt::ControlModifier);
    press(Qt::Key_Down);
    EXPECT_EQ(text("questionTitle"), "Left aileron, its band is in doubt");
    EXPECT_NE(text("questionStory").find("Without the 4 readings of leaf set B in doubt the band"),
              std::string::npos);
    EXPECT_NE(text("questionConsequence").find("brings no reading back into the band"), std::string::npos);

    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_NE(text("bandSentence").find("With the 4 readings of leaf set B in doubt it would be"),
              std::string::npos)
        << text("bandSentence");
}
