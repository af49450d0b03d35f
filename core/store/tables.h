#pragma once

#include <array>

namespace rig {

struct FactTable
{
    const char* name;
    bool isFact; // false for tables that belong to a fact of another table
};

// Every table of facts, each after those it refers to.
inline constexpr std::array kFactTables{
    FactTable{"person", true},
    FactTable{"airframe", true},
    FactTable{"gauge", true},
    FactTable{"gauge_size", false},
    FactTable{"gauge_check", true},
    FactTable{"coupling", true},
    FactTable{"fitting", true},
    FactTable{"event", true},
    FactTable{"rigging_record", true},
    FactTable{"connected", true},
    FactTable{"connected_person", false},
    FactTable{"answer", true},
    FactTable{"reading", true},
    FactTable{"shown", false},
    FactTable{"exclusion", true},
    FactTable{"baseline", true},
    FactTable{"baseline_reading", false},
    FactTable{"interruption", true},
    FactTable{"closing", true},
    FactTable{"surface", true},
    FactTable{"surface_answer", true},
    FactTable{"surface_measure", true},
    FactTable{"tick", true},
    FactTable{"question", true},
    FactTable{"resolution", true},
    FactTable{"joint_play", true},
};

} // namespace rig
