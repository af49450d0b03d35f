#pragma once

#include "core/result.h"
#include "core/store/store_file.h"

#include <QStringList>

namespace rig {

// The layout this program writes.
int newestSchemaVersion();

// The statements of one migration, 1 for the first.
QStringList migrationStatements(int version);

// Brings the file to `version`, one transaction each: another window may be doing the same. A new file is
// made in a single one.
Outcome migrate(StoreFile::Connection& connection, int version);

} // namespace rig
