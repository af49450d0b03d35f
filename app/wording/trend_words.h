#pragma once

#include "core/airframe/coupling.h"
#include "core/clock.h"
#include "core/measure/gap_interval.h"
#include "core/views/trend_axis.h"

#include <QCoreApplication>
#include <QDate>
#include <QString>

#include <string>
#include <vector>

namespace rig {

struct TrendEvent;
struct TrendPlace;
struct TrendReading;
struct TrendSeries;

// What stands on a trend, and what is said of it and of one of its readings.
class TrendWords
{
    Q_DECLARE_TR_FUNCTIONS(TrendWords)

public:
    static QString millimetreTick(double mm);
    static QString riggingTick(long long rigging);
    static QString dayTick(QDate day);        // 3 Apr 2025
    static QString shortDayTick(QDate day);   // 3 Apr
    static QString monthTick(QDate day);      // Apr 2025
    static QString shortMonthTick(QDate day); // Apr
    static QString yearTick(QDate day);       // 2025

    static QString unit();
    static QString riggingAxis();
    static QString events();
    static QString firstBand();
    static QString annual(const Moment& due);
    static QString annualLater(const Moment& due); // beyond the right end
    static QString fitting(FittingKind kind, const std::string& reason);
    static QString onset(const TrendPlace& onset, TrendAxis axis);   // beside a small flag
    static QString change(const TrendPlace& change, TrendAxis axis); // beside a dashed line
    static QString either(const TrendPlace& either, TrendAxis axis);
    static QString event(const TrendEvent& event);
    static QString saidBy(const QString& what, const QString& person);
    static QString eventWithoutDate(const TrendEvent& event);
    static QString gap(const GapInterval& interval); // without the unit, where the axis has it
    // The readings that stand apart; either range may be empty, not both.
    static QString apart(const QString& partSeated, const QString& notSecured);
    static QString apartShort(const QString& partSeated, const QString& notSecured);
    static QString nothingYet();
    static QString nothingYetShort();
    static QString noGap();

    // One reading in a sentence or two, for the cursor and for those who hear the chart.
    static QString reading(const TrendReading& reading);
    // Its verdict, or what was found where it is no locked one.
    static QString seenAs(const TrendReading& reading);
    static QString summary(const TrendSeries& series);
    static QString smallSummary(const TrendSeries& series, std::size_t shown);
    static QString offTheSmallScale(const std::vector<GapInterval>& gaps); // newest first
    static QString periodBegins(const Moment& day);
    static QString periodEnds(const Moment& day);
    static QString keysHint();

private:
    static QString readingPlace(const TrendReading& reading);
    static QString verdictCounts(const TrendSeries& series);
    static QString movement(const TrendSeries& series); // empty when nothing is known to move
    static QString period(const TrendSeries& series);   // empty when it holds all readings
};

} // namespace rig
