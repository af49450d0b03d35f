#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Rows of the menu File that are about the file as a file, and what is said of the program itself.
class FileMenuWords
{
    Q_DECLARE_TR_FUNCTIONS(FileMenuWords)

public:
    static QString recent();
    static QString recentRow(int number, const QString& file, const QString& folder);
    static QString saveCopy();
    static QString showFolder();
    static QString language();
    static QString about();

    static QString openOneFirst();
    static QString copySaved(const QString& copy, const QString& file);
    static QString folderIsAt(const QString& folder); // where no program shows it
    static QString leaveTitle();
    static QString leaveAllTheSame();
    static QString languageTitle();
    static QString changeLanguageAllTheSame();

    // Versions of the program, of its method and of Qt.
    static QString aboutText(const QString& version, int method, const QString& qt);
};

} // namespace rig
