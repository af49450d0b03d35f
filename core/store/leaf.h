#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/surface.h"
#include "core/day_entry.h"
#include "core/measure/gap.h"
#include "core/store/kind_words.h"

#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <type_traits>

namespace rig {

// What a cell holds, whatever the database calls it.
enum class Storage { Id, Integer, Real, Text, Word, Date };

// Numbers: the least and the most. Texts: the fewest and the most bytes.
struct Range
{
    std::int64_t least = std::numeric_limits<std::int64_t>::min();
    std::int64_t most = std::numeric_limits<std::int64_t>::max();
};

inline constexpr std::int64_t kLongestText = 100'000; // bytes; a page of a manual has 5,000
inline constexpr Range kAnyText{0, kLongestText};
inline constexpr Range kSomeText{1, kLongestText};
inline constexpr Range kAnyNumber{-1'000'000'000, 1'000'000'000};
inline constexpr Range kCount{0, 1'000'000};
inline constexpr Range kOrder{-1'000'000, 1'000'000};
inline constexpr Range kGapRange{0, kWidestGap.inMicrometres()};
inline constexpr Range kSize{1, kWidestGap.inMicrometres()};
inline constexpr Range kDeflection{0, 10'000'000};                 // thousandths
inline constexpr Range kDistance{1, 10'000'000};                   // micrometres
inline constexpr Range kAnyTime{-62'135'596'800, 253'402'300'799}; // the years 1 to 9999
inline constexpr Range kOffset{-86'400, 86'400};

// How a value of ours becomes a raw cell and back. made() is empty when nothing of ours is written so.
template <typename Value, typename = void> struct Leaf;

template <> struct Leaf<std::string>
{
    using Raw = std::string;
    static constexpr Storage kStorage = Storage::Text;
    static constexpr Range kRange = kAnyText;
    static Raw raw(const std::string& text) { return text; }
    static std::optional<std::string> made(Raw text) { return text; }
};

template <> struct Leaf<Day>
{
    using Raw = std::string;
    static constexpr Storage kStorage = Storage::Date;
    static constexpr Range kRange{10, 10};
    static Raw raw(Day day) { return dayText(day); }
    static std::optional<Day> made(const Raw& text) { return parseDay(text); }
};

template <typename Kind> struct Leaf<Kind, std::enable_if_t<std::is_enum_v<Kind>>>
{
    using Raw = std::string;
    static constexpr Storage kStorage = Storage::Word;
    static constexpr Range kRange{1, 40};
    static Raw raw(Kind kind) { return std::string{wordOf(kind)}; }
    static std::optional<Kind> made(const Raw& word) { return kindFrom<Kind>(word); }
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

// Whether a raw cell lies in its range. A number beyond it is refused and never cut to fit.
inline bool lies(const IdBytes&, const Range&)
{
    return true;
}
inline bool lies(std::int64_t number, const Range& range)
{
    return range.least <= number && number <= range.most;
}
inline bool lies(double number, const Range& range)
{
    return std::isfinite(number) && static_cast<double>(range.least) <= number &&
           number <= static_cast<double>(range.most);
}
inline bool lies(const std::string& text, const Range& range)
{
    return lies(static_cast<std::int64_t>(text.size()), range);
}

} // namespace rig
