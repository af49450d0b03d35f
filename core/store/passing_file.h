#pragma once

#include <filesystem>
#include <string>
#include <sys/types.h>

namespace rig {

// Whether no process of this number is there any more, whoever's it was.
bool isGone(pid_t process);

// Files that lie beside another one for as long as a program makes or reads it, and bear its process's
// number and a mark of its computer. Whoever is killed leaves them behind.

// While the file at `path` is being made.
std::string makingName(const std::string& path);
// Whether this process made that name.
bool isMakingName(const std::string& path);
// For a copy from which is read; free now.
std::string freeReadingName(const std::string& path);

// Removes from the folder of `path` what another one left behind: a file with such a name, of a process that
// is not there any more. Where the mark is not this computer's, the process may be another one's, over the
// network: then only what was not written to for a day, and begins as one of ours does or not at all.
// Whatever else has such a name stays.
void removeLeftBehind(const std::filesystem::path& path);

} // namespace rig
