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
    static QString airframe(const QString& registration, const QString& type)
    {
        return type.isEmpty() ? registration : tr("%1 · %2", "registration, type").arg(registration, type);
    }
    static QString pageOf(int page, int pages) { return tr("Page %1 of %2").arg(page).arg(pages); }
    static QString printed(Day day, const QString& program);
    static QString caution();
    static QString program(const QString& version) { return tr("Rigband %1").arg(version); }
    static QString written(const QString& path) { return tr("Written: %1.").arg(path); }
    static QString cannotWrite(const QString& path);
};

} // namespace rig
