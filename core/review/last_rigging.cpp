#include "core/review/last_rigging.h"

#include "core/rigging/rigged_before.h"

#include <map>

namespace rig {

namespace {

bool endedBefore(const EndedRigging& one, const EndedRigging& other)
{
    if (one.record->isFromPaper() || other.record->isFromPaper())
        return riggedBefore(*one.record, *other.record);
    return savedBefore(*one.close, *other.close);
}

} // namespace

std::optional<EndedRigging> lastEnded(const AirframeFacts& facts, Ended which)
{
    std::map<RecordId, const RiggingRecord*> records;
    for (const RiggingRecord& record : facts.riggingRecords)
        records.emplace(record.id, &record);
    std::optional<EndedRigging> last;
    for (const RecordClose& close : facts.closings) {
        const auto record = records.find(close.record);
        if (record == records.end() || (which == Ended::ByPeople && close.closing == Closing::Abandoned))
            continue;
        const EndedRigging one{record->second, &close};
        if (!last || endedBefore(*last, one))
            last = one;
    }
    return last;
}

} // namespace rig
