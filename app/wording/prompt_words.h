#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Buttons and titles of the windows that ask something.
class PromptWords
{
    Q_DECLARE_TR_FUNCTIONS(PromptWords)

public:
    static QString noticeTitle();
    static QString understood();
    static QString leaveAsItIs();
    static QString takeText();
    static QString newFileTitle();
    static QString saveFileTitle();
    static QString openFileTitle();
};

} // namespace rig
