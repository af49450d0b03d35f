#pragma once

#include "core/progress.h"
#include "core/result.h"
#include "core/store/problems.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <sqlite3.h>
#include <stop_token>
#include <string>

namespace rig {

// A file as SQLite sees it page by page, for what looks at it or copies it whole.
struct CloseRawFile
{
    void operator()(sqlite3* file) const { sqlite3_close(file); }
};
using RawFile = std::unique_ptr<sqlite3, CloseRawFile>;

// The path so that SQLite takes it for nothing but a file's: “:memory:” and “file:x?mode=memory” are names
// like any other.
std::string asFileName(const std::string& path);

enum class ReadWith {
    Lock,   // as it is at one moment; whoever writes waits meanwhile
    NoLock, // nobody waits; what is read is of one moment only when nobody wrote
};

Result<RawFile> openToRead(const std::string& path, ReadWith with);

// Moves on with every transaction that wrote to the file. Read through SQLite's own handle: to open the file
// beside it and close it again would take away every lock that this program holds on it.
std::optional<std::uint32_t> changeCounter(sqlite3* file);

// Every page of `from` as of one moment into the new file `into`. A writer waits for a moment at most: when
// somebody wrote, the copying begins again, and after some rounds of that it gives up (BusyElsewhere).
// Stopped: Unexpected, and what is there of `into` is for the caller to remove.
Outcome copyPages(const std::string& from, const std::string& into, const std::stop_token& stop);
Outcome copyPages(const std::string& from, const std::string& into, Progress* progress); // in pages

} // namespace rig
