#pragma once

#include "core/airframe/saved_before.h"
#include "core/rigging/rigging_record.h"

namespace rig {

// Which of two riggings was the earlier one: by the order of saving, also where the clock was set back
// between them; one from paper by the day that stood on the paper.
inline constexpr struct
{
    bool operator()(const RiggingRecord& one, const RiggingRecord& other) const
    {
        if ((one.isFromPaper() || other.isFromPaper()) && one.begins != other.begins)
            return one.begins < other.begins;
        return savedBefore(one, other);
    }
} riggedBefore;

} // namespace rig
