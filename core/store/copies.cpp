#include "core/store/copies.h"

#include "core/day_entry.h"
#include "core/store/connection.h"
#include "core/store/values.h"

#include <algorithm>
#include <fcntl.h>
#include <unistd.h>

namespace rig {

namespace {

namespace fs = std::filesystem;

constexpr const char* kExtension = ".rigband";

// VACUUM INTO does not sync what it writes.
bool syncToDisk(const fs::path& file)
{
    const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0)
        return false;
    const bool synced = ::fsync(handle) == 0;
    ::close(handle);
    return synced;
}

// Under another name first, so that a copy cut off half-way is never taken for one.
Outcome copyTo(StoreFile::Connection& connection, const fs::path& target)
{
    std::error_code error;
    fs::create_directory(target.parent_path(), error);
    if (error)
        return Problem{ProblemKind::FolderReadOnly, error.message()};
    fs::path part = target;
    part += ".part";
    fs::remove(part, error);
    const Outcome copied = connection.run(QStringLiteral("VACUUM INTO ?"), {valueOf(part.string())});
    if (!copied) {
        fs::remove(part, error);
        return copied;
    }
    if (!syncToDisk(part))
        return Problem{ProblemKind::DiskFull, "cannot sync " + part.string()};
    fs::rename(part, target, error);
    if (error)
        return Problem{ProblemKind::Unexpected, error.message()};
    return Done{};
}

bool isDatedCopy(const std::string& name, const std::string& stem)
{
    const std::string_view rest = std::string_view{name}.substr(std::min(name.size(), stem.size() + 1));
    return name.starts_with(stem + " ") && rest.size() == 10 + std::string_view{kExtension}.size() &&
           rest.ends_with(kExtension) && rest[4] == '-' && rest[7] == '-' &&
           std::ranges::all_of(rest.substr(0, 10), [](char c) { return c == '-' || (c >= '0' && c <= '9'); });
}

void removeOldCopies(const fs::path& folder, const std::string& stem)
{
    std::error_code error;
    std::vector<fs::path> copies;
    for (const fs::directory_entry& entry : fs::directory_iterator{folder, error})
        if (isDatedCopy(entry.path().filename().string(), stem))
            copies.push_back(entry.path());
    std::ranges::sort(copies, std::greater{});
    for (std::size_t i = kDaysKept; i < copies.size(); ++i)
        fs::remove(copies[i], error);
}

} // namespace

fs::path copiesFolder(const fs::path& file)
{
    return file.parent_path() / (file.stem().string() + "-copies");
}

Outcome keepTodaysCopy(StoreFile::Connection& connection, Day today)
{
    const fs::path file{connection.path};
    const std::string stem = file.stem().string();
    const fs::path target = copiesFolder(file) / (stem + " " + dayText(today) + kExtension);
    std::error_code error;
    if (fs::exists(target, error))
        return Done{};
    const Outcome copied = copyTo(connection, target);
    if (copied)
        removeOldCopies(target.parent_path(), stem);
    return copied;
}

Outcome copyBeforeUpgrade(StoreFile::Connection& connection, Day today, int toVersion)
{
    const fs::path file{connection.path};
    const std::string name =
        file.stem().string() + " before version " + std::to_string(toVersion) + " " + dayText(today);
    fs::path target = copiesFolder(file) / (name + kExtension);
    std::error_code error;
    for (int again = 2; fs::exists(target, error); ++again)
        target = copiesFolder(file) / (name + " " + std::to_string(again) + kExtension);
    return copyTo(connection, target);
}

} // namespace rig
