#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/report/sheet_report.h"
#include "app/wording/file_words.h"
#include "app/wording/report_words.h"
#include "core/store/airframe_facts.h"

#include <QCoreApplication>

#include <algorithm>

namespace rig::file {

namespace {

Paper paperOf(const SheetWanted& wanted)
{
    if (wanted.a5)
        return Paper::A5;
    return wanted.letter ? Paper::Letter : Paper::A4;
}

// Empty where there is no such gauge in use.
std::optional<GaugeId> gaugeNamed(const AirframeFacts& facts, const QString& name)
{
    const std::vector<Gauge> inUse = facts.gaugesInUse();
    const auto found = std::ranges::find(inUse, name.toStdString(), &Gauge::name);
    return found == inUse.end() ? std::nullopt : std::optional{found->id};
}

} // namespace

int printSheet(const SheetWanted& wanted)
{
    if (!isFree(wanted.out))
        return kCouldNot;
    TerminalProgress progress;
    OpenFile open;
    auto facts = factsNamed(open, wanted.file, wanted.airframe, progress);
    if (!facts)
        return kCouldNot;
    const KnownAirframe known{*std::move(facts)};
    const auto gauge =
        wanted.gauge.isEmpty() ? gaugeUsedLast(known.facts()) : gaugeNamed(known.facts(), wanted.gauge);
    if (!gauge && !wanted.gauge.isEmpty())
        return couldNot(progress, FileWords::noSuchGauge(wanted.file, wanted.gauge));
    const Day today = open.clock.now().localDay();
    const auto people = personStandingsOn(*open.records, known.facts(), today);
    if (!people)
        return couldNot(progress, people.problem(), wanted.file);
    const PaperSheet sheet = paperSheetOf(known, gauge, today, people.value());
    if (sheet.couplings.empty())
        return couldNot(progress, FileWords::nothingToRig(wanted.airframe));
    if (isGivenUp(progress))
        return kCouldNot;
    const Printing printing{paperOf(wanted), today,
                            ReportWords::program(QCoreApplication::applicationVersion())};
    if (!writeSheet(wanted.out, sheet, printing))
        return couldNot(ReportWords::cannotWrite(wanted.out));
    say(ReportWords::written(wanted.out));
    return endAfterPrint(open, FileWords::standsInCheck());
}

} // namespace rig::file
