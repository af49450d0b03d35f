#include "core/rigging/question.h"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace rig {

bool Question::asksTheSameAs(const Question& other) const
{
    const auto place = [](const Question& one) {
        return std::tuple{one.airframe, one.kind,  one.record, one.coupling,
                          one.surface,  one.gauge, one.check,  one.surfaceCheck};
    };
    return place(*this) == place(other);
}

std::vector<QuestionStory> openAmong(std::span<const QuestionStory> questions)
{
    std::vector<QuestionStory> open;
    std::ranges::copy_if(questions, std::back_inserter(open), &QuestionStory::isOpen);
    return open;
}

std::optional<Question> questionFrom(const Check& check, AirframeId airframe)
{
    if (check.answer == Answer::Yes)
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
    if (check.answer == Answer::Yes)
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
