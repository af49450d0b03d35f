#include "app/blocks/cells.h"
#include "app/pictures/marks.h"
#include "app/report/review_parts.h"
#include "app/wording/record_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/verdict_words.h"

namespace rig::engineer {

namespace {

bool isOpenAtEnd(const Source& source, const QuestionStory& story)
{
    return story.isOpen() || story.resolution->stamp.when.localDay() > source.review.period.to;
}

Cell askedCell(const Source& source, const Question& question)
{
    Cell cell{said(source.formats.moment(question.stamp.when))};
    if (const QString by = nameOf(source, question.stamp.by); !by.isEmpty())
        cell.push_back(softly(by));
    return cell;
}

Cell questionCell(const Source& source, const QuestionStory& story)
{
    Cell cell{said(source.words.question(story))};
    if (story.question.check)
        cell.push_back(softly(RecordWords::check(*story.question.check)));
    if (story.question.surfaceCheck)
        cell.push_back(softly(RecordWords::check(*story.question.surfaceCheck)));
    for (const JudgedReading& one : source.judged)
        if (story.question.reading == one.reading.id)
            cell.push_back(softly(ReviewReportWords::with(source.formats.interval(one.reading.interval),
                                                          nameOf(source, one.reading.gauge))));
    return cell;
}

// The mark of what the reading is, the interval, and how it lies.
Cell readingCell(const Source& source, const OutsideStory& story)
{
    CellText interval = strongly(source.formats.interval(story.reading.interval));
    interval.struck = story.corrected || story.struck;
    Cell cell{interval};
    if (story.reading.state == SeatState::PartSeated || story.judgement.verdict != Verdict::Outside) {
        cell.push_back(strongly(RecordWords::partSeated()));
        return cell;
    }
    CellText verdict = said(VerdictWords::word(story.judgement.verdict), textRoleOf(story.judgement.verdict));
    verdict.mark = saysOf(story.judgement.verdict);
    cell.push_back(verdict);
    return cell;
}

} // namespace

void addOpenQuestions(const Source& source, Blocks& blocks)
{
    addHeading(blocks, ReviewReportWords::openQuestions());
    TableBlock table;
    table.columns = {{ReviewReportWords::question(), 5}, {ReviewReportWords::asked(), 3}};
    for (const QuestionStory& story : source.review.questions)
        if (isOpenAtEnd(source, story))
            table.rows.push_back({questionCell(source, story), askedCell(source, story.question)});
    if (!table.rows.empty())
        addIntro(blocks, ReviewReportWords::openAtTheEnd(source.review.period.to));
    addTable(blocks, std::move(table), ReviewWords::noQuestion());
}

void addOutside(const Source& source, Blocks& blocks)
{
    addHeading(blocks, ReviewReportWords::outside());
    TableBlock table;
    table.columns = {{ReviewReportWords::when(), 1.7},
                     {ReviewReportWords::coupling(), 1.9},
                     {ReviewReportWords::reading(), 2.2},
                     {ReviewReportWords::story(), 5.2}};
    for (const CouplingReview& coupling : source.review.couplings)
        for (const OutsideStory& story : coupling.outside)
            table.rows.push_back(
                {{said(source.formats.day(story.reading.when.localDay())),
                  softly(source.formats.time(story.reading.when))},
                 {said(textOf(coupling.coupling.name)), softly(ReviewReportWords::rigging(story.rigging))},
                 readingCell(source, story),
                 {said(source.words.outside(story).join(QLatin1Char(' ')))}});
    if (!table.rows.empty())
        addIntro(blocks, ReviewReportWords::outsideIntro());
    addTable(blocks, std::move(table), ReviewWords::noneOutside());
}

void addClosedQuestions(const Source& source, Blocks& blocks)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::question(), 4},
                     {ReviewReportWords::asked(), 2},
                     {ReviewReportWords::foundAndDone(), 5}};
    for (const QuestionStory& story : source.review.questions)
        if (!isOpenAtEnd(source, story))
            table.rows.push_back({questionCell(source, story),
                                  askedCell(source, story.question),
                                  {said(source.words.resolution(story))}});
    if (table.rows.empty())
        return;
    addHeading(blocks, ReviewReportWords::closedQuestions());
    blocks.emplace_back(std::move(table));
}

} // namespace rig::engineer
