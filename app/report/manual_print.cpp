#include "app/report/manual.h"
#include "app/report/pdf_file.h"
#include "app/wording/report_words.h"

#include <QAbstractTextDocumentLayout>
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextLayout>
#include <QTextList>

namespace rig {

namespace {

// Around the text, in 1/96 inch; the number of the page stands in the lower one.
constexpr double kSide = 72;
constexpr double kAbove = 64;
constexpr double kBelow = 80;
constexpr double kFoot = 44;

QSizeF textSizeOn(Paper paper)
{
    const QSizeF page = sizeOf(paper);
    return {page.width() - 2 * kSide, page.height() - kAbove - kBelow};
}

QString wholeManual()
{
    QString whole = manualChapter(QStringLiteral("README.md"));
    for (const ManualChapter& chapter : manualChapters())
        whole += QStringLiteral("\n\n") + manualChapter(chapter.name);
    return whole;
}

// Of its first line: where that found no room, the block itself still begins on the page before.
int pageOfBlock(const QTextDocument& document, const QTextBlock& block)
{
    const double above = document.documentLayout()->blockBoundingRect(block).top();
    const double line = block.layout()->lineCount() > 0 ? block.layout()->lineAt(0).y() : 0;
    return 1 + static_cast<int>((above + line + 1) / document.pageSize().height());
}

void beginPage(const QTextBlock& block)
{
    QTextBlockFormat format = block.blockFormat();
    format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
    QTextCursor{block}.setBlockFormat(format);
}

// A heading goes with what it heads, a picture with the words under it.
bool goesWithNext(const QTextBlock& block)
{
    const bool isPicture = !block.begin().atEnd() && block.begin().fragment().charFormat().isImageFormat();
    return block.next().isValid() && (isPicture || block.blockFormat().headingLevel() > 0);
}

// From the beginning: laid out on from a place that changed, the document would draw pages without their
// text.
void layOutAnew(QTextDocument& document)
{
    document.markContentsDirty(0, document.characterCount());
}

void breakPages(QTextDocument& document)
{
    for (QTextBlock block = document.begin().next(); block.isValid(); block = block.next())
        if (block.blockFormat().headingLevel() == 1)
            beginPage(block);
    layOutAnew(document);
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        const QTextBlock first = block;
        while (goesWithNext(block))
            block = block.next();
        if (pageOfBlock(document, first) != pageOfBlock(document, block)) {
            beginPage(first);
            layOutAnew(document);
        }
    }
}

// Behind each line of the contents, which is one chapter in their order.
void numberContents(QTextDocument& document)
{
    std::vector<int> pages;
    for (QTextBlock block = document.begin().next(); block.isValid(); block = block.next())
        if (block.blockFormat().headingLevel() == 1)
            pages.push_back(pageOfBlock(document, block));
    QTextBlock line = document.begin();
    while (line.isValid() && !line.textList())
        line = line.next();
    for (const int page : pages) {
        QTextCursor cursor{line};
        QTextBlockFormat format = line.blockFormat();
        const double right = document.pageSize().width() - 2 * document.indentWidth();
        format.setTabPositions({QTextOption::Tab{right, QTextOption::RightTab}});
        cursor.setBlockFormat(format);
        cursor.movePosition(QTextCursor::EndOfBlock);
        cursor.insertText(QStringLiteral("\t%1").arg(page));
        line = line.next();
    }
}

void paintManualPage(QPainter& painter, const QTextDocument& document, int page, Paper paper)
{
    const QSizeF text = document.pageSize();
    painter.save();
    painter.translate(kSide, kAbove - page * text.height());
    QAbstractTextDocumentLayout::PaintContext context;
    context.clip = QRectF{0, page * text.height(), text.width(), text.height()};
    painter.setClipRect(context.clip);
    document.documentLayout()->draw(&painter, context);
    painter.restore();
    painter.setFont(plainFontOf(FontSizes{}.small()));
    painter.setPen(Theme::light().color(Role::InkSoft));
    const QRectF foot{kSide, sizeOf(paper).height() - kFoot, text.width(), FontSizes{}.small() * 2};
    painter.drawText(foot, Qt::AlignRight, ReportWords::pageOf(page + 1, document.pageCount()));
}

QByteArray manualPdf(const QTextDocument& document, Paper paper, const QString& program)
{
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    preparePdf(writer, paper, document.begin().text(), program);
    QPainter painter{&writer};
    painter.scale(kPdfDotsPerUnit, kPdfDotsPerUnit);
    for (int page = 0; page < document.pageCount(); ++page) {
        if (page > 0)
            writer.newPage();
        paintManualPage(painter, document, page, paper);
    }
    painter.end();
    return bytes;
}

} // namespace

Outcome writeManual(const QString& path, Paper paper, const QString& program)
{
    QTextDocument document;
    document.setDocumentMargin(0);
    layOutManual(document, wholeManual(), {{}, textSizeOn(paper).width(), true});
    document.setPageSize(textSizeOn(paper));
    breakPages(document);
    numberContents(document);
    layOutAnew(document);
    return saveWhole(path, manualPdf(document, paper, program));
}

} // namespace rig
