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
    static QString keyByDate() { return tr("D", "key for by date"); }
    static QString keyByRigging() { return tr("R", "key for by rigging"); }
    static QString keyTable() { return tr("T", "key for the table of readings"); }
    static QString keyAircraft() { return tr("A", "key for all couplings together"); }
    static QString byDate() { return tr("By date (%1)").arg(keyByDate()); }
    static QString byRigging() { return tr("By rigging (%1)").arg(keyByRigging()); }
    static QString table() { return tr("Table (%1)").arg(keyTable()); }
    static QString axisGroup() { return tr("Readings in the order of"); }

    // The list at the left
    static QString lastReadings(int count) { return tr("last %1 readings").arg(count); }
    static QString noReadings() { return tr("no readings"); }
    static QString foundPartSeated() { return tr("found part-seated"); }

    // All couplings together
    static QString aircraft() { return tr("All together (%1)").arg(keyAircraft()); }
    static QString aircraftTitle(const QString& registration)
    {
        return tr("All couplings of %1").arg(registration);
    }
    static QString aircraftAbout();
    static QString aircraftEmpty();
    static QString aircraftHint();

    // What moved
    static QString moved(const QStringList& signs);
    static QString movedWithOthers();
    static QString noMovementShown();
    static QString movementNotKnown();

    // Looking back on an earlier period
    static QString lookingBack(const QString& period);
    static QString backToToday() { return tr("Back to today (Esc)"); }

    // In place of a chart
    static QString noAirframe();
    static QString noCouplings();
    static QString noReadingsOf(const QString& coupling);
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
    static QString latestTitle(const QString& verdictWord) { return tr("Latest: %1").arg(verdictWord); }
    static QString foundPartSeatedTitle() { return tr("Found part-seated"); }
    static QString noReadingsTitle() { return tr("No readings yet"); }
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
        int partSeatedAtRigging = 0;
    };
    static QString counts(const Counts& counts);
    static QString annualDue(Day day, Day today);
    static QString caution();

    // Events on the chart: what was done, and the note
    static QString event(EventKind kind, const QString& note);

    // The table
    static QString tableName(const QString& coupling) { return tr("Readings of %1").arg(coupling); }
    static QString tableHint() { return tr("Ctrl+C copies the chosen rows."); }
    static QString moment(const Moment& moment); // a short day and the time
    static QString when() { return tr("When"); }
    static QString riggingNumber() { return tr("Rigging"); }
    static QString enters() { return tr("Enters mm"); }
    static QString refuses() { return tr("Refuses mm"); }
    static QString verdict() { return tr("Verdict"); }
    static QString kind() { return tr("Kind"); }
    static QString person() { return tr("By"); }
    static QString gauge() { return tr("Gauge"); }
    static QString note() { return tr("Note"); }
    static QString noRigging() { return tr("–", "a reading outside every rigging"); }
    static QString nothingEntered() { return tr("none", "no leaf entered"); }
    static QString nothingRefused() { return tr("none", "the thickest was still loose"); }
    static QString notJudged() { return tr("not judged"); }
    static QString kindOf(SeatState state, Purpose purpose, Turn turn);
    static QString superseded(const QString& note, const QString& reason);
    static QString leftOut(const QString& note, const QString& reason);

private:
    static QString confirmedReadings(const BandSource& source);
    static QString daysOf(const BandSource& source);
};

} // namespace rig
