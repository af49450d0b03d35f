#pragma once

#include "core/clock.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>

#include <optional>

namespace rig {

// Reads a day that somebody typed: year-month-day, 2026-05-02, or the figures in the order and with the
// separator of `locale`: 2.5.2026 in German, 5/2/2026 in the United States. The year has four figures. Empty
// for anything else, and for a day that no calendar has.
std::optional<Day> readDay(const QString& typed, const QLocale& locale = QLocale{});

// What is said around a field for a day.
class DayWords
{
    Q_DECLARE_TR_FUNCTIONS(DayWords)

public:
    // A day in each form that is read. Of the last day of May: no reader takes it for another.
    static QString example();
    static QString hint();
    static QString hintOrEmpty();
    static QString missing();
    static QString unread(const QString& typed);
};

} // namespace rig
