#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <string_view>

namespace rig {

// 128 bits, time-ordered (UUID version 7, RFC 9562 section 5.7). Ids are global, so the facts of two files
// can later be joined as a union.
using IdBytes = std::array<std::uint8_t, 16>;

template <typename Tag> struct Id
{
    IdBytes bytes{};

    constexpr auto operator<=>(const Id&) const = default;
    constexpr bool isNull() const { return bytes == IdBytes{}; }
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
using FactId = Id<struct FactTag>; // where a fact's kind does not matter

// The canonical 8-4-4-4-12 text, for logs and exchange.
std::string textOf(const IdBytes& id);
// Empty when the text is not the canonical form.
std::optional<IdBytes> idFromText(std::string_view text);

// Makes ids in strictly rising order. Seeded by the caller: the program from the system's entropy, tests and
// the demo with a fixed number.
class IdSource
{
public:
    explicit IdSource(std::uint64_t seed) : m_random{seed} {}

    IdBytes next(std::int64_t utcMilliseconds);

private:
    std::mt19937_64 m_random;
    std::int64_t m_lastMilliseconds = 0;
    std::uint16_t m_counter = 0; // the 12 bits rand_a, raised within one millisecond
};

} // namespace rig
