#pragma once

#include "core/clock.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What every printed page says.
class ReportWords
{
    Q_DECLARE_TR_FUNCTIONS(ReportWords)

public:
    static QString airframe(const QString& registration, const QString& type);
    static QString pageOf(int page, int pages);
    static QString printed(Day day, const QString& program);
    static QString printedFrom(const QString& printed, const QString& file);
    static QString caution();
    static QString program(const QString& version);
    static QString written(const QString& path);
    static QString cannotWrite(const QString& path);
};

} // namespace rig
