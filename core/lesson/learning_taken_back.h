#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <string>

namespace rig {

// That a rigging under supervision, or a practice reading, was told by mistake. It stays to be read, and
// counts for nothing.
struct LearningTakenBack
{
    FactId id; // null until saved
    std::optional<SupervisedId> supervised;
    std::optional<PracticeReadingId> practice; // one of the two
    PersonId person;
    std::string reason;
    Stamp stamp;
};

// What was taken back, and by whom.
template <typename Fact> struct WithdrawnFact
{
    Fact fact;
    LearningTakenBack back;
};

} // namespace rig
