#pragma once

#include "core/store/connection.h"

namespace rig {

// Whether a link, whose `named` (“fact” or “origin”) has this id, tells of what stands in the file as it was
// saved.
Result<bool> aLinkHolds(StoreFile::Connection& connection, const char* named, const IdBytes& id);

} // namespace rig
