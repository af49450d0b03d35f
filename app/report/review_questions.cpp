#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/record_words.h"
#include "app/wording/review_report_words.h"

#include <set>

namespace rig::engineer {

namespace {

Cell askedCell(const Source& source, const Question& question)
{
    Cell cell{said(question.onPaper ? source.formats.day(question.day())
                                    : source.formats.moment(question.stamp.when))};
    if (const QString by = nameOf(source, question.stamp.by); !by.isEmpty())
        cell.push_back(softly(by));
    return cell;
}

void addReading(const Source& source, const Reading& reading, Cell& cell)
{
    cell.push_back(softly(
        ReviewReportWords::with(source.formats.interval(reading.interval), nameOf(source, reading.gauge))));
    for (const QString& note : notesOf(source, reading))
        cell.push_back(softly(note));
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
            addReading(source, one.reading, cell);
    return cell;
}

} // namespace

bool isOpenAtEnd(const Source& source, const QuestionStory& story)
{
    return story.isOpenAfter(source.review.period.to);
}

void addOpenQuestions(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::question(), 4},
                     {ReviewReportWords::asked(), 2},
                     {ReviewReportWords::foundByHand(), 3},
                     {ReviewReportWords::doneByHand(), 3}};
    for (const QuestionStory& story : source.review.questions)
        if (isOpenAtEnd(source, story))
            table.rows.push_back({questionCell(source, story), askedCell(source, story.question), {}, {}});
    for (std::vector<Cell>& row : table.rows)
        row.front().front().box = true;
    addPartOf(out, ReviewReportWords::openQuestions(), Part::OpenQuestions, std::move(table),
              ReviewReportWords::openAtTheEnd(source.review.period.to));
}

void addClosedQuestions(const Source& source, Writing& out)
{
    std::set<QuestionId> told; // with the reading they are about
    for (const CouplingReview& coupling : source.review.couplings)
        for (const OutsideStory& story : coupling.outside)
            if (story.question)
                told.insert(story.question->question.id);
    TableBlock table;
    table.columns = {{ReviewReportWords::question(), 4},
                     {ReviewReportWords::asked(), 2},
                     {ReviewReportWords::foundAndDone(), 5}};
    for (const QuestionStory& story : source.review.questions)
        if (!isOpenAtEnd(source, story) && !told.contains(story.question.id))
            table.rows.push_back({questionCell(source, story),
                                  askedCell(source, story.question),
                                  {said(source.words.resolution(story))}});
    addPartOf(out, ReviewReportWords::closedQuestions(), Part::ClosedQuestions, std::move(table));
}

} // namespace rig::engineer
