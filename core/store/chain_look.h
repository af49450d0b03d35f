#pragma once

#include "core/review/chain_state.h"
#include "core/store/connection.h"

#include <stop_token>

namespace rig {

Result<FileEnd> endOf(StoreFile::Connection& connection);

// Works the chain of a whole file out anew and holds it against what stands there. Reads some hundred facts
// at a time, so that nobody who writes waits for it. Interrupted: Unexpected.
Result<ChainState> lookAtChain(StoreFile::Connection& connection, const std::stop_token& stop = {});
// The same, told as it goes on.
Result<ChainState> lookAtChain(StoreFile::Connection& connection, Progress* progress);

// The fact after which the file had this short form, as readShortForm() gives it. Empty: this file never had
// it, as far as its chain tells.
Result<std::optional<PrintPlace>> placeOfPrint(StoreFile::Connection& connection, const std::string& form);

// When the last fact was saved, over all ends of the chain: of files that were joined there are several, and
// where a link is gone too. Empty where no end tells a moment.
Result<std::optional<Moment>> lastSaved(StoreFile::Connection& connection);

} // namespace rig
