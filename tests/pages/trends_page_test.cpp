#include "app/pages/trends/trends_page.h"
#include "app/widgets/trend_widget.h"
#include "tests/pages/trends_scene.h"

#include <QAbstractButton>
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QTableView>
#include <QtTest>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class TrendsPageTest : public testing::Test
{
protected:
    void show(QSize size = {1280, 744})
    {
        page.setStyleSheet(styleSheetFor(Theme::light(), FontSizes{}));
        page.resize(size);
        page.show();
        page.showAirframe(hangar.airframe);
        QCoreApplication::processEvents();
    }

    void key(Qt::Key key) { QTest::keyClick(&page, key); }

    template <typename Widget> Widget* find(const char* name) { return page.findChild<Widget*>(name); }
    QAbstractButton* row(int index)
    {
        return page.findChild<QAbstractButton*>(QStringLiteral("trendRow%1").arg(index));
    }
    QTableView* table() { return find<QTableView>("readingsTable"); }
    QString cell(int tableRow, int column)
    {
        return table()->model()->index(tableRow, column).data().toString();
    }
    QString text(const char* label) { return find<QLabel>(label)->text(); }

    // A season of the left aileron: 12 confirmed readings, then riggings 1 to 4, of which one was corrected.
    void tellASeason()
    {
        scene.baselineDay(kBaselineDay);
        scene.rig(dayOf(2026, 4, 4), 500);
        scene.rig(dayOf(2026, 4, 11), 1000);
        const RecordId third = scene.rig(dayOf(2026, 4, 18), 900);
        Reading right = scene.reading(500, dayOf(2026, 4, 18), 11);
        right.record = third;
        right.corrects = must(store.records().readingsOf(hangar.leftAileron)).back().reading.id;
        right.note = "wrong leaf\tread off";
        scene.add(right);
        Reading loose = scene.reading(1000, dayOf(2026, 4, 25));
        loose.record = scene.record(dayOf(2026, 4, 25));
        loose.interval.refuses.reset();
        scene.add(loose);
    }

    TrendsScene scene;
    TempStore& store{scene.store};
    Hangar& hangar{scene.hangar};
    TrendsPage page{store.records(), store.clock()};
};

// Columns of the table.
enum Column { When, Rigging, Enters, Refuses, Verdicts, Kind, By, GaugeName, Note };

} // namespace

TEST_F(TrendsPageTest, SaysThatTheFileKnowsNoAirframe)
{
    page.resize(1280, 744);
    page.show();
    page.showAirframe(std::nullopt);
    EXPECT_TRUE(find<QLabel>("trendsMessage")->isVisible());
    EXPECT_TRUE(text("trendsMessage").contains("no airframe yet"));
}

TEST_F(TrendsPageTest, SaysThatAnAirframeHasNoCouplings)
{
    const AirframeId bare = must(store.records().add(anAirframe("QX-42")));
    show();
    page.showAirframe(bare);
    EXPECT_TRUE(text("trendsMessage").contains("no couplings yet"));
    EXPECT_TRUE(find<QLabel>("trendsMessage")->isVisible());
}

TEST_F(TrendsPageTest, SaysThatAReadingOfTheFileFailedAndShowsNothingOld)
{
    show();
    QSignalSpy problems{&page, &Page::problemArose};
    page.showAirframe(AirframeId{});
    ASSERT_EQ(problems.size(), 1);
    EXPECT_FALSE(problems[0][0].toString().isEmpty());
    EXPECT_TRUE(find<QLabel>("trendsMessage")->isVisible());
    EXPECT_FALSE(row(0)->isVisible());
}

TEST_F(TrendsPageTest, ShowsEveryCouplingWithTheWordOfHowItStands)
{
    tellASeason();
    show();
    ASSERT_TRUE(row(0));
    ASSERT_TRUE(row(1));
    EXPECT_EQ(row(0)->accessibleName(), "Left aileron");
    EXPECT_EQ(row(0)->accessibleDescription(), "outside");
    EXPECT_EQ(row(1)->accessibleDescription(), "not read");
    EXPECT_TRUE(row(0)->isChecked());
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
}

TEST_F(TrendsPageTest, GoesFromCouplingToCouplingByTheArrowKeys)
{
    show();
    QTest::keyClick(row(0), Qt::Key_Down);
    EXPECT_TRUE(row(1)->isChecked());
    EXPECT_FALSE(row(0)->isChecked());
    EXPECT_EQ(text("couplingTitle"), "Right aileron");
    QTest::keyClick(row(1), Qt::Key_Down); // the last one stays chosen
    EXPECT_TRUE(row(1)->isChecked());
    QTest::keyClick(row(1), Qt::Key_Home);
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
    EXPECT_TRUE(row(0)->focusPolicy() & Qt::TabFocus);
    EXPECT_TRUE(row(1)->focusPolicy() & Qt::TabFocus);
}

TEST_F(TrendsPageTest, KeepsARowChosenThatIsPressedAgain)
{
    show();
    QTest::mouseClick(row(0), Qt::LeftButton);
    EXPECT_TRUE(row(0)->isChecked());
}

TEST_F(TrendsPageTest, SaysThatACouplingHasNoReadings)
{
    show();
    EXPECT_TRUE(find<QLabel>("noReadings")->isVisible());
    EXPECT_TRUE(text("noReadings").contains("Left aileron has no readings yet"));
    EXPECT_EQ(text("nowTitle"), "No readings yet");
    EXPECT_TRUE(text("bandSentence").startsWith("No band yet: no confirmed reading"));
}

TEST_F(TrendsPageTest, SaysWhereTheBandComesFrom)
{
    scene.baselineDay(kBaselineDay);
    show();
    EXPECT_TRUE(text("bandSentence").contains("12 confirmed readings of 7 March 2026"))
        << text("bandSentence").toStdString();
    EXPECT_TRUE(text("bandSentence").contains("Fitting 1, begun 1 March 2026: first fitting."));
}

TEST_F(TrendsPageTest, CountsWhatWasOffAndCallsTheBandNoLimit)
{
    tellASeason();
    show();
    EXPECT_EQ(text("nowTitle"), "Outside the band, and nobody has resolved it");
    EXPECT_TRUE(text("nowLatest").contains("rigging 4 on 25 April 2026"));
    EXPECT_TRUE(text("nowCounts").contains("of all 4 readings")) << text("nowCounts").toStdString();
    EXPECT_TRUE(text("nowCounts").contains("2 outside"));
    EXPECT_TRUE(text("nowCounts").contains("One more was outside"));
    EXPECT_TRUE(text("nowCaution").contains("never a limit"));
}

TEST_F(TrendsPageTest, ChangesTheAxisByOneLetter)
{
    tellASeason();
    show();
    EXPECT_TRUE(find<QPushButton>("byRigging")->isChecked());
    key(Qt::Key_D);
    EXPECT_TRUE(find<QPushButton>("byDate")->isChecked());
    EXPECT_FALSE(find<QPushButton>("byRigging")->isChecked());
    key(Qt::Key_R);
    EXPECT_TRUE(find<QPushButton>("byRigging")->isChecked());
}

TEST_F(TrendsPageTest, ShowsAndHidesTheTableByOneLetterAlsoFromWithinIt)
{
    tellASeason();
    show();
    EXPECT_FALSE(table()->isVisible()); // the chart has the room
    key(Qt::Key_T);
    EXPECT_TRUE(table()->isVisible());
    EXPECT_TRUE(find<QPushButton>("tableButton")->isChecked());
    QTest::keyClick(table(), Qt::Key_T);
    EXPECT_FALSE(table()->isVisible());
}

TEST_F(TrendsPageTest, BringsTheTableIntoSightInALowWindow)
{
    tellASeason();
    show({1024, 600});
    key(Qt::Key_T);
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
    EXPECT_GT(table()->visibleRegion().boundingRect().height(), table()->height() / 2);
}

TEST_F(TrendsPageTest, ShowsTheTableFromTheBeginningWhereThereIsRoom)
{
    tellASeason();
    show({1920, 1024});
    EXPECT_TRUE(table()->isVisible());
    EXPECT_TRUE(find<QPushButton>("tableButton")->isChecked());
}

TEST_F(TrendsPageTest, ListsTheNewestReadingFirst)
{
    tellASeason();
    show();
    ASSERT_EQ(table()->model()->rowCount(), 17);
    EXPECT_EQ(cell(0, When), "25 Apr 2026, 10:00");
    EXPECT_EQ(cell(0, Rigging), "4");
    EXPECT_EQ(cell(0, Enters), "1.00");
    EXPECT_EQ(cell(0, Refuses), "none");
    EXPECT_EQ(cell(0, Verdicts), "outside");
    EXPECT_FALSE(table()->model()->index(0, Verdicts).data(Qt::DecorationRole).isNull());
    EXPECT_EQ(cell(0, Kind), "locked, rigging");
    EXPECT_EQ(cell(0, By), "M. Oren");
    EXPECT_EQ(cell(0, GaugeName), "A");
    EXPECT_EQ(cell(16, Kind), "locked, baseline");
    EXPECT_EQ(cell(16, Rigging), "–");
}

TEST_F(TrendsPageTest, ShowsEveryColumnOfTheTableInASmallWindow)
{
    tellASeason();
    show();
    key(Qt::Key_T);
    QCoreApplication::processEvents();
    EXPECT_TRUE(table()->isVisible());
    EXPECT_EQ(table()->horizontalScrollBar()->maximum(), 0);
    table()->sortByColumn(Refuses, Qt::AscendingOrder); // its header now holds the arrow
    QCoreApplication::processEvents();
    EXPECT_EQ(table()->horizontalScrollBar()->maximum(), 0);
}

TEST_F(TrendsPageTest, SortsByWhatIsMeasuredAndNotByHowItIsWritten)
{
    tellASeason();
    show();
    table()->sortByColumn(Enters, Qt::AscendingOrder);
    EXPECT_EQ(cell(0, Enters), "0.45");
    EXPECT_EQ(cell(14, Enters), "0.90");
    EXPECT_EQ(cell(16, Enters), "1.00"); // after 0.90, as a number
    table()->sortByColumn(Refuses, Qt::AscendingOrder);
    EXPECT_EQ(cell(16, Refuses), "none"); // still loose: wider than any
    table()->sortByColumn(Verdicts, Qt::DescendingOrder);
    EXPECT_EQ(cell(0, Verdicts), "outside");
}

TEST_F(TrendsPageTest, StrikesASupersededReadingThroughWithItsReason)
{
    tellASeason();
    show();
    EXPECT_EQ(cell(2, Enters), "0.90");
    EXPECT_TRUE(table()->model()->index(2, Enters).data(Qt::FontRole).value<QFont>().strikeOut());
    EXPECT_TRUE(cell(2, Note).startsWith("corrected: wrong leaf"));
    EXPECT_FALSE(table()->model()->index(1, Enters).data(Qt::FontRole).value<QFont>().strikeOut());
}

TEST_F(TrendsPageTest, CopiesTheChosenRowsAsTheyStand)
{
    tellASeason();
    show();
    key(Qt::Key_T);
    table()->selectRow(0);
    table()->selectionModel()->select(table()->model()->index(1, 0),
                                      QItemSelectionModel::Select | QItemSelectionModel::Rows);
    QTest::keyClick(table(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text().toStdString(),
              "When\tRigging\tEnters mm\tRefuses mm\tVerdict\tKind\tBy\tGauge\tNote\n"
              "2026-04-25 10:00\t4\t1.00\tnone\toutside\tlocked, rigging\tM. Oren\tA\t\n"
              "2026-04-18 11:00\t3\t0.50\t0.55\tinside\tlocked, rigging\tM. Oren\tA\t\n");
}

TEST_F(TrendsPageTest, ShowsTheChosenRowInTheChart)
{
    tellASeason();
    show();
    key(Qt::Key_T);
    table()->setCurrentIndex(table()->model()->index(0, 0));
    EXPECT_EQ(find<TrendWidget>("chart")->chosenReading(), 16);
    EXPECT_TRUE(text("hoverSentence").contains("Rigging 4"));
}

TEST_F(TrendsPageTest, ShowsTheReadingChosenInTheChartAsARow)
{
    tellASeason();
    show();
    key(Qt::Key_T);
    QTest::keyClick(find<TrendWidget>("chart"), Qt::Key_Up); // the last reading
    EXPECT_EQ(table()->currentIndex().row(), 0);
    QTest::keyClick(find<TrendWidget>("chart"), Qt::Key_Up);
    EXPECT_EQ(table()->currentIndex().row(), 1);
}

TEST_F(TrendsPageTest, KeepsSeveralRowsChosenWhileTheChartFollows)
{
    tellASeason();
    show();
    key(Qt::Key_T);
    table()->setCurrentIndex(table()->model()->index(0, 0));
    QTest::keyClick(table(), Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(table()->selectionModel()->selectedRows().size(), 2);
    EXPECT_EQ(find<TrendWidget>("chart")->chosenReading(), 15);
}

TEST_F(TrendsPageTest, ReadsTheFactsAnewWhenShown)
{
    tellASeason();
    show();
    QTest::keyClick(row(0), Qt::Key_Down);
    scene.rig(dayOf(2026, 5, 2), 500);
    page.showAirframe(hangar.airframe);
    EXPECT_EQ(text("couplingTitle"), "Right aileron"); // stays chosen
    QTest::keyClick(row(1), Qt::Key_Up);
    EXPECT_EQ(cell(0, Rigging), "5");
}

TEST_F(TrendsPageTest, HasANameForWhateverTakesTheFocus)
{
    tellASeason();
    show({1920, 1024});
    int looked = 0;
    for (const QWidget* widget : page.findChildren<QWidget*>()) {
        if (!(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible())
            continue;
        ++looked;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const bool named = !widget->accessibleName().isEmpty() || (button && !button->text().isEmpty());
        EXPECT_TRUE(named) << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
    EXPECT_GE(looked, 5);
}

TEST_F(TrendsPageTest, FitsEightCouplingsWithoutScrolling)
{
    for (int i = 0; i < 6; ++i)
        must(store.records().add(aCoupling(hangar.airframe, "Coupling " + std::to_string(i))));
    show();
    const QWidget* list = find<QWidget>("couplingList");
    ASSERT_TRUE(row(7));
    const QPoint bottom = row(7)->mapTo(list, QPoint{0, row(7)->height()});
    EXPECT_LE(bottom.y(), list->height());
    EXPECT_GT(row(7)->visibleRegion().boundingRect().height(), row(7)->height() - 2);
}
