// The owner after rigging: keyboard only, from the start of the record to its close.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "tests/support/hangar.h"
#include "tests/support/scripted_prompts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class RiggingJourney : public testing::Test
{
protected:
    RiggingJourney()
    {
        for (int i = 0; i < 12; ++i) {
            Reading reading =
                hangar.reading(between(i % 3 ? 500 : 450, i % 3 ? 550 : 500), store.clock().now());
            reading.purpose = Purpose::Baseline;
            must(store.records().add(reading, std::nullopt));
        }
        store.clock().passMinutes(24 * 60);
        page.resize(1280, 744);
        page.show();
        page.showAirframe(hangar.airframe);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
    }

    // Whatever has the focus gets the key, as at a real keyboard; without one it is the page.
    void press(Qt::Key key)
    {
        QWidget* target = page.focusWidget() ? page.focusWidget() : &page;
        QTest::keyClick(target, key);
        QCoreApplication::processEvents();
    }

    void type(const QString& text)
    {
        for (const QChar c : text) {
            QWidget* target = page.focusWidget() ? page.focusWidget() : &page;
            QTest::keyClicks(target, QString{c});
            QCoreApplication::processEvents();
        }
    }

    // As fast as the keys come: the program gets no turn of its own between them.
    void burst(const QString& text)
    {
        for (const QChar c : text)
            QTest::keyClicks(page.focusWidget() ? page.focusWidget() : &page, QString{c});
    }

    void burst(Qt::Key key) { QTest::keyClick(page.focusWidget() ? page.focusWidget() : &page, key); }

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

    QString text(const char* label) { return page.findChild<QLabel*>(QLatin1String(label))->text(); }

    void begin()
    {
        page.findChild<QComboBox*>("leader")->setFocus();
        press(Qt::Key_Down); // M. Oren
        press(Qt::Key_Tab);
        press(Qt::Key_Return);
        leaveSeasonList();
    }

    // The first record of the year begins with its list.
    void leaveSeasonList()
    {
        auto* next = page.findChild<QPushButton*>("seasonNext");
        if (!next->isVisible())
            return;
        next->setFocus();
        press(Qt::Key_Return);
    }

    void tickSeasonList()
    {
        page.findChild<QAbstractButton*>("recordRow0")->click();
        for (QCheckBox* box : page.findChildren<QCheckBox*>())
            if (box->objectName().startsWith("season")) {
                box->setFocus();
                press(Qt::Key_Space);
            }
        leaveSeasonList();
    }

    void chooseSecond()
    {
        auto* person = page.findChild<QComboBox*>("measuredBy");
        person->setFocus();
        press(Qt::Key_Down); // the first of those who may be second
    }

    RecordContent content()
    {
        const auto records = must(store.records().riggingRecords(hangar.airframe));
        EXPECT_FALSE(records.empty());
        return must(store.records().content(records.back().id));
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    QString problem;
};

} // namespace

TEST_F(RiggingJourney, GoesFromTheLookToTheCloseWithTwoNames)
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

    EXPECT_EQ(text("surfaceTitle"), "Trim") << "the control check begins";
    page.findChild<QComboBox*>("atSurface")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QComboBox*>("inCockpit")->setFocus();
    press(Qt::Key_Down);
    press(Qt::Key_Down); // not the one who stands at the surface
    type("yyy");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Left aileron") << "the second inspection begins";
    for (const QPushButton* leaf : page.findChild<QWidget*>("leafRow")->findChildren<QPushButton*>())
        EXPECT_FALSE(leaf->isChecked()) << "the first person's reading shows: " << leaf->text().toStdString();
    chooseSecond();
    type("yyyy");
    press(Qt::Key_Return);
    type("yyyy");
    press(Qt::Key_Return);
    EXPECT_EQ(text("openItems"), "•  Right aileron: no band yet, the reading could not be judged");

    for (const char* count : {"toolsCounted", "hatchesOn"}) {
        page.findChild<QCheckBox*>(QLatin1String(count))->setFocus();
        press(Qt::Key_Space);
    }
    page.findChild<QComboBox*>("closeFirst")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QComboBox*>("closeSecond")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QPushButton*>("closeRecord")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(text("closeProblem"), "Both names are the same. The second person has to be somebody else.");
    EXPECT_FALSE(content().close);

    page.findChild<QComboBox*>("closeSecond")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QPushButton*>("closeRecord")->setFocus();
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

TEST_F(RiggingJourney, KeepsTheLeavesShutUntilTheBallIsSeen)
{
    begin();
    type("n");
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_TRUE(text("couplingNotice").contains("cannot be closed as complete"));
}

TEST_F(RiggingJourney, AnOutsideReadingSaysStopAndWhomToCallAndStands)
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
    type("m0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 2U) << "measuring again adds, never replaces";
}

TEST_F(RiggingJourney, EscapeSendsTheCouplingBackToTheLook)
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

TEST_F(RiggingJourney, RefusesADoubtfulFigureWithASentenceAndKeepsNothing)
{
    begin();
    type("yyy1.234,5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_FALSE(text("leafNote").isEmpty());
    type("60");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    type("0.62");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_TRUE(text("leafNote").contains("0.60") && text("leafNote").contains("0.65"));
}

TEST_F(RiggingJourney, AWrongLeafIsCorrectedWithAReasonAndStaysInTheFile)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    prompts.texts.push_back("pressed the neighbour");
    type("w0.5");
    press(Qt::Key_Return);
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().corrects, now.readings.front().id);
    EXPECT_EQ(now.readings.back().note, "pressed the neighbour");
}

TEST_F(RiggingJourney, InterruptedTwiceItIsDoneFromTheLookEachTimeAndTheMarkStays)
{
    begin();
    type("yyy");
    press(Qt::Key_Escape);
    type("yyy0.5");
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yy");
    const RecordContent now = content();
    EXPECT_EQ(now.interruptions.size(), 2U);
    EXPECT_EQ(now.readings.size(), 2U) << "what was read before the break stays";
    EXPECT_EQ(text("recordProgress"), "1 of 2 couplings done");
    EXPECT_TRUE(page.findChild<QWidget*>("recordRow1")->accessibleDescription().contains("interrupted"));
}

TEST_F(RiggingJourney, TwoPeopleDisagreeBlindlyAndBothReadingsStand)
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
TEST_F(RiggingJourney, OneCouplingTakesNineKeysOrSixPresses)
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
        QTest::mouseClick(button, Qt::LeftButton);
        QCoreApplication::processEvents();
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

TEST_F(RiggingJourney, AReadingStandsWhereItWasPressedWhenTheNextKeyGoesToAnotherCoupling)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    burst(Qt::Key_PageDown);
    QCoreApplication::processEvents();
    expectOneReadingOfTheLeftAileron();
    EXPECT_EQ(text("couplingTitle"), "Right aileron");
}

TEST_F(RiggingJourney, AReadingStandsWhereItWasPressedWhenAnotherRowIsClickedAtOnce)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    QTest::mouseClick(page.findChild<QWidget*>("recordRow2"), Qt::LeftButton);
    QCoreApplication::processEvents();
    expectOneReadingOfTheLeftAileron();
    EXPECT_EQ(text("couplingTitle"), "Right aileron");
}

TEST_F(RiggingJourney, AReadingIsTheFirstPersonsWhenTheSecondIsAskedForAtOnce)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    burst("s");
    QCoreApplication::processEvents();
    expectOneReadingOfTheLeftAileron();
}

TEST_F(RiggingJourney, AReadingIsKeptWhenThePageIsLeftAtOnce)
{
    begin();
    burst("yyy0.5");
    burst(Qt::Key_Return);
    page.leave();
    QCoreApplication::processEvents();
    expectOneReadingOfTheLeftAileron();
}

TEST_F(RiggingJourney, WhatIsTypedAheadIsDoneAsIfItHadBeenTypedSlowly)
{
    begin();
    burst("yyy.5");
    burst(Qt::Key_Return);
    burst("yy");
    burst(Qt::Key_Return);
    burst("yyy.6");
    burst(Qt::Key_Return);
    burst("yy");
    QCoreApplication::processEvents();
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.front().coupling, hangar.leftAileron);
    EXPECT_EQ(now.readings.back().coupling, hangar.rightAileron);
    EXPECT_EQ(text("recordProgress"), "2 of 2 couplings done");
}

TEST_F(RiggingJourney, EscapeTakesBackAFigureBeforeItInterruptsTheCoupling)
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

TEST_F(RiggingJourney, EnterGoesOnFromTheSeasonsListWhereverTheFocusIs)
{
    page.findChild<QComboBox*>("leader")->setFocus();
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    ASSERT_TRUE(page.findChild<QPushButton*>("seasonNext")->isVisible());
    page.setFocus();
    press(Qt::Key_Return);
    EXPECT_FALSE(page.findChild<QPushButton*>("seasonNext")->isVisible());
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
}

TEST_F(RiggingJourney, AFigureTypedTooEarlySaysWhatComesFirst)
{
    must(store.records().add(aLeafSet("B"))); // two sets: none is chosen by itself
    begin();
    type("0.5");
    EXPECT_TRUE(text("leafNote").contains("look comes first")) << text("leafNote").toStdString();
    type("yyy0.5");
    EXPECT_TRUE(text("leafNote").contains("Choose the leaf set")) << text("leafNote").toStdString();
    page.findChild<QComboBox*>("measuredWith")->setFocus();
    press(Qt::Key_Down);
    type("0.5");
    press(Qt::Key_Return);
    ASSERT_EQ(content().readings.size(), 1U);
    type("0.6");
    EXPECT_TRUE(text("leafNote").contains("read already")) << text("leafNote").toStdString();
    EXPECT_EQ(content().readings.size(), 1U);
}

TEST_F(RiggingJourney, LargerTextLeavesTheReaderWhereTheClosedRecordIsReadAndTheNamesAtTheClose)
{
    begin();
    page.findChild<QAbstractButton*>("recordRow5")->click(); // close
    page.findChild<QComboBox*>("closeFirst")->setCurrentIndex(1);
    page.findChild<QComboBox*>("closeSecond")->setCurrentIndex(2);
    const auto enlarge = [this] { // as the window does
        page.setLook({Theme::dark(), FontSizes{}});
        page.showAirframe(hangar.airframe);
    };
    enlarge();
    EXPECT_EQ(page.findChild<QComboBox*>("closeSecond")->currentIndex(), 2);
    for (const char* count : {"toolsCounted", "hatchesOn"})
        page.findChild<QCheckBox*>(QLatin1String(count))->setChecked(true);
    page.findChild<QPushButton*>("closeRecord")->click();
    ASSERT_TRUE(page.findChild<QPushButton*>("printRecord")->isVisible());
    enlarge();
    EXPECT_TRUE(page.findChild<QPushButton*>("printRecord")->isVisible());
}

TEST_F(RiggingJourney, WhoTookItApartIsAskedAndKept)
{
    begin();
    page.findChild<QAbstractButton*>("recordRow5")->click();
    page.findChild<QComboBox*>("closeFirst")->setCurrentIndex(1);
    page.findChild<QComboBox*>("closeSecond")->setCurrentIndex(2);
    for (const char* count : {"toolsCounted", "hatchesOn"})
        page.findChild<QCheckBox*>(QLatin1String(count))->setChecked(true);
    page.findChild<QPushButton*>("closeRecord")->click();
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

TEST_F(RiggingJourney, ARecordBegunInAnotherWindowIsGoneOnWithAndSaidSo)
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
    other.leave();
    EXPECT_TRUE(content().interruptions.empty()) << "what is half done is this window's work";
}

TEST_F(RiggingJourney, AWrongLeafIsPutRightAfterABreakTooAndTheCouplingIsStillMeasuredAnew)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    press(Qt::Key_Escape); // called away
    prompts.texts.push_back("pressed the neighbour");
    type("w0.5");
    press(Qt::Key_Return);
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().corrects, now.readings.front().id);
    type("yyy");
    EXPECT_TRUE(page.findChild<QWidget*>("leafRow")->isEnabled()) << "after the break it is measured anew";
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 3U);
    EXPECT_FALSE(content().readings.back().corrects);
}
