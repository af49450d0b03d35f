#include "app/report/review_files.h"

#include "app/report/pdf_file.h"
#include "app/wording/review_report_words.h"
#include "core/exchange/review_tables.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

namespace rig {

namespace {

Outcome writeTable(const QString& path, const std::string& text)
{
    QSaveFile file{path};
    const auto size = static_cast<qint64>(text.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size || !file.commit())
        return Problem{ProblemKind::Unexpected, file.errorString().toStdString()};
    return Done{};
}

} // namespace

QString tablesFolderFor(const QString& pdf)
{
    const QFileInfo info{pdf};
    return info.dir().filePath(info.completeBaseName() + QLatin1String("-csv"));
}

Outcome writeReviewFiles(const QString& pdf, const AirframeFacts& facts, const AirframeReview& review,
                         const Printing& printing, QString& failed, Progress* progress)
{
    WorkInParts parts{progress, {3, 2}};
    const PageFlow flow = layoutReview(facts, review, printing, &parts);
    parts.endPart();
    return writeReviewFiles(pdf, facts, review, flow, printing.program, failed, &parts);
}

Outcome writeReviewFiles(const QString& pdf, const AirframeFacts& facts, const AirframeReview& review,
                         const PageFlow& flow, const QString& program, QString& failed, Progress* progress)
{
    failed = pdf;
    WorkInParts parts{progress, {4, 1}};
    const QByteArray pages = pdfOf(flow, ReviewReportWords::running(review.period), program, &parts);
    parts.endPart();
    const std::vector<NamedTable> tables = reviewTables(facts, review, &parts);
    if (!parts.endPart()) // from here on it is written
        return Problem{ProblemKind::Unexpected, {}};
    if (Outcome written = saveWhole(pdf, pages); !written)
        return written;
    const QString folder = tablesFolderFor(pdf);
    failed = folder;
    if (!QDir{}.mkpath(folder))
        return Problem{ProblemKind::Unexpected, {}};
    for (const NamedTable& table : tables) {
        failed = QDir{folder}.filePath(QString::fromStdString(table.name));
        if (Outcome written = writeTable(failed, table.text); !written)
            return written;
    }
    failed.clear();
    return Done{};
}

} // namespace rig
