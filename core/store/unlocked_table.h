#pragma once

#include "core/store/connection.h"

namespace rig {

// Takes rows out of a table of facts within a transaction, which the file refuses everybody else: of two
// files that are joined one may hold a row that somebody changed by hand.
Outcome removeRows(StoreFile::Connection& connection, std::string_view table, std::string_view key,
                   const IdBytes& id);

} // namespace rig
