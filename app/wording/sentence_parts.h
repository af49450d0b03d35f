#pragma once

#include "core/clock.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <vector>

namespace rig {

// Days and lists inside a sentence.
class SentenceParts
{
    Q_DECLARE_TR_FUNCTIONS(SentenceParts)

public:
    static QString capital(const QString& sentence);
    static QString list(const QStringList& parts);     // "A, B and C"
    static QString days(const std::vector<Day>& days); // rising: "11 and 13 July 2025"
};

} // namespace rig
