// The owner after rigging: keyboard only, from the start of the record to its close.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

#include <limits>

using namespace rig;
using namespace rig::test;

namespace {

class RiggingJourney : public testing::TestWithParam<Pace>
{
protected:
    RiggingJourney()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        page.resize(1280, 744);
        page.show();
        page.showAirframe(hangar.airframe);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
    }

    void press(Qt::Key key) { typist.press(key); }
    void type(const QString& text) { typist.type(text); }

    QString text(const char* label)
    {
        Typist::look();
        return part<QLabel>(page, label).text();
    }

    // As fast as the keys come: the program gets no turn of its own between them.
    void burst(const QString& text) { Typist{page, Pace::Ahead}.type(text); }
    void burst(Qt::Key key) { Typist{page, Pace::Ahead}.press(key); }

    // The left aileron's reading, with the verdict that it was shown there.
    void expectOneReadingOfTheLeftAileron()
    {
        const RecordContent now = content();
        ASSERT_EQ(now.readings.size(), 1U);
        EXPECT_EQ(now.readings.front().coupling, hangar.leftAileron);
        EXPECT_EQ(now.readings.front().fitting, hangar.leftFitting);
        EXPECT_EQ(now.readings.front().person, hangar.oren);
        EXPECT_EQ(now.readings.front().turn, Turn::First);
        EXPECT_EQ(must(store.records().readingsOf(hangar.leftAileron)).back().shown->judgement.verdict,
                  Verdict::Inside);
    }

    enum class Asked { Season, WhoConnected };

    // Up to what is asked before the first joint, and past it.
    void begin(Asked passed = Asked::WhoConnected)
    {
        typist.goTo("leader");
        press(Qt::Key_Down); // M. Oren
        press(Qt::Key_Tab);
        press(Qt::Key_Return);
        if (passed == Asked::WhoConnected)
            return leaveSeasonList();
        Typist::look();
        typist.goTo("seasonNext");
        press(Qt::Key_Return);
        Typist::look();
    }

    // The first record of the year begins with its list.
    void leaveSeasonList()
    {
        Typist::look();
        if (part(page, "seasonNext").isVisible()) {
            typist.goTo("seasonNext");
            press(Qt::Key_Return);
        }
        passWhoConnected(page, typist);
    }

    void tickSeasonList()
    {
        Typist::look();
        part<QAbstractButton>(page, "recordRow0").click();
        int ticked = 0;
        for (const QCheckBox* box : page.findChildren<QCheckBox*>())
            if (box->objectName().startsWith("season")) {
                typist.goTo(box->objectName());
                press(Qt::Key_Space);
                ++ticked;
            }
        EXPECT_GT(ticked, 0);
        leaveSeasonList();
    }

    // The record, with what it asks found out: the next one starts whole.
    void leaveItBehind()
    {
        for (const QuestionStory& story : content().questions)
            if (story.isOpen())
                must(store.records().add(
                    Resolution{{}, story.question.id, hangar.vale, "grit", "cleaned", {}}));
        RecordClose close;
        close.record = content().record.id;
        close.closing = Closing::Abandoned;
        must(store.records().add(close));
        page.showAirframe(hangar.airframe);
    }

    void chooseSecond()
    {
        typist.goTo("measuredBy");
        press(Qt::Key_Down); // the first of those who may be second
    }

    void chooseNamesAtTheClose()
    {
        Typist::look();
        page.findChild<QAbstractButton*>("recordRow6")->click();
        page.findChild<QComboBox*>("closeFirst")->setCurrentIndex(1);
        page.findChild<QComboBox*>("closeSecond")->setCurrentIndex(2);
    }

    void countAndClose()
    {
        for (const char* count : {"toolsCounted", "hatchesOn"})
            page.findChild<QCheckBox*>(QLatin1String(count))->setChecked(true);
        page.findChild<QPushButton*>("closeRecord")->click();
    }

    RecordContent content()
    {
        Typist::look();
        const auto records = must(store.records().riggingRecords(hangar.airframe));
        EXPECT_FALSE(records.empty());
        return must(store.records().content(records.back().id));
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    Typist typist{page, GetParam()};
    QString problem;
};

INSTANTIATE_TEST_SUITE_P(Typing, RiggingJourney, kPaces, nameOfPace);

} // namespace

TEST_P(RiggingJourney, GoesFromTheLookToTheCloseWithTwoNames)
{
    Surface trim;
    trim.airframe = hangar.airframe;
    trim.name = "Trim";
    trim.kind = SurfaceKind::Trim;
    must(store.records().add(trim));
    begin();
    tickSeasonList();
    EXPECT_EQ(text("recordProgress"), "0 of 2 couplings done");
    EXPECT_EQ(text("couplingTitle"), "Left aileron");

    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    EXPECT_TRUE(text("verdictCaution").contains("one sign only"));
    EXPECT_TRUE(text("verdictKept").startsWith("saved"));
    type("yy");
    EXPECT_EQ(text("recordProgress"), "1 of 2 couplings done");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Right aileron");
    type("yyy0,60");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "No band yet");
    type("yy");
    EXPECT_EQ(text("recordProgress"), "2 of 2 couplings done");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Left aileron") << "the second inspection begins";
    const auto leaves = part(page, "leafRow").findChildren<QPushButton*>();
    EXPECT_GE(leaves.size(), 8);
    for (const QPushButton* leaf : leaves)
        EXPECT_FALSE(leaf->isChecked()) << "the first person's reading shows: " << leaf->text().toStdString();
    chooseSecond();
    type("yyyy");
    press(Qt::Key_Return);
    type("yyyy");
    press(Qt::Key_Return);

    EXPECT_EQ(text("surfaceTitle"), "Trim") << "the control check begins";
    typist.goTo("atSurface");
    press(Qt::Key_Down);
    typist.goTo("inCockpit");
    press(Qt::Key_Down);
    press(Qt::Key_Down); // not the one who stands at the surface
    type("↑↓yyy");
    press(Qt::Key_Return);
    EXPECT_EQ(text("openItems"), "•  Right aileron: no band yet, the reading could not be judged");

    for (const char* count : {"toolsCounted", "hatchesOn"}) {
        typist.goTo(count);
        press(Qt::Key_Space);
    }
    typist.goTo("closeFirst");
    press(Qt::Key_Down);
    typist.goTo("closeSecond");
    press(Qt::Key_Down);
    typist.goTo("closeRecord");
    press(Qt::Key_Return);
    EXPECT_EQ(text("closeProblem"), "Both names are the same. The second person has to be somebody else.");
    EXPECT_FALSE(content().close);

    typist.goTo("closeSecond");
    press(Qt::Key_Down);
    EXPECT_EQ(text("closeProblem"), "") << "they differ now";
    typist.goTo("closeRecord");
    press(Qt::Key_Return);
    ASSERT_TRUE(content().close);
    EXPECT_EQ(content().close->closing, Closing::Complete);
    EXPECT_EQ(content().close->first, hangar.oren);
    EXPECT_EQ(content().close->second, hangar.vale);
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();

    EXPECT_TRUE(page.findChild<QPushButton*>("printRecord")->isVisible()) << "the record is read again";
    QScrollBar* bar = nullptr;
    for (QScrollArea* area : page.findChildren<QScrollArea*>())
        if (area->isVisible() && area->verticalScrollBar()->maximum() > 0)
            bar = area->verticalScrollBar();
    ASSERT_TRUE(bar);
    press(Qt::Key_PageDown);
    EXPECT_GT(bar->value(), 0) << "a long record is read by keys too";
    type("b");
    EXPECT_FALSE(page.findChild<QPushButton*>("printRecord")->isVisible());
    type("l");
    EXPECT_TRUE(page.findChild<QPushButton*>("printRecord")->isVisible());
}

TEST_P(RiggingJourney, WhoConnectedIsAskedAtTheStartByOneKeyANameAndMayBePutRight)
{
    begin(Asked::Season);
    EXPECT_TRUE(part(page, "connected1_0").isVisible());
    EXPECT_FALSE(part(page, "connectedSide0").isVisible()) << "no joint stands in the middle or at the tail";
    EXPECT_EQ(text("connected1_Hint"), "Not said yet.") << "nobody is filled in";
    EXPECT_FALSE(part<QPushButton>(page, "connected1_0").isChecked());
    type("1"); // M. Oren, the left side
    press(Qt::Key_Return);
    type("12"); // both, the right side
    press(Qt::Key_Return);
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
    const auto who = [this](Side side) { return whoConnected(side, content().connected); };
    EXPECT_EQ(who(Side::Left), std::vector{hangar.oren});
    EXPECT_EQ(who(Side::Right).size(), 2U);

    typist.goTo("recordRow1");
    press(Qt::Key_Space);
    EXPECT_EQ(part<QAbstractButton>(page, "recordRow1").accessibleDescription(), "named for every side");
    press(Qt::Key_PageDown);
    type("1"); // M. Oren was nowhere near the right side
    EXPECT_EQ(who(Side::Right), std::vector{hangar.vale});
    type("0");
    EXPECT_TRUE(who(Side::Right).empty());
    EXPECT_TRUE(part<QPushButton>(page, "connected2_2").isChecked()) << "not known";
    EXPECT_EQ(content().connected.size(), 5U) << "what was stated before stays";
    EXPECT_EQ(content().connected.back().stamp.by, hangar.oren);
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_P(RiggingJourney, WhoeverConnectedAJointIsNotItsSecondPersonAndTheListSaysWhy)
{
    must(store.records().add(aPerson("R. Sand")));
    begin(Asked::Season);
    type("2\n\n"); // T. Vale, the left side
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yys");
    EXPECT_EQ(text("couplingNotice"),
              "Choose the second person: somebody who neither connected nor measured this joint.");
    const auto& second = part<QComboBox>(page, "measuredBy");
    EXPECT_EQ(second.itemText(1), "M. Oren: looked or measured here first");
    EXPECT_EQ(second.itemText(2), "T. Vale: connected this side");
    chooseSecond();
    EXPECT_EQ(second.currentText(), "R. Sand") << "the keys pass over who may not";
    type("yyyy");
    EXPECT_TRUE(flowOfSleeve(content(), hangar.leftAileron, Turn::Second).isDone());
}

TEST_P(RiggingJourney, WhereTwoPeopleConnectedEverythingTheWorkGoesOnAndThePaperSaysThatNobodyWasIndependent)
{
    begin(Asked::Season);
    type("12\n12\n");
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yys");
    EXPECT_TRUE(text("couplingNotice")
                    .startsWith("Everybody in this file connected this side or measured this joint."));
    chooseSecond();
    EXPECT_EQ(part<QComboBox>(page, "measuredBy").currentText(), "T. Vale");
    EXPECT_EQ(text("couplingNotice"),
              "T. Vale connected this side. This is no independent look, and the paper will say so.");
    type("yyyy");
    EXPECT_TRUE(flowOfSleeve(content(), hangar.leftAileron, Turn::Second).isDone());
    chooseNamesAtTheClose();
    EXPECT_EQ(text("closeIndependence"),
              "No independent second name: T. Vale is named as having connected the left side.\n"
              "No independent second name: T. Vale is named as having connected the right side.");
}

TEST_P(RiggingJourney, KeepsTheLeavesShutUntilTheBallIsSeen)
{
    begin();
    type("n");
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    type("m0.5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty()) << "an empty socket can show a normal gap";
}

// What was typed, and what the card then says.
struct SaidNo
{
    const char* typed;
    const char* why;
};

TEST_P(RiggingJourney, ANoStopsWithWhomToCallAndNothingElseIsAskedOfTheJoint)
{
    Airframe airframe = must(store.records().airframes()).front();
    airframe.callName = "A. Quill";
    airframe.callPhone = "0700 0";
    must(store.records().add(airframe));
    for (const SaidNo& row :
         {SaidNo{"n", "the ball is not in the socket"}, SaidNo{"yn", "the plunger is not home"},
          SaidNo{"yyn", "the sleeve is not at its stop"}, SaidNo{"yyy0.5\nn", "something moved at the pull"},
          SaidNo{"yyy0.5\nyn", "it is not secured"}}) {
        begin();
        type(QString::fromLatin1(row.typed));
        EXPECT_TRUE(part(page, "stopCard").isVisible()) << row.typed;
        EXPECT_TRUE(text("stopWhy").contains(row.why)) << text("stopWhy").toStdString();
        EXPECT_TRUE(text("stopCall").contains("call A. Quill (0700 0)"));
        const std::size_t said = content().checks.size();
        const std::size_t read = content().readings.size();
        type("yync0.5\n");
        EXPECT_EQ(content().checks.size(), said) << row.typed;
        EXPECT_EQ(content().readings.size(), read) << row.typed;
        leaveItBehind();
    }
}

TEST_P(RiggingJourney, AJointThatWasStoppedIsMeasuredAsFoundAndStaysStoppedOnEveryReturn)
{
    begin();
    type("yn");
    EXPECT_EQ(part<QPushButton>(page, "measureAgain").text(), "Measure as found  (M)");
    type("m0.5\n");
    ASSERT_EQ(content().readings.size(), 1U);
    EXPECT_EQ(content().readings.front().state, SeatState::PartSeated);
    EXPECT_FALSE(must(store.records().readingsOf(hangar.leftAileron)).back().shown) << "it is not judged";
    EXPECT_EQ(text("verdictWord"), "Not found out yet: answered “no”");
    EXPECT_TRUE(text("verdictExplanation").contains("measured as found"));
    press(Qt::Key_Return);
    press(Qt::Key_Return); // the first only says that the stop is there to be read
    EXPECT_EQ(text("couplingTitle"), "Right aileron");
    EXPECT_FALSE(part(page, "stopCard").isVisible());
    press(Qt::Key_PageUp);
    EXPECT_TRUE(part(page, "stopCard").isVisible());
    EXPECT_TRUE(content().interruptions.empty()) << "it is left as it is, not half done";
    type("s");
    EXPECT_TRUE(part(page, "stopCard").isVisible()) << "nobody's hand belongs on it";
}

TEST_P(RiggingJourney, AJointOfWhichOnlyTheLockWasBackIsKeptAsNotSecuredAndNoPartSeatedIsSeen)
{
    begin();
    type("yyn");
    type("m");
    EXPECT_TRUE(text("leafNote").contains("kept as found not secured")) << text("leafNote").toStdString();
    type("0.5\n");
    ASSERT_EQ(content().readings.size(), 1U);
    EXPECT_EQ(content().readings.front().state, SeatState::NotSecured);
    press(Qt::Key_PageDown);
    press(Qt::Key_PageUp);
    EXPECT_FALSE(part(page, "gapStrip").accessibleDescription().contains("Part-seated was seen"));
    EXPECT_TRUE(
        part(page, "gapStrip").accessibleDescription().contains("No reading was noted as part-seated"))
        << part(page, "gapStrip").accessibleDescription().toStdString();
}

TEST_P(RiggingJourney, AnOutsideReadingSaysStopAndWhomToCallAndStands)
{
    Airframe airframe = must(store.records().airframes()).front();
    airframe.callName = "A. Quill";
    airframe.callPhone = "0700 0";
    must(store.records().add(airframe));
    page.showAirframe(hangar.airframe);
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Outside the band");
    EXPECT_TRUE(text("verdictCaution").contains("call A. Quill (0700 0)"));
    EXPECT_TRUE(part(page, "stopCard").isVisible());
    EXPECT_EQ(text("stopTodo"), "Tag the cockpit. Photograph the joint as found.");
    type("yy");
    EXPECT_EQ(content().checks.size(), 3U) << "nothing is pulled that is to be left as it is";
    press(Qt::Key_PageDown);
    EXPECT_FALSE(part(page, "stopCard").isVisible());
    press(Qt::Key_PageUp);
    EXPECT_TRUE(part(page, "stopCard").isVisible()) << "on every return";
    EXPECT_TRUE(text("stopWhy").contains("outside its band"));
    EXPECT_TRUE(content().interruptions.empty());
    type("s");
    EXPECT_EQ(text("stopWhy"), "Left aileron is stopped. No hand on it until a named person has resolved it.")
        << "nothing of the first result";
    type("s");
    type("m0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 2U) << "measuring again adds, never replaces";
}

TEST_P(RiggingJourney, EscapeSendsTheCouplingBackToTheLook)
{
    begin();
    type("yyy");
    press(Qt::Key_Escape);
    EXPECT_EQ(content().interruptions.size(), 1U);
    EXPECT_TRUE(text("couplingNotice").startsWith("Interrupted at"));
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
}

TEST_P(RiggingJourney, RefusesADoubtfulFigureWithASentenceAndKeepsNothing)
{
    begin();
    type("yyy1.234,5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_FALSE(text("typedMeaning").isEmpty());
    type("60");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    type("0.62");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_TRUE(text("typedMeaning").contains("0.60") && text("typedMeaning").contains("0.65"));
}

TEST_P(RiggingJourney, AFingerThatStaysOnAKeyAnswersOneQuestion)
{
    begin();
    type("y");
    // As a screen tells it: the first repeat comes a quarter of a second after the press.
    const quint64 held = std::numeric_limits<quint64>::max() / 2;
    for (int i = 0; i < 8; ++i) {
        // Of one in three the flag is lost.
        QKeyEvent repeated{QEvent::KeyPress, Qt::Key_Y, Qt::NoModifier, QStringLiteral("y"), i % 3 != 2};
        repeated.setTimestamp(held + 30 * static_cast<quint64>(i));
        QApplication::sendEvent(&page, &repeated);
        Typist::look();
    }
    EXPECT_EQ(content().checks.size(), 1U);
}

TEST_P(RiggingJourney, AWrongLeafIsCorrectedWithAReasonAndStaysInTheFile)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    Typist::look(); // at the verdict: what was typed before counts for nothing
    prompts.texts.push_back("pressed the neighbour");
    type("w");
    Typist::look();
    EXPECT_FALSE(part(page, "verdictWord").isVisible()) << "nothing green stands for what was taken back";
    type("y0.5");
    press(Qt::Key_Return);
    const RecordContent now = content();
    EXPECT_EQ(now.checks.size(), 3U) << "no pull before the reading that takes its place";
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().corrects, now.readings.front().id);
    EXPECT_EQ(now.readings.back().note, "pressed the neighbour");
}

TEST_P(RiggingJourney, InterruptedTwiceItIsDoneFromTheLookEachTimeAndTheMarkStays)
{
    begin();
    type("yyy");
    press(Qt::Key_Escape);
    type("yyy0.5");
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    type("y");
    EXPECT_TRUE(text("couplingNotice").startsWith("What was read before the interruption, 0.50"))
        << text("couplingNotice").toStdString();
    type("yy0.5");
    press(Qt::Key_Return);
    type("yy");
    const RecordContent now = content();
    EXPECT_EQ(now.interruptions.size(), 2U);
    EXPECT_EQ(now.readings.size(), 2U) << "what was read before the break stays";
    EXPECT_EQ(text("recordProgress"), "1 of 2 couplings done");
    EXPECT_TRUE(page.findChild<QWidget*>("recordRow2")->accessibleDescription().contains("interrupted"));
}

TEST_P(RiggingJourney, TwoPeopleDisagreeBlindlyAndBothReadingsStand)
{
    begin();
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yys"); // the second person, at this coupling
    chooseSecond();
    type("yyy0.8");
    press(Qt::Key_Return);
    EXPECT_TRUE(text("couplingNotice").contains("Both stand")) << text("couplingNotice").toStdString();
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().turn, Turn::Second);
    ASSERT_EQ(now.questions.size(), 2U) << "it also lies outside the band";
    EXPECT_EQ(now.questions.back().question.kind, QuestionKind::ReadingsDisagree);
}

// One coupling with look, measure, pull and securing: the fewest key presses and the fewest mouse presses. An
// owner gives each in well under two seconds; eight couplings are 72 keys,
// or 56 presses with the one to the next coupling.
TEST_P(RiggingJourney, OneCouplingTakesNineKeysOrSixPresses)
{
    begin();
    const QByteArray keys = "yyy.5\nyy\n";
    for (const char key : keys) {
        if (key == '\n')
            press(Qt::Key_Return);
        else
            type(QString{QLatin1Char{key}});
    }
    EXPECT_EQ(keys.size(), 9);
    EXPECT_EQ(text("recordProgress"), "1 of 2 couplings done");
    EXPECT_EQ(text("couplingTitle"), "Right aileron");

    int presses = 0;
    const auto click = [&](QAbstractButton* button) {
        typist.click(*button);
        ++presses;
    };
    for (const char* tile : {"tile0", "tile1", "tile2"})
        click(page.findChild<QWidget*>(QLatin1String(tile))->findChildren<QPushButton*>().front());
    for (QPushButton* leaf : page.findChild<QWidget*>("leafRow")->findChildren<QPushButton*>())
        if (leaf->text() == "0.60") {
            click(leaf);
            break;
        }
    for (const char* tile : {"tilePull", "tileSecured"})
        click(page.findChild<QWidget*>(QLatin1String(tile))->findChildren<QPushButton*>().front());
    EXPECT_EQ(presses, 6);
    EXPECT_EQ(text("recordProgress"), "2 of 2 couplings done");
}

TEST_P(RiggingJourney, AReadingStandsWhereItWasPressedWhenTheNextKeyGoesToAnotherCoupling)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    burst(Qt::Key_PageDown);
    Typist::look();
    expectOneReadingOfTheLeftAileron();
    EXPECT_EQ(text("couplingTitle"), "Right aileron");
}

TEST_P(RiggingJourney, AReadingStandsWhereItWasPressedWhenAnotherRowIsClickedAtOnce)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    Typist{page, Pace::Ahead}.click(part(page, "recordRow3"));
    Typist::look();
    expectOneReadingOfTheLeftAileron();
    EXPECT_EQ(text("couplingTitle"), "Right aileron");
}

TEST_P(RiggingJourney, AReadingIsTheFirstPersonsWhenTheSecondIsAskedForAtOnce)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    burst("s");
    Typist::look();
    expectOneReadingOfTheLeftAileron();
}

TEST_P(RiggingJourney, AReadingIsKeptWhenThePageIsLeftAtOnce)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    page.end();
    Typist::look();
    expectOneReadingOfTheLeftAileron();
}

TEST_P(RiggingJourney, WhatIsTypedAheadIsDoneAsIfItHadBeenTypedSlowly)
{
    begin();
    burst("yyy.5");
    burst(Qt::Key_Return);
    burst("yy");
    burst(Qt::Key_Return);
    burst("yyy.6");
    burst(Qt::Key_Return);
    burst("yy");
    Typist::look();
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.front().coupling, hangar.leftAileron);
    EXPECT_EQ(now.readings.back().coupling, hangar.rightAileron);
    EXPECT_EQ(text("recordProgress"), "2 of 2 couplings done");
}

TEST_P(RiggingJourney, EscapeTakesBackAFigureBeforeItInterruptsTheCoupling)
{
    begin();
    type("yyy1.234,5");
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    EXPECT_TRUE(content().interruptions.empty());
    EXPECT_FALSE(page.findChild<QLabel*>("typedFigure")->isVisible());
    press(Qt::Key_Escape);
    EXPECT_EQ(content().interruptions.size(), 1U);
}

TEST_P(RiggingJourney, EnterGoesOnFromTheSeasonsListWhereverTheFocusIs)
{
    typist.goTo("leader");
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    Typist::look();
    ASSERT_TRUE(page.findChild<QPushButton*>("seasonNext")->isVisible());
    Typist::look();
    page.setFocus();
    press(Qt::Key_Return);
    Typist::look();
    EXPECT_FALSE(page.findChild<QPushButton*>("seasonNext")->isVisible());
    EXPECT_TRUE(part(page, "connectedNext").isVisible());
    passWhoConnected(page, typist);
    EXPECT_TRUE(part(page, "couplingTitle").isVisible());
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
}

TEST_P(RiggingJourney, AFigureTypedTooEarlySaysWhatComesFirst)
{
    must(store.records().add(aLeafSet("B"))); // two sets: none is chosen by itself
    begin();
    type("0.5");
    const auto says = [this](const char* label, const char* words) { return text(label).contains(words); };
    EXPECT_TRUE(says("verdictExplanation", "look comes first")) << text("verdictExplanation").toStdString();
    EXPECT_FALSE(says("leafNote", "look comes first")) << "the card says it";
    type("yyy0.5");
    EXPECT_TRUE(says("verdictExplanation", "Choose the leaf set"))
        << text("verdictExplanation").toStdString();
    EXPECT_TRUE(text("leafNote").contains("The figure was not taken")) << text("leafNote").toStdString();
    typist.goTo("measuredWith");
    press(Qt::Key_Down);
    type("0.5");
    press(Qt::Key_Return);
    ASSERT_EQ(content().readings.size(), 1U);
    type("0.6");
    EXPECT_TRUE(text("leafNote").contains("read already")) << text("leafNote").toStdString();
    EXPECT_EQ(content().readings.size(), 1U);
}

TEST_P(RiggingJourney, LargerTextLeavesTheReaderWhereTheClosedRecordIsReadAndTheNamesAtTheClose)
{
    begin();
    chooseNamesAtTheClose();
    const auto enlarge = [this] { // as the window does
        page.setLook({Theme::dark(), FontSizes{}});
        page.showAirframe(hangar.airframe);
    };
    enlarge();
    EXPECT_EQ(page.findChild<QComboBox*>("closeSecond")->currentIndex(), 2);
    countAndClose();
    ASSERT_TRUE(page.findChild<QPushButton*>("printRecord")->isVisible());
    enlarge();
    EXPECT_TRUE(page.findChild<QPushButton*>("printRecord")->isVisible());
}

TEST_P(RiggingJourney, WhoTookItApartIsAskedAndKept)
{
    begin();
    chooseNamesAtTheClose();
    countAndClose();
    type("b"); // back to the start
    page.findChild<QPushButton*>("takenApart")->click();
    EXPECT_TRUE(must(store.records().events(hangar.airframe)).empty()) << "nobody states it";
    EXPECT_TRUE(text("startMissing").contains("who took it apart"));
    page.findChild<QComboBox*>("leader")->setCurrentIndex(2); // T. Vale
    page.findChild<QPushButton*>("takenApart")->click();
    const auto events = must(store.records().events(hangar.airframe));
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events.front().stamp.by, hangar.vale);
}

TEST_P(RiggingJourney, WhatAnotherWindowWroteIsShownBeforeAnythingMoreIsTaken)
{
    begin();
    type("yyy0.5");
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records other{*file, ids, store.clock()};
    Reading theirs = hangar.reading(between(600, 650), store.clock().now());
    theirs.record = content().record.id;
    must(other.add(theirs, std::nullopt));
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 1U) << "what was on the screen did not hold any more";
    EXPECT_TRUE(text("couplingNotice").startsWith("Another window has written"))
        << text("couplingNotice").toStdString();
    EXPECT_TRUE(text("verdictExplanation").contains("0.60"));
}

TEST_P(RiggingJourney, ARecordBegunInAnotherWindowIsGoneOnWithAndSaidSo)
{
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records records{*file, ids, store.clock()};
    RiggedTodayPage other{records, store.clock(), prompts};
    other.showAirframe(hangar.airframe);
    begin();
    type("yy"); // at work on the left aileron
    other.findChild<QComboBox*>("leader")->setCurrentIndex(2);
    other.findChild<QPushButton*>("begin")->click();
    EXPECT_TRUE(other.findChild<QLabel*>("couplingNotice")->text().contains("another window"))
        << other.findChild<QLabel*>("couplingNotice")->text().toStdString();
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).size(), 1U);
    other.end();
    EXPECT_TRUE(content().interruptions.empty()) << "what is half done is this window's work";
}

TEST_P(RiggingJourney, WhatAnotherWindowLeftHalfDoneBeginsAnewHereAndThereAgain)
{
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records records{*file, ids, store.clock()};
    RiggedTodayPage other{records, store.clock(), prompts};
    other.showAirframe(hangar.airframe);
    showAt(other, {1280, 744});
    begin();
    type("yy");
    other.findChild<QComboBox*>("leader")->setCurrentIndex(1); // the same person, at the other window
    other.findChild<QPushButton*>("begin")->click();
    EXPECT_TRUE(textOf(other, "couplingNotice").find("another window") != std::string::npos);
    typeSlowly(other, "y");
    EXPECT_EQ(content().checks.size(), 2U) << "it was meant for what stood there";
    ASSERT_EQ(content().interruptions.size(), 1U);
    EXPECT_TRUE(textOf(other, "couplingNotice").find("starts again from the look") != std::string::npos)
        << textOf(other, "couplingNotice");
    typeSlowly(other, "y");
    EXPECT_EQ(content().checks.back().kind, CheckKind::BallInSocket);
    type("y");      // here: what the other has written is shown first
    Typist::look(); // what is typed behind it unseen is let go
    type("y");      // and its half look is not gone on with
    EXPECT_EQ(content().checks.size(), 3U);
    EXPECT_EQ(content().interruptions.size(), 2U);
    type("y");
    EXPECT_EQ(content().checks.back().kind, CheckKind::BallInSocket);
}

TEST_P(RiggingJourney, AJointThatWasLeftHalfDoneSaysThatItBeginsAgain)
{
    begin();
    type("yy");
    press(Qt::Key_PageDown);
    press(Qt::Key_PageUp);
    EXPECT_TRUE(text("couplingNotice").contains("starts again here, from the look"))
        << text("couplingNotice").toStdString();
    type("y");
    EXPECT_FALSE(part(page, "couplingNotice").isVisible());
}

TEST_P(RiggingJourney, ANoPressedByMistakeSaysOnItsCardHowOneGetsOut)
{
    begin();
    type("yn");
    EXPECT_TRUE(text("stopTodo").contains("a slip of the key?")) << text("stopTodo").toStdString();
    EXPECT_TRUE(text("stopTodo").contains("Ctrl+6"));
    type("w");
    EXPECT_TRUE(text("couplingNotice").contains("slip of the key"));
    EXPECT_EQ(content().checks.size(), 2U);
    EXPECT_TRUE(part(page, "stopCard").isVisible());
}

TEST_P(RiggingJourney, AWrongLeafIsPutRightAfterABreakTooAndTheCouplingIsStillMeasuredAnew)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    Typist::look();        // at the verdict: what was typed before counts for nothing
    press(Qt::Key_Escape); // called away
    prompts.texts.push_back("pressed the neighbour");
    type("w");
    Typist::look();
    EXPECT_FALSE(part(page, "verdictWord").isVisible()) << "nothing green stands for what was taken back";
    type("y0.5");
    press(Qt::Key_Return);
    const RecordContent now = content();
    EXPECT_EQ(now.checks.size(), 3U) << "no pull before the reading that takes its place";
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().corrects, now.readings.front().id);
    EXPECT_TRUE(part<QLabel>(page, "couplingNotice").text().startsWith("Saved: "));
    type("yyy");
    EXPECT_TRUE(page.findChild<QWidget*>("leafRow")->isEnabled()) << "after the break it is measured anew";
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 3U);
    EXPECT_FALSE(content().readings.back().corrects);
}

TEST_P(RiggingJourney, AReadingSaidToBeWrongIsStruckWhenNobodyStaysToReadItAgain)
{
    begin();
    type("yyy0.45");
    press(Qt::Key_Return);
    prompts.texts.push_back("leaf tilted");
    type("w");
    press(Qt::Key_Escape); // called away
    const RecordContent now = content();
    ASSERT_EQ(now.exclusions.size(), 1U);
    EXPECT_EQ(now.exclusions.front().reading, now.readings.front().id);
    EXPECT_EQ(now.exclusions.front().reason, "leaf tilted");
}

TEST_P(RiggingJourney, AReadingOnTheWrongJointIsStruckAfterABreakBeforeAnybodyLooksAgain)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    Typist::look();        // at the verdict: what was typed before counts for nothing
    press(Qt::Key_Escape); // called away
    prompts.texts.push_back("read on the right one");
    type("x");
    const RecordContent now = content();
    ASSERT_EQ(now.exclusions.size(), 1U);
    EXPECT_EQ(now.exclusions.front().reading, now.readings.front().id);
    EXPECT_EQ(now.exclusions.front().reason, "read on the right one");
    EXPECT_EQ(now.exclusions.front().stamp.by, hangar.oren);
    EXPECT_TRUE(part<QLabel>(page, "struckReadings").isVisible());
    EXPECT_TRUE(part(page, "struckReadings").accessibleName().contains("read on the right one"));
    EXPECT_FALSE(part(page, "strike").isEnabled()) << "nothing stands that could be struck";
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 2U);
    EXPECT_FALSE(content().readings.back().corrects);
}

TEST_P(RiggingJourney, StrikingAnOutsideReadingClosesNoQuestion)
{
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    Typist::look(); // at the verdict: what was typed before counts for nothing
    prompts.texts.push_back("read on the wrong joint");
    type("x");
    const RecordContent now = content();
    EXPECT_EQ(now.exclusions.size(), 1U);
    ASSERT_EQ(now.questions.size(), 1U);
    EXPECT_TRUE(now.questions.front().isOpen());
    EXPECT_FALSE(part(page, "leafRow").isEnabled()) << "it is left as it is until that is resolved";
    type("m");
    EXPECT_TRUE(part(page, "leafRow").isEnabled()) << "unless somebody asks for it";
}

TEST_P(RiggingJourney, OpenedAgainInTheSecondInspectionItShowsNothingOfTheFirst)
{
    begin();
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yys");
    Typist::look();
    chooseIn(page, "measuredBy", 2);
    type("y");
    EXPECT_TRUE(page.isBlind());
    page.end();
    RiggedTodayPage again{store.records(), store.clock(), prompts};
    again.resize(1280, 744);
    again.show();
    again.showAirframe(hangar.airframe);
    Typist::look();
    EXPECT_TRUE(again.isBlind());
    EXPECT_EQ(textOf(again, "couplingTitle"), "Right aileron") << "which the first person has not looked at";
    EXPECT_FALSE(part(again, "verdictWord").isVisible());
    EXPECT_EQ(part<QComboBox>(again, "measuredBy").currentIndex(), 0) << "nobody is filled in";
    EXPECT_TRUE(part(again, "recordRow2").accessibleDescription().contains("hidden"));
}

TEST_P(RiggingJourney, OnceTheSecondPersonHasFinishedNothingIsSaidToBeHidden)
{
    begin();
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yys");
    Typist::look();
    chooseIn(page, "measuredBy", 2);
    type("y");
    EXPECT_EQ(text("couplingNotice"), "Your own look and pull. The first result is hidden.");
    type("yyy");
    Typist::look();
    EXPECT_FALSE(part(page, "couplingNotice").isVisible());
    EXPECT_EQ(text("verdictExplanation").indexOf("Nothing of the first"), -1);
}

TEST_P(RiggingJourney, AStopByASlipOfTypingTellsTheCorrectionAndStays)
{
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    Typist::look(); // at the verdict: what was typed before counts for nothing
    prompts.texts.push_back("slip of the finger");
    type("w");
    Typist::look();
    type("0.5");
    press(Qt::Key_Return);
    Typist::look();
    EXPECT_TRUE(part(page, "stopCard").isVisible());
    EXPECT_EQ(text("stopWhy"),
              "Left aileron: 0.90–0.95 mm lay outside the band. It was corrected to 0.50–0.55 mm by M. Oren: "
              "“slip of the "
              "finger”. The stop stays until a named person has said what was found and done (Ctrl+6).");
    Look large;
    large.fonts.scale = 1.5;
    page.setLook(large);
    page.resize(1024, 684);
    Typist::look();
    const auto* scroll = part<QWidget>(page, "stopCard").parentWidget()->parentWidget();
    EXPECT_LE(part<QWidget>(page, "stopCard").parentWidget()->width(), scroll->width())
        << "nothing is wider than its window";
}

TEST_P(RiggingJourney, AKeyOpensWhoMeasuresAndWhatWithAndTheKeysGoOnWhereTheyLeftOff)
{
    begin();
    type("b");
    Typist::look();
    auto& person = part<QComboBox>(page, "measuredBy");
    EXPECT_TRUE(person.view()->isVisible());
    person.hidePopup();
    type("g");
    Typist::look();
    EXPECT_TRUE(part<QComboBox>(page, "measuredWith").view()->isVisible());
    part<QComboBox>(page, "measuredWith").hidePopup();
    chooseIn(page, "measuredWith", 1);
    EXPECT_TRUE(page.hasFocus());
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 1U);
}

TEST_P(RiggingJourney, EnterPressesTheButtonThatHasTheFocusAndNothingElsewhere)
{
    begin();
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yy");
    Typist::look();
    auto& again = part<QPushButton>(page, "measureAgain");
    again.setFocus();
    press(Qt::Key_Return);
    Typist::look();
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
    EXPECT_TRUE(part(page, "leafRow").isEnabled()) << "it was measured again";
}

TEST_P(RiggingJourney, NothingIsStruckWithoutAReason)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    Typist::look(); // at the verdict: what was typed before counts for nothing
    type("x");
    EXPECT_TRUE(content().exclusions.empty());
    ASSERT_FALSE(prompts.asked.empty());
    EXPECT_NE(prompts.asked.back().find("nothing takes its place"), std::string::npos);
}

TEST_P(RiggingJourney, TheCardOfAnInsideReadingSaysWhatNobodyHasResolved)
{
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    Typist::look(); // at the verdict: what was typed before counts for nothing
    type("m0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 2U);
    EXPECT_TRUE(text("verdictWord").startsWith("Outside the band, and nobody has resolved it"))
        << text("verdictWord").toStdString();
    EXPECT_TRUE(text("verdictExplanation").startsWith("This reading by itself: inside."))
        << text("verdictExplanation").toStdString();
    EXPECT_TRUE(text("verdictCaution").startsWith("Stop")) << text("verdictCaution").toStdString();
}

TEST_P(RiggingJourney, TheCardOfAnInsideReadingSaysWhatCouldNotBeSeen)
{
    begin();
    type("ycy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 1U);
    EXPECT_EQ(text("verdictWord"), "Cannot tell: the plunger was not seen");
    EXPECT_TRUE(text("verdictExplanation").contains("look again with a mirror or a light"));
    EXPECT_EQ(must(store.records().readingsOf(hangar.leftAileron)).back().shown->judgement.reason,
              Reason::PlungerNotSeen);
}
