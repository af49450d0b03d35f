#include "core/review/slips.h"

#include <algorithm>

namespace rig {

std::optional<TakenBack> slipBehind(const Question& question, std::span<const Reading> readings,
                                    std::span<const Exclusion> exclusions, const Judge& judge)
{
    if (question.kind != QuestionKind::OutsideReading)
        return std::nullopt;
    const auto asked =
        std::ranges::find_if(readings, [&](const Reading& one) { return question.reading == one.id; });
    if (asked == readings.end())
        return std::nullopt;
    const auto isOutsideStill = [&](const Reading& one) {
        return one.record == asked->record && one.coupling == asked->coupling &&
               one.state == SeatState::Locked && !takenBack(one, readings, exclusions) &&
               judge(one).verdict == Verdict::Outside;
    };
    const auto slip = takenBack(*asked, readings, exclusions);
    return slip && std::ranges::none_of(readings, isOutsideStill) ? slip : std::nullopt;
}

std::optional<TakenBack> slipThatStops(std::span<const QuestionStory> questions, CouplingId coupling,
                                       std::span<const Reading> readings,
                                       std::span<const Exclusion> exclusions, const Judge& judge)
{
    std::optional<TakenBack> last;
    for (const QuestionStory& story : questions) {
        if (story.question.coupling != coupling || !story.isOpen() ||
            story.question.kind != QuestionKind::OutsideReading)
            continue;
        last = slipBehind(story.question, readings, exclusions, judge);
        if (!last)
            return std::nullopt;
    }
    return last;
}

} // namespace rig
