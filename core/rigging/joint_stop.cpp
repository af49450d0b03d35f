#include "core/rigging/joint_stop.h"

namespace rig {

std::optional<JointStop> stopAmong(std::span<const QuestionStory> questions, CouplingId coupling)
{
    for (const QuestionStory& story : questions) {
        const Question& question = story.question;
        if (question.coupling == coupling && story.isOpen() && question.kind == QuestionKind::AnsweredNo)
            return JointStop{question.check.value_or(CheckKind::BallInSocket)};
    }
    return std::nullopt;
}

bool mayMeasureAsFound(const JointStop& stop)
{
    return stop.saidNo != CheckKind::BallInSocket && stop.saidNo != CheckKind::Secured;
}

} // namespace rig
