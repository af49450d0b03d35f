#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/report/record_report.h"
#include "app/wording/file_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"
#include "core/airframe/saved_before.h"
#include "core/day_entry.h"
#include "core/exchange/field_text.h"
#include "core/store/airframe_facts.h"
#include "core/store/connection.h"

#include <QCoreApplication>
#include <QTime>

#include <algorithm>
#include <vector>

namespace rig::file {

namespace {

// In the order they began.
std::vector<const RiggingRecord*> recordsOn(const AirframeFacts& facts, Day day)
{
    std::vector<const RiggingRecord*> records;
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::ImportedTable && record.begins.localDay() == day)
            records.push_back(&record);
    std::ranges::sort(records, [](const RiggingRecord* one, const RiggingRecord* other) {
        return one->begins != other->begins ? one->begins < other->begins : savedBefore(*one, *other);
    });
    return records;
}

QString timeOf(const RiggingRecord& record)
{
    constexpr qsizetype kHourAndMinute = 5;
    return QString::fromStdString(timeText(record.begins)).left(kHourAndMinute);
}

// What is to be printed, and what is told of others of the same day.
struct RecordFound
{
    std::optional<RecordId> record;
    QString told;
};

RecordFound recordOn(const AirframeFacts& facts, Day day, const RecordWanted& wanted)
{
    QStringList times;
    const RiggingRecord* chosen = nullptr;
    for (const RiggingRecord* record : recordsOn(facts, day)) {
        times << timeOf(*record);
        if (wanted.time.isEmpty() || times.last() == wanted.time)
            chosen = record;
    }
    if (!chosen)
        return {{},
                times.isEmpty() ? FileWords::noRecord(wanted.airframe)
                                : FileWords::noRecordAt(wanted.airframe, wanted.time, times)};
    const bool isAlone = times.size() == 1;
    return {chosen->id, isAlone ? QString{} : FileWords::recordsOfDay(times, timeOf(*chosen))};
}

Printing printingOf(const RecordWanted& wanted, const Clock& clock, FileEvidence evidence)
{
    return {wanted.letter ? Paper::Letter : Paper::A4, clock.now().localDay(),
            ReportWords::program(QCoreApplication::applicationVersion()), true, std::move(evidence)};
}

int writeRecord(const OpenFile& open, const RecordWanted& wanted, const AirframeFacts& facts, RecordId record,
                TerminalProgress& progress)
{
    const Watched watched{open.file->connection(), &progress};
    const auto content = open.records->content(record);
    if (!content)
        return couldNot(progress, content.problem(), wanted.file);
    const auto people = personStandingsOn(*open.records, facts, content.value().record.begins.localDay());
    if (!people)
        return couldNot(progress, people.problem(), wanted.file);
    const RecordSummary summary = summaryOf(facts, content.value(), people.value());
    auto evidence = open.file->evidenceWith(open.chain, {});
    if (!evidence)
        return couldNot(progress, evidence.problem(), wanted.file);
    if (isGivenUp(progress))
        return kCouldNot;
    if (!writeRecord(wanted.out, summary, printingOf(wanted, open.clock, std::move(evidence).value())))
        return couldNot(ReportWords::cannotWrite(wanted.out));
    say(ReportWords::written(wanted.out));
    return endAfterPrint(open, FileWords::standsInRecord());
}

} // namespace

int printRecord(const RecordWanted& wanted)
{
    const auto day = parseDay(wanted.day.toStdString());
    if (!wanted.day.isEmpty() && !day) {
        complain(FileWords::noDay(wanted.day));
        return kBadUse;
    }
    if (day && *day > SystemClock{}.now().localDay()) {
        complain(FileWords::futureDay(wanted.day));
        return kBadUse;
    }
    if (!wanted.time.isEmpty() && !QTime::fromString(wanted.time, "HH:mm").isValid()) {
        complain(FileWords::noTime(wanted.time));
        return kBadUse;
    }
    if (!isFree(wanted.out))
        return kCouldNot;
    TerminalProgress progress;
    OpenFile open;
    const auto facts = factsNamed(open, wanted.file, wanted.airframe, progress);
    if (!facts)
        return kCouldNot;
    const RecordFound found =
        day ? recordOn(*facts, *day, wanted)
            : RecordFound{lastClosedRecord(*facts), FileWords::noRecord(wanted.airframe)};
    if (!found.record)
        return couldNot(progress, found.told);
    const int ended = writeRecord(open, wanted, *facts, *found.record, progress);
    if (ended == kDone && day && !found.told.isEmpty())
        say(found.told);
    return ended;
}

} // namespace rig::file
