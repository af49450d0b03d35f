#include "app/report/record_report.h"

#include "app/report/pdf_file.h"
#include "app/report/record_parts.h"
#include "app/wording/chain_words.h"
#include "app/wording/conflict_words.h"
#include "app/wording/connected_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/record_words.h"
#include "app/wording/report_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/sign_off_words.h"
#include "core/day_entry.h"

#include <algorithm>

namespace rig {

namespace {

QString airframeOf(const RecordSummary& summary)
{
    return ReportWords::airframe(printedName(summary.airframe.registration),
                                 printedName(summary.airframe.type));
}

QString titleOf(const RecordSummary& summary)
{
    return RecordWords::title(Formats{}.day(summary.record.begins.localDay()));
}

void addConnected(record::Sheet& sheet)
{
    const std::vector<SummaryConnected>& all = sheet.summary().connected;
    if (!all.empty() && std::ranges::none_of(all, &SummaryConnected::isSaid))
        return sheet.addText(ConnectedWords::nobodySaidAtAll());
    for (const SummaryConnected& one : all) {
        QStringList names;
        for (const std::string& person : one.persons)
            names << printedName(person);
        sheet.addText(!one.isSaid       ? ConnectedWords::nobodySaid(one.side)
                      : names.isEmpty() ? ConnectedWords::whoIsNotKnown(one.side)
                                        : ConnectedWords::connectedBy(one.side, names));
    }
}

void addIndependence(record::Sheet& sheet)
{
    const QString second = printedName(sheet.summary().second);
    const Independence& found = sheet.summary().secondName;
    for (const Side side : found.connected)
        sheet.add(ParagraphBlock{ConnectedWords::nobodyIndependent(side, second), Role::Ink, true});
    if (sheet.summary().didNoSecondLook)
        sheet.add(ParagraphBlock{ConnectedWords::didNoSecondLook(second), Role::Ink, true});
    if (found.connected.empty() && !found.unknown.empty())
        sheet.addText(ConnectedWords::notKnownWhetherIndependent(second));
}

void addStandings(record::Sheet& sheet)
{
    QStringList said;
    for (const SummaryStanding& one : sheet.summary().standings)
        said << SignOffWords::named(printedName(one.person), one.standing);
    if (!said.isEmpty())
        sheet.addText(SignOffWords::onThatDay(said), Role::InkSoft);
}

void addTop(record::Sheet& sheet)
{
    sheet.add(HeadingBlock{titleOf(sheet.summary()), 1});
    sheet.add(ParagraphBlock{
        RecordWords::airframe(airframeOf(sheet.summary()), printedName(sheet.summary().airframe.serial)),
        Role::Ink, true});
    sheet.addText(RecordWords::begun(sheet.formats().whenBegun(sheet.summary().record),
                                     printedName(sheet.summary().leader)));
    if (sheet.summary().record.isFromPaper())
        sheet.addText(PaperWords::enteredLater(printedName(sheet.summary().enteredBy),
                                               sheet.formats().moment(sheet.summary().record.stamp.when)));
    if (sheet.summary().record.origin == RecordOrigin::Recheck)
        sheet.addText(RecordWords::recheck());
    const StoodBefore& stood = sheet.summary().stood;
    if (stood.isAfterLayoff())
        sheet.addText(RiggedWords::afterLayoff(stood.weeks(), sheet.formats().day(*stood.since)));
    if (const auto& celsius = sheet.summary().record.celsius)
        sheet.addText(RecordWords::temperature(*celsius));
    for (const NoteLeft& note : sheet.summary().notesMet)
        sheet.addText(RecordWords::noteMet(
            RiggedWords::noteLeft(sheet.formats().day(note.when.localDay()), printedName(note.first),
                                  printedName(note.second), textOf(note.text)),
            printedName(note.readBy), note.readAt ? sheet.formats().moment(*note.readAt) : QString{}));
    addConnected(sheet);
    addStandings(sheet);
    if (const auto& close = sheet.summary().close) {
        sheet.addText(RecordWords::closed(
            RiggedWords::closing(close->closing), sheet.formats().moment(close->stamp.when),
            printedName(sheet.summary().first), printedName(sheet.summary().second)));
        addIndependence(sheet);
        if (!close->note.empty())
            sheet.addText(RecordWords::note(textOf(close->note)));
    } else {
        sheet.addText(RecordWords::notClosed());
    }
    sheet.addText(RecordWords::noLog(), Role::InkSoft);
}

void addNotDone(record::Sheet& sheet)
{
    sheet.add(HeadingBlock{RecordWords::notDone(), 2});
    if (sheet.summary().notDone.empty())
        sheet.addText(RecordWords::nothingNotDone());
    for (const QString& line : RiggedWords::openLines(sheet.summary().notDone, printedName))
        sheet.addText(RecordWords::item(line));
}

void addTicks(record::Sheet& sheet)
{
    std::vector<TickKind> kinds;
    if (sheet.summary().isFirstOfSeason)
        kinds.assign(seasonTicks().begin(), seasonTicks().end());
    kinds.push_back(TickKind::ToolsOut);
    kinds.push_back(TickKind::HatchesOn);
    sheet.add(
        HeadingBlock{sheet.summary().isFirstOfSeason ? RecordWords::lists() : RecordWords::counts(), 2});
    TableBlock table;
    table.columns = {{RecordWords::tried(), 5}, {RecordWords::stated(), 2}, {RecordWords::when(), 1.2}};
    for (const TickKind kind : kinds) {
        Cell who;
        Cell when;
        for (const SummaryTick& tick : sheet.summary().ticks) {
            if (tick.kind != kind)
                continue;
            who.push_back(said(printedName(tick.person)));
            when.push_back(said(sheet.whenOf(tick.when)));
        }
        if (who.empty())
            who.push_back(softly(RecordWords::notStated()));
        table.rows.push_back({{said(RecordWords::tick(kind))}, who, when});
    }
    sheet.add(std::move(table));
}

} // namespace

std::vector<Block> recordBlocks(const RecordSummary& summary)
{
    record::Sheet sheet{summary};
    addTop(sheet);
    addNotDone(sheet);
    record::addCouplings(sheet);
    record::addControlCheck(sheet);
    addTicks(sheet);
    sheet.addQuestions([](const Question& question) { return !question.coupling && !question.surface; },
                       RecordWords::otherQuestions());
    return sheet.take();
}

std::vector<Block> printedRecordBlocks(const RecordSummary& summary, const std::optional<FileEvidence>& file)
{
    std::vector<Block> blocks = recordBlocks(summary);
    if (file && file->hasFaults())
        blocks.insert(blocks.begin() + 1,
                      ParagraphBlock{ChainWords::faults(file->chain->faults), Role::Ink, true});
    if (file)
        for (const ToldConflict& told : file->conflicts)
            if (concerns(told, summary.record.id))
                blocks.insert(blocks.begin() + 1,
                              ParagraphBlock{ConflictWords::inThisRecord(told), Role::Ink, true});
    blocks.push_back(HeadingBlock{RecordWords::byHand(), 2});
    blocks.push_back(SignatureBlock{{RecordWords::leaderSigns(printedName(summary.first)),
                                     RecordWords::secondSigns(printedName(summary.second))}});
    blocks.push_back(BlankBlock{RecordWords::findings(), 190});
    return blocks;
}

PageFlow layoutRecord(const RecordSummary& summary, const Printing& printing)
{
    const PageFrame frame{airframeOf(summary), titleOf(summary), ReportWords::caution(),
                          printedLine(printing)};
    return layoutPages(frame, printedRecordBlocks(summary, printing.file), printing.paper);
}

Outcome writeRecord(const QString& path, const RecordSummary& summary, const Printing& printing)
{
    return writePdf(path, layoutRecord(summary, printing), titleOf(summary), printing.program);
}

QString recordFileName(const RecordSummary& summary)
{
    return RecordWords::fileName(printedName(summary.airframe.registration),
                                 QString::fromStdString(dayText(summary.record.begins.localDay())));
}

} // namespace rig
