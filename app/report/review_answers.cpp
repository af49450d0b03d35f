#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/review_report_words.h"
#include "app/wording/surface_words.h"
#include "core/review/answers_review.h"

#include <map>

namespace rig::engineer {

namespace {

CellText count(const Source& source, int many)
{
    return many == 0 ? softly(source.formats.count(many)) : said(source.formats.count(many));
}

void addLooks(const Source& source, const AnswersReview& answers, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 2.6},   {ReviewReportWords::atRiggings(), 1.2},
                     {ReviewReportWords::wholeFirst(), 1.4}, {ReviewReportWords::wholeSecond(), 1.4},
                     {ReviewReportWords::answeredFelt(), 1}, {ReviewReportWords::answeredCannotSee(), 1.2},
                     {ReviewReportWords::answeredNo(), 0.8}, {ReviewReportWords::interrupted(), 1.2}};
    for (const LookReview& one : answers.looks)
        if (one.riggings > 0)
            table.rows.push_back({{said(printedName(one.coupling.name))},
                                  {count(source, one.riggings)},
                                  {count(source, one.wholeFirst)},
                                  {count(source, one.wholeSecond)},
                                  {count(source, one.felt)},
                                  {count(source, one.cannotSee)},
                                  {count(source, one.no)},
                                  {count(source, one.interrupted)}});
    constexpr std::size_t kWhole = 4; // columns up to those of who looked whole: none is news
    for (const QString& head : dropEmptyColumns(table, kWhole))
        out.nothing << head;
    addPartOf(out, ReviewReportWords::looks(), Part::Looks, std::move(table),
              ReviewReportWords::looksIntro());
}

// In one line, with each day once.
Cell measuredCell(const Source& source, const SurfaceReview& one)
{
    std::map<Day, QStringList> days;
    for (const auto& [kind, measure] : one.measured)
        days[measure.stamp.when.localDay()]
            << ReviewReportWords::measured(kind, SurfaceWords::figure(measure.value, measure.unit));
    Cell cell;
    for (const auto& [day, measured] : days)
        cell.push_back(said(ReviewReportWords::onDay(measured, source.formats.day(day))));
    return cell;
}

void addSurfaces(const Source& source, const AnswersReview& answers, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::surface(), 2.6},
                     {ReviewReportWords::atRiggings(), 1.2},
                     {ReviewReportWords::triedWhole(), 1.4},
                     {ReviewReportWords::answeredNo(), 0.8},
                     {ReviewReportWords::lastMeasured(), 7.5}};
    for (const SurfaceReview& one : answers.surfaces)
        if (one.riggings > 0 || !one.measured.empty())
            table.rows.push_back({{said(printedName(one.surface.name))},
                                  {count(source, one.riggings)},
                                  {count(source, one.whole)},
                                  {count(source, one.no)},
                                  measuredCell(source, one)});
    constexpr std::size_t kWhole = 3; // likewise
    dropEmptyColumns(table, kWhole);
    addPartOf(out, ReviewReportWords::controlChecks(), Part::ControlChecks, std::move(table),
              ReviewReportWords::controlIntro());
}

} // namespace

void addAnswers(const Source& source, Writing& out)
{
    if (!source.isAnsweredKnown())
        return; // that is not the same as nothing answered
    const AnswersReview answers = answersOf(source.facts, source.review.period);
    addLooks(source, answers, out);
    addSurfaces(source, answers, out);
}

} // namespace rig::engineer
