#pragma once

#include <cstdint>
#include <functional>
#include <sqlite3.h>
#include <string>
#include <string_view>

namespace rig::test {

// What SQLite is about to do to the disk.
struct DiskCall
{
    enum class Kind { Create, Write, Truncate, Sync, SyncFolder, Lock, Delete };

    Kind kind;
    std::string path;
    std::int64_t at = 0;         // where it is written; the size to cut to
    std::string_view bytes = {}; // what is written
};

struct DiskAnswer
{
    int code = SQLITE_OK;    // anything else: it is not done and SQLite is told so
    std::size_t written = 0; // of a write that fails: so many bytes go through all the same
};

// For as long as it lives all files that this process opens through SQLite are opened through it: it asks
// before each call and then hands it on to the system. Syncs are told and not made: what is tried here are
// calls, and a process that ends leaves what it wrote to the system. One at a time.
class ShimVfs
{
public:
    using Ask = std::function<DiskAnswer(const DiskCall&)>;

    explicit ShimVfs(Ask ask);
    ~ShimVfs();
    ShimVfs(const ShimVfs&) = delete;
    ShimVfs& operator=(const ShimVfs&) = delete;

    sqlite3_vfs* real() const { return m_real; }
    DiskAnswer ask(const DiskCall& call) const { return m_ask(call); }

private:
    sqlite3_vfs* m_real;
    sqlite3_vfs m_vfs;
    Ask m_ask;
};

} // namespace rig::test
