#include "core/store/copies.h"

#include "core/day_entry.h"
#include "core/store/create_file.h"
#include "core/store/raw_file.h"

#include <algorithm>
#include <fcntl.h>
#include <optional>
#include <unistd.h>
#include <utility>
#include <vector>

namespace rig {

namespace {

namespace fs = std::filesystem;

constexpr const char* kExtension = ".rigband";

bool syncToDisk(const fs::path& file)
{
    const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0)
        return false;
    const bool synced = ::fsync(handle) == 0;
    ::close(handle);
    return synced;
}

// Under another name first, so that a copy cut off half-way is never taken for one. It gets the file's time,
// by which an unchanged file is known later.
Outcome copyTo(const std::string& path, const fs::path& target, const std::stop_token& stop)
{
    std::error_code error;
    fs::create_directory(target.parent_path(), error);
    if (error)
        return Problem{ProblemKind::FolderReadOnly, error.message()};
    fs::path part = target;
    part += ".part";
    fs::remove(part, error);
    const auto changed = fs::last_write_time(path, error);
    const Outcome copied = copyPages(path, part.string(), stop);
    if (!copied) {
        fs::remove(part, error);
        return copied;
    }
    fs::last_write_time(part, changed, error);
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

fs::path copyOf(const fs::path& file, Day day)
{
    return copiesFolder(file) / (file.stem().string() + " " + dayText(day) + kExtension);
}

// The newest first.
std::vector<fs::path> everyDatedCopy(const fs::path& file)
{
    std::error_code error;
    std::vector<fs::path> copies;
    for (const fs::directory_entry& entry : fs::directory_iterator{copiesFolder(file), error})
        if (isDatedCopy(entry.path().filename().string(), file.stem().string()))
            copies.push_back(entry.path());
    std::ranges::sort(copies, std::greater{});
    return copies;
}

std::vector<fs::path> datedCopies(const fs::path& file, Day today)
{
    std::vector<fs::path> copies = everyDatedCopy(file);
    std::erase_if(copies, [last = copyOf(file, today)](const fs::path& copy) { return copy > last; });
    return copies;
}

std::uintmax_t sizeOf(const fs::path& file)
{
    std::error_code error;
    const std::uintmax_t size = fs::file_size(file, error);
    return error ? 0 : size;
}

bool isUnchangedSince(const fs::path& copy, const fs::path& file)
{
    std::error_code error;
    return sizeOf(copy) == sizeOf(file) &&
           fs::last_write_time(copy, error) == fs::last_write_time(file, error) && !error;
}

// So many of the newest stay that they fit into `room`, one at least.
void removeOldCopies(const std::vector<fs::path>& copies, std::uintmax_t room)
{
    std::error_code error;
    std::uintmax_t taken = 0;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        taken += sizeOf(copies[i]);
        if (i >= kDaysKept || (i > 0 && taken > room))
            fs::remove(copies[i], error);
    }
}

Result<fs::path> copyBefore(const std::string& path, const std::string& what, Day today,
                            const std::stop_token& stop)
{
    const fs::path file{path};
    const std::string name = file.stem().string() + " before " + what + " " + dayText(today);
    fs::path target = copiesFolder(file) / (name + kExtension);
    std::error_code error;
    for (int again = 2; fs::exists(target, error); ++again)
        target = copiesFolder(file) / (name + " " + std::to_string(again) + kExtension);
    if (const Outcome copied = copyTo(path, target, stop); !copied)
        return copied.problem();
    return target;
}

// The day in the name of a copy; what stands before it says what it was made for.
std::optional<Day> dayIn(const std::string& name, const std::string& stem)
{
    constexpr std::size_t kDayLength = 10;
    if (!name.starts_with(stem + " "))
        return std::nullopt;
    for (std::size_t at = stem.size() + 1; at + kDayLength <= name.size(); ++at)
        if (const auto day = parseDay(name.substr(at, kDayLength)))
            return day;
    return std::nullopt;
}

} // namespace

fs::path copiesFolder(const fs::path& file)
{
    return file.parent_path() / (file.stem().string() + "-copies");
}

Outcome keepTodaysCopy(const std::string& path, Day today, const std::stop_token& stop)
{
    std::error_code error;
    const fs::space_info space = fs::space(path, error);
    return keepTodaysCopy(path, today, error ? 0 : space.available, stop);
}

Outcome keepTodaysCopy(const std::string& path, Day today, std::uintmax_t free, const std::stop_token& stop)
{
    const fs::path file{path};
    const std::vector<fs::path> copies = datedCopies(file, today);
    const fs::path target = copyOf(file, today);
    const std::vector<fs::path> later = copiesOfLaterDays(file, today);
    const Outcome kept =
        later.empty() ? Outcome{Done{}} : Problem{ProblemKind::CopyOfLaterDay, later.front().filename()};
    std::error_code error;
    if (fs::exists(target, error) || (!copies.empty() && isUnchangedSince(copies.front(), file)))
        return kept;
    std::uintmax_t theirs = 0;
    for (const fs::path& copy : copies)
        theirs += sizeOf(copy);
    const std::uintmax_t room = (free + theirs) / kShareOfFree;
    if (sizeOf(file) > room)
        return Problem{ProblemKind::NoRoomForCopy,
                       std::to_string(sizeOf(file)) + " bytes, " + std::to_string(free) + " free"};
    if (const Outcome copied = copyTo(path, target, stop); !copied)
        return copied;
    removeOldCopies(datedCopies(file, today), room);
    return kept;
}

std::vector<fs::path> copiesOfLaterDays(const fs::path& file, Day today)
{
    std::vector<fs::path> copies = everyDatedCopy(file);
    std::erase_if(copies, [last = copyOf(file, today)](const fs::path& copy) { return copy <= last; });
    return copies;
}

std::vector<KeptCopy> keptCopies(const fs::path& file)
{
    std::error_code error;
    std::vector<KeptCopy> kept;
    for (const fs::directory_entry& entry : fs::directory_iterator{copiesFolder(file), error}) {
        const fs::path& path = entry.path();
        const auto day = dayIn(path.stem().string(), file.stem().string());
        if (day && path.extension() == kExtension)
            kept.push_back({path, *day, sizeOf(path)});
    }
    std::ranges::sort(kept, std::greater{}, [](const KeptCopy& copy) {
        return std::pair{copy.day, copy.path};
    });
    return kept;
}

Outcome copyIntoNew(const fs::path& from, const fs::path& into, Progress* progress)
{
    return makeUnderAnotherName(into.string(), [&](const std::string& making) -> Outcome {
        const Outcome made = copyPages(from.string(), making, progress);
        return !made || syncToDisk(making) ? made : Problem{ProblemKind::DiskFull, "cannot sync " + making};
    });
}

Result<fs::path> copyBeforeUpgrade(const std::string& path, Day today, int toVersion)
{
    return copyBefore(path, "version " + std::to_string(toVersion), today, {});
}

Result<fs::path> copyBeforeTakingIn(const std::string& path, Day today, const std::stop_token& stop)
{
    return copyBefore(path, "taking in", today, stop);
}

void takeBackCopy(const fs::path& copy)
{
    std::error_code ignored;
    fs::remove(copy, ignored);
    fs::remove(copy.parent_path(), ignored); // only where nothing else is in it
}

} // namespace rig
