#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Buttons and titles of the windows that ask something.
class PromptWords
{
    Q_DECLARE_TR_FUNCTIONS(PromptWords)

public:
    static QString noticeTitle() { return tr("Rigband"); }
    static QString understood() { return tr("Close"); }
    static QString leaveAsItIs() { return tr("Leave as it is"); }
    static QString takeText() { return tr("Enter this"); }
    static QString newFileTitle() { return tr("Choose a name for the file"); }
    static QString saveFileTitle() { return tr("Where to write it"); }
    static QString openFileTitle() { return tr("Choose a file"); }
};

} // namespace rig
