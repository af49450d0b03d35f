#pragma once

#include "core/rigging/reading.h"

#include <optional>
#include <span>
#include <string>

namespace rig {

// A reading that somebody has said was a slip. It stays to be read, and so does the question that it opened.
struct TakenBack
{
    Reading slip;
    std::optional<Reading> instead; // what stands in its place; empty: it was struck
    std::string reason;
    Stamp stamp; // who said so, and when
};

// `readings` and `exclusions` are those of its coupling or record. Empty: nobody has taken it back.
std::optional<TakenBack> takenBack(const Reading& reading, std::span<const Reading> readings,
                                   std::span<const Exclusion> exclusions);

} // namespace rig
