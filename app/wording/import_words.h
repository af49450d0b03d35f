#pragma once

#include "core/exchange/reading_table.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Why a table of readings was not taken, line by line.
class ImportWords
{
    Q_DECLARE_TR_FUNCTIONS(ImportWords)

public:
    // What is wrong in which line, with the text that stands there, and what to do.
    static QString sentence(const BadRow& row);

    static QString nothingImported(int problems);
    static QString passedOver(int rows);
    static QString imported(int readings, int records);
};

} // namespace rig
