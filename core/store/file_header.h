#pragma once

#include "core/result.h"

#include <cstdint>
#include <string>

namespace rig {

// What the first 100 bytes of a file say (SQLite file format, section 1.3), read without opening it as a
// database, so that a foreign or newer file is not touched in any way.
struct FileHeader
{
    std::uint32_t applicationId = 0;
    std::uint32_t userVersion = 0;
    bool writeAheadLog = false;
};

// NoSuchFile, CannotOpen, NotOurFile (no database at all) or DamagedFile (empty or cut off within the
// header).
Result<FileHeader> readHeader(const std::string& path);

// NotOurFile, NewerFile or DamagedFile when this program must leave the file alone.
Outcome checkHeader(const FileHeader& header);

} // namespace rig
