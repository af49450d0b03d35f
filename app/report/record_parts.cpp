#include "app/report/record_parts.h"

#include "app/wording/paper_words.h"
#include "app/wording/question_words.h"
#include "app/wording/record_words.h"
#include "app/wording/rigged_words.h"
#include "core/rigging/time_known.h"

namespace rig::record {

QString Sheet::whenOf(const Moment& when) const
{
    return when.localDay() == m_summary.record.begins.localDay() ? m_formats.time(when)
                                                                 : m_formats.moment(when);
}

QString Sheet::whenRead(const Reading& reading) const
{
    return isTimeKnown(reading) ? whenOf(reading.when) : m_formats.day(reading.when.localDay());
}

// No hour stands on a paper for it.
QString Sheet::whenAsked(const Question& question) const
{
    return question.onPaper ? m_formats.day(question.day()) : whenOf(question.stamp.when);
}

Cell Sheet::outcomeCell(const SummaryQuestion& one) const
{
    if (!one.resolution) {
        CellText open = said(RecordWords::stillOpen());
        open.strong = true;
        return {open};
    }
    if (one.resolution->answered) {
        const QString answer =
            RecordWords::answer(RiggedWords::answer(*one.resolution->answered), printedName(one.resolvedBy),
                                whenOf(one.resolution->when()));
        return {said(one.copiedBy.empty() ? answer : PaperWords::copied(answer, printedName(one.copiedBy)))};
    }
    Cell cell{said(RecordWords::found(textOf(one.resolution->found))),
              said(RecordWords::done(textOf(one.resolution->done))),
              softly(RecordWords::decided(printedName(one.resolvedBy), whenOf(one.resolution->when())))};
    if (one.isOwnDecision)
        cell.push_back(said(QuestionWords::ownFinding(printedName(one.resolvedBy))));
    return cell;
}

Cell Sheet::questionCell(const SummaryQuestion& one) const
{
    Cell cell{said(RecordWords::question(one.question))};
    if (one.question.check)
        cell.push_back(softly(RecordWords::check(*one.question.check)));
    if (one.question.surfaceCheck)
        cell.push_back(softly(RecordWords::check(*one.question.surfaceCheck)));
    if (!one.question.coupling && !one.question.surface && !one.place.empty())
        cell.push_back(softly(textOf(one.place)));
    return cell;
}

void Sheet::addQuestions(const std::function<bool(const Question&)>& isWanted, const QString& heading)
{
    TableBlock table;
    table.columns = {{RecordWords::question(), 3}, {RecordWords::asked(), 1.2}, {RecordWords::outcome(), 5}};
    for (const SummaryQuestion& one : m_summary.questions)
        if (isWanted(one.question))
            table.rows.push_back({questionCell(one), {said(whenAsked(one.question))}, outcomeCell(one)});
    if (table.rows.empty())
        return;
    if (!heading.isEmpty())
        add(HeadingBlock{heading, 2});
    add(std::move(table));
}

} // namespace rig::record
