#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/saved_before.h"
#include "core/rigging/record_content.h"

#include <optional>

namespace rig {

// The two who went through the whole of one coupling.
struct InspectedBy
{
    PersonId first;
    PersonId second;
    Moment when; // the last answer of the two

    bool operator==(const InspectedBy&) const = default;
};

// Whether everything that is asked of this kind was done at the coupling in this record, and all of it after
// `since`: looked at, read locked, pulled, secured, and looked at and pulled by another person; nothing of it
// with “cannot see”.
std::optional<InspectedBy> whollyInspected(RecordContent content, const Coupling& coupling,
                                           const SaveOrder& since);

} // namespace rig
