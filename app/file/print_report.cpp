#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/report/review_files.h"
#include "app/wording/chain_words.h"
#include "app/wording/file_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"
#include "core/day_entry.h"
#include "core/store/airframe_facts.h"
#include "core/store/connection.h"

#include <QCoreApplication>

#include <algorithm>

namespace rig::file {

namespace {

// The annual that a past day was before: the first one after it.
std::optional<Day> annualAfter(const AirframeFacts& facts, Day last)
{
    std::optional<Day> next;
    for (const Event& event : facts.events)
        if (event.kind == EventKind::Annual && !event.coupling && event.day > last)
            next = std::min(next.value_or(event.day), event.day);
    return next ? next : facts.airframe.annualDue;
}

// The last annual to the last day, or from the day that was given.
ReviewPeriod periodOf(const AirframeFacts& facts, Day last, Day today, const std::optional<Day>& from)
{
    ReviewPeriod period = reviewPeriods(facts, last).front();
    period.isCurrent = last >= today;
    period.annual = annualAfter(facts, last);
    if (from && *from != period.from) {
        period.from = *from;
        period.sinceAnnual = false;
        period.kind = PeriodKind::Days;
    }
    return period;
}

// How long the parts of a report take against each other: the chain and reading, its records, working out,
// laying out and writing.
std::vector<std::size_t> partsOfReport()
{
    return {6, 2, 2, 8};
}

int write(const OpenFile& open, const ReportWanted& wanted, const AirframeFacts& facts,
          const ReviewPeriod& period, Day today, FileEvidence evidence, TerminalProgress& progress,
          WorkInParts& parts)
{
    const AirframeReview review = airframeReviewOf(facts, period);
    parts.endPart();
    const Printing printing{wanted.letter ? Paper::Letter : Paper::A4, today,
                            ReportWords::program(QCoreApplication::applicationVersion()), wanted.withAppendix,
                            std::move(evidence)};
    QString failed;
    if (!writeReviewFiles(wanted.out, facts, review, printing, failed, &parts))
        return couldNot(progress, ReviewReportWords::cannotWrite(wanted.out, failed));
    progress.clear();
    say(FileWords::reportWritten(wanted.out, tablesFolderFor(wanted.out)));
    if (review.counts.readings == 0)
        say(FileWords::nothingRead(wanted.airframe));
    return endAfterPrint(open, FileWords::standsInReport());
}

int report(const ReportWanted& wanted, const std::optional<Day>& from, const std::optional<Day>& to,
           const std::vector<std::string>& prints)
{
    TerminalProgress progress;
    WorkInParts parts{&progress, partsOfReport()};
    OpenFile open;
    auto facts = factsNamed(open, wanted.file, wanted.airframe, progress, &parts);
    if (!facts)
        return kCouldNot;
    const Watched watched{open.file->connection(), &progress};
    parts.endPart();
    if (const Outcome read = readContents(*open.records, *facts, &parts); !read)
        return couldNot(progress, read.problem(), wanted.file);
    parts.endPart();
    const Day today = open.clock.now().localDay();
    auto evidence = open.file->evidenceWith(open.chain, prints);
    if (!evidence)
        return couldNot(progress, evidence.problem(), wanted.file);
    return write(open, wanted, *facts, periodOf(*facts, to.value_or(today), today, from), today,
                 std::move(evidence).value(), progress, parts);
}

} // namespace

int printReport(const ReportWanted& wanted)
{
    const auto from = parseDay(wanted.from.toStdString());
    const auto to = parseDay(wanted.day.toStdString());
    for (const auto& [text, day] : {std::pair{wanted.from, from}, std::pair{wanted.day, to}})
        if (!text.isEmpty() && !day) {
            complain(FileWords::noDay(text));
            return kBadUse;
        }
    const Day today = SystemClock{}.now().localDay();
    for (const auto& [text, day] : {std::pair{wanted.from, from}, std::pair{wanted.day, to}})
        if (day && *day > today) {
            complain(FileWords::futureDay(text));
            return kBadUse;
        }
    if (from && from > to.value_or(today)) {
        complain(FileWords::daysReversed(wanted.from, wanted.day));
        return kBadUse;
    }
    for (const QString& path : {wanted.out, tablesFolderFor(wanted.out)})
        if (!isFree(path))
            return kCouldNot;
    std::vector<std::string> prints;
    for (const QString& typed : wanted.prints) {
        const auto form = readShortForm(typed.toStdString());
        if (!form) {
            complain(ChainWords::noShortForm(typed));
            return kBadUse;
        }
        prints.push_back(*form);
    }
    return report(wanted, from, to, prints);
}

} // namespace rig::file
