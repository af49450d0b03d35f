#include "core/rigging/joint_stop.h"

#include "core/rigging/circuit_hand.h"

#include <algorithm>

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

std::optional<JointStop> stopAmong(std::span<const QuestionStory> questions, const Coupling& coupling,
                                   std::span<const Surface> surfaces)
{
    std::optional<JointStop> stop = stopAmong(questions, coupling.id);
    if (stop)
        return stop;
    for (const QuestionStory& story : questions) {
        const Question& question = story.question;
        const auto surface =
            std::ranges::find(surfaces, question.surface.value_or(SurfaceId{}), &Surface::id);
        if (!story.isOpen() || question.kind != QuestionKind::SurfaceDoubt || !question.isStop() ||
            !question.surfaceCheck || surface == surfaces.end() || !mayMove(coupling.circuit, surface->kind))
            continue;
        if (!stop || (question.isWrongMovement() && !stop->surface->isWrongMovement()))
            stop = JointStop{
                {},
                SurfaceStop{surface->id, *question.surfaceCheck, question.surfaceSeen == Movement::Nothing}};
    }
    return stop;
}

bool mayReadAgain(const std::optional<JointStop>& stop)
{
    return !stop || stop->isOutside();
}

bool mayMeasureAsFound(const JointStop& stop)
{
    return stop.saidNo && *stop.saidNo != CheckKind::BallInSocket && *stop.saidNo != CheckKind::Secured;
}

std::optional<PersonId> finderOf(const Question& question, std::span<const Reading> readings)
{
    switch (question.kind) {
    case QuestionKind::OutsideReading: {
        const auto found = std::ranges::find_if(
            readings, [&question](const Reading& one) { return question.reading == one.id; });
        return found == readings.end() ? std::nullopt : std::optional{found->person};
    }
    case QuestionKind::AnsweredNo:
    case QuestionKind::CannotSee:
    case QuestionKind::SurfaceDoubt:
        return question.stamp.by;
    case QuestionKind::ReadingsDisagree:
    case QuestionKind::SidesSwapped:
    case QuestionKind::GaugeQuarantined:
    case QuestionKind::BandInDoubt:
    case QuestionKind::ShownPartSeated:
    case QuestionKind::Asked:
        break;
    }
    return std::nullopt;
}

bool isOwnDecision(const QuestionStory& story, std::span<const Reading> readings)
{
    return story.resolution && !story.resolution->answered &&
           finderOf(story.question, readings) == story.resolution->person;
}

} // namespace rig
