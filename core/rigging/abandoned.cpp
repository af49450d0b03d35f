#include "core/rigging/abandoned.h"

namespace rig {

std::set<RecordId> abandonedAmong(std::span<const RecordClose> closings)
{
    std::set<RecordId> abandoned;
    for (const RecordClose& close : closings)
        if (close.closing == Closing::Abandoned)
            abandoned.insert(close.record);
    return abandoned;
}

} // namespace rig
