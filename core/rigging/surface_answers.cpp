#include "core/rigging/surface_answers.h"

#include <algorithm>

namespace rig {

namespace {

// After a wrong sense both ways are called anew.
bool isOneMatter(SurfaceCheckKind one, SurfaceCheckKind other)
{
    return one == other || (isOfSense(one) && isOfSense(other));
}

// It has to be tried anew.
bool wasFoundOutSince(const RecordContent& content, const SurfaceCheck& check)
{
    return std::ranges::any_of(content.questions, [&check](const QuestionStory& story) {
        return story.question.surface == check.surface && story.question.surfaceCheck &&
               isOneMatter(*story.question.surfaceCheck, check.kind) && !story.isOpen() &&
               savedBefore(check, *story.resolution);
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
