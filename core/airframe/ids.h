#pragma once

#include <array>
#include <bit>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace rig {

// 128 bits, time-ordered (UUID version 7, RFC 9562 section 5.7). Ids are global, so the facts of two files
// can later be joined as a union.
using IdBytes = std::array<std::uint8_t, 16>;

template <typename Tag> struct Id
{
    IdBytes bytes{};

    constexpr bool operator==(const Id&) const = default;
    // Byte by byte from the first, as two numbers: ids are looked up many times for each reading.
    constexpr std::strong_ordering operator<=>(const Id& other) const
    {
        const auto mine = std::bit_cast<Halves>(bytes);
        const auto others = std::bit_cast<Halves>(other.bytes);
        return mine[0] != others[0] ? bigEndian(mine[0]) <=> bigEndian(others[0])
                                    : bigEndian(mine[1]) <=> bigEndian(others[1]);
    }
    constexpr bool isNull() const { return bytes == IdBytes{}; }

private:
    using Halves = std::array<std::uint64_t, 2>;
    static constexpr std::uint64_t bigEndian(std::uint64_t half)
    {
        return std::endian::native == std::endian::big ? half : __builtin_bswap64(half);
    }
};

using AirframeId = Id<struct AirframeTag>;
using CouplingId = Id<struct CouplingTag>;
using FittingId = Id<struct FittingTag>;
using PersonId = Id<struct PersonTag>;
using GaugeId = Id<struct GaugeTag>;
using RecordId = Id<struct RecordTag>;
using ReadingId = Id<struct ReadingTag>;
using CheckId = Id<struct CheckTag>;
using EventId = Id<struct EventTag>;
using SurfaceId = Id<struct SurfaceTag>;
using QuestionId = Id<struct QuestionTag>;
using BaselineId = Id<struct BaselineTag>;
using PhotoId = Id<struct PhotoTag>;
using LessonRoundId = Id<struct LessonRoundTag>;
using StudyId = Id<struct StudyTag>;
using StudyPlaceId = Id<struct StudyPlaceTag>;
using SupervisedId = Id<struct SupervisedTag>;
using PracticeReadingId = Id<struct PracticeReadingTag>;
using FactId = Id<struct FactTag>; // where a fact's kind does not matter

// The time in an id: its first 48 bits, milliseconds since 1970.
constexpr std::int64_t millisecondsIn(const IdBytes& id)
{
    std::int64_t milliseconds = 0;
    for (std::size_t i = 0; i < 6; ++i)
        milliseconds = milliseconds << 8 | id[i];
    return milliseconds;
}

inline constexpr std::int64_t kMostMilliseconds = (std::int64_t{1} << 48) - 1;

// The canonical 8-4-4-4-12 text, for logs and exchange.
std::string textOf(const IdBytes& id);
// Empty when the text is not the canonical form.
std::optional<IdBytes> idFromText(std::string_view text);

} // namespace rig
