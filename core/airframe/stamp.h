#pragma once

#include "core/airframe/ids.h"
#include "core/clock.h"

#include <optional>

namespace rig {

// Who stated a fact and when. `by` is empty only before the file knows any person.
struct Stamp
{
    std::optional<PersonId> by;
    Moment when;
};

} // namespace rig
