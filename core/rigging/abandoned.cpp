#include "core/rigging/abandoned.h"

namespace rig {

std::set<RecordId> closedAs(Closing closing, std::span<const RecordClose> closings)
{
    std::set<RecordId> records;
    for (const RecordClose& close : closings)
        if (close.closing == closing)
            records.insert(close.record);
    return records;
}

std::set<RecordId> abandonedAmong(std::span<const RecordClose> closings)
{
    return closedAs(Closing::Abandoned, closings);
}

} // namespace rig
