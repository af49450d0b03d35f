#pragma once

#include "core/airframe/saved_before.h"
#include "core/rigging/rigging_record.h"

#include <compare>
#include <cstdint>

namespace rig {

// The place of a rigging among the others.
struct RiggingOrder
{
    std::int64_t began = 0;
    SaveOrder saved;

    constexpr auto operator<=>(const RiggingOrder&) const = default;
};

// By when it began: of one from paper, or of a table, that is the day that stood there. Where the clock had
// been set back when it was saved, it stands as much later, behind what was saved before it.
inline RiggingOrder riggingOrderOf(const RiggingRecord& record)
{
    const SaveOrder saved = saveOrderOf(record);
    const std::int64_t setBack = record.isFromPaper() ? 0 : saved.seconds - record.stamp.when.utcSeconds;
    return {record.begins.utcSeconds + setBack, saved};
}

// Which of two riggings was the earlier one.
inline constexpr struct
{
    bool operator()(const RiggingRecord& one, const RiggingRecord& other) const
    {
        return riggingOrderOf(one) < riggingOrderOf(other);
    }
} riggedBefore;

} // namespace rig
