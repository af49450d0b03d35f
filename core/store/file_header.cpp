#include "core/store/file_header.h"

#include "core/store/migrations.h"

#include <array>
#include <filesystem>
#include <fstream>
#include <limits>
#include <string_view>

namespace rig {

namespace {

constexpr std::string_view kMagic{"SQLite format 3\0", 16};
constexpr std::size_t kHeaderSize = 100;
constexpr std::size_t kWriteVersionAt = 18; // 2 = write-ahead log
constexpr std::size_t kUserVersionAt = 60;
constexpr std::size_t kApplicationIdAt = 68;

std::uint32_t bigEndian(const char* at)
{
    std::uint32_t value = 0;
    for (int i = 0; i < 4; ++i)
        value = value << 8 | static_cast<unsigned char>(at[i]);
    return value;
}

} // namespace

Result<FileHeader> readHeader(const std::string& path)
{
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found)
        return Problem{ProblemKind::NoSuchFile, path};
    if (status.type() != std::filesystem::file_type::regular)
        return Problem{ProblemKind::CannotOpen, "not a regular file: " + path};
    std::ifstream file{path, std::ios::binary};
    if (!file)
        return Problem{ProblemKind::CannotOpen, "may not be read: " + path};
    std::array<char, kHeaderSize> bytes{};
    file.read(bytes.data(), bytes.size());
    const std::string_view read{bytes.data(), static_cast<std::size_t>(file.gcount())};
    if (read.empty())
        return Problem{ProblemKind::DamagedFile, "the file is empty"};
    if (!kMagic.starts_with(read.substr(0, kMagic.size())))
        return Problem{ProblemKind::NotOurFile, "no database header"};
    if (read.size() < kHeaderSize)
        return Problem{ProblemKind::DamagedFile, "cut off within the header"};
    return FileHeader{bigEndian(&bytes[kApplicationIdAt]), bigEndian(&bytes[kUserVersionAt]),
                      bytes[kWriteVersionAt] == 2};
}

Outcome checkHeader(const FileHeader& header)
{
    if (header.applicationId != kApplicationId)
        return Problem{ProblemKind::NotOurFile, "application id " + std::to_string(header.applicationId)};
    if (header.userVersion > static_cast<std::uint32_t>(std::numeric_limits<std::int32_t>::max()))
        return Problem{ProblemKind::WrongVersion, "a layout version below zero"};
    if (header.userVersion > static_cast<std::uint32_t>(newestSchemaVersion()))
        return Problem{ProblemKind::NewerFile, "layout version " + std::to_string(header.userVersion) +
                                                   ", this program knows " +
                                                   std::to_string(newestSchemaVersion())};
    if (header.userVersion == 0)
        return Problem{ProblemKind::DamagedFile, "no layout version"};
    return Done{};
}

} // namespace rig
