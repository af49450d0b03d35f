#include "app/pages/questions/question_row_text.h"

#include "app/wording/control_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/formats.h"
#include "app/wording/question_words.h"
#include "app/wording/record_words.h"
#include "app/wording/stop_words.h"

namespace rig {

namespace {

QString placeIn(const QuestionRow& row)
{
    return QString::fromStdString(row.place);
}

QString gaugeOf(const QuestionRow& row)
{
    return row.gauge ? DoubtWords::gauge(row.gauge->set.kind(), QString::fromStdString(row.gauge->name))
                     : QString{};
}

QStringList bandSentences(const QuestionRow& row)
{
    if (!row.band)
        return {};
    const BandWithoutDoubted& band = *row.band;
    QStringList sentences{DoubtWords::bandNow(
        placeIn(row), band.without, {band.doubted, gaugeOf(row), band.without.has_value(), band.with})};
    if (band.latest)
        sentences << DoubtWords::verdicts(band.judgedOtherwise)
                  << DoubtWords::verdict(Formats{}.interval(band.latest->interval),
                                         band.latest->when.localDay(), band.before, band.after);
    return sentences;
}

QStringList readingSentences(const QuestionRow& row)
{
    if (row.story.question.kind == QuestionKind::BandInDoubt)
        return bandSentences(row); // the reading is named there
    QStringList sentences;
    for (const AskedReading& one : row.readings) {
        const QString interval = Formats{}.interval(one.interval);
        const QString person = QString::fromStdString(one.person);
        sentences << (row.story.question.kind == QuestionKind::OutsideReading
                          ? QuestionWords::outside(interval, person)
                          : QuestionWords::reading(interval, person));
    }
    return sentences;
}

QStringList slipSentences(const QuestionRow& row)
{
    if (!row.slip)
        return {};
    const Formats formats;
    const StopWords::Slip slip{formats.interval(row.slip->slip),
                               row.slip->instead ? formats.interval(*row.slip->instead) : QString{},
                               QString::fromStdString(row.slip->by),
                               QString::fromStdString(row.slip->reason)};
    return row.story.isOpen() ? QStringList{StopWords::afterwards(slip), StopWords::stays()}
                              : QStringList{StopWords::afterwards(slip)};
}

QStringList answerSentences(const QuestionRow& row)
{
    const Question& question = row.story.question;
    if (!row.answer)
        return {};
    if (question.check)
        return {QuestionWords::answered(RecordWords::check(*question.check), *row.answer)};
    if (question.surfaceCheck && row.called)
        return {QuestionWords::called(RecordWords::check(*question.surfaceCheck),
                                      ControlWords::movement(*row.called))};
    if (question.surfaceCheck)
        return {QuestionWords::answered(RecordWords::check(*question.surfaceCheck), *row.answer)};
    return {};
}

QString kindSentence(const QuestionRow& row)
{
    switch (row.story.question.kind) {
    case QuestionKind::ReadingsDisagree:
        return QuestionWords::disagree();
    case QuestionKind::SidesSwapped:
        return QuestionWords::swapped();
    case QuestionKind::GaugeQuarantined:
        if (row.inDoubt)
            return QuestionWords::inDoubt(row.inDoubt->count, placeIn(row), Formats{}.day(row.inDoubt->from));
        break;
    case QuestionKind::ShownPartSeated:
        return row.inspected ? QuestionWords::inspected(QString::fromStdString(row.inspected->first),
                                                        QString::fromStdString(row.inspected->second),
                                                        Formats{}.moment(row.inspected->when))
                             : QuestionWords::notInspected();
    case QuestionKind::Asked:
        return QuestionWords::text(QString::fromStdString(row.story.question.text));
    case QuestionKind::OutsideReading:
    case QuestionKind::AnsweredNo:
    case QuestionKind::CannotSee:
    case QuestionKind::SurfaceDoubt:
    case QuestionKind::BandInDoubt:
        break;
    }
    return {};
}

} // namespace

MarkShape shapeOf(const QuestionRow& row)
{
    if (!row.story.isOpen())
        return MarkShape::Done;
    return shapeOf(row.story.question);
}

Role shapeRoleOf(const QuestionRow& row)
{
    if (!row.story.isOpen())
        return Role::InkSoft;
    return shapeRoleOf(row.story.question);
}

QString titleOf(const QuestionRow& row)
{
    return QuestionWords::asked(row.story.question, placeIn(row));
}

QString stateOf(const QuestionRow& row)
{
    const Formats formats;
    if (row.story.isOpen())
        return QuestionWords::openSince(formats.day(row.story.question.day()));
    return QuestionWords::closedOn(formats.day(row.story.resolution->day()),
                                   QString::fromStdString(row.decidedBy));
}

QString detailOf(const QuestionRow& row)
{
    const Question& question = row.story.question;
    if (question.check)
        return QuestionWords::withDetail(stateOf(row), RecordWords::check(*question.check));
    if (question.surfaceCheck)
        return QuestionWords::withDetail(stateOf(row), RecordWords::check(*question.surfaceCheck));
    if (question.kind == QuestionKind::BandInDoubt)
        return QuestionWords::withDetail(stateOf(row), gaugeOf(row));
    if (!row.readings.empty())
        return QuestionWords::withDetail(stateOf(row), Formats{}.interval(row.readings.back().interval));
    return stateOf(row);
}

QString closingSentence(const QuestionRow& row)
{
    const Formats formats;
    const Resolution& closed = *row.story.resolution;
    const QString decided = QString::fromStdString(row.decidedBy);
    const QString entered = QString::fromStdString(row.enteredBy);
    return closed.onPaper ? QuestionWords::closedOnPaper(decided, formats.moment(*closed.onPaper),
                                                         formats.day(closed.stamp.when.localDay()),
                                                         closed.copiedBy ? entered : QString{})
                          : QuestionWords::closedBy(decided, formats.moment(closed.stamp.when), entered);
}

QStringList storyOf(const QuestionRow& row)
{
    const Formats formats;
    QStringList sentences = answerSentences(row) + readingSentences(row) + slipSentences(row);
    if (const QString kind = kindSentence(row); !kind.isEmpty())
        sentences << kind;
    const Question& question = row.story.question;
    const QString statedBy = QString::fromStdString(row.statedBy);
    sentences << (question.onPaper ? QuestionWords::statedOnPaper(statedBy, formats.day(question.day()),
                                                                  formats.day(question.stamp.when.localDay()))
                                   : QuestionWords::statedBy(statedBy, formats.moment(question.stamp.when)));
    if (row.record)
        sentences << QuestionWords::inRecord(formats.whenBegun(*row.record), row.ofOpenRecord);
    if (row.story.resolution && row.story.resolution->answered && row.story.question.check)
        sentences << QuestionWords::answered(RecordWords::check(*row.story.question.check),
                                             *row.story.resolution->answered);
    if (row.story.resolution)
        sentences << closingSentence(row);
    if (const auto& resolution = row.story.resolution;
        resolution && !resolution->answered && row.foundBy == resolution->person)
        sentences << QuestionWords::ownFinding(QString::fromStdString(row.decidedBy));
    return sentences;
}

QString consequenceOf(const QuestionRow& row)
{
    if (!row.story.isOpen())
        return {};
    if (row.story.question.kind == QuestionKind::GaugeQuarantined)
        return QuestionWords::gaugeStaysInDoubt();
    if (row.story.question.kind == QuestionKind::BandInDoubt)
        return DoubtWords::staysSo(gaugeOf(row));
    if (row.waitsForInspection)
        return QuestionWords::inspectFirst(placeIn(row));
    if (row.startsAgain)
        return QuestionWords::willStartAgain(placeIn(row));
    if (row.story.question.surface && row.ofOpenRecord)
        return QuestionWords::willTryAgain(placeIn(row));
    return {};
}

QString resultOf(const QuestionRow& row, const Closed& closed)
{
    if (closed.startsAgain)
        return QuestionWords::startedAgain(placeIn(row));
    if (row.story.question.surface && row.ofOpenRecord)
        return QuestionWords::tryAgain(placeIn(row));
    return QuestionWords::closedNow();
}

} // namespace rig
