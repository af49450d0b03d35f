#include "core/rigging/question.h"

#include "core/airframe/saved_before.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace rig {

bool Question::asksTheSameAs(const Question& other) const
{
    const auto place = [](const Question& one) {
        return std::tuple{one.airframe, one.kind,  one.record,       one.coupling, one.surface,
                          one.gauge,    one.check, one.surfaceCheck, one.text};
    };
    return place(*this) == place(other);
}

bool Question::isStop() const
{
    return kind == QuestionKind::OutsideReading || kind == QuestionKind::AnsweredNo ||
           (kind == QuestionKind::SurfaceDoubt && surfaceAnswer == Answer::No);
}

int Question::gravity() const
{
    if (kind == QuestionKind::OutsideReading || isWrongMovement())
        return 3;
    if (isStop())
        return 2;
    return kind == QuestionKind::Asked ? 0 : 1;
}

bool Question::isWrongMovement() const
{
    return kind == QuestionKind::SurfaceDoubt && surfaceAnswer == Answer::No && surfaceCheck &&
           isOfSense(*surfaceCheck);
}

bool Question::isAtTheJoint() const
{
    return coupling && kind != QuestionKind::BandInDoubt && kind != QuestionKind::ShownPartSeated &&
           kind != QuestionKind::Asked;
}

std::vector<QuestionStory> openAmong(std::span<const QuestionStory> questions)
{
    std::vector<QuestionStory> open;
    std::ranges::copy_if(questions, std::back_inserter(open), &QuestionStory::isOpen);
    return open;
}

void settleWhatWasSeen(std::span<QuestionStory> questions, std::span<const Check> checks)
{
    for (QuestionStory& story : questions) {
        const Question& question = story.question;
        if (question.kind != QuestionKind::CannotSee || !question.coupling || !story.isOpen())
            continue;
        const Check* first = nullptr;
        for (const Check& check : checks)
            if (question.record == check.record && question.coupling == check.coupling &&
                question.check == check.kind && check.answer != Answer::CannotSee &&
                savedBefore(question, check) && (!first || savedBefore(check, *first)))
                first = &check;
        if (!first)
            continue;
        story.resolution = Resolution{
            FactId{first->id.bytes}, question.id, first->person, {}, {}, first->stamp, first->answer};
        story.resolution->copiedBy = first->copiedBy;
        if (first->copiedBy)
            story.resolution->stamp.by = first->copiedBy; // who entered it
    }
}

void takeSurfaceAnswers(std::span<QuestionStory> questions, std::span<const SurfaceCheck> checks)
{
    for (QuestionStory& story : questions) {
        Question& question = story.question;
        if (question.kind != QuestionKind::SurfaceDoubt)
            continue;
        const SurfaceCheck* last = nullptr;
        for (const SurfaceCheck& check : checks)
            if (question.record == check.record && question.surface == check.surface &&
                question.surfaceCheck == check.kind && !countsAsYes(check.answer) &&
                (!story.resolution || savedBefore(check, *story.resolution)) &&
                (!last || savedBefore(*last, check)))
                last = &check;
        if (!last)
            continue;
        question.surfaceAnswer = last->answer;
        question.surfaceSeen = last->seen;
    }
}

void takeMomentOfPaper(std::span<QuestionStory> questions, const RiggingRecord& record)
{
    if (!record.isFromPaper())
        return;
    for (QuestionStory& story : questions) {
        if (story.question.record != record.id || story.question.kind == QuestionKind::Asked)
            continue;
        story.question.onPaper = record.begins;
        if (story.resolution && story.resolution->answered)
            story.resolution->onPaper = record.begins;
    }
}

std::optional<CheckKind> notSeenAmong(std::span<const QuestionStory> questions, RecordId record,
                                      CouplingId coupling)
{
    for (const QuestionStory& story : questions)
        if (story.isOpen() && story.question.kind == QuestionKind::CannotSee &&
            story.question.record == record && story.question.coupling == coupling && story.question.check)
            return story.question.check;
    return std::nullopt;
}

std::optional<Question> questionFrom(const Check& check, AirframeId airframe)
{
    if (countsAsYes(check.answer))
        return std::nullopt;
    Question question;
    question.airframe = airframe;
    question.kind = check.answer == Answer::No ? QuestionKind::AnsweredNo : QuestionKind::CannotSee;
    question.record = check.record;
    question.coupling = check.coupling;
    question.check = check.kind;
    question.stamp = check.stamp;
    return question;
}

std::optional<Question> questionFrom(const SurfaceCheck& check, AirframeId airframe)
{
    if (countsAsYes(check.answer))
        return std::nullopt;
    Question question;
    question.airframe = airframe;
    question.kind = QuestionKind::SurfaceDoubt;
    question.record = check.record;
    question.surface = check.surface;
    question.surfaceCheck = check.kind;
    question.stamp = check.stamp;
    return question;
}

} // namespace rig
