#include "app/wording/file_menu_words.h"

namespace rig {

QString FileMenuWords::recent() { return tr("Opened last"); }

QString FileMenuWords::recentRow(int number, const QString& file, const QString& folder)
{
    const auto shown = [](QString text) { return text.replace(QLatin1Char('&'), QLatin1String{"&&"}); };
    return tr("&%1  %2 in %3", "number, file, its folder")
        .arg(QString::number(number), shown(file), shown(folder));
}

QString FileMenuWords::saveCopy() { return tr("Save a copy…"); }
QString FileMenuWords::showFolder() { return tr("Show the folder"); }
QString FileMenuWords::language() { return tr("Language"); }

QString FileMenuWords::about() { return tr("About Rigband…"); }

QString FileMenuWords::openOneFirst() { return tr("Open a file first."); }

QString FileMenuWords::copySaved(const QString& copy, const QString& file)
{
    return tr("%1 now holds all that is saved in %2 at this moment. %2 stays open: what you enter from now "
              "on "
              "is only there.")
        .arg(copy, file);
}

QString FileMenuWords::folderIsAt(const QString& folder)
{
    return tr("No program here shows folders. The file lies in %1.").arg(folder);
}

QString FileMenuWords::leaveTitle() { return tr("Something is half done"); }
QString FileMenuWords::languageTitle() { return tr("Another language"); }
QString FileMenuWords::changeLanguageAllTheSame() { return tr("Change the language all the same"); }
QString FileMenuWords::leaveAllTheSame() { return tr("Leave it all the same"); }

QString FileMenuWords::aboutText(const QString& version, int method, const QString& qt)
{
    return QStringList{
        tr("Rigband %1. Bands and verdicts are worked out by method version %2.").arg(version).arg(method),
        tr("A band is a coupling’s own past, never a limit. A gap inside it is one sign only: the look, the "
           "pull, "
           "the second person and the control check stand beside it, and none replaces another. Rigband is "
           "not an "
           "aircraft record, an inspection or a release. Manuals, directives, local rules and persons "
           "entitled to "
           "decide prevail."),
        tr("Rigband is free software under the Apache License, version 2.0. It comes without any warranty."),
        tr("It works with Qt %1 (GNU Lesser General Public License, version 3), SQLite (public domain) and "
           "Boost "
           "(Boost Software License, version 1.0). Its letters are those of Inter (SIL Open Font License, "
           "version "
           "1.1).")
            .arg(qt)}
        .join(QStringLiteral("\n\n"));
}

} // namespace rig
