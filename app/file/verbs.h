#pragma once

#include "core/result.h"

#include <QString>
#include <QStringList>

namespace rig::file {

// How the program ends.
inline constexpr int kDone = 0;
inline constexpr int kCouldNot = 1;
inline constexpr int kBadUse = 2; // or bad rows in a table
inline constexpr int kFound = 3;  // done, and something was found that should not be so

void say(const QString& sentence);      // to standard output
void complain(const QString& sentence); // to standard error
// Complain, and give the exit status for it.
int couldNot(const Problem& problem, const QString& path);
int couldNot(const QString& sentence);

// Each does one thing, says what it did or what went wrong, and returns how the program ends. Paths as the
// user gave them.
int check(const QString& file);
int writeDemo(const QString& into);
enum class NamesOut { AsTyped, Nameless }; // letters and numbers, and no free text: core/exchange/nameless.h
int exportTables(const QString& file, const QString& folder, NamesOut names);
int salvage(const QString& damaged, const QString& into);

// Two files that are to be joined into a new one.
struct JoinWanted
{
    QString ours;
    QString theirs;
    QString out;
    bool asFound = false; // also where a file does not stand as it was saved
};
int joinFiles(const JoinWanted& wanted);

// One airframe of a file, to be handed on in a new one.
struct PartWanted
{
    QString file;
    QString airframe; // its registration
    QString out;
};
int handOnPart(const PartWanted& wanted);

// A whole file that is to go out as one document.
struct ExportedDocument
{
    QString file;
    QString document;
    bool asFound = false; // also where it does not stand as it was saved
};
int exportDocument(const ExportedDocument& wanted);

// A document of which a new file is to be made.
struct ImportedDocument
{
    QString file;
    QString document;
    bool asFound = false;
};
int importDocument(const ImportedDocument& wanted);

// A person whose name is to be replaced, in a new file.
struct PersonRenamed
{
    QString file;
    QString person; // as the file names them now
    QString as;
    QString by; // who does it, as the file names them
    QString out;
};
int renamePerson(const PersonRenamed& wanted);

// Tables that are to come into a file; empty where there is none.
struct TablesWanted
{
    QString file;
    QString couplings;
    QString people;
    QString gauges;
    QString events;
    QString jointPlays;
    QString readings;
};
int importTables(const TablesWanted& wanted);

// One rigging record of an airframe, to be printed.
struct RecordWanted
{
    QString file;
    QString airframe; // its registration
    QString day;      // yyyy-mm-dd; empty: the last record that was closed
    QString time;     // hh:mm that it began at; empty: the last that began on the day
    QString out;
    bool letter = false; // A4 otherwise
};
int printRecord(const RecordWanted& wanted);

// The engineer's report of an airframe, with its tables beside it.
struct ReportWanted
{
    QString file;
    QString airframe; // its registration
    QString out;
    QString day;  // the last day; empty: today
    QString from; // the first day; empty: the last annual before
    bool letter = false;
    bool withAppendix = true;
    QStringList prints = {}; // ends on earlier prints, as they were typed
};
int printReport(const ReportWanted& wanted);

// A sheet to fill in by hand at a rigging without the program.
struct SheetWanted
{
    QString file;
    QString airframe; // its registration
    QString gauge;    // its name; empty: the one it was last read with
    QString out;
    bool letter = false; // A4 otherwise
    bool a5 = false;
};
int printSheet(const SheetWanted& wanted);

// A card of an airframe, to fold.
struct CardWanted
{
    QString file;
    QString airframe; // its registration
    QString out;
};
int printCard(const CardWanted& wanted);

// The manual of the program.
struct ManualWanted
{
    QString out;
    bool letter = false; // A4 otherwise
};
int printManual(const ManualWanted& wanted);

} // namespace rig::file
