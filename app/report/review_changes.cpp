#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/coupling_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/trends_page_words.h"
#include "core/baseline/baseline.h"

namespace rig::engineer {

namespace {

CellText bandCell(const Source& source, const std::optional<Band>& band)
{
    return band ? said(source.formats.band(band->inner)) : softly(ReviewReportWords::bandNotYet());
}

void addDoubted(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 3},
                     {ReviewReportWords::withoutDoubted(), 3},
                     {ReviewReportWords::withThem(), 3}};
    for (const CouplingReview& one : source.review.couplings)
        if (one.bandWithDoubted)
            table.rows.push_back({{said(printedName(one.coupling.name))},
                                  {bandCell(source, one.band)},
                                  {bandCell(source, one.bandWithDoubted)}});
    if (table.rows.empty())
        return;
    out.blocks.emplace_back(HeadingBlock{ReviewReportWords::doubtedBands(), 3});
    out.blocks.emplace_back(std::move(table));
}

// Checks in a row that found the same stand in one line.
Cell checksOf(const Source& source, const GaugeReview& gauge)
{
    Cell cell;
    for (const QString& sentence : source.words.gaugeStory(gauge).mid(1))
        cell.push_back(said(sentence));
    const std::vector<GaugeCheck>& checks = gauge.checks;
    for (std::size_t i = 0; checks.size() > 1 && i < checks.size();) {
        const GaugeCheck& first = checks[i];
        std::vector<Day> days;
        for (; i < checks.size() && checks[i].how == first.how && checks[i].found == first.found; ++i)
            days.push_back(checks[i].day);
        cell.push_back(softly(ReviewReportWords::checked(days, textOf(first.how), textOf(first.found))));
    }
    return cell;
}

} // namespace

void addGauges(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::gauge(), 2.2},
                     {ReviewReportWords::readings(), 1},
                     {ReviewReportWords::checks(), 7}};
    for (const GaugeReview& gauge : source.review.gauges) {
        if (gauge.readings == 0 && gauge.checks.empty() && !gauge.isQuarantined)
            continue;
        Cell name{said(source.words.gauge(gauge.gauge))};
        if (const QString note = noteOf(gauge.gauge); !note.isEmpty())
            name.push_back(softly(note));
        table.rows.push_back({name, {said(source.formats.count(gauge.readings))}, checksOf(source, gauge)});
    }
    addPartOf(out, ReviewReportWords::gaugeChecks(), Part::Gauges, std::move(table));
    addDoubted(source, out);
}

void addFittings(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::began(), 1.7},
                     {ReviewReportWords::coupling(), 2.4},
                     {ReviewReportWords::reason(), 3.6},
                     {ReviewReportWords::bandBefore(), 1.8},
                     {ReviewReportWords::bandAfter(), 1.8}};
    for (const FittingChange& one : source.review.fittings)
        table.rows.push_back({{said(source.formats.day(one.fitting.begins))},
                              {said(nameOf(source, one.coupling))},
                              {said(CouplingWords::whyFitted(one.fitting))},
                              {one.before ? bandCell(source, one.bandBefore) : CellText{}},
                              {bandCell(source, one.band)}});
    dropEmptyColumns(table);
    addPartOf(out, ReviewReportWords::fittings(), Part::Fittings, std::move(table));
}

void addEvents(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::when(), 1.9},
                     {ReviewReportWords::coupling(), 2.4},
                     {ReviewReportWords::eventHead(), 5},
                     {ReviewReportWords::by(), 1.6}};
    for (const Event& event : source.review.events)
        table.rows.push_back(
            {{said(source.formats.day(event.day))},
             {event.coupling ? said(nameOf(source, event.coupling)) : softly(ReviewReportWords::whole())},
             {said(TrendsPageWords::event(event.kind, textOf(event.note), textOf(event.done)))},
             {said(nameOf(source, event.stamp.by))}});
    dropEmptyColumns(table);
    addPartOf(out, ReviewReportWords::events(), Part::Events, std::move(table));
}

void addRest(const Source& source, Writing& out)
{
    addPart(out, ReviewReportWords::rest(), Part::Rest);
    const QStringList sentences = ReviewWords::riggings(source.review) + ReviewWords::tooFew(source.review);
    addText(out, sentences.join(QLatin1Char(' ')));
    QStringList outOfUse;
    for (const Coupling& coupling : source.facts.couplings)
        if (!coupling.inUse)
            outOfUse << printedName(coupling.name);
    if (!outOfUse.isEmpty())
        addText(out, ReviewReportWords::outOfUse(outOfUse));
    addText(out, source.withAppendix ? ReviewReportWords::tables() : ReviewReportWords::withoutAppendix());
}

void addHowWorkedOut(const Source& source, Writing& out)
{
    addPart(out, ReviewReportWords::howWorkedOut(), Part::HowWorkedOut);
    addSentences(out, ReviewReportWords::methodLines().split(QLatin1Char('\n')));
    const QStringList sentences = QStringList{ReviewReportWords::methodVersion(kMethodVersion)} +
                                  ReviewReportWords::falseAlarms(source.review);
    addText(out, sentences.join(QLatin1Char(' ')));
}

void addByHand(Writing& out)
{
    addPart(out, ReviewReportWords::byHand(), Part::ByHand);
    out.blocks.emplace_back(BlankBlock{ReviewReportWords::findings(), 200});
    out.blocks.emplace_back(
        SignatureBlock{{ReviewReportWords::signature(), ReviewReportWords::placeAndDay()}});
}

} // namespace rig::engineer
