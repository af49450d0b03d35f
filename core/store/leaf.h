#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/surface.h"
#include "core/day_entry.h"
#include "core/lesson/photo.h"
#include "core/measure/gap.h"
#include "core/plain_text.h"
#include "core/store/columns.h"
#include "core/store/kind_words.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace rig {

// How a value of ours becomes a raw cell and back: an IdBytes, an int64_t, a double, or a text, which is read
// as a string_view. made() is empty when nothing of ours is written so.
template <typename Value, typename = void> struct Leaf;

template <> struct Leaf<std::string>
{
    using Raw = std::string_view;
    static constexpr Storage kStorage = Storage::Text;
    static constexpr Range kRange = kAnyText;
    static Raw raw(const std::string& text) { return text; }
    // An older file may hold what nobody sees and what turns the order of figures around it.
    static std::optional<std::string> made(Raw text) { return withPlaceholders(text); }
};

template <> struct Leaf<Jpeg>
{
    using Raw = BytesView;
    static constexpr Storage kStorage = Storage::Bytes;
    static constexpr Range kRange = kImageBytes;
    static Raw raw(const Jpeg& image) { return {image.bytes}; }
    static std::optional<Jpeg> made(Raw raw) { return Jpeg{std::string{raw.bytes}}; }
};

template <> struct Leaf<Day>
{
    using Raw = std::string_view;
    static constexpr Storage kStorage = Storage::Date;
    static constexpr Range kRange{10, 10};
    static std::string raw(Day day) { return dayText(day); }
    static std::optional<Day> made(Raw text) { return parseDay(text); }
};

template <typename Kind> struct Leaf<Kind, std::enable_if_t<std::is_enum_v<Kind>>>
{
    using Raw = std::string_view;
    static constexpr Storage kStorage = Storage::Word;
    static constexpr Range kRange{1, 40};
    static Raw raw(Kind kind) { return wordOf(kind); }
    static std::optional<Kind> made(Raw word) { return kindFrom<Kind>(word); }
};

template <typename Number>
struct Leaf<Number, std::enable_if_t<std::is_integral_v<Number> && !std::is_same_v<Number, bool>>>
{
    using Raw = std::int64_t;
    static constexpr Storage kStorage = Storage::Integer;
    static constexpr Range kRange{std::numeric_limits<Number>::min(), std::numeric_limits<Number>::max()};
    static Raw raw(Number number) { return number; }
    static std::optional<Number> made(Raw number) { return static_cast<Number>(number); }
};

template <> struct Leaf<bool>
{
    using Raw = std::int64_t;
    static constexpr Storage kStorage = Storage::Integer;
    static constexpr Range kRange{0, 1};
    static Raw raw(bool flag) { return flag ? 1 : 0; }
    static std::optional<bool> made(Raw number) { return number != 0; }
};

template <> struct Leaf<Gap>
{
    using Raw = std::int64_t;
    static constexpr Storage kStorage = Storage::Integer;
    static constexpr Range kRange = kGapRange;
    static Raw raw(Gap gap) { return gap.inMicrometres(); }
    static std::optional<Gap> made(Raw um) { return Gap::micrometres(static_cast<std::int32_t>(um)); }
};

template <> struct Leaf<Deflection>
{
    using Raw = std::int64_t;
    static constexpr Storage kStorage = Storage::Integer;
    static constexpr Range kRange = kDeflection;
    static Raw raw(Deflection deflection) { return deflection.thousandths; }
    static std::optional<Deflection> made(Raw number)
    {
        return Deflection{static_cast<std::int32_t>(number)};
    }
};

template <> struct Leaf<double>
{
    using Raw = double;
    static constexpr Storage kStorage = Storage::Real;
    static constexpr Range kRange = kAnyNumber;
    static Raw raw(double number) { return number; }
    static std::optional<double> made(Raw number) { return number; }
};

template <typename Tag> struct Leaf<Id<Tag>>
{
    using Raw = IdBytes;
    static constexpr Storage kStorage = Storage::Id;
    static constexpr Range kRange{};
    static Raw raw(const Id<Tag>& id) { return id.bytes; }
    static std::optional<Id<Tag>> made(const Raw& bytes) { return Id<Tag>{bytes}; }
};

} // namespace rig
