#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/report/record_report.h"
#include "app/wording/file_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"
#include "core/day_entry.h"
#include "core/store/airframe_facts.h"
#include "core/store/connection.h"

#include <QCoreApplication>

#include <algorithm>

namespace rig::file {

namespace {

// The last begun on that day.
std::optional<RecordId> recordOn(const AirframeFacts& facts, Day day)
{
    std::optional<RecordId> last;
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::ImportedTable && record.begins.localDay() == day)
            last = std::max(last.value_or(record.id), record.id);
    return last;
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
    auto evidence = open.file->evidence({}, &progress);
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
    if (!isFree(wanted.out))
        return kCouldNot;
    TerminalProgress progress;
    OpenFile open;
    const auto facts = factsNamed(open, wanted.file, wanted.airframe, progress);
    if (!facts)
        return kCouldNot;
    const auto record = day ? recordOn(*facts, *day) : lastClosedRecord(*facts);
    if (!record)
        return couldNot(progress, FileWords::noRecord(wanted.airframe));
    return writeRecord(open, wanted, *facts, *record, progress);
}

} // namespace rig::file
