#pragma once

#include "core/baseline/band.h"
#include "core/clock.h"
#include "core/rigging/event.h"
#include "core/rigging/reading.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <optional>

namespace rig {

// Every sentence of the Trends page around the picture. It tells what was read; it diagnoses nothing.
class TrendsPageWords
{
    Q_DECLARE_TR_FUNCTIONS(TrendsPageWords)

public:
    // One letter each, as shown on the buttons.
    static QString keyByDate();
    static QString keyByRigging();
    static QString keyTable();
    static QString keyAircraft();
    static QString byDate();
    static QString byRigging();
    static QString table();

    // The list at the left
    static QString lastReadings(int count);

    // All couplings together
    static QString aircraft();
    static QString aircraftTitle(const QString& registration);
    static QString aircraftAbout();
    static QString aircraftEmpty();
    static QString aircraftHint();

    // What moved
    static QString moved(const QStringList& signs);
    static QString noMovementShown(int riggings);
    static QString movementNotKnown();

    // Looking back on an earlier period
    static QString lookingBack(const QString& period);
    static QString backToToday();
    static QString backToTodayOnEscape();
    static QString backToTheAnnual();

    // In place of a chart
    static QString noAirframe();
    static QString noCouplings();
    static QString noReadingsOf(const QString& coupling);
    static QString noGapOf(const QString& coupling);
    static QString kindWithoutGap(const QString& kind);
    static QString noGapSentence();
    static QString hoverHint();

    // Where the band comes from
    struct BandSource
    {
        int confirmedReadings = 0;
        std::optional<Day> firstDay; // of those readings
        std::optional<Day> lastDay;
        bool isFrozen = false;
    };
    static QString band(const Band& band, const BandSource& source);
    static QString noBandYet(int confirmedReadings, int needed);
    static QString noBandFromOpenReadings();
    static QString fitting(int number, Day begins, const QString& reason);
    static QString noFitting();

    // What can be said now
    static QString latestTitle(const QString& verdictWord);
    static QString noReadingsTitle();
    static QString noReadingsSentence();
    struct Latest
    {
        std::optional<int> rigging;
        Day day{};
        GapInterval interval;
        int among = 1; // readings of that rigging, of which this is the gravest
        QString person;
        QString gauge;
    };
    static QString latest(const Latest& latest);
    struct Counts
    {
        int judged = 0;
        int nearEdge = 0;
        int outside = 0;
        int cannotTell = 0;
        int noBand = 0;
        int outsideSetAside = 0;
        int outsideTogether = 0; // of those outside
        int partSeatedAtRigging = 0;
        int notSecuredAtRigging = 0;
    };
    static QString counts(const Counts& counts);
    static QString annualDue(Day day, Day today);
    static QString caution();

    // Events on the chart: what was done, and the note
    static QString event(EventKind kind, const QString& note, const QString& done);

    // The table
    static QString tableName(const QString& coupling);
    static QString tableHint();
    static QString whenRead(const Reading& reading); // the day alone where a table did not tell when
    static QString when();
    static QString riggingNumber();
    static QString enters();
    static QString refuses();
    static QString verdict();
    static QString kind();
    static QString person();
    static QString gauge();
    static QString note();
    static QString noRigging();
    static QString nothingEntered();
    static QString nothingRefused();
    static QString notJudged();
    static QString kindOf(SeatState state, Purpose purpose, Turn turn);
    static QString superseded(const QString& note, const QString& reason);
    static QString struck(const QString& note, const QString& reason);
    static QString leftOut(const QString& note, const QString& reason);

private:
    static QString confirmedReadings(const BandSource& source);
    static QString daysOf(const BandSource& source);
};

} // namespace rig
