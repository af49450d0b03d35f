#include "app/window/demo_copy.h"

#include "core/demo/bundle.h"
#include "core/store/passing_file.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QResource>

#include <sys/types.h>
#include <unistd.h>

namespace rig {

namespace {

const QString kFolders = QStringLiteral("rigband-demo-"); // then the process's number

QString nameFor(qint64 process)
{
    return kFolders + QString::number(process) + QStringLiteral("-XXXXXX");
}

bool isMakerGone(const QString& folder)
{
    bool isNumber = false;
    const pid_t process = folder.mid(kFolders.size()).section('-', 0, 0).toInt(&isNumber);
    return isNumber && process > 0 && isGone(process);
}

} // namespace

DemoCopy::DemoCopy() : m_folder{QDir::tempPath() + '/' + nameFor(QCoreApplication::applicationPid())} {}

Result<std::unique_ptr<DemoCopy>> DemoCopy::make(demo::Language language)
{
    removeOldDemos(QDir::tempPath());
    std::unique_ptr<DemoCopy> made{new DemoCopy};
    if (!made->m_folder.isValid())
        return Problem{ProblemKind::FolderReadOnly, made->m_folder.errorString().toStdString()};
    if (const Outcome filled = made->fill(language); !filled)
        return filled.problem();
    return made;
}

Outcome DemoCopy::fill(demo::Language language) const
{
    const QByteArray bundle =
        QResource{QStringLiteral(":/demonstration/demonstration.bundle")}.uncompressedData();
    const auto slices =
        demo::unbundled({bundle.constData(), static_cast<std::size_t>(bundle.size())}, language);
    QFile copy{file()};
    if (slices.empty() || !copy.open(QIODevice::WriteOnly | QIODevice::NewOnly | QIODevice::Unbuffered))
        return Problem{ProblemKind::FolderReadOnly, copy.errorString().toStdString()};
    for (const std::string_view slice : slices)
        if (const auto size = static_cast<qint64>(slice.size()); copy.write(slice.data(), size) != size)
            return Problem{ProblemKind::DiskFull, copy.errorString().toStdString()};
    return Done{};
}

void removeOldDemos(const QString& temporary)
{
    const QDateTime yesterday = QDateTime::currentDateTime().addDays(-1);
    const auto all = QDir{temporary}.entryInfoList({kFolders + '*'}, QDir::Dirs | QDir::NoDotAndDotDot);
    for (const QFileInfo& one : all)
        if (!one.isSymLink() && one.ownerId() == ::getuid() && one.lastModified() < yesterday &&
            isMakerGone(one.fileName()))
            QDir{one.filePath()}.removeRecursively();
}

} // namespace rig
