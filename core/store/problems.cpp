#include "core/store/problems.h"

#include <fcntl.h>
#include <filesystem>
#include <sqlite3.h>
#include <unistd.h>

namespace rig {

namespace {

ProblemKind kindOf(int code, const std::string& path)
{
    if (code == SQLITE_READONLY_DBMOVED)
        return ProblemKind::NoSuchFile;
    if (code == SQLITE_READONLY_ROLLBACK)
        return ProblemKind::SaveBrokenOff;
    switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return ProblemKind::BusyElsewhere;
    case SQLITE_FULL:
        return ProblemKind::DiskFull;
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
        return ProblemKind::FactRefused;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_TOOBIG: // what we write ourselves is measured before
        return ProblemKind::DamagedFile;
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return folderRefusesWriting(path) ? ProblemKind::FolderReadOnly : ProblemKind::FileReadOnly;
    case SQLITE_CANTOPEN:
        return folderRefusesWriting(path) ? ProblemKind::FolderReadOnly : ProblemKind::CannotOpen;
    default:
        return ProblemKind::Unexpected;
    }
}

// The effective user decides, unlike with access(2).
bool refusesWriting(const std::filesystem::path& place, int mode)
{
    return ::faccessat(AT_FDCWD, place.c_str(), mode, AT_EACCESS) != 0;
}

} // namespace

bool folderRefusesWriting(const std::string& path)
{
    const std::filesystem::path folder = std::filesystem::path{path}.parent_path();
    return refusesWriting(folder.empty() ? std::filesystem::path{"."} : folder, W_OK | X_OK);
}

bool fileRefusesWriting(const std::string& path)
{
    return refusesWriting(path, W_OK);
}

Problem problemFrom(sqlite3* database, const std::string& path)
{
    const int code = sqlite3_extended_errcode(database);
    return Problem{kindOf(code, path), "SQLite " + std::to_string(code) + ": " + sqlite3_errmsg(database)};
}

} // namespace rig
