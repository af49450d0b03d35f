#pragma once

#include "core/baseline/band.h"
#include "core/clock.h"
#include "core/measure/gap_interval.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>

namespace rig {

struct Reading;
struct RiggingRecord;

// Numbers, days and times as the reader writes them. Nothing is rounded away: a gap shows every micrometre it
// has.
class Formats
{
    Q_DECLARE_TR_FUNCTIONS(Formats)

public:
    explicit Formats(const QLocale& locale = QLocale{}) : m_locale{locale} {}

    QString gap(Gap gap) const;                          // 0.60, 0.605
    QString millimetres(double mm) const;                // an edge or a mean, two decimals, never below 0.00
    QString interval(const GapInterval& interval) const; // 0.60–0.65 mm, above 1.00 mm, below 0.05 mm
    QString band(const BandEdges& edges) const;          // 0.55–0.71 mm
    QString number(double value, int decimals) const { return m_locale.toString(value, 'f', decimals); }
    QString count(int value) const { return m_locale.toString(value); }
    QString day(Day day) const;                 // with a four-digit year
    QString time(const Moment& moment) const;   // in the local time that held
    QString moment(const Moment& moment) const; // day and time
    // The day alone where a table did not tell when.
    QString whenRead(const Reading& reading) const;
    QString whenBegun(const RiggingRecord& record) const;
    QString oneIn(double share) const; // "1 in 400"; "more than 1 in 2"

private:
    QLocale m_locale;
};

} // namespace rig
