// The engineer's report looked at before it is written.

#include "app/pages/annual/report_preview.h"
#include "app/report/pdf_file.h"
#include "app/widgets/pages_view.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"
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
        lookUp();
        preview.setFocus();
    }

    void display()
    {
        const Day last = dayOf(2026, 3, 25);
        preview.display(told.facts, reviewPeriods(told.facts, last).front(), last);
    }
    std::string savedPdf() const
    {
        QFile file{fileNamed("review.pdf")};
        return file.open(QIODevice::ReadOnly) ? withoutStamp(file.readAll().toStdString()) : std::string{};
    }
    // The pages of the other paper without the appendix, as they are laid out by whoever waits for them.
    std::string pdfOfTheOtherPaper() const
    {
        const Day last = dayOf(2026, 3, 25);
        const AirframeReview review = airframeReviewOf(told.facts, reviewPeriods(told.facts, last).front());
        const QString program = ReportWords::program(QCoreApplication::applicationVersion());
        const Paper other = usualPaper(QLocale{}) == Paper::A4 ? Paper::Letter : Paper::A4;
        return withoutStamp(pdfOf(layoutReview(told.facts, review, {other, last, program, false}),
                                  ReviewReportWords::running(review.period), program)
                                .toStdString());
    }
    static std::string withoutStamp(std::string pdf)
    {
        for (const char* stamp :
             {"/CreationDate", "<xmp:CreateDate>", "<xmp:ModifyDate>", "<xmp:MetadataDate>"})
            if (const std::size_t at = pdf.find(stamp); at != std::string::npos)
                pdf.erase(at, pdf.find('\n', at) - at);
        return pdf;
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
    lookUp();
    EXPECT_NE(part<QComboBox>(preview, "previewPaper").currentIndex(), before);
    EXPECT_NE(pages().widget()->height(), high);
}

TEST_F(Preview, LeavesTheAppendixOutAndSavesTheSameTables)
{
    auto* appendix = preview.findChild<QCheckBox*>("previewAppendix");
    ASSERT_NE(appendix, nullptr);
    EXPECT_TRUE(appendix->isChecked());
    typeOn(pages(), "x");
    lookUp();
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

TEST_F(Preview, IsLaidOutBehindThePage)
{
    display();
    EXPECT_EQ(pages().pageCount(), 0) << "what was laid out before is not shown for this";
    EXPECT_TRUE(pages().isVisible() && part<QComboBox>(preview, "previewPaper").isEnabled());
    EXPECT_FALSE(part(preview, "layingOut").isVisible()) << "it is soon there";
    lookUp();
    EXPECT_GT(pages().pageCount(), 2);
}

TEST_F(Preview, TakesEveryKeyBeforeThePagesAreThere)
{
    display();
    typeOn(pages(), "ax");
    press(Qt::Key_PageDown);
    EXPECT_EQ(pages().pageCount(), 0);
    lookUp();
    EXPECT_EQ(pages().page(), 1);
    prompts.saveFiles = {folder.file("review.pdf")};
    typeOn(pages(), "s");
    ASSERT_FALSE(savedPdf().empty());
    EXPECT_EQ(savedPdf(), pdfOfTheOtherPaper()) << "the newest choices are laid out";
}

TEST_F(Preview, SavesWhatWasChosenAtThePressBeforeItIsShown)
{
    prompts.saveFiles = {folder.file("review.pdf")};
    display();
    typeOn(pages(), "axs");
    ASSERT_FALSE(savedPdf().empty());
    EXPECT_EQ(savedPdf(), pdfOfTheOtherPaper());
    EXPECT_TRUE(QFile::exists(fileNamed("review-csv/readings.csv")));
    lookUp();
    EXPECT_GT(pages().pageCount(), 0);
}

TEST_F(Preview, IsLeftByEscapeWhileItIsLaidOut)
{
    QSignalSpy back{&preview, &ReportPreview::backAsked};
    display();
    press(Qt::Key_Escape);
    EXPECT_EQ(back.size(), 1);
    preview.hide(); // as the page does
    lookUp();
    EXPECT_EQ(pages().pageCount(), 0) << "nobody wants it any more";
    preview.show();
    lookUp();
    EXPECT_GT(pages().pageCount(), 2);
}

TEST_F(Preview, EndsInTheMiddleOfLayingOut)
{
    auto gone = std::make_unique<ReportPreview>(prompts);
    showAt(*gone, {1280, 760});
    const Day last = dayOf(2026, 3, 25);
    for (int i = 0; i < 5; ++i)
        gone->display(told.facts, reviewPeriods(told.facts, last).front(), last);
    gone.reset();
    lookUp();
}
