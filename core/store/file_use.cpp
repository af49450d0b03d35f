#include "core/store/file_use.h"

#include <array>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace rig {

namespace {

std::string markFor(const std::string& path)
{
    struct stat file
    {
    };
    if (::stat(path.c_str(), &file) != 0)
        return {};
    std::array<char, 64> name{};
    std::snprintf(name.data(), name.size(), "rigband-%llx-%llx.open",
                  static_cast<unsigned long long>(file.st_dev), static_cast<unsigned long long>(file.st_ino));
    std::error_code failed;
    const std::filesystem::path folder = std::filesystem::temp_directory_path(failed);
    return failed ? std::string{} : (folder / name.data()).string();
}

// The handle still belongs to the file of that name: nobody has removed it in the meantime.
bool isStillThere(int handle, const std::string& mark)
{
    struct stat held
    {
    };
    struct stat named
    {
    };
    return ::fstat(handle, &held) == 0 && ::stat(mark.c_str(), &named) == 0 && held.st_ino == named.st_ino &&
           held.st_dev == named.st_dev;
}

int takeShared(const std::string& mark)
{
    constexpr int kTries = 8;
    for (int i = 0; i < kTries; ++i) {
        int handle = ::open(mark.c_str(), O_RDWR | O_CLOEXEC | O_NOFOLLOW);
        if (handle < 0) // another user's, in a folder of all, may be opened but not with O_CREAT
            handle = ::open(mark.c_str(), O_CREAT | O_RDWR | O_CLOEXEC | O_NOFOLLOW, 0666);
        if (handle < 0)
            return -1;
        if (::flock(handle, LOCK_SH) == 0 && isStillThere(handle, mark))
            return handle;
        ::close(handle);
    }
    return -1;
}

} // namespace

FileUse::FileUse(const std::string& path) : m_mark{markFor(path)}
{
    if (!m_mark.empty())
        m_handle = takeShared(m_mark);
}

bool FileUse::isSharedWithOthers() const
{
    if (m_handle < 0)
        return false;
    // A shared lock becomes one of our own only when nobody else holds any; that the old one is given up for
    // a moment harms nobody, since nothing but this question rests on it.
    const bool isAlone = ::flock(m_handle, LOCK_EX | LOCK_NB) == 0;
    ::flock(m_handle, LOCK_SH);
    return !isAlone;
}

FileUse::~FileUse()
{
    if (m_handle < 0)
        return;
    // Held alone while the name goes: whoever waits for the lock finds out and makes the file anew.
    if (::flock(m_handle, LOCK_EX | LOCK_NB) == 0)
        ::unlink(m_mark.c_str());
    ::close(m_handle);
}

} // namespace rig
