#pragma once

#include "core/result.h"
#include "core/store/store_file.h"

#include <optional>
#include <set>
#include <string>
#include <utility>

namespace rig {

// Whether everything that the file is laid out in (tables, indexes, triggers and nothing else) is what the
// migrations make at its layout version. ForeignLayout with the name of the first thing that differs,
// WrongVersion when it is laid out as another version of ours is. SQLite's own statistics do not count.
Outcome checkLayout(StoreFile::Connection& file);

// Reads what the file says it is, through SQLite since an unfinished save of a crash may just have been taken
// back, and compares its layout with that: what checkHeader() and checkLayout() refuse is refused.
Outcome readVersion(StoreFile::Connection& file);

// The same within a write transaction, where the file's schema moved since it was looked at last.
Outcome checkLayoutAgain(StoreFile::Connection& file);

// The version of ours that it is laid out as, whatever it says of itself; empty where it is none.
std::optional<int> versionLaidOutAs(StoreFile::Connection& file);

// Of what the migrations make at this version, which takes some tens of milliseconds, and whether it is the
// one that is known without making it.
Result<std::string> layoutHash(int version);
// Each column of each table of that version; as long as that takes.
using LayoutColumns = std::set<std::pair<std::string, std::string>>;
Result<LayoutColumns> columnsOfLayout(int version);
bool isLayoutKnown(int version, const std::string& hash);

} // namespace rig
