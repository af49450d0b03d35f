#include "app/widgets/leaf_row.h"
#include "app/wording/entry_words.h"
#include "app/wording/rigged_words.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"

#include <QLayout>
#include <QPushButton>
#include <QWheelEvent>

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using namespace rig::test;

namespace {

class LeafRowTest : public testing::Test
{
protected:
    LeafRowTest()
    {
        QObject::connect(&row, &LeafRow::readingChosen, &row,
                         [this](const GaugeReading& reading) { readings.push_back(reading); });
        QObject::connect(&row, &LeafRow::entryRefused, &row,
                         [this](const QString& sentence) { refusals.push_back(sentence.toStdString()); });
        row.setGauge(aLeafSet("A").set, 600_um);
        showAt(row, {900, 140});
    }

    std::vector<QPushButton*> leaves() const
    {
        std::vector<QPushButton*> seen;
        for (QPushButton* button : row.findChildren<QPushButton*>("leaf"))
            if (button->isVisible())
                seen.push_back(button);
        return seen;
    }

    QPushButton* leaf(const char* text) const
    {
        for (QPushButton* button : leaves())
            if (button->text() == QLatin1String(text))
                return button;
        return nullptr;
    }

    void press(const char* text)
    {
        ASSERT_NE(leaf(text), nullptr) << text;
        leaf(text)->click();
    }

    void enter(const char* keys)
    {
        typeOn(row, keys);
        QTest::keyClick(&row, Qt::Key_Return);
    }

    std::string echo() const { return textOf(row, "typedMeaning"); }

    void turnWheel(int degrees)
    {
        QWheelEvent wheel{{10, 10},
                          row.mapToGlobal(QPointF{10, 10}),
                          {},
                          {0, 8 * degrees},
                          Qt::NoButton,
                          Qt::NoModifier,
                          Qt::NoScrollPhase,
                          false};
        QApplication::sendEvent(&row, &wheel);
    }

    LeafRow row;
    std::vector<GaugeReading> readings;
    std::vector<std::string> refusals;
};

TEST_F(LeafRowTest, AboutTwelveLeavesStandAroundTheMiddleOfTheBand)
{
    row.resize(1280, 140);
    EXPECT_EQ(leaves().size(), 12U);
    const std::vector<QPushButton*> shown = leaves();
    const auto at = std::ranges::find(shown, leaf("0.60")) - shown.begin();
    EXPECT_GE(at, 4);
    EXPECT_LE(at, 7);
}

TEST_F(LeafRowTest, HasNothingToPageThroughUntilASetIsChosen)
{
    EXPECT_TRUE(part(row, "leafThinner").isVisible());
    row.setGauge({}, std::nullopt);
    EXPECT_TRUE(leaves().empty());
    EXPECT_FALSE(part(row, "leafThinner").isVisible());
    EXPECT_FALSE(part(row, "leafThicker").isVisible());
}

TEST_F(LeafRowTest, OnePressGivesTheIntervalUpToTheNextLeaf)
{
    press("0.60");
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings.front().interval, between(600, 650));
    EXPECT_EQ(readings.front().technique, Technique::Leaf);
}

TEST_F(LeafRowTest, OnlyThePageDecidesWhichLeafIsMarked)
{
    press("0.60");
    EXPECT_FALSE(leaf("0.60")->isChecked());
    row.setChosen(GaugeReading{between(600, 650), Technique::Leaf});
    EXPECT_TRUE(leaf("0.60")->isChecked());
    row.setChosen(std::nullopt);
    EXPECT_FALSE(leaf("0.60")->isChecked());
}

TEST_F(LeafRowTest, AFigureIsTheSameWithPointOrCommaOrBare)
{
    for (const char* typed : {"0.6", "0,60", ".60", "0.600"})
        enter(typed);
    ASSERT_EQ(readings.size(), 4U);
    for (const GaugeReading& reading : readings)
        EXPECT_EQ(reading.interval, between(600, 650));
}

TEST_F(LeafRowTest, WhatIsTypedSaysWhatItWillMeanBeforeItIsTaken)
{
    typeOn(row, "0.6");
    EXPECT_EQ(textOf(row, "typedFigure"), "0.6 mm");
    EXPECT_EQ(echo(), "0.60 enters, 0.65 does not. Enter takes it.");
    EXPECT_TRUE(readings.empty());
}

TEST_F(LeafRowTest, AMinusOfPrintIsAMinusToo)
{
    const auto type = [this](int key, const QString& text) {
        QKeyEvent event{QEvent::KeyPress, key, Qt::NoModifier, text};
        EXPECT_TRUE(row.takeKey(&event)) << text.toStdString();
    };
    type(Qt::Key_Minus, "\u2212");
    EXPECT_EQ(textOf(row, "typedFigure"), "\u2212 mm") << "seen from the first key on";
    type(Qt::Key_1, "1");
    type(Qt::Key_Return, "\r");
    EXPECT_EQ(refusals, std::vector<std::string>{"“\u22121” is below zero. A length cannot be."});
    EXPECT_TRUE(readings.empty());
}

struct RefusedLeaf
{
    const char* typed;
    const char* sentence;
};

TEST_F(LeafRowTest, NothingDoubtfulIsTakenOrGuessed)
{
    const RefusedLeaf table[] = {
        {"60",
         "60 mm is wider than any gap, 10 mm at most. If you meant 0.60, type it with a point or a comma."},
        {"600", "600 mm is wider than any gap, 10 mm at most. Type millimetres with a point or a comma."},
        {"12.5", "12.5 mm is wider than any gap, 10 mm at most. Type millimetres with a point or a comma."},
        {"1.234,5", "“1.234,5” has more than one point or comma. Type one of them only, such as 0.60."},
        {"0.6005", "“0.6005” is finer than a micrometre. Three figures after the point or comma at most."},
        {"-1", "“-1” is below zero. A length cannot be."},
        {"-0.6", "“-0.6” is below zero. A length cannot be."},
        {"+1", "“+1” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"--1", "“--1” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"1-", "“1-” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"0.4-0.5", "“0.4-0.5” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"0y5", "“0y5” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"0 5", "“0 5” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"0000000000.55",
         "“0000000000.5…” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {".", "“.” is not a length. Type millimetres with a point or a comma, such as 0.60."},
        {"0.62", "0.62 mm is not in this set: its neighbours are 0.60 and 0.65."},
        {"0",
         "0.00 mm is not in this set: the thinnest it has is 0.05. If that does not enter, press “No leaf "
         "enters”."},
        {"6", "6.00 mm is not in this set: the most it can offer is 1.95."},
        {"1.95",
         "1.95 mm is the most this set can offer, so nothing says where the gap ends. If it enters, press "
         "“Thickest leaf still loose”."},
    };
    for (const RefusedLeaf& one : table) {
        refusals.clear();
        enter(one.typed);
        ASSERT_EQ(refusals.size(), 1U) << one.typed;
        EXPECT_EQ(refusals.front(), one.sentence);
    }
    EXPECT_TRUE(readings.empty());
}

TEST_F(LeafRowTest, AfterARefusalTheNextFigureStartsAnew)
{
    enter("60");
    enter("0.60");
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings.front().interval, between(600, 650));
}

TEST_F(LeafRowTest, BackspaceMendsARefusedFigure)
{
    enter("0.62");
    QTest::keyClick(&row, Qt::Key_Backspace);
    QTest::keyClick(&row, Qt::Key_Return);
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings.front().interval, between(600, 650));
}

TEST_F(LeafRowTest, KeysThatMeanNothingHereAreLeftToThePage)
{
    const auto used = [this](int key, const char* text, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QKeyEvent event{QEvent::KeyPress, key, modifiers, QLatin1String(text)};
        return row.takeKey(&event);
    };
    EXPECT_FALSE(used(Qt::Key_Return, "\r")) << "nothing is typed";
    EXPECT_FALSE(used(Qt::Key_Backspace, "\b"));
    EXPECT_FALSE(used(Qt::Key_Y, "y"));
    EXPECT_FALSE(used(Qt::Key_1, "1", Qt::ControlModifier));
    EXPECT_FALSE(used(Qt::Key_Minus, "-", Qt::ControlModifier));
    EXPECT_TRUE(used(Qt::Key_0, "0", Qt::KeypadModifier));
    EXPECT_FALSE(used(Qt::Key_Left, ""));
    EXPECT_TRUE(used(Qt::Key_Enter, "\r", Qt::KeypadModifier));
    EXPECT_FALSE(used(Qt::Key_Y, "y")) << "what was typed is refused and waits for another figure";
}

TEST_F(LeafRowTest, AShutRowTakesNoFigureAndForgetsAHalfTypedOne)
{
    typeOn(row, "0.6");
    row.setEnabled(false);
    QKeyEvent event{QEvent::KeyPress, Qt::Key_0, Qt::NoModifier, QStringLiteral("0")};
    EXPECT_FALSE(row.takeKey(&event));
    EXPECT_FALSE(part(row, "typedFigure").isVisible());
    row.setEnabled(true);
    QTest::keyClick(&row, Qt::Key_Return);
    EXPECT_TRUE(readings.empty());
}

TEST_F(LeafRowTest, NoLeafAndTheThickestAreReadingsToo)
{
    part<QPushButton>(row, "noLeafEnters").click();
    part<QPushButton>(row, "thickestLoose").click();
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].interval, between(0, 50));
    EXPECT_EQ(readings[1].interval, (GapInterval{1000_um, std::nullopt}));
    row.setChosen(readings[1]);
    EXPECT_TRUE(part<QPushButton>(row, "thickestLoose").isChecked());
    EXPECT_FALSE(part<QPushButton>(row, "noLeafEnters").isChecked());
}

TEST_F(LeafRowTest, AboveTheThickestLeafComeStacksWithTheirFilm)
{
    row.setGauge(aLeafSet("A").set, 1200_um);
    ASSERT_NE(leaf("1.00\n+ 0.20"), nullptr);
    EXPECT_EQ(leaf("1.00\n+ 0.20")->accessibleName(), "1.00 and 0.20 millimetres stacked enter");
    press("1.00\n+ 0.20");
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings.front().interval, between(1200, 1260)) << "10 micrometres of film between two leaves";
    EXPECT_EQ(readings.front().technique, Technique::Stack);
}

TEST_F(LeafRowTest, WhatIsTypedOfAStackSaysThatAndByHowMuchItIsWider)
{
    const GaugeReading stack{between(1150, 1210), Technique::Stack};
    EXPECT_EQ(EntryWords::enterTakes(stack).toStdString(),
              "1.15 enters, 1.21 does not (stacked leaves: widened by 0.01 mm). Enter takes it.");
    EXPECT_EQ(RiggedWords::interval("1.15–1.21 mm", Technique::Stack).toStdString(),
              "1.15–1.21 mm, stacked leaves: widened by 0.01 mm");
}

TEST_F(LeafRowTest, ATaperGaugeShowsOnlyWhatIsTyped)
{
    row.setGauge(GaugeSet::taper(100_um), std::nullopt);
    EXPECT_TRUE(leaves().empty());
    EXPECT_FALSE(part(row, "noLeafEnters").isVisible());
    EXPECT_FALSE(part(row, "thickestLoose").isVisible());
    EXPECT_EQ(echo(), "Type the value read in mm, then Enter.");
    typeOn(row, "0.63");
    EXPECT_EQ(echo(), "between 0.58 and 0.68. Enter takes it.");
    QTest::keyClick(&row, Qt::Key_Return);
    ASSERT_EQ(readings.size(), 1U);
    EXPECT_EQ(readings.front().interval, between(580, 680));
}

TEST_F(LeafRowTest, ArrowsReachTheThinnestAndTheThickest)
{
    while (part(row, "leafThinner").isEnabled())
        part<QPushButton>(row, "leafThinner").click();
    EXPECT_EQ(leaves().front()->text(), "0.05");
    const std::size_t many = leaves().size();
    while (part(row, "leafThicker").isEnabled())
        part<QPushButton>(row, "leafThicker").click();
    EXPECT_EQ(leaves().back()->text(), "1.00\n+ 0.95");
    EXPECT_GT(leaves().size() + 4, many) << "the last page is not half empty";
}

TEST_F(LeafRowTest, TheWheelPagesAndStopsAtTheEnds)
{
    turnWheel(15);
    turnWheel(15);
    turnWheel(15);
    EXPECT_EQ(leaves().front()->text(), "0.05");
    turnWheel(-15);
    EXPECT_EQ(leaf("0.05"), nullptr);
}

TEST_F(LeafRowTest, StaysWhereItWasPagedToUntilTheSetOrTheBandChanges)
{
    part<QPushButton>(row, "leafThinner").click();
    const QString first = leaves().front()->text();
    row.setGauge(aLeafSet("A").set, 600_um);
    EXPECT_EQ(leaves().front()->text(), first);
    row.setGauge(aLeafSet("A").set, 800_um);
    EXPECT_NE(leaf("0.80"), nullptr);
}

TEST_F(LeafRowTest, AChosenLeafIsBroughtIntoView)
{
    row.setChosen(GaugeReading{between(100, 150), Technique::Leaf});
    ASSERT_NE(leaf("0.10"), nullptr);
    EXPECT_TRUE(leaf("0.10")->isChecked());
}

TEST_F(LeafRowTest, EveryButtonHasANameForThoseWhoCannotSee)
{
    EXPECT_EQ(leaf("0.60")->accessibleName(), "0.60 millimetres enters");
    for (const QPushButton* button : row.findChildren<QPushButton*>())
        EXPECT_FALSE(button->isVisible() && button->accessibleName().isEmpty() && button->text().isEmpty());
    EXPECT_EQ(part<QPushButton>(row, "leafThinner").accessibleName(), "Thinner leaves");
}

TEST_F(LeafRowTest, NothingIsClippedInNarrowWindowsOrAtLargeText)
{
    for (const double scale : {1.0, 1.5, 2.0}) {
        row.setLook(lookAt(scale));
        for (const int centre : {200, 600, 1200}) {
            row.setGauge(aLeafSet("A").set, Gap::micrometres(centre));
            for (const int width : {640, 900, 1280}) {
                SCOPED_TRACE(testing::Message() << scale << " " << centre << " " << width);
                const int height =
                    row.layout()->hasHeightForWidth() ? row.layout()->heightForWidth(width) : 150;
                showAt(row, {width, height}, lookAt(scale));
                expectNothingClipped(row, 10);
                EXPECT_GE(leaves().size(), 3U);
            }
        }
    }
}

TEST_F(LeafRowTest, ASetWithoutLeavesOffersNothing)
{
    row.setGauge(GaugeSet{}, std::nullopt);
    EXPECT_TRUE(leaves().empty());
    EXPECT_FALSE(part(row, "noLeafEnters").isEnabled());
    enter("0.60");
    EXPECT_TRUE(readings.empty());
    ASSERT_EQ(refusals.size(), 1U);
    EXPECT_EQ(refusals.front(),
              "This set has no leaves written down, so nothing can be read with it. Add them in Set up.");
}

} // namespace
