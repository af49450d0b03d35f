#include "core/review/last_rigging.h"

#include "core/rigging/rigged_before.h"

#include <algorithm>
#include <map>

namespace rig {

std::vector<EndedRigging> endedRiggings(const AirframeFacts& facts)
{
    std::map<RecordId, const RiggingRecord*> records;
    for (const RiggingRecord& record : facts.riggingRecords)
        records.emplace(record.id, &record);
    std::vector<EndedRigging> ended;
    for (const RecordClose& close : facts.closings)
        if (const auto record = records.find(close.record); record != records.end())
            ended.push_back({record->second, &close});
    return ended;
}

std::optional<EndedRigging> lastEnded(const AirframeFacts& facts, Ended which)
{
    std::vector<EndedRigging> ended = endedRiggings(facts);
    if (which == Ended::ByPeople)
        std::erase_if(ended, &EndedRigging::isAbandoned);
    const auto last = std::ranges::max_element(ended, riggedBefore, &EndedRigging::rigging);
    return last == ended.end() ? std::nullopt : std::optional{*last};
}

} // namespace rig
