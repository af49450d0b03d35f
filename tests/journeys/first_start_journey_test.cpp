// The first evening with the program: from an empty file to the first verdict, keyboard only.

#include "app/pages/setup/baseline_panel.h"
#include "app/window/main_window.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

using namespace rig;
using namespace rig::test;

namespace {

class FirstStart : public testing::TestWithParam<Pace>
{
protected:
    FirstStart()
    {
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(folder.file("mine.rigband")), OpenAs::New);
        window.activateWindow();
        Typist::look();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) { typist.press(key, with); }
    void type(const char* text) { typist.type(text); }
    void goTo(const char* name) { typist.goTo(name); }

    void fill(const char* name, const char* text)
    {
        goTo(name);
        type(text);
    }

    std::string text(const char* label)
    {
        Typist::look();
        return textOf(window, label);
    }

    bool isShown(const char* name)
    {
        Typist::look();
        const auto* widget = window.findChild<QWidget*>(QLatin1String(name));
        return widget && widget->isVisible();
    }

    TempFolder folder;
    FixedClock clock;
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Typing, FirstStart, kPaces, nameOfPace);

} // namespace

TEST_P(FirstStart, LeadsFromAnEmptyFileToTheFirstVerdict)
{
    fill("registrationField", "QX-17");
    fill("callName", "A. Quill");
    press(Qt::Key_Return);
    Typist::look();
    EXPECT_EQ(part<QPushButton>(window, "registration").text(), "QX-17");

    press(Qt::Key_2, Qt::AltModifier);
    if (!isShown("usual0")) {
        goTo("usualCouplings");
        press(Qt::Key_Return);
    }
    goTo("usual0"); // left aileron, wing root
    press(Qt::Key_Space);
    press(Qt::Key_Return);

    press(Qt::Key_4, Qt::AltModifier);
    if (!isShown("gaugeName")) {
        goTo("addGauge");
        press(Qt::Key_Return);
    }
    fill("gaugeName", "A");
    fill("sizes", "0.05-1.00 step 0.05");
    press(Qt::Key_Return);

    press(Qt::Key_5, Qt::AltModifier);
    for (const char* name : {"M. Oren", "T. Vale"}) {
        if (!isShown("personName")) {
            goTo("addPerson");
            press(Qt::Key_Return);
        }
        fill("personName", name);
        press(Qt::Key_Return);
    }

    press(Qt::Key_7, Qt::AltModifier);
    Typist::look();
    auto* baseline = window.findChild<BaselinePanel*>();
    ASSERT_TRUE(baseline && baseline->isVisible());
    part(*baseline, "baselinePerson").setFocus();
    press(Qt::Key_Down);
    Typist::look();
    for (const char* figure : {"0.50", "0.50", "0.45", "0,5", ".50"}) {
        type("yy");
        type(figure);
        press(Qt::Key_Return);
    }
    EXPECT_NE(text("baselineNumbers").find("5 readings"), std::string::npos) << text("baselineNumbers");

    press(Qt::Key_1, Qt::ControlModifier);
    goTo("leader");
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    goTo("seasonNext");
    press(Qt::Key_Return);
    passWhoConnected(window, typist);
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    EXPECT_NE(text("verdictExplanation").find("thin"), std::string::npos);
    EXPECT_NE(text("verdictCaution").find("one sign only"), std::string::npos);
    EXPECT_FALSE(isShown("problemBanner")) << text("problemText");
}

// A glider of eight couplings, a leaf set, two persons, a baseline of ten readings, and the first verdict.
TEST_P(FirstStart, TakesAtMost120PressesFromAnEmptyFileToTheFirstVerdict)
{
    const auto tabTo = [this](const char* name) { typist.tabTo(QLatin1String(name)); };
    tabTo("registrationField");
    type("QX-17");
    tabTo("callName");
    type("A. Quill");
    press(Qt::Key_Return);
    press(Qt::Key_2, Qt::AltModifier);
    if (!isShown("usualAll")) {
        tabTo("usualCouplings");
        press(Qt::Key_Return);
    }
    tabTo("usualAll");
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    press(Qt::Key_4, Qt::AltModifier);
    tabTo("usualSet");
    press(Qt::Key_Return);
    Typist::look();
    press(Qt::Key_Return);
    press(Qt::Key_5, Qt::AltModifier);
    for (const char* name : {"M. Oren", "T. Vale"}) {
        if (!isShown("personName")) {
            tabTo("addPerson");
            press(Qt::Key_Return);
            Typist::look();
        }
        type(name);
        press(Qt::Key_Return);
    }

    press(Qt::Key_7, Qt::AltModifier);
    tabTo("baselinePerson");
    press(Qt::Key_Down);
    Typist::look();
    for (int i = 0; i < 10; ++i) {
        type(i % 2 ? "yy.5" : "yy.45");
        press(Qt::Key_Return);
        Typist::look();
        const QWidget& name = part(window, "baselineCoupling");
        EXPECT_EQ(name.visibleRegion().boundingRect(), name.rect()) << "of the coupling, in view";
    }
    EXPECT_NE(text("baselineNumbers").find("10 readings"), std::string::npos) << text("baselineNumbers");

    press(Qt::Key_1, Qt::ControlModifier);
    tabTo("leader");
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    Typist::look();
    press(Qt::Key_Return); // the list for the first rigging of the season is for later
    passWhoConnected(window, typist);
    type("yyy.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    EXPECT_LE(typist.presses(), 120);
    std::printf("%d presses from an empty file to the first verdict\n", typist.presses());
}

TEST_P(FirstStart, RefusesASecondFileOfTheSameNameAndLosesNothing)
{
    fill("registrationField", "QX-17");
    press(Qt::Key_Return);
    Typist::look();
    window.openPath(QString::fromStdString(folder.file("mine.rigband")), OpenAs::New);
    EXPECT_TRUE(isShown("problemBanner"));
    EXPECT_EQ(part<QPushButton>(window, "registration").text(), "QX-17");
}
