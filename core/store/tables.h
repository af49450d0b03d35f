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
    FactTable{"photo", true},
    FactTable{"photo_image", false},
    FactTable{"photo_withdrawn", true},
    FactTable{"lesson_round", true},
    FactTable{"seating_answer", true},
    FactTable{"recall_answer", true},
    FactTable{"supervised_rigging", true},
    FactTable{"sign_off", true},
    FactTable{"crossed_study", true},
    FactTable{"study_place", true},
    FactTable{"practice_reading", true},
    FactTable{"practice_shared", true},
    FactTable{"learning_taken_back", true},
    FactTable{"decision", true},
    FactTable{"name_replaced", true},
};

// What links the facts, see core/store/chain.h.
inline constexpr std::array kChainTables{"origin", "link", "tie"};

} // namespace rig
