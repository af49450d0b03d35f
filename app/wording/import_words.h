#pragma once

#include "core/exchange/imported.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What came in from tables, or why they were not taken, line by line.
class ImportWords
{
    Q_DECLARE_TR_FUNCTIONS(ImportWords)

public:
    // What is wrong in which line, with the text that stands there, and what to do.
    static QString sentence(const BadRow& row);
    static QString inTable(const QString& table, const BadRow& row);

    static QString moreOfTheSame(int rows);
    static QString nothingImported(int problems);
    static QString passedOver(int rows);
    static QString notSecured(int rows); // likewise
    static QString imported(int readings, int records);
    // Days that the file has a rigging of already, as many of the riggings that came.
    static QString sameDay(int riggings, const std::set<Day>& days);
    static QString added(const Imported& imported); // all but readings
    static QString thereAlready(int rows);
    static QString outside(int readings);
    static QString nothingNew();
};

} // namespace rig
