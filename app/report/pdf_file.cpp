#include "app/report/pdf_file.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace rig {

namespace {

constexpr int kDotsPerInch = 1200;
constexpr double kDotsPerUnit = kDotsPerInch / 96.0;

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

QByteArray pdfOf(const PageFlow& flow, const QString& title, const QString& program)
{
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer{&buffer};
    writer.setPageSize(pageSizeOf(flow.paper));
    writer.setPageOrientation(flow.isAcross ? QPageLayout::Landscape : QPageLayout::Portrait);
    writer.setPageMargins(QMarginsF{});
    writer.setResolution(kDotsPerInch);
    writer.setTitle(title);
    writer.setCreator(program);
    QPainter painter{&writer};
    painter.scale(kDotsPerUnit, kDotsPerUnit);
    const Theme theme = Theme::light(); // paper is white
    for (std::size_t i = 0; i < flow.pages.size(); ++i) {
        if (i > 0)
            writer.newPage();
        paint(painter, flow.pages[i], theme);
    }
    painter.end();
    return bytes;
}

Outcome writePdf(const QString& path, const PageFlow& flow, const QString& title, const QString& program)
{
    const QByteArray bytes = pdfOf(flow, title, program);
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return Problem{ProblemKind::Unexpected, file.errorString().toStdString()};
    return Done{};
}

} // namespace rig
