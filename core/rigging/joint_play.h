#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/measure/gap.h"

#include <optional>
#include <string>

namespace rig {

enum class PlayFelt { NotTried, None, Felt };

struct PlayFound
{
    PlayFelt felt = PlayFelt::NotTried;
    std::optional<Gap> measured = {}; // where it was felt, and somebody measured it

    bool operator==(const PlayFound&) const = default;
};

enum class PlayProblem { None, NothingMeasured, MeasuredNotFelt };

constexpr PlayProblem problemOf(const PlayFound& found)
{
    if (!found.measured)
        return PlayProblem::None;
    if (*found.measured <= Gap{})
        return PlayProblem::NothingMeasured;
    return found.felt == PlayFelt::Felt ? PlayProblem::None : PlayProblem::MeasuredNotFelt;
}

// Free play of the joint itself, both sides held close to it: another thing than its gap, and than what moves
// at the surface. Nothing here judges it; the manual has the limit. A later one stands beside it.
struct JointPlay
{
    FactId id; // null until saved
    CouplingId coupling;
    std::optional<RecordId> record; // of the rigging that it was felt at; empty: on some other day
    Day day;
    PlayFound along;  // along the rod: push and pull
    PlayFound across; // sideways
    PersonId person;
    std::string note;
    Stamp stamp;
};

} // namespace rig
