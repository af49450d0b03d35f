#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/review_report_words.h"
#include "app/wording/surface_words.h"
#include "core/review/answers_review.h"

namespace rig::engineer {

namespace {

CellText count(const Source& source, int many)
{
    return many == 0 ? softly(source.formats.count(many)) : said(source.formats.count(many));
}

void addLooks(const Source& source, const AnswersReview& answers, Blocks& blocks)
{
    addHeading(blocks, ReviewReportWords::looks());
    addIntro(blocks, ReviewReportWords::looksIntro());
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 2.6},   {ReviewReportWords::atRiggings(), 1.2},
                     {ReviewReportWords::wholeFirst(), 1.4}, {ReviewReportWords::wholeSecond(), 1.4},
                     {ReviewReportWords::answeredFelt(), 1}, {ReviewReportWords::answeredCannotSee(), 1.2},
                     {ReviewReportWords::answeredNo(), 0.8}, {ReviewReportWords::interrupted(), 1.2}};
    for (const LookReview& one : answers.looks)
        table.rows.push_back({{said(textOf(one.coupling.name))},
                              {count(source, one.riggings)},
                              {count(source, one.wholeFirst)},
                              {count(source, one.wholeSecond)},
                              {count(source, one.felt)},
                              {count(source, one.cannotSee)},
                              {count(source, one.no)},
                              {count(source, one.interrupted)}});
    addTable(blocks, std::move(table), ReviewReportWords::noLooks());
}

Cell measuredCell(const Source& source, const SurfaceReview& one)
{
    Cell cell;
    for (const auto& [kind, measure] : one.measured)
        cell.push_back(
            said(ReviewReportWords::measured(kind, SurfaceWords::figure(measure.value, measure.unit),
                                             source.formats.day(measure.stamp.when.localDay()))));
    if (cell.empty())
        cell.push_back(softly(ReviewReportWords::notMeasured()));
    return cell;
}

void addSurfaces(const Source& source, const AnswersReview& answers, Blocks& blocks)
{
    addHeading(blocks, ReviewReportWords::controlChecks());
    addIntro(blocks, ReviewReportWords::controlIntro());
    TableBlock table;
    table.columns = {{ReviewReportWords::surface(), 2.6},
                     {ReviewReportWords::atRiggings(), 1.2},
                     {ReviewReportWords::triedWhole(), 1.4},
                     {ReviewReportWords::answeredNo(), 0.8},
                     {ReviewReportWords::lastMeasured(), 5}};
    for (const SurfaceReview& one : answers.surfaces)
        table.rows.push_back({{said(textOf(one.surface.name))},
                              {count(source, one.riggings)},
                              {count(source, one.whole)},
                              {count(source, one.no)},
                              measuredCell(source, one)});
    addTable(blocks, std::move(table), ReviewReportWords::noSurfaces());
}

} // namespace

void addAnswers(const Source& source, Blocks& blocks)
{
    if (source.facts.contents.empty() && !source.facts.riggingRecords.empty())
        return; // nobody has read them: that is not the same as nothing answered
    const AnswersReview answers = answersOf(source.facts, source.review.period);
    addLooks(source, answers, blocks);
    addSurfaces(source, answers, blocks);
}

} // namespace rig::engineer
