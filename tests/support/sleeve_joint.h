#pragma once

#include "core/rigging/rigging_flow.h"

namespace rig::test {

// A ball joint with a sleeve, as most couplings of the tests are.
inline Coupling sleeveJoint(CouplingId id)
{
    Coupling coupling;
    coupling.id = id;
    return coupling;
}

inline CouplingFlow flowOfSleeve(const RecordContent& content, CouplingId coupling, Turn turn)
{
    return flowOf(content, sleeveJoint(coupling), turn);
}

} // namespace rig::test
