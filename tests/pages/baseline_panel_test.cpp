#include "app/pages/setup/baseline_panel.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/flow_scroll.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableWidget>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// The small hangar on its baseline day, nothing read yet: at the left aileron, with the only leaf set, nobody
// chosen.
class BaselinePanelTest : public testing::Test
{
protected:
    BaselinePanelTest()
    {
        QObject::connect(&panel, &BaselinePanel::problemArose, &panel,
                         [this](const QString& sentence) { problems.push_back(sentence.toStdString()); });
        QObject::connect(&panel, &BaselinePanel::changed, &panel, [this] { ++changes; });
        panel.showAirframe(hangar.airframe);
        showAt(panel, {900, 700});
    }

    // Down once: the first entry below the prompt, or the next one.
    void down(const char* box) { QTest::keyClick(&part(panel, box), Qt::Key_Down); }

    // M. Oren.
    void choose() { down("baselinePerson"); }

    void press(Qt::Key key) { QTest::keyClick(&panel, key); }

    void read(const char* figure)
    {
        typeOn(panel, "yy");
        typeOn(panel, figure);
        press(Qt::Key_Return);
        store.clock().passMinutes(7);
    }

    void readTen()
    {
        for (int i = 0; i < 10; ++i)
            read(i % 5 == 0 ? "0.45" : "0.50");
    }

    std::vector<Reading> kept()
    {
        std::vector<Reading> all;
        for (const KeptReading& one : must(store.records().readings(hangar.airframe)))
            all.push_back(one.reading);
        return all;
    }

    QTableWidget& list() { return part<QTableWidget>(panel, "readings"); }
    std::string cell(int line, int column) { return list().item(line, column)->text().toStdString(); }
    std::string notice() { return textOf(panel, "baselineNotice"); }
    bool isOpen() { return part(panel, "baselineLeaves").isEnabled(); }
    bool says(const char* label, const char* words)
    {
        return textOf(panel, label).find(words) != std::string::npos;
    }

    // The text of a cell, wrapped in its column, has room in its row.
    void expectFits(const QTableWidgetItem& item)
    {
        const QRect cellRect = list().visualItemRect(&item);
        const QRect needed = QFontMetrics{list().font()}.boundingRect(QRect{0, 0, cellRect.width() - 6, 1000},
                                                                      Qt::TextWordWrap, item.text());
        EXPECT_LE(needed.width(), cellRect.width()) << item.text().toStdString();
        EXPECT_LE(needed.height(), cellRect.height()) << item.text().toStdString();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    std::vector<std::string> problems;
    int changes = 0;
    BaselinePanel panel{store.records(), store.clock(), prompts};
};

TEST_F(BaselinePanelTest, GoesFromNothingToAFrozenBaselineByKeysAlone)
{
    choose();
    readTen();
    ASSERT_EQ(kept().size(), 10U);
    EXPECT_EQ(changes, 10);
    EXPECT_TRUE(says("baselineNumbers", "Band from 10 readings."));

    prompts.confirmations = {true};
    down("freezeFirst");
    down("freezeSecond");
    down("freezeSecond");
    press(Qt::Key_F);
    const auto frozen = must(store.records().frozenBaselines(hangar.airframe));
    ASSERT_EQ(frozen.size(), 1U);
    EXPECT_EQ(frozen.front().readings.size(), 10U);
    EXPECT_EQ(frozen.front().first, hangar.oren);
    EXPECT_EQ(frozen.front().second, hangar.vale);
    ASSERT_EQ(prompts.asked.size(), 1U);
    EXPECT_NE(prompts.asked.front().find("Left aileron"), std::string::npos);
    EXPECT_TRUE(says("freezeSentence", "by M. Oren and T. Vale"));
    EXPECT_TRUE(says("freezeSentence", "Later readings do not move this band."));
    EXPECT_TRUE(problems.empty());
}

// Whoever closes the file is asked about it.
TEST_F(BaselinePanelTest, AFigureThatWasBegunIsNotTaken)
{
    choose();
    read("0.60");
    EXPECT_FALSE(panel.hasTyped());
    typeOn(panel, "yy");
    typeOn(panel, "0.6");
    EXPECT_TRUE(panel.hasTyped());
    press(Qt::Key_Escape);
    EXPECT_FALSE(panel.hasTyped());
}

TEST_F(BaselinePanelTest, AReadingIsAConfirmedLockedOneOfTodaysFitting)
{
    choose();
    read("0.60");
    ASSERT_EQ(kept().size(), 1U);
    const Reading reading = kept().front();
    EXPECT_EQ(reading.purpose, Purpose::Baseline);
    EXPECT_EQ(reading.state, SeatState::Locked);
    EXPECT_EQ(reading.coupling, hangar.leftAileron);
    EXPECT_EQ(reading.fitting, hangar.leftFitting);
    EXPECT_EQ(reading.person, hangar.oren);
    EXPECT_EQ(reading.gauge, hangar.setA);
    EXPECT_EQ(reading.interval, between(600, 650));
    EXPECT_EQ(textOf(panel, "baselineKept"),
              "0.60–0.65 mm, saved 11:00. Next cycle: disconnect, clean and connect again.");
}

TEST_F(BaselinePanelTest, OpensAtTheFirstCouplingWithTheOnlyLeafSetAndFillsInNobody)
{
    EXPECT_EQ(part<QListWidget>(panel, "couplings").currentRow(), 0);
    EXPECT_EQ(textOf(panel, "baselineCoupling"), "Left aileron");
    EXPECT_EQ(part<ChoiceBox>(panel, "baselineGauge").chosen<GaugeId>(), hangar.setA);
    EXPECT_EQ(notice(), "First choose who measures.");
    QTest::keyClick(&part(panel, "baselineGauge"), Qt::Key_Up);
    down("baselinePerson");
    EXPECT_EQ(notice(), "First choose what is measured with.");
    for (const char* box : {"freezeFirst", "freezeSecond"})
        EXPECT_EQ(part<ChoiceBox>(panel, box).chosen<PersonId>(), std::nullopt);
}

TEST_F(BaselinePanelTest, OpensAtTheCouplingThatIsNextAndChoosesNobodyAndNoSetOfTwo)
{
    must(store.records().add(aLeafSet("B")));
    panel.showAirframe(hangar.airframe);
    choose();
    readTen();

    BaselinePanel tomorrow{store.records(), store.clock(), prompts};
    tomorrow.showAirframe(hangar.airframe);
    showAt(tomorrow, {900, 700});
    EXPECT_EQ(textOf(tomorrow, "baselineCoupling"), "Right aileron") << "the left one has its readings";
    EXPECT_EQ(part<ChoiceBox>(tomorrow, "baselinePerson").chosen<PersonId>(), std::nullopt);
    EXPECT_EQ(part<ChoiceBox>(tomorrow, "baselineGauge").chosen<GaugeId>(), std::nullopt);
    typeOn(tomorrow, "yy0.45");
    QTest::keyClick(&tomorrow, Qt::Key_Return);
    EXPECT_EQ(kept().size(), 10U) << "nobody has said who measures";
}

TEST_F(BaselinePanelTest, WhatWasChosenStaysWhenThePartIsComeBackTo)
{
    choose();
    QTest::keyClick(&part(panel, "couplings"), Qt::Key_Down);
    panel.hide();
    panel.showAirframe(hangar.airframe);
    panel.show();
    EXPECT_EQ(textOf(panel, "baselineCoupling"), "Right aileron");
    read("0.50");
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(BaselinePanelTest, NoFigureIsTakenBeforeBothConfirmations)
{
    choose();
    for (const char* keys : {"0.60", "y0.60"}) {
        typeOn(panel, keys);
        press(Qt::Key_Return);
        EXPECT_FALSE(isOpen());
    }
    EXPECT_TRUE(kept().empty());
    typeOn(panel, "y");
    EXPECT_TRUE(isOpen());
}

TEST_F(BaselinePanelTest, EveryReadingNeedsConfirmationsOfItsOwn)
{
    choose();
    read("0.60");
    EXPECT_FALSE(isOpen());
    typeOn(panel, "0.60");
    press(Qt::Key_Return);
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(BaselinePanelTest, NotDisconnectedMeansNoReadingAndTheReasonIsSaid)
{
    choose();
    typeOn(panel, "n");
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(notice().find("No reading is taken: read twice without disconnecting"), 0U);
    read("0.60");
    EXPECT_EQ(kept().size(), 1U) << "a yes afterwards goes on";
}

TEST_F(BaselinePanelTest, NotLockedMeansNoReadingAndStartingFromTheDisconnecting)
{
    choose();
    typeOn(panel, "yn");
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(notice().find("No reading is taken: a band made of joints that were not locked"), 0U);
    typeOn(panel, "y");
    EXPECT_FALSE(isOpen()) << "that answered the first question";
    typeOn(panel, "y");
    EXPECT_TRUE(isOpen());
}

TEST_F(BaselinePanelTest, AnotherPersonStartsTheCycleAnew)
{
    choose();
    typeOn(panel, "yy");
    down("baselinePerson");
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(notice(), "Another person measures: the cycle starts anew.");
    read("0.60");
    EXPECT_EQ(kept().front().person, hangar.vale);
}

TEST_F(BaselinePanelTest, TakingThePersonAwayShutsTheRow)
{
    choose();
    QTest::keyClick(&part(panel, "baselinePerson"), Qt::Key_Up);
    typeOn(panel, "yy");
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(notice(), "First choose who measures.");
}

TEST_F(BaselinePanelTest, AnotherCouplingStartsTheCycleAnew)
{
    choose();
    typeOn(panel, "yy");
    QTest::keyClick(&part(panel, "couplings"), Qt::Key_Down);
    EXPECT_EQ(textOf(panel, "baselineCoupling"), "Right aileron");
    EXPECT_FALSE(isOpen());
}

TEST_F(BaselinePanelTest, GoingAwayHalfWayCarriesNothingOver)
{
    choose();
    typeOn(panel, "yy");
    EXPECT_TRUE(isOpen());
    panel.hide();
    panel.showAirframe(hangar.airframe);
    panel.show();
    EXPECT_FALSE(isOpen());
}

TEST_F(BaselinePanelTest, ASetInDoubtIsNotReadWith)
{
    GaugeCheck bad;
    bad.gauge = hangar.setA;
    bad.day = dayOf(2026, 5, 1);
    bad.quarantineFrom = dayOf(2026, 4, 1);
    must(store.records().add(bad));
    panel.showAirframe(hangar.airframe);
    choose();
    typeOn(panel, "yy0.60");
    press(Qt::Key_Return);
    EXPECT_TRUE(kept().empty());
    EXPECT_EQ(notice().find("That leaf set is in doubt"), 0U);
}

struct Refused
{
    const char* typed;
    const char* words;
};

TEST_F(BaselinePanelTest, NoDoubtfulFigureIsSaved)
{
    choose();
    typeOn(panel, "yy");
    const Refused table[] = {
        {"60", "If you meant 0.60, type it with a point or a comma."},
        {"1.234,5", "more than one point or comma"},
        {"0.62", "its neighbours are 0.60 and 0.65"},
        {"0", "the thinnest it has is 0.05"},
        {"12", "wider than any gap"},
        {"0.1234", "finer than a micrometre"},
        {".", "is not a length"},
        {"1.95", "the most this set can offer"},
    };
    for (const Refused& one : table) {
        SCOPED_TRACE(one.typed);
        typeOn(panel, one.typed);
        press(Qt::Key_Return);
        const bool isBelow = part(panel, "baselineRefused").isVisible() && says("baselineRefused", one.words);
        EXPECT_NE(says("typedMeaning", one.words), isBelow) << "said once";
        EXPECT_TRUE(isOpen());
    }
    EXPECT_TRUE(kept().empty());
    typeOn(panel, "0,60");
    press(Qt::Key_Return);
    EXPECT_EQ(kept().size(), 1U) << "the confirmations still hold";
    EXPECT_FALSE(part(panel, "baselineRefused").isVisible());
}

TEST_F(BaselinePanelTest, TheBandNarrowsInWordsAsReadingsCome)
{
    choose();
    for (int i = 0; i < 4; ++i)
        read("0.50");
    EXPECT_TRUE(says("baselineNumbers", "No band below 5 readings: 1 still missing."));
    read("0.45");
    EXPECT_TRUE(says("baselineNumbers", "Thin band: only 5 readings."));
    EXPECT_TRUE(says("baselineNumbers", "If the next one reads like the others"));
    EXPECT_TRUE(says("baselineNumbers", "never a limit"));
    EXPECT_TRUE(says("baselineNumbers", "From outer edge to outer edge it is"));
}

TEST_F(BaselinePanelTest, ReadingsOpenOnOneSideMakeNoBandAndTheWordsSayWhy)
{
    choose();
    for (int i = 0; i < 10; ++i) {
        typeOn(panel, "yy");
        part<QPushButton>(panel, "thickestLoose").click();
    }
    EXPECT_TRUE(says("baselineNumbers", "These readings make no band"));
    EXPECT_FALSE(part(panel, "freeze").isEnabled());
    EXPECT_TRUE(says("freezeNote", "These readings make no band"));
}

TEST_F(BaselinePanelTest, AWrongLeafIsCorrectedWithAReasonAndStaysStruckThrough)
{
    choose();
    read("0.60");
    prompts.texts = {"pressed the wrong leaf"};
    press(Qt::Key_W);
    EXPECT_TRUE(isOpen());
    EXPECT_EQ(notice().find("Give the figure that was right instead of 0.60–0.65 mm"), 0U);
    typeOn(panel, "0.55");
    press(Qt::Key_Return);

    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(kept()[1].corrects, kept()[0].id);
    EXPECT_EQ(kept()[1].note, "pressed the wrong leaf");
    ASSERT_EQ(list().rowCount(), 2);
    EXPECT_EQ(cell(1, 1), "0.60–0.65 mm");
    EXPECT_TRUE(list().item(1, 1)->font().strikeOut());
    EXPECT_EQ(cell(1, 4), "corrected: pressed the wrong leaf");
    EXPECT_FALSE(list().item(0, 1)->font().strikeOut());
    EXPECT_TRUE(says("baselineNumbers", "1 confirmed reading"));
    EXPECT_FALSE(isOpen());
}

TEST_F(BaselinePanelTest, ACorrectionIsStatedByWhoPressesItAndKeepsWhoMeasured)
{
    choose();
    read("0.60");
    down("baselinePerson"); // T. Vale
    prompts.texts = {"pressed the wrong leaf"};
    press(Qt::Key_W);
    typeOn(panel, "0.55");
    press(Qt::Key_Return);
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(kept()[1].stamp.by, hangar.vale);
    EXPECT_EQ(kept()[1].person, hangar.oren);
}

TEST_F(BaselinePanelTest, NobodyCorrectsWithoutAName)
{
    choose();
    read("0.60");
    QTest::keyClick(&part(panel, "baselinePerson"), Qt::Key_Up);
    prompts.texts = {"pressed the wrong leaf"};
    press(Qt::Key_W);
    EXPECT_TRUE(prompts.asked.empty());
    EXPECT_TRUE(says("readingsNote", "Choose who corrects it first."));

    down("baselinePerson");
    press(Qt::Key_W);
    QTest::keyClick(&part(panel, "baselinePerson"), Qt::Key_Up);
    typeOn(panel, "0.55");
    press(Qt::Key_Return);
    EXPECT_EQ(kept().size(), 1U) << "nobody is there any more to state it";
}

TEST_F(BaselinePanelTest, KeysTypedAheadStandWhereTheyWerePressed)
{
    choose();
    QWidget& at = part(panel, "couplings");
    const auto ahead = [&at](int key, const QString& text = {}) {
        QCoreApplication::postEvent(&at, new QKeyEvent{QEvent::KeyPress, key, Qt::NoModifier, text});
    };
    for (const char* figure : {"0.45", "0.55", "0.65"}) {
        for (const QChar c : QStringLiteral("yy") + QLatin1String(figure))
            ahead(0, c);
        ahead(Qt::Key_Return);
        if (figure == std::string_view{"0.55"})
            ahead(Qt::Key_Down); // the right aileron
    }
    QCoreApplication::sendPostedEvents(&at);
    ASSERT_EQ(kept().size(), 3U);
    EXPECT_EQ(kept()[0].coupling, hangar.leftAileron);
    EXPECT_EQ(kept()[0].interval, between(450, 500));
    EXPECT_EQ(kept()[1].coupling, hangar.leftAileron);
    EXPECT_EQ(kept()[2].coupling, hangar.rightAileron);
    EXPECT_EQ(kept()[2].interval, between(650, 700));
}

TEST_F(BaselinePanelTest, WithoutAReasonNothingIsCorrected)
{
    choose();
    read("0.60");
    press(Qt::Key_W);
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(prompts.asked.size(), 1U);
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(BaselinePanelTest, EscLeavesAReadingAsItWas)
{
    choose();
    read("0.60");
    prompts.texts = {"pressed the wrong leaf"};
    press(Qt::Key_W);
    press(Qt::Key_Escape);
    EXPECT_FALSE(isOpen());
    typeOn(panel, "0.55");
    press(Qt::Key_Return);
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(BaselinePanelTest, AReadingIsLeftOutWithAReasonAndAName)
{
    choose();
    read("0.60");
    read("0.50");
    list().setCurrentCell(1, 0);
    press(Qt::Key_X);
    EXPECT_TRUE(says("readingsNote", "Choose who leaves it out first."));
    EXPECT_TRUE(prompts.asked.empty());

    down("excludedBy");
    down("excludedBy");
    prompts.texts = {"grit under the leaf"};
    press(Qt::Key_X);
    const auto exclusions = must(store.records().exclusions(hangar.airframe));
    ASSERT_EQ(exclusions.size(), 1U);
    EXPECT_EQ(exclusions.front().reading, kept()[0].id);
    EXPECT_EQ(exclusions.front().stamp.by, hangar.vale);
    EXPECT_EQ(cell(1, 4), "left out by T. Vale: grit under the leaf");
    EXPECT_TRUE(list().item(1, 1)->font().strikeOut());
    EXPECT_TRUE(says("baselineNumbers", "1 confirmed reading"));

    list().setCurrentCell(1, 0);
    down("excludedBy");
    prompts.texts = {"again"};
    press(Qt::Key_X);
    EXPECT_TRUE(says("readingsNote", "That reading was corrected or left out before."));
    EXPECT_EQ(must(store.records().exclusions(hangar.airframe)).size(), 1U);
}

TEST_F(BaselinePanelTest, WithoutAReasonNothingIsLeftOut)
{
    choose();
    read("0.60");
    down("excludedBy");
    press(Qt::Key_X);
    EXPECT_EQ(prompts.asked.size(), 1U);
    EXPECT_TRUE(must(store.records().exclusions(hangar.airframe)).empty());
}

TEST_F(BaselinePanelTest, BelowTenReadingsTheFreezeIsShutAndSaysWhy)
{
    choose();
    read("0.50");
    EXPECT_FALSE(part(panel, "freeze").isEnabled());
    EXPECT_EQ(textOf(panel, "freezeNote"), "It cannot be frozen yet: 1 reading of 10.");
    down("freezeFirst");
    press(Qt::Key_F);
    EXPECT_TRUE(prompts.asked.empty());
}

TEST_F(BaselinePanelTest, TheSamePersonTwiceFreezesNothing)
{
    choose();
    readTen();
    down("freezeFirst");
    down("freezeSecond");
    prompts.confirmations = {true};
    press(Qt::Key_F);
    EXPECT_EQ(textOf(panel, "freezeNote"), "Choose two different people. Nobody is filled in.");
    EXPECT_TRUE(must(store.records().frozenBaselines(hangar.airframe)).empty());
}

TEST_F(BaselinePanelTest, TurningAwayFromTheFreezeLeavesItAsItWas)
{
    choose();
    readTen();
    down("freezeFirst");
    down("freezeSecond");
    down("freezeSecond");
    press(Qt::Key_F);
    EXPECT_EQ(prompts.asked.size(), 1U);
    EXPECT_TRUE(must(store.records().frozenBaselines(hangar.airframe)).empty());
}

TEST_F(BaselinePanelTest, TheFreezeTakesTheReadingsThatWereAskedAbout)
{
    choose();
    readTen();
    down("freezeFirst");
    down("freezeSecond");
    down("freezeSecond");
    prompts.confirmations = {true};
    prompts.meanwhile = [this] { // a second window reads on
        Reading further = kept().front();
        further.id = {};
        must(store.records().add(further, std::nullopt));
        panel.showAirframe(hangar.airframe);
    };
    press(Qt::Key_F);
    const auto frozen = must(store.records().frozenBaselines(hangar.airframe));
    ASSERT_EQ(frozen.size(), 1U);
    EXPECT_EQ(frozen.front().readings.size(), 10U);
}

TEST_F(BaselinePanelTest, AReadingUnlikeTheOthersKeepsTheFreezeShut)
{
    choose();
    readTen();
    read("0.95");
    EXPECT_FALSE(part(panel, "freeze").isEnabled());
    EXPECT_TRUE(says("freezeNote", "a reading in the list is unlike the others"));
    EXPECT_EQ(cell(0, 4), "unlike the others: measure again, or leave it out with a reason");
}

TEST_F(BaselinePanelTest, AFrozenBaselineTakesNoMoreReadingsHere)
{
    choose();
    readTen();
    prompts.confirmations = {true};
    down("freezeFirst");
    down("freezeSecond");
    down("freezeSecond");
    press(Qt::Key_F);
    read("0.90");
    press(Qt::Key_W);
    press(Qt::Key_X);
    EXPECT_EQ(kept().size(), 10U);
    EXPECT_FALSE(part(panel, "correctReading").isEnabled());
    EXPECT_TRUE(says("readingsNote", "This baseline is frozen"));
    EXPECT_EQ(prompts.asked.size(), 1U) << "the freeze alone was asked";
}

TEST_F(BaselinePanelTest, WhatTheFileRefusesIsSaidAndNotCalledSaved)
{
    choose();
    read("0.60");
    prompts.texts = {"pressed the wrong leaf"};
    press(Qt::Key_W);
    Reading elsewhere = kept().front();
    elsewhere.corrects = elsewhere.id; // a second window was quicker
    elsewhere.id = {};
    elsewhere.note = "second window";
    must(store.records().add(elsewhere, std::nullopt));
    typeOn(panel, "0.55");
    press(Qt::Key_Return);
    EXPECT_EQ(problems.size(), 1U);
    EXPECT_EQ(textOf(panel, "baselineKept"), "Not saved.");
    EXPECT_EQ(kept().size(), 2U);
}

TEST_F(BaselinePanelTest, WithoutAnAirframeOrCouplingsItSaysWhatToDoFirst)
{
    panel.showAirframe(std::nullopt);
    EXPECT_TRUE(says("baselineLack", "No airframe is chosen."));
    panel.showAirframe(must(store.records().add(anAirframe("QX-42"))));
    EXPECT_TRUE(says("baselineLack", "This airframe has no couplings yet."));
    EXPECT_FALSE(part(panel, "freeze").isVisible());
}

TEST_F(BaselinePanelTest, NothingIsClippedAtLargeText)
{
    choose();
    readTen();
    read("0.95");
    for (const double scale : {1.0, 1.5}) {
        SCOPED_TRACE(scale);
        panel.setLook(lookAt(scale));
        showAt(panel, {900, 700}, lookAt(scale));
        EXPECT_EQ(panel.width(), 900);
        expectNothingClipped(panel, 30);
        const auto& scroll = *panel.findChild<QScrollArea*>();
        EXPECT_LE(scroll.widget()->width(), scroll.viewport()->width());
        for (int column = 0; column < list().columnCount(); ++column)
            for (int line = 0; line < list().rowCount(); ++line)
                expectFits(*list().item(line, column));
    }
}

} // namespace

TEST_F(BaselinePanelTest, ACorrectionSaysInWhoseNameItStandsAndWhatItDoesNotPutRight)
{
    choose();
    read("0.60");
    down("baselinePerson"); // T. Vale
    prompts.texts = {"pressed the wrong leaf"};
    press(Qt::Key_W);
    EXPECT_NE(notice().find("Measured by M. Oren, put right by T. Vale"), std::string::npos) << notice();
    EXPECT_NE(prompts.asked[0].find("leave it out (X)"), std::string::npos) << prompts.asked[0];
    for (const char* one : {"Wrong coupling", "Wrong person"})
        EXPECT_FALSE(prompts.offered.contains(one)) << one;
    press(Qt::Key_Escape);
    down("excludedBy");
    press(Qt::Key_X);
    for (const char* one : {"Wrong coupling", "Wrong person"})
        EXPECT_TRUE(prompts.offered.contains(one)) << one;
}

TEST_F(BaselinePanelTest, WhatLacksForAKeyIsBroughtIntoView)
{
    panel.resize(900, 420);
    choose();
    read("0.60");
    QApplication::processEvents();
    auto* scroll = panel.findChild<FlowScroll*>();
    scroll->verticalScrollBar()->setValue(0);
    ASSERT_TRUE(part(panel, "excludedBy").visibleRegion().isEmpty());
    press(Qt::Key_X);
    QApplication::processEvents();
    EXPECT_FALSE(part(panel, "excludedBy").visibleRegion().isEmpty());
    EXPECT_FALSE(part(panel, "readingsNote").visibleRegion().isEmpty());
}
