#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <string>

namespace rig {

// One airframe as rigband-file tells of it.
struct AirframeTally
{
    QString registration;
    int couplings = 0;
    int riggings = 0;
    int readings = 0;
};

// What the program rigband-file says.
class FileWords
{
    Q_DECLARE_TR_FUNCTIONS(FileWords)

public:
    static QString usage();
    static QString version(const QString& version);
    static QString unknownVerb(const QString& verb);
    static QString unknownOption(const QString& option);
    static QString optionWithoutValue();
    static QString optionTwice(const QString& option);

    static QString isAFile(const QString& file);
    static QString madeNewer(const QString& file);
    static QString readOnly();
    static QString people(int people, int gauges);
    static QString cannotStand(const QString& what); // a row as the file names it
    static QString toBeDecided(int conflicts);
    static QString saidTwice(int conflicts); // in one file
    static QString noAirframes();
    static QString airframe(const AirframeTally& tally);
    static QString dangling(int facts);
    static QString isAFileWithFindings(const QString& file);
    static QString isOlder();
    // Rows of a table, as docs/store.md names it.
    static QString unreadable(const QString& table, std::int64_t rows, const QString& first);
    static QString lostReference(const QString& table, std::int64_t rows, const QString& named);
    static QString notTogether(const QString& table, std::int64_t rows);
    static QString lastId(const QString& table);
    static QString futureId(const QString& table, std::int64_t rows);
    static QString noPicture(int photos);
    static QString otherSize(int photos);
    static QString moreThanPicture(int photos);
    static QString copyOfLaterDay(const QString& copy);
    // One sentence for each reason.
    static QStringList notCarried(const std::string& table, std::int64_t unread, bool endUnread,
                                  std::int64_t refused, std::int64_t lost);

    static QString exported(const QString& folder, const QStringList& files);
    static QString tablesOfChanged();
    // Beside a print of a file that another program changed: how many facts, and where that stands.
    static QString foundBeforePrint(std::int64_t facts, const QString& whereItStands);
    static QString standsInReport();
    static QString standsInRecord();
    static QString standsInCheck();
    static QStringList nameless(); // what stands for names, what was left out, what may still tell
    static QString notThere(const QString& file);
    static QString noFile(const QString& path);
    static QString noFolderFor(const QString& file);
    static QString noFolder(const QString& path);
    static QString nothingToSalvage(const QString& damaged);
    static QString cannotMakeFolder(const QString& folder);
    static QString cannotWrite(const QString& file);
    static QString cannotRead(const QString& file);
    static QString tableTooLarge(const QString& file);
    static QString made(const QString& file);
    static QString cannotBeMade(const QString& file);
    static QString notKept(const QString& file);

    static QString noDay(const QString& day);
    static QString futureDay(const QString& day);
    static QString noSuchAirframe(const QString& file, const QString& registration);
    static QString noRecord(const QString& registration);
    // None began at that time on the day; `times` are those of the day.
    static QString noRecordAt(const QString& registration, const QString& time, const QStringList& times);
    static QString recordsOfDay(const QStringList& times, const QString& printed);
    static QString noTime(const QString& time);
    static QString noSuchGauge(const QString& file, const QString& gauge);
    static QString nothingToRig(const QString& registration);
    static QString nothingOnCard(const QString& registration);
    static QString daysReversed(const QString& from, const QString& to);
    static QString reportWritten(const QString& pdf, const QString& folder);
    static QString nothingRead(const QString& registration);

    static QString salvaged(int facts, const QString& into);
    static QString demoWritten(const QString& file);
};

} // namespace rig
