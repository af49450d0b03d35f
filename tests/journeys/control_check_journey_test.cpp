// The control check by two people, keyboard only: from the couplings to the second inspection, and to a
// reversed sense that stops the record.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>

using namespace rig;
using namespace rig::test;

namespace {

class ControlCheckJourney : public testing::TestWithParam<Pace>
{
protected:
    ControlCheckJourney()
    {
        Airframe airframe = must(store.records().airframes()).front();
        airframe.callName = "A. Quill";
        airframe.callPhone = "0700 0";
        must(store.records().add(airframe));
        page.resize(1280, 744);
        page.show();
        page.showAirframe(hangar.airframe);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
    }

    void press(Qt::Key key)
    {
        ++presses;
        typist.press(key);
    }

    void type(const QString& text)
    {
        presses += static_cast<int>(text.size());
        typist.type(text);
    }

    void begin()
    {
        typist.goTo("leader");
        press(Qt::Key_Down); // M. Oren
        press(Qt::Key_Tab);
        press(Qt::Key_Return);
    }

    void toTheControlCheck()
    {
        typist.goTo("recordRow5");
        press(Qt::Key_Space);
    }

    void chooseTwo()
    {
        typist.goTo("atSurface");
        press(Qt::Key_Down); // M. Oren
        press(Qt::Key_Tab);
        press(Qt::Key_Down); // M. Oren again, and nothing may be tried
        press(Qt::Key_Down); // T. Vale
    }

    std::string text(const char* label)
    {
        Typist::look();
        return textOf(page, label);
    }
    bool isShown(const char* name)
    {
        Typist::look();
        return part(page, name).isVisible();
    }
    QString row(int at)
    {
        Typist::look();
        return part<QAbstractButton>(page, ("recordRow" + std::to_string(at)).c_str())
            .accessibleDescription();
    }

    RecordContent content()
    {
        Typist::look();
        return must(store.records().content(must(store.records().riggingRecords(hangar.airframe)).back().id));
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    Typist typist{page, GetParam()};
    QString problem;
    int presses = 0;
};

INSTANTIATE_TEST_SUITE_P(Typing, ControlCheckJourney, kPaces, nameOfPace);

} // namespace

TEST_P(ControlCheckJourney, GoesThroughTheUsualSurfacesAndOnToTheSecondInspection)
{
    begin();
    toTheControlCheck();
    EXPECT_TRUE(isShown("noSurfaces"));
    press(Qt::Key_Return); // the usual ones
    EXPECT_EQ(row(5), "0 of 7 surfaces");
    EXPECT_EQ(text("surfaceTitle"), "Left aileron");
    chooseTwo();
    presses = 0;
    for (const char* answers :
         {"yy↑↓yyyy", "yy↓↑yyyy", "yy↑↓yyy", "yy↑↓yyy", "yy↑↓yyyy", "yy←→yyyy", "↑↓yyy"}) {
        type(answers);
        press(Qt::Key_Return);
    }
    EXPECT_EQ(presses, 58) << "51 answers and one Enter for each of seven surfaces";
    EXPECT_EQ(row(5), "7 of 7 surfaces");
    EXPECT_EQ(text("couplingTitle"), "Left aileron") << "the second inspection";
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_P(ControlCheckJourney, AReversedSenseStopsTheRecord)
{
    begin();
    toTheControlCheck();
    press(Qt::Key_Return);
    chooseTwo();
    type("yy");
    EXPECT_EQ(text("senseCall"), "Stick to the left.") << "what to move, and nothing of what it should do";
    type("y"); // no answer to what it does
    EXPECT_EQ(content().surfaceChecks.size(), 2U);
    type("↓");
    EXPECT_TRUE(isShown("stopCard"));
    EXPECT_NE(text("stopWhy").find("Left aileron did not move as expected"), std::string::npos);
    EXPECT_EQ(text("senseCall"), "Stick to the left. Seen: Down. Expected: Up.");
    EXPECT_TRUE(isShown("senseCall"));
    EXPECT_FALSE(isShown("nextSurface")) << "nothing is tried on any";
    for (int i = 0; i < 7; ++i)
        EXPECT_TRUE(
            part<QPushButton>(page, ("surfaceChip" + std::to_string(i)).c_str()).text().contains("stop"))
            << i;
    EXPECT_EQ(text("stopCall"), "Leave it as it is, and call A. Quill (0700 0).");
    EXPECT_TRUE(isShown("partSeatedCanPass"));
    EXPECT_EQ(row(5), "Left aileron moved the wrong way · 0 of 7 surfaces");

    type("yyyy"); // nothing is tried any further, here
    press(Qt::Key_PageDown);
    EXPECT_EQ(text("surfaceTitle"), "Right aileron");
    EXPECT_TRUE(isShown("stopCard"));
    type("yyyy"); // nor at another surface
    EXPECT_EQ(content().surfaceChecks.size(), 3U);

    part<QAbstractButton>(page, "recordRow6").click();
    EXPECT_EQ(textOf(*part(page, "closeRecord").parentWidget(), "stopWhy"),
              "Left aileron. In the control check it moved the wrong way. Nobody has said what was found.");

    ASSERT_EQ(content().questions.size(), 1U);
    EXPECT_TRUE(content().questions.front().isOpen());
    EXPECT_EQ(content().questions.front().question.surfaceCheck, SurfaceCheckKind::CalledOneWay);
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_P(ControlCheckJourney, WhatItDoesIsCalledBothWaysAndOnlyThenHeldBesideWhatIsExpected)
{
    begin();
    toTheControlCheck();
    press(Qt::Key_Return);
    chooseTwo();
    type("yy↑");
    EXPECT_EQ(text("senseCall"), "Stick to the right.");
    EXPECT_EQ(text("senseHeading"), "Tell the cockpit what to move");
    type("↓");
    EXPECT_EQ(text("senseCall"), "Stick to the left. Seen: Up. Expected: Up.\n"
                                 "Stick to the right. Seen: Down. Expected: Down.");
    const auto checks = content().surfaceChecks;
    ASSERT_EQ(checks.size(), 4U);
    EXPECT_EQ(checks[2].kind, SurfaceCheckKind::CalledOneWay);
    EXPECT_EQ(checks[2].seen, Movement::Up);
    EXPECT_EQ(checks[3].kind, SurfaceCheckKind::CalledOtherWay);
    EXPECT_EQ(checks[3].seen, Movement::Down);
    EXPECT_EQ(checks[3].answer, Answer::Yes);
    EXPECT_TRUE(content().questions.empty());
}

TEST_P(ControlCheckJourney, ASurfaceThatDoesNothingStopsTheRecordInTheOtherDirectionToo)
{
    begin();
    toTheControlCheck();
    press(Qt::Key_Return);
    chooseTwo();
    type("yy↑n");
    EXPECT_TRUE(isShown("stopCard"));
    EXPECT_NE(text("stopWhy").find("Left aileron did nothing"), std::string::npos);
    ASSERT_EQ(content().questions.size(), 1U);
    EXPECT_EQ(content().surfaceChecks.back().seen, Movement::Nothing);
    EXPECT_EQ(content().surfaceChecks.back().answer, Answer::No);
}

TEST_P(ControlCheckJourney, ComingBackGoesOnWithTheSurfaceThatIsHalfTried)
{
    begin();
    toTheControlCheck();
    press(Qt::Key_Return);
    chooseTwo();
    press(Qt::Key_PageDown);
    type("yy↓");
    EXPECT_EQ(text("surfaceTitle"), "Right aileron");
    typist.goTo("recordRow2");
    press(Qt::Key_Space);
    toTheControlCheck();
    EXPECT_EQ(text("surfaceTitle"), "Right aileron");
    EXPECT_EQ(text("senseCall"), "Stick to the right.") << "where it was left";
}

TEST_P(ControlCheckJourney, AHandOnAJointSetsTheSurfacesOfItsCircuitBack)
{
    begin();
    toTheControlCheck();
    press(Qt::Key_Return);
    chooseTwo();
    for (const char* answers :
         {"yy↑↓yyyy", "yy↓↑yyyy", "yy↑↓yyy", "yy↑↓yyy", "yy↑↓yyyy", "yy←→yyyy", "↑↓yyy"}) {
        type(answers);
        press(Qt::Key_Return);
    }
    ASSERT_EQ(row(5), "7 of 7 surfaces");
    type("s"); // back to the first person, who looks at the left aileron's joint
    typist.goTo("measuredBy");
    press(Qt::Key_Down);
    type("y");
    EXPECT_EQ(row(5), "to be tried again · 5 of 7 surfaces");
    toTheControlCheck();
    EXPECT_EQ(text("controlNotice"),
              "Somebody was at Left aileron after this was tried. Try all of it again.");
    EXPECT_TRUE(part<QPushButton>(page, "surfaceChip1").text().contains("try again"));
    EXPECT_TRUE(part<QPushButton>(page, "surfaceChip2").text().contains("done")) << "an airbrake";
    type("yy↑↓yyyy\nyy↓↑yyyy\n");
    EXPECT_EQ(row(5), "7 of 7 surfaces");
    EXPECT_EQ(content().surfaceChecks.size(), 51U + 16U) << "what was said before stays";
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_P(ControlCheckJourney, MeasuresByKeysAndRefusesWhatIsDoubtful)
{
    begin();
    toTheControlCheck();
    press(Qt::Key_Return);
    chooseTwo();
    type("u2o");
    press(Qt::Key_Return);
    EXPECT_TRUE(isShown("measuredUpProblem"));
    EXPECT_TRUE(content().surfaceMeasures.empty());
    type("24.5"); // over what was refused
    press(Qt::Key_Return);
    ASSERT_EQ(content().surfaceMeasures.size(), 1U);
    EXPECT_EQ(content().surfaceMeasures.front().unit, DeflectionUnit::Degrees);
    EXPECT_EQ(content().surfaceMeasures.front().value, Deflection{24'500});
    type("d12");
    press(Qt::Key_Return);
    EXPECT_NE(text("upOverDown").find("common practice, not a limit"), std::string::npos);
    type("y"); // the keys are back at the questions
    EXPECT_EQ(content().surfaceChecks.size(), 1U);
}
