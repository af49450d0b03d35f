#include "app/pages/annual/annual_page.h"
#include "tests/pages/trends_scene.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>

#include <gtest/gtest.h>
#include <set>

using namespace rig;
using namespace rig::test;

namespace {

class AnnualPageTest : public testing::Test
{
protected:
    void show(double scale = 1)
    {
        page.setLook(lookAt(scale));
        showAt(page, {1280, 744}, lookAt(scale));
        page.showAirframe(scene.hangar.airframe);
        page.setFocus();
        QApplication::processEvents();
        QApplication::processEvents();
    }

    void tellAYear()
    {
        // In one transaction: the disk is asked once.
        must(scene.store.records().together([this]() -> Outcome {
            scene.baselineDay(dayOf(2026, 3, 7));
            for (int i = 0; i < 24; ++i)
                scene.rig(dayOf(2026, 4, 4) + std::chrono::days{7 * i}, i < 12 ? 500 : 550);
            return Done{};
        }));
        scene.event(dayOf(2026, 6, 1), EventKind::Annual, "by A. Quill");
    }

    QTableView& table() { return part<QTableView>(page, "reviewTable"); }
    std::string first()
    {
        return table().model()->index(0, 0).data(Qt::AccessibleTextRole).toString().toStdString();
    }
    void press(Qt::Key key)
    {
        QTest::keyClick(&table(), key);
        QApplication::processEvents();
    }

    TrendsScene scene;
    ScriptedPrompts prompts;
    AnnualPage page{scene.store.records(), scene.store.clock(), prompts};
};

} // namespace

TEST_F(AnnualPageTest, SaysThatTheFileKnowsNoAirframe)
{
    page.showAirframe({});
    EXPECT_NE(textOf(page, "annualMessage").find("no airframe"), std::string::npos);
}

TEST_F(AnnualPageTest, OpensTheTrendOfTheChosenRowOnEnter)
{
    tellAYear();
    show();
    std::vector<CouplingId> wanted;
    std::vector<std::optional<ReadingId>> readings;
    QObject::connect(&page, &AnnualPage::trendWanted, &page,
                     [&](CouplingId coupling, const std::optional<ReadingId>& reading) {
                         wanted.push_back(coupling);
                         readings.push_back(reading);
                     });
    EXPECT_TRUE(table().hasFocus());
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(wanted, (std::vector{scene.hangar.leftAileron, scene.hangar.rightAileron}));
    EXPECT_EQ(readings.front(), std::nullopt);
}

TEST_F(AnnualPageTest, SortsByAnyColumnAndBackByDigits)
{
    tellAYear();
    show();
    EXPECT_NE(first().find("Left aileron"), std::string::npos);
    press(Qt::Key_1);
    press(Qt::Key_1);
    EXPECT_NE(first().find("Right aileron"), std::string::npos);
    press(Qt::Key_4);
    EXPECT_NE(first().find("Left aileron"), std::string::npos); // the other has no scatter: last either way
    press(Qt::Key_4);
    EXPECT_NE(first().find("Left aileron"), std::string::npos);
    press(Qt::Key_0);
    EXPECT_NE(first().find("Left aileron"), std::string::npos);
}

TEST_F(AnnualPageTest, KeepsTheChosenCouplingWhileItIsSorted)
{
    tellAYear();
    show();
    const auto chosen = [this] {
        const QModelIndex current = table().currentIndex();
        return current.siblingAtColumn(0).data(Qt::AccessibleTextRole).toString();
    };
    press(Qt::Key_Down);
    const QString coupling = chosen();
    EXPECT_FALSE(coupling.isEmpty());
    std::set<int> rows;
    for (int i = 0; i < 2; ++i) {
        press(Qt::Key_1);
        rows.insert(table().currentIndex().row());
        EXPECT_EQ(chosen(), coupling);
    }
    EXPECT_EQ(rows.size(), 2U) << "the other way round it stands in another row";
}

TEST_F(AnnualPageTest, SaysWhatTheColumnsMeanOnAKey)
{
    tellAYear();
    show();
    auto& meanings = part<QLabel>(page, "columnMeanings");
    EXPECT_FALSE(meanings.isVisible());
    press(Qt::Key_M);
    EXPECT_TRUE(meanings.isVisible());
    for (const char* column : {"What moved", "Farthest away", "Scatter", "Chance", "never a limit"})
        EXPECT_TRUE(meanings.text().contains(column)) << column;
    press(Qt::Key_M);
    EXPECT_FALSE(meanings.isVisible());
}

TEST_F(AnnualPageTest, ShowsAnotherPeriodWhenItIsChosen)
{
    tellAYear();
    show();
    auto& periods = part<QComboBox>(page, "annualPeriod");
    EXPECT_GE(periods.count(), 3);
    periods.setCurrentIndex(1);
    emit periods.activated(1);
    EXPECT_EQ(textOf(page, "annualTitle"), "Before the annual of 1 June 2026");
    page.showAirframe(scene.hangar.airframe); // back from another page: the period is still chosen
    EXPECT_EQ(periods.currentIndex(), 1);
}

TEST_F(AnnualPageTest, LooksBackOnAsManyOfTheLastRiggingsAsAreTyped)
{
    tellAYear();
    show();
    auto& periods = part<QComboBox>(page, "annualPeriod");
    const int asked = periods.findText("The last riggings, so many as you type …");
    ASSERT_GE(asked, 0);
    periods.setCurrentIndex(asked);
    emit periods.activated(asked);
    auto& count = part<QLineEdit>(page, "periodRiggings");
    EXPECT_TRUE(count.hasFocus());
    for (const char* bad : {"", "0", "three", "2.5", "10000"}) {
        count.setText(bad);
        QTest::keyClick(&count, Qt::Key_Return);
        EXPECT_FALSE(textOf(page, "periodProblem").empty()) << bad;
    }
    count.setText("3");
    QTest::keyClick(&count, Qt::Key_Return);
    EXPECT_TRUE(part(page, "periodProblem").isHidden());
    EXPECT_EQ(periods.currentText(), "The last 3 riggings");
    page.showAirframe(scene.hangar.airframe); // back from another page
    EXPECT_EQ(periods.currentText(), "The last 3 riggings");
}

TEST_F(AnnualPageTest, ShowsTheReportOnAKeyAndComesBackToTheTable)
{
    tellAYear();
    show();
    press(Qt::Key_R);
    auto& preview = part(page, "reportPreview");
    EXPECT_TRUE(preview.isVisible());
    page.showAirframe(scene.hangar.airframe); // the text was made larger
    EXPECT_TRUE(preview.isVisible());
    QTest::keyClick(page.window()->focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(preview.isVisible());
    EXPECT_TRUE(table().hasFocus());
}

TEST_F(AnnualPageTest, ScrollsByThePageKeysFromTheTable)
{
    tellAYear();
    show();
    QScrollBar* bar = page.findChild<QScrollArea*>()->verticalScrollBar();
    press(Qt::Key_PageDown);
    EXPECT_GT(bar->value(), 0);
    press(Qt::Key_PageUp);
    EXPECT_EQ(bar->value(), 0);
}

TEST_F(AnnualPageTest, ClipsNothingAtTheUsualAndALargeTextSize)
{
    tellAYear();
    for (const double scale : {1.0, 1.5, 2.0}) {
        SCOPED_TRACE(scale);
        show(scale);
        QApplication::processEvents(); // columns that give way change the height once more
        expectNothingClipped(page, 25);
        EXPECT_EQ(table().horizontalScrollBar()->maximum(), 0) << scale;
        int rows = 0;
        for (int row = 0; row < table().model()->rowCount(); ++row)
            rows += table().rowHeight(row);
        EXPECT_GE(table().viewport()->height(), rows) << scale;
    }
}

namespace {

class AnnualLinks : public AnnualPageTest
{
protected:
    AnnualLinks()
    {
        QObject::connect(&page, &AnnualPage::trendWanted, &page,
                         [this](CouplingId coupling, const std::optional<ReadingId>& reading) {
                             wanted.emplace_back(coupling, reading);
                         });
    }

    void tellOutside()
    {
        tellAYear();
        scene.rig(dayOf(2026, 10, 3), 900);
        outside = must(scene.store.records().readingsOf(scene.hangar.leftAileron)).back().reading.id;
    }

    void pressFocused(Qt::Key key)
    {
        QTest::keyClick(page.focusWidget(), key);
        QApplication::processEvents();
    }

    std::vector<std::pair<CouplingId, std::optional<ReadingId>>> wanted;
    ReadingId outside;
};

} // namespace

TEST_F(AnnualLinks, LeadFromAHeadlineByItsKeyAndEnterAndByAClick)
{
    tellOutside();
    show();
    press(Qt::Key_S);
    auto* headline = qobject_cast<QAbstractButton*>(page.focusWidget());
    ASSERT_TRUE(headline);
    EXPECT_TRUE(headline->accessibleName().startsWith("Left aileron"));
    pressFocused(Qt::Key_Return);
    QTest::mouseClick(headline, Qt::LeftButton, {}, headline->rect().center());
    ASSERT_EQ(wanted.size(), 2u);
    for (const auto& [coupling, reading] : wanted) {
        EXPECT_EQ(coupling, scene.hangar.leftAileron);
        EXPECT_FALSE(reading);
    }
}

TEST_F(AnnualLinks, LeadFromAReadingOutsideToThatReadingAndBackToThatPlace)
{
    tellOutside();
    show();
    press(Qt::Key_O);
    QScrollBar* bar = page.findChild<QScrollArea*>()->verticalScrollBar();
    const int place = bar->value();
    EXPECT_GT(place, 0) << "it came into view";
    const QString link = page.focusWidget()->objectName();
    pressFocused(Qt::Key_Return);
    ASSERT_EQ(wanted.size(), 1u);
    EXPECT_EQ(wanted.front(), (std::pair{scene.hangar.leftAileron, std::optional{outside}}));
    bar->setValue(0);
    page.showAirframe(scene.hangar.airframe); // back from Trends
    page.setFocus();
    QApplication::processEvents();
    EXPECT_EQ(bar->value(), place);
    EXPECT_EQ(page.focusWidget()->objectName(), link);
}

TEST_F(AnnualLinks, KeepTheFocusWhenAnotherWindowHasWritten)
{
    tellOutside();
    show();
    press(Qt::Key_S);
    const QString link = page.focusWidget()->objectName();
    page.catchUp();
    QApplication::processEvents();
    EXPECT_EQ(page.focusWidget()->objectName(), link);
}
