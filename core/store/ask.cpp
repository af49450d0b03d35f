#include "core/store/ask.h"

#include <algorithm>

namespace rig {

Outcome ask(Records& records, const Question& question)
{
    const auto questions = records.questions(question.airframe);
    if (!questions)
        return questions.problem();
    const bool isAsked = std::ranges::any_of(questions.value(), [&question](const QuestionStory& story) {
        return story.isOpen() && story.question.asksTheSameAs(question);
    });
    if (isAsked)
        return Done{};
    const auto added = records.add(question);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

} // namespace rig
