#include "app/report/review_report.h"

#include "app/blocks/cells.h"
#include "app/report/pdf_file.h"
#include "app/report/review_parts.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"
#include "core/day_entry.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace rig {

namespace engineer {

QString nameOf(const Source& source, const std::optional<PersonId>& person)
{
    return person ? textOf(source.facts.nameOf(*person)) : QString{};
}

QString nameOf(const Source& source, const std::optional<GaugeId>& gauge)
{
    const Gauge* known = gauge ? source.facts.gauge(*gauge) : nullptr;
    return known ? textOf(known->name) : QString{};
}

QString nameOf(const Source& source, const std::optional<CouplingId>& coupling)
{
    const auto& all = source.facts.couplings;
    const auto found = coupling ? std::ranges::find(all, *coupling, &Coupling::id) : all.end();
    return found == all.end() ? QString{} : textOf(found->name);
}

QString noteOf(const Gauge& gauge)
{
    return textOf(gauge.note).trimmed();
}

QStringList noteOf(const Reading& reading)
{
    const QString note = textOf(reading.ownNote()).trimmed();
    return note.isEmpty() ? QStringList{} : QStringList{ReviewReportWords::noted(note)};
}

QStringList notesOf(const Source& source, const Reading& reading)
{
    QStringList notes = noteOf(reading);
    const Gauge* gauge = reading.gauge ? source.facts.gauge(*reading.gauge) : nullptr;
    if (gauge && !noteOf(*gauge).isEmpty())
        notes << ReviewReportWords::notedOf(source.words.gauge(*gauge), noteOf(*gauge));
    return notes;
}

void addPart(Writing& out, const QString& text, Part part, bool keepsTogether)
{
    HeadingBlock heading{text};
    heading.place = placeOf(part);
    heading.keepsTogether = keepsTogether;
    out.blocks.emplace_back(std::move(heading));
}

void addText(Writing& out, const QString& text, Role role)
{
    if (!text.isEmpty())
        out.blocks.emplace_back(ParagraphBlock{text, role, false, false});
}

void addIntro(Writing& out, const QString& text)
{
    out.blocks.emplace_back(ParagraphBlock{text, Role::InkSoft, false, true});
}

void addSentences(Writing& out, const QStringList& sentences)
{
    for (const QString& sentence : sentences)
        addText(out, sentence);
}

void addPartOf(Writing& out, const QString& text, Part part, TableBlock table, const QString& intro)
{
    if (table.rows.empty()) {
        out.nothing << text;
        return;
    }
    addPart(out, text, part);
    if (!intro.isEmpty())
        addIntro(out, intro);
    out.blocks.emplace_back(std::move(table));
}

namespace {

bool saysSomething(const Cell& cell)
{
    const QString none = Formats{}.count(0);
    return std::ranges::any_of(cell, [&](const CellText& one) {
        return one.mark || one.picture || one.pageOf != 0 || (!one.text.isEmpty() && one.text != none);
    });
}

// The parts of the report with their pages, two beside each other.
TableBlock contentsOf(const Writing& writing)
{
    std::vector<std::vector<Cell>> parts;
    for (const Block& block : writing.blocks)
        if (const auto* heading = std::get_if<HeadingBlock>(&block);
            heading && heading->place > placeOf(Part::First) && heading->rank == 2)
            parts.push_back({{said(heading->text)}, {pageOf(heading->place)}});
    TableBlock table;
    table.columns = {{{}, 6}, {{}, 0.8}, {{}, 6}, {{}, 0.8}};
    table.isTight = true;
    const std::size_t half = (parts.size() + 1) / 2;
    for (std::size_t i = 0; i < half; ++i) {
        std::vector<Cell> row = parts[i];
        row.resize(table.columns.size());
        if (half + i < parts.size())
            std::ranges::copy(parts[half + i], row.begin() + 2);
        table.rows.push_back(std::move(row));
    }
    return table;
}

// What stands behind the first page.
void addParts(const Source& source, Writing& out, Progress* progress)
{
    using Add = void (*)(const Source&, Writing&);
    constexpr std::array<Add, 10> kTold{addOpenQuestions, addConflicts,      addOutside, addCouplings,
                                        addShared,        addMeasurers,      addGauges,  addFittings,
                                        addEvents,        addClosedQuestions};
    constexpr std::array<Add, 3> kAppendix{addListed, addAnswers, addDecided};
    constexpr std::array<Add, 3> kLast{addRest, addHowWorkedOut, addFile};
    std::vector<Add> all{kTold.begin(), kTold.end()};
    if (source.withAppendix)
        all.insert(all.end(), kAppendix.begin(), kAppendix.end());
    all.insert(all.end(), kLast.begin(), kLast.end());
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!goesOn(progress, i, all.size()))
            return;
        all[i](source, out);
    }
    if (!out.nothing.isEmpty())
        addText(out, ReviewReportWords::nothingAbout(out.nothing));
    addByHand(out);
}

} // namespace

QStringList dropEmptyColumns(TableBlock& table, std::size_t kept)
{
    QStringList dropped;
    for (std::size_t i = table.columns.size(); i-- > kept;) {
        if (std::ranges::any_of(table.rows, [i](const auto& row) { return saysSomething(row[i]); }))
            continue;
        const auto at = static_cast<std::ptrdiff_t>(i);
        if (!table.columns[i].head.isEmpty())
            dropped.prepend(table.columns[i].head);
        table.columns.erase(table.columns.begin() + at);
        for (std::vector<Cell>& row : table.rows)
            row.erase(row.begin() + at);
    }
    return dropped;
}

} // namespace engineer

namespace {

engineer::Source sourceOf(const AirframeFacts& facts, const AirframeReview& review, bool withAppendix,
                          bool withPlan, const std::optional<FileEvidence>& file)
{
    return {facts,
            review,
            ReviewWords{facts},
            RiggingNumbers{facts},
            judgedReadings(facts, review.period.to),
            Formats{},
            withAppendix,
            withPlan,
            file};
}

std::vector<Block> blocksOf(const engineer::Source& source, Progress* progress)
{
    engineer::Writing out;
    engineer::addTop(source, out);
    engineer::addFirst(source, out);
    engineer::Writing behind;
    engineer::addParts(source, behind, progress);
    HeadingBlock contents{ReviewReportWords::contents(), 3};
    contents.keepsTogether = true;
    out.blocks.emplace_back(std::move(contents));
    out.blocks.emplace_back(engineer::contentsOf(behind));
    std::ranges::move(behind.blocks, std::back_inserter(out.blocks));
    return std::move(out.blocks);
}

} // namespace

std::vector<Block> reviewBlocks(const AirframeFacts& facts, const AirframeReview& review, bool withAppendix,
                                bool withPlan, const std::optional<FileEvidence>& file)
{
    return blocksOf(sourceOf(facts, review, withAppendix, withPlan, file), nullptr);
}

PageFlow layoutReview(const AirframeFacts& facts, const AirframeReview& review, const Printing& printing,
                      Progress* progress)
{
    const PageFrame frame{
        ReportWords::airframe(printedName(review.airframe.registration), printedName(review.airframe.type)),
        ReviewReportWords::running(review.period), ReportWords::caution(), printedLine(printing)};
    WorkInParts parts{progress, {2, 1, 3, 1, 3}};
    engineer::Source source = sourceOf(facts, review, printing.withAppendix, false, printing.file);
    const auto laid = [&](bool withPlan) {
        source.withPlan = withPlan;
        parts.endPart();
        const std::vector<Block> blocks = blocksOf(source, &parts);
        parts.endPart();
        return isStopped(&parts) ? PageFlow{} : layoutPages(frame, blocks, printing.paper, &parts);
    };
    PageFlow plain = laid(false);
    PageFlow withPlan = laid(true);
    if (!parts.endPart())
        return {};
    return withPlan.pages.size() <= plain.pages.size() ? withPlan : plain;
}

QString reviewFileName(const Airframe& airframe, const ReviewPeriod& period)
{
    return ReviewReportWords::fileName(printedName(airframe.registration), textOf(dayText(period.to)));
}

} // namespace rig
