#pragma once

#include "core/clock.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <vector>

namespace rig {

// Days, lists and names inside a sentence or a file's name.
class SentenceParts
{
    Q_DECLARE_TR_FUNCTIONS(SentenceParts)

public:
    static QString capital(const QString& sentence);
    static QString list(const QStringList& parts);  // "A, B and C"
    static QString inFileName(const QString& name); // "QX-42"; what may not stand in one becomes a hyphen
    // A cell of a table as it is read aloud; struck: it counts for nothing any more.
    static QString cell(const QString& heading, const QString& text, bool isStruck);
    static QString days(const std::vector<Day>& days); // rising: "11 and 13 July 2025"
};

} // namespace rig
