#include "tests/fault/shim_vfs.h"

#include <new>
#include <unistd.h>
#include <utility>

namespace rig::test {

namespace {

using Kind = DiskCall::Kind;

// The system's file lies behind it in the memory that SQLite gives.
struct ShimFile : sqlite3_file
{
    const ShimVfs* shim;
    const char* path;    // SQLite keeps it until the file is closed
    bool isFolderBehind; // a new journal: its first sync brings its name to the disk too

    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
    DiskAnswer ask(Kind kind, std::int64_t at = 0, std::string_view bytes = {}) const
    {
        return shim->ask({kind, path ? path : "", at, bytes});
    }
};

ShimFile& shimOf(sqlite3_file* file)
{
    return *static_cast<ShimFile*>(file);
}

sqlite3_file* realOf(sqlite3_file* file)
{
    return shimOf(file).real();
}

int closeFile(sqlite3_file* file)
{
    return realOf(file)->pMethods->xClose(realOf(file));
}

int readFile(sqlite3_file* file, void* into, int size, sqlite3_int64 at)
{
    return realOf(file)->pMethods->xRead(realOf(file), into, size, at);
}

int writeFile(sqlite3_file* file, const void* bytes, int size, sqlite3_int64 at)
{
    const auto write = [&](int some) {
        return realOf(file)->pMethods->xWrite(realOf(file), bytes, some, at);
    };
    const DiskAnswer answer =
        shimOf(file).ask(Kind::Write, at, {static_cast<const char*>(bytes), static_cast<std::size_t>(size)});
    if (answer.code == SQLITE_OK)
        return write(size);
    if (answer.written > 0)
        write(static_cast<int>(answer.written));
    return answer.code;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    const int told = shimOf(file).ask(Kind::Truncate, size).code;
    return told == SQLITE_OK ? realOf(file)->pMethods->xTruncate(realOf(file), size) : told;
}

int syncFile(sqlite3_file* file, int)
{
    ShimFile& shim = shimOf(file);
    const int told = shim.ask(Kind::Sync).code;
    // The system's own VFS takes no notice of a folder that cannot be synced here.
    if (told == SQLITE_OK && std::exchange(shim.isFolderBehind, false))
        shim.ask(Kind::SyncFolder);
    return told;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size)
{
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}

int lockFile(sqlite3_file* file, int lock)
{
    const int told = shimOf(file).ask(Kind::Lock).code;
    return told == SQLITE_OK ? realOf(file)->pMethods->xLock(realOf(file), lock) : told;
}

int unlockFile(sqlite3_file* file, int lock)
{
    return realOf(file)->pMethods->xUnlock(realOf(file), lock);
}

int checkReserved(sqlite3_file* file, int* isReserved)
{
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), isReserved);
}

int controlFile(sqlite3_file* file, int what, void* with)
{
    return realOf(file)->pMethods->xFileControl(realOf(file), what, with);
}

int sectorSizeOf(sqlite3_file* file)
{
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}

int characteristicsOf(sqlite3_file* file)
{
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

// Version 1: without shared memory and mapped pages, so that every write passes here.
constexpr sqlite3_io_methods kMethods{1,           closeFile,    readFile,          writeFile,  truncateFile,
                                      syncFile,    sizeOfFile,   lockFile,          unlockFile, checkReserved,
                                      controlFile, sectorSizeOf, characteristicsOf, nullptr,    nullptr,
                                      nullptr,     nullptr,      nullptr,           nullptr};

const ShimVfs& shimOf(const sqlite3_vfs* vfs)
{
    return *static_cast<const ShimVfs*>(vfs->pAppData);
}

int openFile(sqlite3_vfs* vfs, const char* path, sqlite3_file* file, int flags, int* flagsOut)
{
    const ShimVfs& shim = shimOf(vfs);
    const bool isNew = path && (flags & SQLITE_OPEN_CREATE) && ::access(path, F_OK) != 0;
    ShimFile& opened =
        *new (file) ShimFile{{nullptr}, &shim, path, isNew && (flags & SQLITE_OPEN_MAIN_JOURNAL)};
    if (isNew)
        if (const int told = opened.ask(Kind::Create).code; told != SQLITE_OK)
            return told;
    const int done = shim.real()->xOpen(shim.real(), path, opened.real(), flags, flagsOut);
    if (opened.real()->pMethods)
        opened.pMethods = &kMethods;
    return done;
}

int deleteFile(sqlite3_vfs* vfs, const char* path, int syncsFolder)
{
    const ShimVfs& shim = shimOf(vfs);
    if (const int told = shim.ask({Kind::Delete, path}).code; told != SQLITE_OK)
        return told;
    const int done = shim.real()->xDelete(shim.real(), path, 0);
    return done == SQLITE_OK && syncsFolder ? shim.ask({Kind::SyncFolder, path}).code : done;
}

} // namespace

ShimVfs::ShimVfs(Ask ask) : m_real{sqlite3_vfs_find(nullptr)}, m_vfs(*m_real), m_ask{std::move(ask)}
{
    m_vfs.iVersion = 1;
    m_vfs.szOsFile = static_cast<int>(sizeof(ShimFile)) + m_real->szOsFile;
    m_vfs.pNext = nullptr;
    m_vfs.zName = "rig-shim";
    m_vfs.pAppData = this;
    m_vfs.xOpen = openFile;
    m_vfs.xDelete = deleteFile;
    sqlite3_vfs_register(&m_vfs, 1);
}

ShimVfs::~ShimVfs()
{
    sqlite3_vfs_unregister(&m_vfs);
    sqlite3_vfs_register(m_real, 1);
}

} // namespace rig::test
