// One press does one thing: on a screen that still holds, where what was pressed is in sight, and never
// twice.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/widgets/gap_strip_widget.h"
#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/who_connected.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QWheelEvent>

#include <algorithm>
#include <gtest/gtest.h>
#include <memory>

using namespace rig;
using namespace rig::test;

namespace {

// The left aileron has a band; the page stands before a rigging.
class Presses : public testing::Test
{
protected:
    Presses()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
    }

    void show()
    {
        page = std::make_unique<RiggedTodayPage>(store.records(), store.clock(), prompts);
        QObject::connect(page.get(), &Page::problemArose, page.get(),
                         [this](const QString& sentence) { problem = sentence.toStdString(); });
        page->showAirframe(hangar.airframe);
        showAt(*page, {1280, 744});
    }

    void begin()
    {
        show();
        part<QComboBox>(*page, "leader").setCurrentIndex(1);
        click("begin");
    }

    void beginAtTheFirstJoint()
    {
        begin();
        click("seasonNext");
        passWhoConnected(*page);
    }

    void click(const char* button)
    {
        part<QAbstractButton>(*page, button).click();
        QApplication::processEvents();
    }

    void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier, const QString& text = {})
    {
        QKeyEvent event{QEvent::KeyPress, key, with, text};
        QApplication::sendEvent(page.get(), &event);
        QApplication::processEvents();
    }

    void type(const char* keys) { typeSlowly(*page, keys); }

    void choose(const char* box, int index)
    {
        chooseIn(*page, box, index);
        QApplication::processEvents();
    }

    void anotherWindowWrites()
    {
        const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
        IdSource ids{7};
        Records other{*file, ids, store.clock()};
        must(other.add(aPerson("A. Quill")));
    }

    CouplingId addElevator()
    {
        const CouplingId elevator = must(store.records().add(aCoupling(hangar.airframe, "Elevator")));
        Fitting first;
        first.coupling = elevator;
        first.begins = dayOf(2026, 3, 1);
        must(store.records().add(first));
        return elevator;
    }

    // Another window goes to the next joint that waits and does it.
    void anotherWindowDoesTheRightAileron()
    {
        const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
        IdSource ids{7};
        Records records{*file, ids, store.clock()};
        RiggedTodayPage other{records, store.clock(), prompts};
        other.showAirframe(hangar.airframe);
        showAt(other, {1280, 744});
        part<QAbstractButton>(other, "recordRow3").click();
        ASSERT_EQ(textOf(other, "couplingTitle"), "Right aileron");
        chooseIn(other, "measuredBy", 1); // nobody is filled in there
        lookUp();
        typeSlowly(other, "yyy0.70\ryy");
        ASSERT_EQ(must(store.records().readingsOf(hangar.rightAileron)).size(), 1U);
    }

    // From now on no reading can be saved.
    void refuseReadings()
    {
        must(store.file().connection().run("CREATE TEMP TRIGGER full BEFORE INSERT ON reading "
                                           "BEGIN SELECT RAISE(ABORT, 'full'); END"));
    }

    bool isSaidThatAnotherHasWritten()
    {
        return part(*page, "riggingNews").isVisible() &&
               textOf(*page, "riggingNews").find("Another window has written") == 0;
    }

    RecordContent content()
    {
        return must(store.records().content(must(store.records().riggingRecords(hangar.airframe)).back().id));
    }

    void toTheClose()
    {
        click("recordRow6");
        ASSERT_TRUE(part(*page, "closeRecord").isVisible());
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    std::unique_ptr<RiggedTodayPage> page;
    std::string problem;
};

} // namespace

TEST_F(Presses, TickNothingOnAScreenThatAnotherWindowHasOvertaken)
{
    begin();
    anotherWindowWrites();
    click("season0");
    EXPECT_TRUE(content().ticks.empty());
    EXPECT_FALSE(part<QCheckBox>(*page, "season0").isChecked());
    EXPECT_TRUE(isSaidThatAnotherHasWritten());
    click("season0");
    EXPECT_EQ(content().ticks.size(), 1U);
    EXPECT_FALSE(part(*page, "riggingNews").isVisible());
}

TEST_F(Presses, CloseNothingOnAScreenThatAnotherWindowHasOvertaken)
{
    beginAtTheFirstJoint();
    toTheClose();
    for (const char* count : {"toolsCounted", "hatchesOn"})
        part<QCheckBox>(*page, count).setChecked(true);
    choose("closeFirst", 1);
    choose("closeSecond", 2);
    anotherWindowWrites();
    click("closeRecord");
    EXPECT_FALSE(content().close);
    EXPECT_TRUE(isSaidThatAnotherHasWritten());
    click("closeRecord");
    EXPECT_TRUE(content().close);
}

TEST_F(Presses, BeginNothingOnAScreenThatAnotherWindowHasOvertaken)
{
    show();
    part<QComboBox>(*page, "leader").setCurrentIndex(1);
    anotherWindowWrites();
    click("begin");
    EXPECT_TRUE(must(store.records().riggingRecords(hangar.airframe)).empty());
    EXPECT_TRUE(isSaidThatAnotherHasWritten());
    click("begin");
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).size(), 1U);
}

TEST_F(Presses, NoteNothingTakenApartOnAScreenThatAnotherWindowHasOvertaken)
{
    RecordClose close;
    close.record = must(store.records().add(hangar.record(store.clock().now())));
    close.first = hangar.oren;
    close.second = hangar.vale;
    must(store.records().add(close));
    show();
    part<QComboBox>(*page, "leader").setCurrentIndex(1);
    anotherWindowWrites();
    click("takenApart");
    EXPECT_TRUE(must(store.records().events(hangar.airframe)).empty());
    EXPECT_TRUE(isSaidThatAnotherHasWritten());
}

TEST_F(Presses, AddNoSurfacesOnAScreenThatAnotherWindowHasOvertaken)
{
    beginAtTheFirstJoint();
    page->showAirframe(hangar.airframe);
    click("recordRow5");
    ASSERT_TRUE(part(*page, "addUsualSurfaces").isVisible());
    anotherWindowWrites();
    click("addUsualSurfaces");
    EXPECT_TRUE(must(store.records().surfaces(hangar.airframe)).empty());
    EXPECT_TRUE(isSaidThatAnotherHasWritten());
    click("addUsualSurfaces");
    EXPECT_FALSE(must(store.records().surfaces(hangar.airframe)).empty());
}

TEST_F(Presses, AnEnterTypedAheadDoesNotTakeAwayAStopThatNobodyHasRead)
{
    beginAtTheFirstJoint();
    type("yyn\r");
    EXPECT_TRUE(part(*page, "stopCard").isVisible());
    EXPECT_EQ(textOf(*page, "couplingTitle"), "Left aileron");
    EXPECT_NE(textOf(*page, "couplingNotice").find("Stopped: read"), std::string::npos);
    type("\r");
    EXPECT_EQ(textOf(*page, "couplingTitle"), "Right aileron") << "it was read";
}

TEST_F(Presses, OfAStoppedJointNothingStandsThereThatIsNotAsked)
{
    beginAtTheFirstJoint();
    EXPECT_TRUE(part(*page, "tilePull").isVisible());
    type("yyn");
    for (const char* unasked : {"tilePull", "tileSecured", "leafRow"})
        EXPECT_FALSE(part(*page, unasked).isVisible()) << unasked;
    EXPECT_TRUE(part(*page, "tile2").isVisible()) << "what was answered stays";
    type("s");
    EXPECT_FALSE(part(*page, "tile0").isVisible());
    EXPECT_EQ(textOf(*page, "verdictExplanation"), "It stops here. Nothing else is asked of this joint.");
}

TEST_F(Presses, AStoppedJointSaysSoInTheSecondPersonsListToo)
{
    beginAtTheFirstJoint();
    type("yyns");
    EXPECT_TRUE(part(*page, "recordRow2").accessibleDescription().contains("stop", Qt::CaseInsensitive))
        << part(*page, "recordRow2").accessibleDescription().toStdString();
}

TEST_F(Presses, TheEndOfAHeldEscapeIsNoSecondEscape)
{
    show();
    for (const QShortcut* one : page->findChildren<QShortcut*>()) {
        const bool isPaged = one->key() == Qt::Key_PageDown || one->key() == Qt::Key_PageUp;
        EXPECT_EQ(one->autoRepeat(), isPaged) << one->key().toString().toStdString();
    }
}

TEST_F(Presses, TheLinesAroundThePageStayBlindAsLongAsTheSecondPersonIsAtWork)
{
    beginAtTheFirstJoint();
    EXPECT_FALSE(page->isBlind());
    type("yyy0.5\ryys");
    EXPECT_TRUE(page->isBlind());
    toTheClose();
    EXPECT_TRUE(page->isBlind()) << "the second person looks at the list of what is open";
}

TEST_F(Presses, TheListMarksOnePlaceWhileTheSeasonsListIsOpen)
{
    beginAtTheFirstJoint();
    type("yyy0.5\ryys");
    click("recordRow0");
    ASSERT_TRUE(part(*page, "seasonNext").isVisible());
    std::vector<std::string> marked;
    for (const QAbstractButton* row : page->findChildren<QAbstractButton*>())
        if (row->objectName().startsWith("recordRow") && row->isVisible() && row->isChecked())
            marked.push_back(row->objectName().toStdString());
    EXPECT_EQ(marked, (std::vector<std::string>{"recordRow0"}));
}

TEST_F(Presses, ThePullIsShutAgainWhereItsReadingCouldNotBeSaved)
{
    refuseReadings();
    beginAtTheFirstJoint();
    type("yyy0.5\r");
    EXPECT_FALSE(problem.empty());
    EXPECT_EQ(textOf(*page, "verdictKept"), "not saved");
    for (const QAbstractButton* answer : part(*page, "tilePull").findChildren<QAbstractButton*>())
        EXPECT_FALSE(answer->isEnabled()) << answer->text().toStdString();
    EXPECT_EQ(content().checks.size(), 3U);
}

TEST_F(Presses, TheZeroOfTheNumberPadAnswersAsTheOtherDoes)
{
    begin();
    click("seasonNext");
    ASSERT_TRUE(part(*page, "connectedNext").isVisible());
    press(Qt::Key_0, Qt::KeypadModifier, "0");
    ASSERT_EQ(content().connected.size(), 1U);
    EXPECT_TRUE(content().connected.front().persons.empty()) << "not known";
}

TEST_F(Presses, AKeyWhoseButtonIsNotThereDoesNothing)
{
    beginAtTheFirstJoint();
    QTest::keyClick(page.get(), Qt::Key_PageDown);
    QApplication::processEvents();
    type("yyy0.5\r");
    ASSERT_FALSE(part(*page, "verdictAsk").isVisible()) << "no band yet: nothing more to be said";
    type("d");
    QTest::keyClick(page.get(), Qt::Key_PageUp);
    QApplication::processEvents();
    type("yyy0.5\r");
    EXPECT_TRUE(part(*page, "verdictAsk").isVisible());
    EXPECT_FALSE(part(*page, "verdictMore").isVisible());
}

TEST_F(Presses, ARefusalOnTheClosingPageLeavesTheButtonWhereItIs)
{
    beginAtTheFirstJoint();
    toTheClose();
    const QPoint before = part(*page, "closeRecord").mapTo(page.get(), QPoint{});
    click("closeRecord");
    ASSERT_FALSE(textOf(*page, "closeProblem").empty());
    QApplication::processEvents();
    EXPECT_EQ(part(*page, "closeRecord").mapTo(page.get(), QPoint{}), before);
    EXPECT_TRUE(part(*page, "closeProblem").isVisible());
}

TEST_F(Presses, TheWheelChangesNothingThatItPassesOver)
{
    beginAtTheFirstJoint();
    click("play");
    auto& felt = part<QComboBox>(*page, "playAlong");
    page->setFocus();
    QWheelEvent turn{{5, 5},
                     felt.mapToGlobal(QPointF{5, 5}),
                     {},
                     {0, -120},
                     Qt::NoButton,
                     Qt::NoModifier,
                     Qt::NoScrollPhase,
                     false};
    QApplication::sendEvent(&felt, &turn);
    EXPECT_EQ(felt.currentIndex(), 0);
}

TEST_F(Presses, OneReturnKeepsAFigureAndStaysAtItsSurface)
{
    beginAtTheFirstJoint();
    click("recordRow5");
    click("addUsualSurfaces");
    choose("atSurface", 1);
    choose("inCockpit", 2);
    type("yy");
    press(Qt::Key_Up);
    press(Qt::Key_Down);
    type("yyyyu");
    ASSERT_TRUE(part(*page, "nextSurface").isEnabled()) << "everything is tried";
    auto& line = part<QLineEdit>(*page, "measuredUp");
    EXPECT_EQ(page->window()->focusWidget(), &line);
    line.setText("57.5");
    QTest::keyClick(&line, Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_EQ(content().surfaceMeasures.size(), 1U);
    EXPECT_EQ(textOf(*page, "surfaceTitle"), "Left aileron");
    type("\r");
    EXPECT_EQ(textOf(*page, "surfaceTitle"), "Right aileron");
}

TEST_F(Presses, WhatIsTypedAheadIsNotTakenAtAJointThatTheScreenDidNotSayComesNext)
{
    const CouplingId elevator = addElevator();
    beginAtTheFirstJoint();
    type("yyy0.45\ryy");
    anotherWindowDoesTheRightAileron();
    page->catchUp();
    for (const QChar one : QStringLiteral("\ryyy0.95\r"))
        QTest::keyClick(page.get(),
                        one == u'\r' ? Qt::Key_Return : static_cast<Qt::Key>(one.toUpper().unicode()));
    QApplication::processEvents();
    EXPECT_TRUE(must(store.records().readingsOf(elevator)).empty());
    const char* news = "couplingNotice";
    EXPECT_NE(textOf(*page, news).find("Another window has worked meanwhile at: Right aileron."),
              std::string::npos)
        << textOf(*page, news);
    lookUp();
    EXPECT_EQ(textOf(*page, "couplingTitle"), "Elevator");
    type("yyy0.95\r");
    EXPECT_EQ(must(store.records().readingsOf(elevator)).size(), 1U) << "it is seen now";
}

TEST_F(Presses, WhatIsTypedBehindARefusedKeyIsNotTakenEither)
{
    const CouplingId elevator = addElevator();
    beginAtTheFirstJoint();
    type("yyy0.45\ryy");
    anotherWindowDoesTheRightAileron();
    for (const QChar one : QStringLiteral("\r\ryyy0.95\r"))
        QTest::keyClick(page.get(),
                        one == u'\r' ? Qt::Key_Return : static_cast<Qt::Key>(one.toUpper().unicode()));
    QApplication::processEvents();
    EXPECT_EQ(textOf(*page, "couplingTitle"), "Left aileron");
    EXPECT_TRUE(must(store.records().readingsOf(elevator)).empty());
    EXPECT_NE(textOf(*page, "couplingNotice").find("Another window has worked meanwhile at: Right aileron."),
              std::string::npos)
        << textOf(*page, "couplingNotice");
}

TEST_F(Presses, EscIsToldOnlyWhereThereIsSomethingToInterrupt)
{
    beginAtTheFirstJoint();
    EXPECT_TRUE(part(*page, "couplingEsc").isVisible());
    type("yyn");
    EXPECT_FALSE(part(*page, "couplingEsc").isVisible()) << "it is stopped";
}

TEST_F(Presses, ACorrectionNamesTheReadingAlsoWhereItIsNotOnTheScreen)
{
    beginAtTheFirstJoint();
    type("yyy0.45\r");
    page->end(); // the program goes down
    page->showAirframe(hangar.airframe);
    lookUp();
    type("w");
    ASSERT_EQ(prompts.asked.size(), 1U);
    EXPECT_NE(prompts.asked[0].find("0.45"), std::string::npos) << prompts.asked[0];
    EXPECT_NE(prompts.asked[0].find("read by M. Oren and kept at "), std::string::npos) << prompts.asked[0];
    EXPECT_FALSE(prompts.offered.contains("Wrong coupling")) << "another figure does not put that right";
}

TEST_F(Presses, TheStripMarksThePastThatStandsAndNoReadingThatWasCorrected)
{
    beginAtTheFirstJoint();
    type("yyy0.40\r");
    const auto strip = [this]() -> const GapStripView& {
        return part<GapStripWidget>(*page, "gapStrip").view();
    };
    const auto count = [&](GapInterval one) { return std::ranges::count(strip().earlier, one); };
    const auto past = std::ssize(strip().earlier);
    EXPECT_EQ(past, 12) << "the confirmed ones";
    prompts.texts = {"misread"};
    type("w0.50\r");
    EXPECT_EQ(strip().reading, between(500, 550));
    EXPECT_EQ(count(between(400, 450)), 0) << "another took its place";
    EXPECT_EQ(std::ssize(strip().earlier), past);
}
