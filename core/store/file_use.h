#pragma once

#include <string>

namespace rig {

// A mark, for as long as it lives, that this program has a file open, and the question whether another has.
// The mark is a shared lock on a small file in the temporary folder, named after the file's device and inode:
// the system lets go of it when a program dies, however it dies, and SQLite's own locks on the file are not
// touched. It sees programs on this machine only.
class FileUse
{
public:
    explicit FileUse(const std::string& path);
    ~FileUse();
    FileUse(const FileUse&) = delete;
    FileUse& operator=(const FileUse&) = delete;

    // False when it cannot be told: then whatever is found half done counts as left, and starts again at the
    // look.
    bool isSharedWithOthers() const;

private:
    std::string m_mark; // path of the lock file
    int m_handle = -1;
};

} // namespace rig
