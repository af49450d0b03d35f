#include "app/window/recent_files.h"

#include <QFileInfo>
#include <QSettings>

namespace rig {

namespace {

constexpr qsizetype kMostRecent = 6;
constexpr QLatin1String kRecentKey{"recentFiles"};

QStringList without(const QString& path)
{
    QStringList files = recentFiles();
    files.removeAll(path);
    return files;
}

} // namespace

QStringList recentFiles()
{
    return QSettings{}.value(kRecentKey).toStringList().mid(0, kMostRecent);
}

void rememberRecent(const QString& path)
{
    const QString whole = QFileInfo{path}.absoluteFilePath();
    QSettings{}.setValue(kRecentKey, (QStringList{whole} + without(whole)).mid(0, kMostRecent));
}

void forgetRecent(const QString& path)
{
    QSettings{}.setValue(kRecentKey, without(path));
}

} // namespace rig
