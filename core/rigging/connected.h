#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// Who connected the joints of one side in a rigging, as one person stated it; Side::None is the tail and the
// middle. A later statement for the same side stands beside it and counts.
struct SideConnected
{
    FactId id; // null until saved
    RecordId record;
    Side side = Side::None;
    std::vector<PersonId> persons; // each once; empty: it is not known who
    Stamp stamp;
};

// What was stated last for a side; null: nobody said.
const SideConnected* statedFor(Side side, std::span<const SideConnected> stated);

// Everybody who connected the side, as far as it was stated and is known.
std::vector<PersonId> whoConnected(Side side, std::span<const SideConnected> stated);

// The sides that joints in use stand on: left, right, then the tail and the middle.
std::vector<Side> sidesOf(std::span<const Coupling> couplings);

// What can be said of one person and who connected: whether somebody independent was there.
struct Independence
{
    std::vector<Side> connected; // by this person
    std::vector<Side> unknown;   // nobody said, or it is not known who

    bool isGiven() const { return connected.empty() && unknown.empty(); }
};

Independence independenceOf(PersonId person, std::span<const Side> sides,
                            std::span<const SideConnected> stated);

} // namespace rig
