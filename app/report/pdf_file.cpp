#include "app/report/pdf_file.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace rig {

namespace {

QPageSize pageSizeOf(Paper paper)
{
    switch (paper) {
    case Paper::A4:
        return QPageSize{QPageSize::A4};
    case Paper::A5:
        return QPageSize{QPageSize::A5};
    case Paper::Letter:
        break;
    }
    return QPageSize{QPageSize::Letter};
}

} // namespace

void preparePdf(QPdfWriter& writer, Paper paper, const QString& title, const QString& program)
{
    writer.setPageSize(pageSizeOf(paper));
    writer.setPageMargins(QMarginsF{});
    writer.setResolution(kPdfDotsPerInch);
    writer.setTitle(title);
    writer.setCreator(program);
}

QByteArray pdfOf(const PageFlow& flow, const QString& title, const QString& program, Progress* progress)
{
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    preparePdf(writer, flow.paper, title, program);
    writer.setPageOrientation(flow.isAcross ? QPageLayout::Landscape : QPageLayout::Portrait);
    QPainter painter{&writer};
    painter.scale(kPdfDotsPerUnit, kPdfDotsPerUnit);
    const Theme theme = Theme::light(); // paper is white
    for (std::size_t i = 0; i < flow.pages.size(); ++i) {
        if (!goesOn(progress, i, flow.pages.size()))
            return {};
        if (i > 0)
            writer.newPage();
        paint(painter, flow.pages[i], theme);
    }
    painter.end();
    return bytes;
}

Outcome writePdf(const QString& path, const PageFlow& flow, const QString& title, const QString& program)
{
    return saveWhole(path, pdfOf(flow, title, program));
}

Outcome saveWhole(const QString& path, const QByteArray& bytes)
{
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return Problem{ProblemKind::Unexpected, file.errorString().toStdString()};
    return Done{};
}

} // namespace rig
