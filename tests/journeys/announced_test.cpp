// What a screen reader is told while somebody works: each thing once, when it comes, in the words that stand
// there.

#include "app/widgets/announcer.h"
#include "app/window/main_window.h"
#include "app/wording/control_words.h"
#include "app/wording/language.h"
#include "app/wording/rigged_words.h"
#include "app/wording/verdict_words.h"
#include "tests/support/ears.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QLabel>
#include <QVBoxLayout>

using namespace rig;
using namespace rig::test;

namespace {

class Announced : public testing::Test
{
protected:
    Announced()
    {
        window.resize(300, 200);
        auto* layout = new QVBoxLayout{&window};
        for (QLabel* label : {one, other})
            layout->addWidget(label);
        new Announcer{&window};
        window.show();
    }

    Ears ears;
    QWidget window;
    QLabel* one = new QLabel{"one"};
    QLabel* other = new QLabel{"other"};
};

class AnnouncedInTheWindow : public testing::TestWithParam<const char*>
{
protected:
    AnnouncedInTheWindow()
    {
        clock.set(dayOf(2026, 11, 2));
        window.resize(1280, 800);
        window.show();
        window.openDemo();
        window.activateWindow();
        Typist::look();
    }

    void toTheFirstJoint()
    {
        chooseIn(window, "leader", 1);
        part<QAbstractButton>(window, "riggedAnew").click();
        part<QAbstractButton>(window, "begin").click();
        passWhoConnected(window, typist);
        chooseIn(window, "measuredWith", 1);
        Typist::look();
    }

    QString text(const char* label) { return part<QLabel>(window, label).text(); }
    static QString yes(int times) { return RiggedWords::keyYes().repeated(times); }

    void expectSaid(const QString& said, const QStringList& each)
    {
        for (const QString& one : each)
            EXPECT_EQ(said.count(one), one.isEmpty() ? -1 : 1)
                << "“" << one.toStdString() << "” in “" << said.toStdString() << "”";
    }

    Ears ears;
    Speech speech{GetParam()};
    FixedClock clock;
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window};
};

INSTANTIATE_TEST_SUITE_P(In, AnnouncedInTheWindow, testing::Values("en", "de", "fr"),
                         [](const auto& language) { return std::string{language.param}; });

} // namespace

TEST_F(Announced, IsToldOnceInTheOrderInWhichItCame)
{
    announce(*other, "Outside");
    announce(*one, "Stop here.");
    announce(*other, "Outside");
    EXPECT_EQ(Ears::said(), "Outside. Stop here.");
    announce(*one, "Stop here.");
    EXPECT_EQ(Ears::said(), "");
}

TEST_F(Announced, IsToldAnewAfterNothingStoodThere)
{
    announce(*one, "Inside.");
    EXPECT_EQ(Ears::said(), "Inside.");
    announceAnew(*one, "Inside.");
    EXPECT_EQ(Ears::said(), "Inside.");
}

TEST_F(Announced, IsNotToldWhereNobodySeesItByThen)
{
    announce(*one, "Saving…");
    announce(*other, "Read.");
    announce(*one, "Saved.");
    other->hide();
    EXPECT_EQ(Ears::said(), "Saved.");
    other->show();
    announce(*other, "Read.");
    EXPECT_EQ(Ears::said(), "Read.");
}

TEST_F(Announced, KeepsSilentWhereNobodyListensForIt)
{
    QLabel alone;
    alone.show();
    announce(alone, "Nobody.");
    EXPECT_EQ(Ears::said(), "");
}

TEST_P(AnnouncedInTheWindow, VerdictWithWhatItMeansAndThatItIsSaved)
{
    toTheFirstJoint();
    Ears::said();
    typist.type(yes(3));
    EXPECT_TRUE(Ears::said().endsWith(RiggedWords::readNow())) << "what is to be done next";
    typist.type("0.45\n");
    const QString said = Ears::said();
    expectSaid(said, {VerdictWords::word(Verdict::Inside) + '.', text("verdictExplanation"),
                      text("verdictCaution"), text("verdictKept"), RiggedWords::question(CheckKind::Pull)});
    typist.press(Qt::Key_F5); // nothing
    EXPECT_EQ(Ears::said(), "");
}

TEST_P(AnnouncedInTheWindow, StopAndTheNewQuestion)
{
    toTheFirstJoint();
    typist.type(yes(3));
    Ears::said();
    typist.type("0.95\n");
    expectSaid(Ears::said(), {VerdictWords::word(Verdict::Outside) + '.', text("stopWhy"), text("stopCall"),
                              ControlWords::stop() + '.', part(window, "questionBar").accessibleName()});
}

TEST_P(AnnouncedInTheWindow, RefusalOfAFigureEachTime)
{
    toTheFirstJoint();
    typist.type(yes(3));
    for (int i = 0; i < 2; ++i) {
        Ears::said();
        typist.type("77\n");
        expectSaid(Ears::said(), {text("typedMeaning")});
        typist.press(Qt::Key_Escape);
    }
}

TEST_P(AnnouncedInTheWindow, SurfaceThatMovedTheWrongWay)
{
    toTheFirstJoint();
    part<QAbstractButton>(window, "recordRow10").click();
    chooseIn(window, "atSurface", 1);
    chooseIn(window, "inCockpit", 2);
    typist.type(yes(2));
    Ears::said();
    typist.press(Qt::Key_Down);
    expectSaid(Ears::said(), {text("stopWhy"), text("stopCall")});
}

TEST_P(AnnouncedInTheWindow, WhatAFormLacksAndThatItIsSaved)
{
    window.showMoment(Moments::SetUp);
    part<QAbstractButton>(window, "part0").click();
    Ears::said();
    auto& registration = part<QLineEdit>(window, "registrationField");
    const QString before = registration.text();
    registration.clear();
    part<QAbstractButton>(window, "save").click();
    expectSaid(Ears::said(), {text("registrationFieldProblem")});
    registration.setText(before);
    part<QAbstractButton>(window, "save").click();
    expectSaid(Ears::said(), {text("formStatus")});
}
