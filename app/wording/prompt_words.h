#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Buttons and titles of the windows that ask something.
class PromptWords
{
    Q_DECLARE_TR_FUNCTIONS(PromptWords)

public:
    static QString noticeTitle();
    static QString understood();
    static QString leaveAsItIs();
    static QString offered(const QString& answer, int number); // with its key
    static QString offeredAnd(const QString& answer, const QString& typed);
    // Why the figure of a reading is no good, so that another takes its place: what usually spoils one.
    static QStringList spoiledBy();
    // Why it is no reading of this coupling and this person at all. No other figure puts that right.
    static QStringList noReadingHere();
    static QString takeText();
    static QString sayItInWords();
    static QString reasonIsNotEntered(); // asked before the window closes above it
    static QString newFileTitle();
    static QString saveFileTitle();
    static QString openFileTitle();
};

} // namespace rig
