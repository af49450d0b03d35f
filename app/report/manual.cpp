#include "app/report/manual.h"

#include "app/wording/language.h"

#include <QFile>
#include <QRegularExpression>

namespace rig {

namespace {

const QString kContents = QStringLiteral("README.md");

} // namespace

QString manualFolder()
{
    const QString english = QStringLiteral(":/manual/manual/");
    const QString own = english + spokenLanguage() + '/';
    return QFile::exists(own + kContents) ? own : english;
}

QString manualChapter(const QString& name)
{
    QFile file{manualFolder() + name};
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

std::vector<ManualChapter> manualChapters()
{
    static const QRegularExpression line{QStringLiteral(R"(^- \[(.+)\]\((.+\.md)\)$)"),
                                         QRegularExpression::MultilineOption};
    std::vector<ManualChapter> chapters;
    auto matches = line.globalMatch(manualChapter(kContents));
    while (matches.hasNext()) {
        const auto match = matches.next();
        chapters.push_back({match.captured(2), match.captured(1)});
    }
    return chapters;
}

QString manualFileName()
{
    return QStringLiteral("rigband-manual.pdf");
}

} // namespace rig
