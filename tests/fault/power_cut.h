#pragma once

#include "tests/fault/shim_vfs.h"

#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace rig::test {

// What a disk holds for certain, and what was written to it since and may be lost with the power: sectors of
// writes, sizes, and the names in the folder, each by itself until it is synced.
class UncertainDisk
{
public:
    // With one file, which is on the disk.
    UncertainDisk(const std::string& path, std::string bytes);

    void take(const DiskCall& call);

    // The files that are there after the power went now. Draw 0: nothing that was not synced; 1: all of it;
    // any other: some of it, the same for the same number.
    std::map<std::string, std::string> afterTheCut(unsigned draw) const;

private:
    struct Pending
    {
        std::int64_t at;
        std::optional<std::string> bytes; // empty: the file is cut to this size
    };
    struct File
    {
        std::string synced;
        std::vector<Pending> pending;
    };
    class Luck;

    File& fileAt(const std::string& path);
    static std::string contentOf(const File& file, Luck& luck);

    std::vector<File> m_files;
    // What a name may stand for: first what it does for certain, last what it does now; -1 is nothing.
    std::map<std::string, std::vector<int>> m_names;
};

} // namespace rig::test
