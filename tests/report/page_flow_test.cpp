#include "app/blocks/cells.h"
#include "app/report/page_flow.h"
#include "app/report/pdf_file.h"
#include "tests/report/pages.h"
#include "tests/support/temp_store.h"

#include <QFile>

#include <filesystem>

using namespace rig;
using namespace rig::test;

namespace {

const PageFrame kFrame{QStringLiteral("QX-17 · Orvane 15"), QStringLiteral("Rigging record"),
                       QStringLiteral("A caution that stands on every page."), QStringLiteral("2 May 2026")};

// Every row has two cells, the first of three lines.
TableBlock tableOf(int rows)
{
    TableBlock table;
    table.columns = {{QStringLiteral("First"), 1}, {QStringLiteral("Second"), 2}};
    for (int i = 0; i < rows; ++i) {
        const QString row = QString::number(i);
        table.rows.push_back(
            {{said("top " + row), said("middle " + row), said("bottom " + row)}, {said("beside " + row)}});
    }
    return table;
}

PageFlow pagesOf(const std::vector<Block>& blocks, Paper paper = Paper::A4)
{
    return layoutPages(kFrame, blocks, paper);
}

const PageText* find(const PrintedPage& page, const QString& text)
{
    for (const PageText& one : page.texts)
        if (one.text == text)
            return &one;
    return nullptr;
}

} // namespace

TEST(Pages, CarryWhoseTheyAreTheCautionAndTheirNumber)
{
    const PageFlow flow = pagesOf({tableOf(80)});
    ASSERT_GT(flow.pages.size(), 2U);
    for (std::size_t i = 0; i < flow.pages.size(); ++i) {
        const QStringList texts = textsOf(flow.pages[i]);
        EXPECT_EQ(timesIn(texts, kFrame.airframe), 1);
        EXPECT_EQ(timesIn(texts, kFrame.title), 1);
        EXPECT_EQ(timesIn(texts, kFrame.caution), 1);
        EXPECT_EQ(timesIn(texts, kFrame.printed), 1);
        EXPECT_EQ(timesIn(texts, QStringLiteral("Page %1 of %2").arg(i + 1).arg(flow.pages.size())), 1);
    }
}

TEST(Pages, OfNothingAreOnePage)
{
    EXPECT_EQ(pagesOf({}).pages.size(), 1U);
}

TEST(Pages, KeepEveryRowOnOnePageAndRepeatTheHead)
{
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const PageFlow flow = pagesOf({tableOf(100)}, paper);
        expectWellPlaced(flow);
        int rows = 0;
        for (const PrintedPage& page : flow.pages) {
            EXPECT_EQ(timesIn(textsOf(page), "First"), 1) << "the head stands once above its rows";
            for (int i = 0; i < 100; ++i) {
                const PageText* top = find(page, "top " + QString::number(i));
                const PageText* bottom = find(page, "bottom " + QString::number(i));
                ASSERT_EQ(top != nullptr, bottom != nullptr) << "row " << i << " is split";
                rows += top ? 1 : 0;
            }
        }
        EXPECT_EQ(rows, 100);
    }
}

TEST(Pages, SplitOnlyARowLongerThanAPage)
{
    QStringList words;
    for (int i = 0; i < 4000; ++i)
        words << QStringLiteral("word%1").arg(i);
    TableBlock table = tableOf(1);
    table.rows.front()[1] = {said(words.join(QLatin1Char(' ')))};
    const PageFlow flow = pagesOf({table});
    expectWellPlaced(flow);
    EXPECT_GT(flow.pages.size(), 1U);
    const QString all = textsOf(flow).join(QLatin1Char(' '));
    for (const char* word : {"word0", "word1999", "word3999"})
        EXPECT_TRUE(all.contains(QLatin1String(word))) << word;
}

TEST(Pages, BreakNoWordOfANarrowColumnThatOthersHaveRoomFor)
{
    TableBlock table;
    table.columns = {{{}, 1}, {{}, 8}};
    table.rows = {{{said("Jahresnachprüfungstermin")}, {said("on that day")}}};
    const PageFlow flow = pagesOf({table});
    expectWellPlaced(flow);
    EXPECT_TRUE(find(flow.pages.front(), "Jahresnachprüfungstermin"));
    EXPECT_TRUE(find(flow.pages.front(), "on that day"));
}

TEST(Pages, WrapLongWordsAndLongNames)
{
    const QString name(300, QLatin1Char('W'));
    TableBlock table = tableOf(2);
    table.rows.front()[0] = {said(name)};
    std::vector<Block> blocks;
    blocks.emplace_back(HeadingBlock{name, 2});
    blocks.emplace_back(ParagraphBlock{name, Role::Ink, true, false});
    blocks.emplace_back(table);
    blocks.emplace_back(SignatureBlock{{name, QStringLiteral("Second")}});
    blocks.emplace_back(BlankBlock{name, 150});
    const PageFlow flow = pagesOf(blocks);
    expectWellPlaced(flow);
    EXPECT_EQ(textsOf(flow).join(QString{}).count(QLatin1Char('W')), 5 * 300);
}

TEST(Pages, DoNotLeaveAHeadingAloneAtTheFoot)
{
    for (int before = 1; before < 45; ++before) {
        std::vector<Block> blocks;
        for (int i = 0; i < before; ++i)
            blocks.emplace_back(ParagraphBlock{QStringLiteral("line"), Role::Ink, false, false});
        blocks.emplace_back(HeadingBlock{QStringLiteral("The table"), 3});
        blocks.emplace_back(tableOf(20));
        const PageFlow flow = pagesOf(blocks);
        EXPECT_EQ(timesIn(textsOf(flow), "The table"), 1) << "after " << before << " lines";
        for (const PrintedPage& page : flow.pages)
            EXPECT_TRUE(!find(page, "The table") || find(page, "top 0")) << "after " << before << " lines";
    }
}

TEST(Pages, KeepAPictureWithItsTable)
{
    PictureBlock picture;
    picture.lay = [](QSizeF, const FontSizes&) { return LaidPicture{[](QPainter&, const Theme&) {}, {}}; };
    std::vector<Block> blocks;
    for (int i = 0; i < 30; ++i) {
        blocks.emplace_back(HeadingBlock{QStringLiteral("Coupling %1").arg(i), 3});
        blocks.emplace_back(picture);
        blocks.emplace_back(tableOf(2));
    }
    const PageFlow flow = pagesOf(blocks);
    expectWellPlaced(flow);
    std::size_t pictures = 0;
    for (const PrintedPage& page : flow.pages) {
        pictures += page.pictures.size();
        EXPECT_EQ(static_cast<int>(page.pictures.size()), timesIn(textsOf(page), "top 0"));
    }
    EXPECT_EQ(pictures, 30U);
}

TEST(Pages, KeepASectionTogetherThatAsksForIt)
{
    PictureBlock picture;
    picture.height = 120;
    picture.upwards = QStringLiteral("Gap, mm");
    picture.across = QStringLiteral("Rigging");
    picture.lay = [](QSizeF, const FontSizes&) { return LaidPicture{[](QPainter&, const Theme&) {}, {}}; };
    TableBlock figures = tableOf(3);
    figures.isTight = true;
    for (int before = 0; before < 45; ++before) {
        std::vector<Block> blocks;
        for (int i = 0; i < before; ++i)
            blocks.emplace_back(ParagraphBlock{QStringLiteral("line"), Role::Ink, false, false});
        HeadingBlock heading{QStringLiteral("Coupling"), 3};
        heading.keepsTogether = true;
        heading.beside = QStringLiteral("beside it");
        blocks.emplace_back(heading);
        blocks.emplace_back(BesideBlock{picture, figures});
        blocks.emplace_back(tableOf(8));
        blocks.emplace_back(
            FormBlock{{}, {{QStringLiteral("looked at"), 0}, {QStringLiteral("Found"), 100}}});
        blocks.emplace_back(HeadingBlock{QStringLiteral("Next"), 3});
        const PageFlow flow = pagesOf(blocks);
        expectWellPlaced(flow);
        for (const PrintedPage& page : flow.pages)
            EXPECT_EQ(find(page, "Coupling") != nullptr, find(page, "looked at") != nullptr)
                << "after " << before << " lines";
    }
}

TEST(Pages, LeaveNoRowOfALongTableAlone)
{
    for (int rows = 8; rows < 80; ++rows) {
        const PageFlow flow = pagesOf({tableOf(rows)});
        const int last = timesIn(textsOf(flow.pages.back()), QStringLiteral("beside %1").arg(rows - 2)) +
                         timesIn(textsOf(flow.pages.back()), QStringLiteral("beside %1").arg(rows - 1));
        EXPECT_EQ(last, 2) << rows;
    }
}

TEST(Pages, BreakASectionBelowItsPictureOnlyWhereThatSavesAPage)
{
    const auto pagesWith = [](int sections, int rows) {
        std::vector<Block> blocks;
        for (int i = 0; i < sections; ++i) {
            HeadingBlock heading{QStringLiteral("Section %1").arg(i), 3};
            heading.keepsTogether = true;
            blocks.emplace_back(heading);
            blocks.emplace_back(PictureBlock{150, [](QSizeF, const FontSizes&) { return LaidPicture{}; }});
            blocks.emplace_back(tableOf(rows));
        }
        return pagesOf(blocks);
    };
    EXPECT_EQ(pagesWith(1, 6).pages.size(), 1U);
    const PageFlow many = pagesWith(5, 6);
    EXPECT_EQ(many.pages.size(), 4U) << "kept together each would take a page of its own";
    int broken = 0;
    for (const PrintedPage& page : many.pages) {
        for (int i = 0; i < 5; ++i)
            EXPECT_TRUE(!find(page, QStringLiteral("Section %1").arg(i)) || !page.pictures.empty());
        broken += timesIn(textsOf(page), "top 0") > static_cast<int>(page.pictures.size()) ? 1 : 0;
    }
    EXPECT_LE(broken, 2) << "no more sections than that takes";
}

TEST(Pages, LetASectionFlowThatNoPageHolds)
{
    HeadingBlock heading{QStringLiteral("Coupling"), 3};
    heading.keepsTogether = true;
    const PageFlow flow = pagesOf({heading, tableOf(100)});
    expectWellPlaced(flow);
    EXPECT_GT(flow.pages.size(), 1U);
    EXPECT_NE(find(flow.pages.front(), "top 0"), nullptr) << "no page is left for it";
}

TEST(Pages, TellOnWhichPageAHeadingStands)
{
    TableBlock contents;
    contents.columns = {{QStringLiteral("Part"), 5}, {QStringLiteral("Page"), 1}};
    CellText toTurnTo = pageOf(7);
    contents.rows = {{{said("The last part")}, {toTurnTo}}, {{said("Nowhere")}, {pageOf(8)}}};
    HeadingBlock last{QStringLiteral("The last part"), 2};
    last.place = 7;
    const PageFlow flow = pagesOf({contents, tableOf(60), last});
    ASSERT_GT(flow.pages.size(), 2U);
    int told = 0;
    for (const PageText& text : flow.pages.front().texts) {
        if (text.pageOf == 0)
            continue;
        ++told;
        EXPECT_EQ(text.text, text.pageOf == 7 ? QString::number(flow.pages.size()) : QString{})
            << "what stands nowhere has no page";
    }
    EXPECT_EQ(told, 2);
}

TEST(Pages, HaveBoxesOfFourMillimetresToTick)
{
    TableBlock table;
    table.columns = {{QStringLiteral("To look at"), 1}};
    table.rows = {{{toTick(said("Left aileron"))}}};
    const PageFlow flow = pagesOf({table});
    ASSERT_EQ(flow.pages.front().boxes.size(), 1U);
    const QRectF box = flow.pages.front().boxes.front().where;
    EXPECT_NEAR(box.width() * 25.4 / 96, 4, 0.1);
    EXPECT_DOUBLE_EQ(box.width(), box.height());
    EXPECT_GT(find(flow.pages.front(), "Left aileron")->where.left(), box.right());
}

TEST(Pages, TakeLetterWhereInchesAreUsed)
{
    EXPECT_EQ(usualPaper(QLocale{QLocale::English, QLocale::UnitedStates}), Paper::Letter);
    EXPECT_EQ(usualPaper(QLocale{QLocale::German, QLocale::Germany}), Paper::A4);
    EXPECT_EQ(usualPaper(QLocale{QLocale::English, QLocale::UnitedKingdom}), Paper::A4);
}

namespace {

// Without the only thing that may differ.
QByteArray withoutStamp(QByteArray pdf)
{
    const auto at = pdf.indexOf("/CreationDate");
    EXPECT_GE(at, 0);
    return pdf.remove(at, pdf.indexOf('\n', at) - at);
}

} // namespace

TEST(PdfFile, HasTheSameBytesForTheSamePages)
{
    const PageFlow flow = pagesOf({tableOf(40)});
    const QByteArray once = pdfOf(flow, "Rigging record", "Rigband");
    EXPECT_TRUE(once.startsWith("%PDF-"));
    EXPECT_EQ(withoutStamp(once), withoutStamp(pdfOf(flow, "Rigging record", "Rigband")));
    EXPECT_TRUE(once.contains("/MediaBox [0 0 595")) << "A4";
    EXPECT_TRUE(pdfOf(pagesOf({}, Paper::Letter), {}, {}).contains("/MediaBox [0 0 612.0"));
}

TEST(PdfFile, LeavesWhatWasThereWhenItCannotBeWritten)
{
    const TempFolder folder;
    const PageFlow flow = pagesOf({tableOf(3)});
    const QString nowhere = QString::fromStdString(folder.file("no/such/folder.pdf"));
    EXPECT_FALSE(writePdf(nowhere, flow, {}, {}));
    const std::string taken = folder.file("taken.pdf");
    std::filesystem::create_directory(taken);
    EXPECT_FALSE(writePdf(QString::fromStdString(taken), flow, {}, {}));
    EXPECT_TRUE(std::filesystem::is_directory(taken));
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator{folder.path()}, {}), 1)
        << "nothing half written is left";

    const std::string good = folder.file("good.pdf");
    EXPECT_TRUE(writePdf(QString::fromStdString(good), flow, {}, {}));
    EXPECT_GT(std::filesystem::file_size(good), 1000U);
}
