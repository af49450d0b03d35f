#include "core/store/passing_file.h"

#include <QByteArray>
#include <QCryptographicHash>
#include <QSysInfo>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <fstream>
#include <optional>
#include <string_view>
#include <system_error>
#include <unistd.h>
#include <vector>

namespace rig {

namespace {

namespace fs = std::filesystem;
using namespace std::string_view_literals;

constexpr std::string_view kMaking = ".making-";
constexpr std::string_view kReading = ".reading-";
constexpr std::array kBesideIt{"-journal"sv, "-wal"sv, "-shm"sv}; // what SQLite lays beside a file
constexpr std::chrono::hours kLeftAlone{24};
constexpr std::size_t kMarkLength = 8; // hexadecimal digits

// Tells this computer, and within it this numbering of processes (a container has one of its own), from
// others that reach the same folder; a digest, so that nothing of the computer can be read from it.
std::string markOfThisComputer()
{
    std::error_code ignored;
    const std::string numbering = std::filesystem::read_symlink("/proc/self/ns/pid", ignored).string();
    QCryptographicHash hash{QCryptographicHash::Sha256};
    for (const QByteArray& part : {QSysInfo::machineUniqueId(), QSysInfo::machineHostName().toUtf8(),
                                   QByteArray::fromStdString(numbering)}) {
        hash.addData(part);
        hash.addData(QByteArray(1, '\0'));
    }
    return hash.result().toHex().left(static_cast<qsizetype>(kMarkLength)).toStdString();
}

const std::string& ourMark()
{
    static const std::string mark = markOfThisComputer();
    return mark;
}

std::string named(const std::string& path, std::string_view sort)
{
    return path + std::string{sort} + std::to_string(::getpid()) + '-' + ourMark();
}

// Who made a file, as its name tells.
struct Maker
{
    pid_t process = 0;
    bool isOfThisComputer = false; // otherwise of another one, or of a Rigband that did not say
};

// The number is all that there is.
std::optional<pid_t> numberIn(std::string_view text)
{
    pid_t number = 0;
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool isWhole = failed == std::errc{} && end == text.data() + text.size();
    return isWhole && number > 0 && text.front() != '0' ? std::optional{number} : std::nullopt;
}

bool isAMark(std::string_view text)
{
    return text.size() == kMarkLength && text.find_first_not_of("0123456789abcdef") == text.npos;
}

// "PROCESS-MARK", and "PROCESS" alone of an earlier Rigband.
std::optional<Maker> makerFrom(std::string_view text)
{
    const auto hyphen = text.find('-');
    const auto process = numberIn(text.substr(0, hyphen));
    if (!process || hyphen == text.npos)
        return process ? std::optional{Maker{*process, false}} : std::nullopt;
    const std::string_view mark = text.substr(hyphen + 1);
    return isAMark(mark) ? std::optional{Maker{*process, mark == ourMark()}} : std::nullopt;
}

// Empty where it is no such name.
std::optional<Maker> makerIn(std::string_view name)
{
    for (const std::string_view beside : kBesideIt)
        if (name.ends_with(beside))
            name.remove_suffix(beside.size());
    if (const auto at = name.rfind(kMaking); at != name.npos && at > 0)
        if (const auto maker = makerFrom(name.substr(at + kMaking.size())))
            return maker;
    const auto at = name.rfind(kReading);
    const auto hyphen = name.rfind('-');
    if (at == name.npos || at == 0 || hyphen < at + kReading.size() || !numberIn(name.substr(hyphen + 1)))
        return std::nullopt;
    return makerFrom(name.substr(at + kReading.size(), hyphen - at - kReading.size()));
}

bool isLeftAlone(const fs::directory_entry& entry)
{
    std::error_code failed;
    const auto written = entry.last_write_time(failed);
    return !failed && fs::file_time_type::clock::now() - written > kLeftAlone;
}

// Empty, of a file that had not come far, or as SQLite begins a file (SQLite file format, section 1.3), its
// journal (section 3) and its log (section 4.1), or as a document of a whole file begins.
bool beginsAsOneOfOurs(const fs::path& path)
{
    std::array<char, 16> bytes{};
    std::ifstream file{path, std::ios::binary};
    if (!file)
        return false;
    file.read(bytes.data(), bytes.size());
    const std::string_view begins{bytes.data(), static_cast<std::size_t>(file.gcount())};
    return std::ranges::all_of(begins, [](char c) { return c == '\0'; }) ||
           begins.starts_with("SQLite format 3\0"sv) || begins.starts_with("\xd9\xd5\x05\xf9"sv) ||
           begins.starts_with("\x37\x7f\x06\x82"sv) || begins.starts_with("\x37\x7f\x06\x83"sv) ||
           begins.starts_with("{\"format\":\"rigb"sv);
}

bool isLeftBehind(const fs::directory_entry& entry)
{
    const auto maker = makerIn(entry.path().filename().string());
    std::error_code ignored;
    return maker && isGone(maker->process) && fs::is_regular_file(entry.symlink_status(ignored)) &&
           (maker->isOfThisComputer || (isLeftAlone(entry) && beginsAsOneOfOurs(entry.path())));
}

} // namespace

bool isGone(pid_t process)
{
    return ::kill(process, 0) != 0 && errno == ESRCH;
}

std::string makingName(const std::string& path)
{
    return named(path, kMaking);
}

bool isMakingName(const std::string& path)
{
    return path.ends_with(named({}, kMaking));
}

std::string freeReadingName(const std::string& path)
{
    const std::string name = named(path, kReading) + '-';
    std::error_code ignored;
    int number = 1;
    while (fs::exists(name + std::to_string(number), ignored))
        ++number;
    return name + std::to_string(number);
}

void removeLeftBehind(const fs::path& path)
{
    const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path{"."};
    std::vector<fs::path> left;
    std::error_code failed;
    for (fs::directory_iterator entry{folder, failed}; !failed && entry != fs::directory_iterator{};
         entry.increment(failed))
        if (isLeftBehind(*entry))
            left.push_back(entry->path());
    for (const fs::path& one : left)
        fs::remove(one, failed);
}

} // namespace rig
