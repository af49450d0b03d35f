#include "core/rigging/joint_stop.h"

namespace rig {

std::optional<JointStop> stopAmong(std::span<const QuestionStory> questions, CouplingId coupling)
{
    std::optional<JointStop> stop;
    for (const QuestionStory& story : questions) {
        const Question& question = story.question;
        if (question.coupling != coupling || !story.isOpen())
            continue;
        if (question.kind == QuestionKind::AnsweredNo)
            return JointStop{question.check.value_or(CheckKind::BallInSocket)};
        if (question.kind == QuestionKind::OutsideReading)
            stop = JointStop{};
    }
    return stop;
}

bool mayMeasureAsFound(const JointStop& stop)
{
    return stop.saidNo && *stop.saidNo != CheckKind::BallInSocket && *stop.saidNo != CheckKind::Secured;
}

} // namespace rig
