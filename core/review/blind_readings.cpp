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
    const auto isOfIt = [&coupling](const Reading& one) { return isFirstReadingOf(one, coupling.id); };
    if (stopAmong(questions, coupling.id) || std::ranges::none_of(content.readings, isOfIt))
        return false;
    const CouplingFlow first = flowOf(content, coupling, Turn::First);
    const CouplingFlow second = flowOf(content, coupling, Turn::Second);
    const bool isDue = first.isDone() || second.begun;
    return isDue && !second.last && !second.isDone();
}

} // namespace

std::vector<CouplingId> closedToTheSecond(const RecordContent& content,
                                          std::span<const QuestionStory> questions,
                                          std::span<const Coupling> couplings)
{
    std::vector<CouplingId> closed;
    if (content.close)
        return closed;
    for (const Coupling& coupling : couplings)
        if (isClosed(content, coupling, questions))
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
    std::erase_if(facts.jointPlays, [&](const JointPlay& play) {
        return play.record == content.record.id && std::ranges::find(closed, play.coupling) != closed.end();
    });
    facts.closedToSecond = std::move(closed);
    return facts;
}

} // namespace rig
