#include "app/report/outside_runs.h"

#include "core/rigging/counts_as.h"

#include <algorithm>

namespace rig::engineer {

namespace {

bool isSetAside(const OutsideStory& story)
{
    return story.corrected || story.struck;
}

bool isAlike(const OutsideStory& one, const OutsideStory& other)
{
    if (one.reading.fitting != other.reading.fitting || one.reading.state != other.reading.state)
        return false;
    return one.reading.state == SeatState::PartSeated ||
           (one.judgement.verdict == other.judgement.verdict &&
            one.judgement.direction == other.judgement.direction);
}

} // namespace

std::vector<OutsideStories> outsideRunsOf(const CouplingReview& coupling,
                                          std::span<const JudgedReading> judged)
{
    std::vector<OutsideStories> runs;
    constexpr std::size_t kNone = static_cast<std::size_t>(-1);
    std::size_t going = kNone; // the run that the next one may go on with
    for (const JudgedReading& one : judged) {
        if (one.reading.coupling != coupling.coupling.id || !countsAs(one.reading.purpose).rigging)
            continue;
        const auto story = std::ranges::find(coupling.outside, one.reading.id,
                                             [](const OutsideStory& told) { return told.reading.id; });
        if (story == coupling.outside.end()) {
            if (!one.isStruckThrough())
                going = kNone;
        } else if (isSetAside(*story)) {
            runs.push_back({{&*story}});
        } else if (going != kNone && isAlike(runs[going].first(), *story)) {
            runs[going].stories.push_back(&*story);
        } else {
            going = runs.size();
            runs.push_back({{&*story}});
        }
    }
    return runs;
}

} // namespace rig::engineer
