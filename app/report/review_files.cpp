#include "app/report/review_files.h"

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
                         const Printing& printing, QString& failed)
{
    failed = pdf;
    if (Outcome written = writeReview(pdf, facts, review, printing); !written)
        return written;
    const QString folder = tablesFolderFor(pdf);
    failed = folder;
    if (!QDir{}.mkpath(folder))
        return Problem{ProblemKind::Unexpected, {}};
    for (const NamedTable& table : reviewTables(facts, review)) {
        failed = QDir{folder}.filePath(QString::fromStdString(table.name));
        if (Outcome written = writeTable(failed, table.text); !written)
            return written;
    }
    failed.clear();
    return Done{};
}

} // namespace rig
