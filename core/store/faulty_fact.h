#pragma once

#include "core/review/chain_state.h"
#include "core/store/connection.h"

namespace rig {

// What the file tells of a fact by which something is wrong. Reads only what stands there, never refuses it.
FaultyFact tellOf(StoreFile::Connection& connection, ChainFault fault, const std::string& table,
                  const IdBytes& fact);

} // namespace rig
