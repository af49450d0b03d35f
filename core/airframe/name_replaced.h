#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <string>

namespace rig {

// That in one version of a person the name was replaced on request, see docs/decisions, 0008. The link of
// that version tells of what stood there before; from then on it is held against `reads`.
struct NameReplaced
{
    FactId id;       // null until saved
    FactId replaced; // the row of the version
    std::string
        reads; // SHA-256 (FIPS 180-4) of the canonical bytes of the row since then, 64 hexadecimal digits
    PersonId person; // who replaced it
    Stamp stamp;
};

} // namespace rig
