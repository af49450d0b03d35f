#include "core/rigging/surface_answers.h"

#include <algorithm>

namespace rig {

namespace {

// After a wrong sense both ways are called anew.
bool isOneMatter(SurfaceCheckKind one, SurfaceCheckKind other)
{
    return one == other || (isOfSense(one) && isOfSense(other));
}

// Then somebody has had it in hand, and what was tried before says nothing of how it is now; of what could
// not be seen nobody had to touch anything.
bool askedOfANo(const RecordContent& content, const Question& question)
{
    const SurfaceCheck* last = nullptr;
    for (const SurfaceCheck& check : content.surfaceChecks)
        if (check.surface == question.surface && check.kind == question.surfaceCheck &&
            savedBefore(check, question))
            last = &check;
    return last && last->answer == Answer::No;
}

// It has to be tried anew.
bool wasFoundOutSince(const RecordContent& content, const SurfaceCheck& check)
{
    return std::ranges::any_of(content.questions, [&](const QuestionStory& story) {
        return story.question.surface == check.surface && story.question.surfaceCheck && !story.isOpen() &&
               savedBefore(check, *story.resolution) &&
               (isOneMatter(*story.question.surfaceCheck, check.kind) || askedOfANo(content, story.question));
    });
}

} // namespace

std::vector<SurfaceAnswer> surfaceAnswersIn(const RecordContent& content, std::span<const Coupling> couplings,
                                            const Surface& surface)
{
    const auto hand = lastHandOn(content, couplings, surface);
    std::vector<SurfaceAnswer> answers;
    for (const SurfaceCheck& check : content.surfaceChecks) {
        if (check.surface != surface.id)
            continue;
        for (SurfaceAnswer& earlier : answers)
            earlier.isAnsweredAgain = earlier.isAnsweredAgain || earlier.check->kind == check.kind;
        SurfaceAnswer answer{&check, {}, wasFoundOutSince(content, check)};
        if (hand && saveOrderOf(check) < hand->saved)
            answer.hand = hand;
        answers.push_back(answer);
    }
    return answers;
}

} // namespace rig
