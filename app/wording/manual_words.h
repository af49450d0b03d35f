#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Around the manual, which is itself no sentence of the program: docs/manual.
class ManualWords
{
    Q_DECLARE_TR_FUNCTIONS(ManualWords)

public:
    static QString menu();
    static QString heading();
    static QString chapters();
    static QString keys();
    static QString save();
    static QString saveHint();
    static QString paper();
    static QString pdfFiles();
};

} // namespace rig
