// The engineer's report looked at before it is written.

#include "app/pages/annual/report_preview.h"
#include "app/widgets/pages_view.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/clipped.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QSignalSpy>

using namespace rig;
using namespace rig::test;

namespace {

class Preview : public testing::Test
{
protected:
    Preview()
    {
        Day day = dayOf(2026, 3, 1);
        for (const char* name : {"Left aileron", "Right aileron", "Elevator"})
            told.addCoupling(name, 0.50, day);
        for (int i = 0; i < 12; ++i) {
            day += std::chrono::days{2};
            told.rig(day);
            for (const Coupling& coupling : told.facts.couplings)
                told.read(coupling.id, 0.50);
        }
        showAt(preview, {1280, 760});
        preview.display(told.facts, reviewPeriods(told.facts, day).front(), day);
        QApplication::processEvents();
        preview.setFocus();
    }

    QString fileNamed(const char* name) const { return QString::fromStdString(folder.file(name)); }
    void press(Qt::Key key) { QTest::keyClick(&pages(), key); }
    PagesView& pages() { return part<PagesView>(preview, "pagesView"); }

    AirframeInMemory told;
    TempFolder folder;
    ScriptedPrompts prompts;
    ReportPreview preview{prompts};
};

} // namespace

TEST_F(Preview, ShowsEveryPageAndSaysWhichOneIsSeen)
{
    ASSERT_GT(pages().pageCount(), 2);
    const QString of = " of " + QString::number(pages().pageCount());
    EXPECT_EQ(test::textOf(preview, "previewPage"), ("Page 1" + of).toStdString());
    press(Qt::Key_PageDown);
    EXPECT_EQ(test::textOf(preview, "previewPage"), ("Page 2" + of).toStdString());
    EXPECT_TRUE(pages().accessibleDescription().contains("Not an aircraft record"));
    press(Qt::Key_End);
    EXPECT_EQ(pages().page(), pages().pageCount() - 1);
    press(Qt::Key_Home);
    EXPECT_EQ(pages().page(), 0);
    expectNothingClipped(preview, 8);
}

TEST_F(Preview, GrowsShrinksAndFitsByKeys)
{
    const double fitting = pages().zoom();
    press(Qt::Key_Plus);
    EXPECT_GT(pages().zoom(), fitting);
    press(Qt::Key_Minus);
    press(Qt::Key_Minus);
    EXPECT_LT(pages().zoom(), fitting);
    press(Qt::Key_0);
    EXPECT_DOUBLE_EQ(pages().zoom(), fitting);
}

TEST_F(Preview, TakesTheOtherPaper)
{
    const int before = part<QComboBox>(preview, "previewPaper").currentIndex();
    const int high = pages().widget()->height();
    typeOn(pages(), "a");
    EXPECT_NE(part<QComboBox>(preview, "previewPaper").currentIndex(), before);
    EXPECT_NE(pages().widget()->height(), high);
}

TEST_F(Preview, LeavesTheAppendixOutAndSavesTheSameTables)
{
    auto* appendix = preview.findChild<QCheckBox*>("previewAppendix");
    ASSERT_NE(appendix, nullptr);
    EXPECT_TRUE(appendix->isChecked());
    typeOn(pages(), "x");
    EXPECT_FALSE(appendix->isChecked());
    EXPECT_TRUE(pages().accessibleDescription().contains("Not an aircraft record"));
    prompts.saveFiles = {folder.file("review.pdf")};
    typeOn(pages(), "s");
    EXPECT_TRUE(QFile::exists(fileNamed("review-csv/looks.csv")));
    typeOn(pages(), "x");
    EXPECT_TRUE(appendix->isChecked());
}

TEST_F(Preview, IsSavedWithItsTablesBesideItAndSaysWhereTheyAre)
{
    prompts.saveFiles = {folder.file("review.pdf")};
    typeOn(pages(), "s");
    EXPECT_TRUE(QFile::exists(fileNamed("review.pdf")));
    EXPECT_TRUE(QFile::exists(fileNamed("review-csv/readings.csv")));
    const QString said = QString::fromStdString(test::textOf(preview, "previewSaid"));
    EXPECT_TRUE(said.contains("review.pdf") && said.contains("review-csv")) << said.toStdString();

    prompts.saveFiles = {
        folder.file("review.pdf")}; // tables are there already: turned away from replacing them
    typeOn(pages(), "s");
    EXPECT_NE(prompts.asked.back().find("Replace the tables"), std::string::npos);
    EXPECT_EQ(prompts.suggested.front(), "QX-99-2026-03-25-review.pdf");
}

TEST_F(Preview, SaysWhenItCannotBeSaved)
{
    QSignalSpy problems{&preview, &ReportPreview::problemArose};
    prompts.saveFiles = {folder.file("none/review.pdf")};
    typeOn(pages(), "s");
    ASSERT_EQ(problems.size(), 1);
    EXPECT_TRUE(problems[0][0].toString().contains("cannot be written"));
}

TEST_F(Preview, SaysWhenOnlyItsTablesCannotBeSaved)
{
    QSignalSpy problems{&preview, &ReportPreview::problemArose};
    QFile inTheWay{fileNamed("review-csv")};
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    prompts.saveFiles = {folder.file("review.pdf")};
    prompts.confirmations = {true};
    typeOn(pages(), "s");
    ASSERT_EQ(problems.size(), 1);
    EXPECT_TRUE(problems[0][0].toString().contains("was written, but not all of its tables"));
}

TEST_F(Preview, IsLeftByEscape)
{
    QSignalSpy back{&preview, &ReportPreview::backAsked};
    press(Qt::Key_Escape);
    EXPECT_EQ(back.size(), 1);
}

TEST_F(Preview, HasRoomAtLargeText)
{
    const Look large = lookAt(1.5);
    preview.setLook(large);
    showAt(preview, {1280, 740}, large);
    expectNothingClipped(preview, 8);
}
