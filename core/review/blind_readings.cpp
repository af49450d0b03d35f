#include "core/review/blind_readings.h"

#include "core/rigging/joint_stop.h"
#include "core/rigging/rigging_flow.h"

#include <algorithm>

namespace rig {

namespace {

bool isFirstReadingOf(const Reading& reading, CouplingId coupling)
{
    return reading.coupling == coupling && reading.turn == Turn::First;
}

bool isClosed(const RecordContent& content, const Coupling& coupling,
              std::span<const QuestionStory> questions)
{
    const CouplingFlow first = flowOf(content, coupling, Turn::First);
    const bool isAnythingFound = first.begun || first.interrupted || first.last;
    if (stopAmong(questions, coupling.id) || !isAnythingFound)
        return false;
    const CouplingFlow second = flowOf(content, coupling, Turn::Second);
    const bool isDue = first.isDone() || second.begun;
    return isDue && !second.last && !second.isDone();
}

bool isSomethingUnseen(const RecordContent& content, const Coupling& coupling,
                       std::span<const QuestionStory> questions)
{
    return std::ranges::any_of(questions, [&](const QuestionStory& story) {
        return story.isOpen() && story.question.kind == QuestionKind::CannotSee &&
               story.question.record == content.record.id && story.question.coupling == coupling.id;
    });
}

bool isSecondBegun(const RecordContent& content)
{
    const auto isOfSecond = [](const auto& fact) { return fact.turn == Turn::Second; };
    return std::ranges::any_of(content.checks, isOfSecond) ||
           std::ranges::any_of(content.readings, isOfSecond);
}

// What could not be seen there tells what the first person found. A stop is told to everybody, and where one
// stands nothing is closed.
bool tellsWhatIsClosed(const Question& question, std::span<const CouplingId> closed)
{
    return question.kind == QuestionKind::CannotSee && question.coupling &&
           std::ranges::find(closed, *question.coupling) != closed.end();
}

} // namespace

std::vector<CouplingId> closedToTheSecond(const RecordContent& content,
                                          std::span<const QuestionStory> questions,
                                          std::span<const Coupling> couplings, bool isSecondAtPage)
{
    std::vector<CouplingId> closed;
    if (content.close)
        return closed;
    const bool isAllKeptBack = isSecondAtPage || isSecondBegun(content);
    for (const Coupling& coupling : couplings)
        if (isClosed(content, coupling, questions) &&
            (isAllKeptBack || !isSomethingUnseen(content, coupling, questions)))
            closed.push_back(coupling.id);
    return closed;
}

AirframeFacts withoutWhatIsClosed(AirframeFacts facts, const RecordContent& content,
                                  std::vector<CouplingId> closed)
{
    std::erase_if(facts.readings, [&](const KeptReading& kept) {
        return kept.reading.record == content.record.id &&
               std::ranges::any_of(closed,
                                   [&kept](CouplingId one) { return isFirstReadingOf(kept.reading, one); });
    });
    const auto isClosed = [&closed](const std::optional<CouplingId>& one) {
        return one && std::ranges::find(closed, *one) != closed.end();
    };
    std::erase_if(facts.questions, [&](const QuestionStory& story) {
        return story.question.record == content.record.id && tellsWhatIsClosed(story.question, closed);
    });
    std::erase_if(facts.jointPlays, [&](const JointPlay& play) {
        return play.record == content.record.id && isClosed(play.coupling);
    });
    facts.closedToSecond = std::move(closed);
    return facts;
}

} // namespace rig
