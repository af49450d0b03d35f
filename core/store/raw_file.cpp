#include "core/store/raw_file.h"

#include "core/store/settings.h"

#include <algorithm>
#include <array>
#include <functional>
#include <string_view>

namespace rig {

namespace {

constexpr int kBusyWait = 4000;    // milliseconds
constexpr int kPagesAtOnce = 512;  // 2 MB, some milliseconds
constexpr int kPauseWhenBusy = 20; // milliseconds
constexpr int kMostRounds = 4;
constexpr int kChangeCounterAt = 24; // SQLite file format, section 1.3

// As a URI; every byte that has a meaning there is written by its number.
std::string uriOf(const std::string& path)
{
    constexpr std::string_view kPlain = "/._-";
    constexpr std::string_view kDigits = "0123456789ABCDEF";
    std::string uri = "file:";
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        const bool isPlain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                             kPlain.find(c) != std::string_view::npos;
        if (isPlain)
            uri += c;
        else
            (uri += '%').append({kDigits[byte >> 4], kDigits[byte & 15]});
    }
    return uri + "?immutable=1";
}

struct FinishBackup
{
    void operator()(sqlite3_backup* backup) const { sqlite3_backup_finish(backup); }
};

// `goesOnAt` is told how many of how many pages are copied.
Outcome copyAll(sqlite3* from, sqlite3* into, const std::string& path,
                const std::function<bool(std::size_t, std::size_t)>& goesOnAt)
{
    const std::unique_ptr<sqlite3_backup, FinishBackup> backup{
        sqlite3_backup_init(into, "main", from, "main")};
    if (!backup)
        return problemFrom(into, path);
    const auto copied = [&backup](int left) {
        return static_cast<std::size_t>(std::max(0, sqlite3_backup_pagecount(backup.get()) - left));
    };
    for (long long steps = 0; goesOnAt(copied(sqlite3_backup_remaining(backup.get())), copied(0)); ++steps) {
        const int step = sqlite3_backup_step(backup.get(), kPagesAtOnce);
        if (step == SQLITE_DONE)
            return Done{};
        if (step == SQLITE_BUSY || step == SQLITE_LOCKED)
            sqlite3_sleep(kPauseWhenBusy);
        else if (step != SQLITE_OK)
            return problemFrom(into, path);
        const long long pages = sqlite3_backup_pagecount(backup.get());
        if (steps * kPagesAtOnce > (pages + 50LL * kPagesAtOnce) * kMostRounds)
            return Problem{ProblemKind::BusyElsewhere, "somebody kept writing while it was copied"};
    }
    return Problem{ProblemKind::Unexpected, "copying was ended"};
}

} // namespace

std::string asFileName(const std::string& path)
{
    return path.starts_with('/') ? path : "./" + path;
}

Result<RawFile> openToRead(const std::string& path, ReadWith with)
{
    sqlite3* file = nullptr;
    const int opened = with == ReadWith::Lock
                           ? sqlite3_open_v2(asFileName(path).c_str(), &file, SQLITE_OPEN_READONLY, nullptr)
                           : sqlite3_open_v2(uriOf(asFileName(path)).c_str(), &file,
                                             SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, nullptr);
    RawFile kept{file};
    if (opened != SQLITE_OK)
        return Problem{ProblemKind::CannotOpen, sqlite3_errmsg(file)};
    sqlite3_extended_result_codes(file, 1);
    sqlite3_busy_timeout(file, kBusyWait);
    if (!setUp(file))
        return problemFrom(file, path);
    return kept;
}

std::optional<std::uint32_t> changeCounter(sqlite3* file)
{
    sqlite3_file* raw = nullptr;
    std::array<unsigned char, 4> bytes{};
    if (sqlite3_file_control(file, "main", SQLITE_FCNTL_FILE_POINTER, &raw) != SQLITE_OK || !raw ||
        !raw->pMethods ||
        raw->pMethods->xRead(raw, bytes.data(), static_cast<int>(bytes.size()), kChangeCounterAt) !=
            SQLITE_OK)
        return std::nullopt;
    std::uint32_t counter = 0;
    for (const unsigned char byte : bytes)
        counter = counter << 8 | byte;
    return counter;
}

namespace {

Outcome copyAllPages(const std::string& from, const std::string& into,
                     const std::function<bool(std::size_t, std::size_t)>& goesOnAt)
{
    const Result<RawFile> source = openToRead(from, ReadWith::Lock);
    if (!source)
        return source.problem();
    sqlite3* made = nullptr;
    const int opened =
        sqlite3_open_v2(asFileName(into).c_str(), &made, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    const RawFile target{made};
    if (opened != SQLITE_OK)
        return problemFrom(made, into);
    // It is synced once at the end, and a half-made one is thrown away.
    if (sqlite3_exec(made, "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF", nullptr, nullptr,
                     nullptr) != SQLITE_OK)
        return problemFrom(made, into);
    return copyAll(source.value().get(), made, into, goesOnAt);
}

} // namespace

Outcome copyPages(const std::string& from, const std::string& into, const std::stop_token& stop)
{
    return copyAllPages(from, into, [&stop](std::size_t, std::size_t) { return !stop.stop_requested(); });
}

Outcome copyPages(const std::string& from, const std::string& into, Progress* progress)
{
    return copyAllPages(from, into,
                        [progress](std::size_t done, std::size_t of) { return goesOn(progress, done, of); });
}

} // namespace rig
