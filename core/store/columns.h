#pragma once

#include "core/airframe/ids.h"
#include "core/measure/gap.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <string_view>

namespace rig {

// What a cell holds, whatever the database calls it.
enum class Storage { Id, Integer, Real, Text, Word, Date, Bytes };

// What a cell of bytes holds; lent, like a text.
struct BytesView
{
    std::string_view bytes;
};

// Numbers: the least and the most. Texts and bytes: the fewest and the most bytes.
struct Range
{
    std::int64_t least = std::numeric_limits<std::int64_t>::min();
    std::int64_t most = std::numeric_limits<std::int64_t>::max();
};

inline constexpr std::int64_t kLongestText = 100'000; // bytes; a page of a manual has 5,000
inline constexpr Range kAnyText{0, kLongestText};
inline constexpr Range kName{0, 1'000};
inline constexpr Range kSomeText{1, kLongestText};
inline constexpr Range kImageBytes{1, 4'000'000};
inline constexpr Range kAnyNumber{-1'000'000'000, 1'000'000'000};
inline constexpr Range kCount{0, 1'000'000};
inline constexpr Range kCelsius{-60, 60};
inline constexpr Range kMonths{1, 120};
inline constexpr Range kPixels{1, 1600}; // of the longest edge
inline constexpr Range kRepeats{2, 20};
inline constexpr Range kSpan{100, 6'000}; // centimetres
inline constexpr Range kWingPanels{1, 8};
inline constexpr Range kOrder{-1'000'000, 1'000'000};
inline constexpr Range kGapRange{0, kWidestGap.inMicrometres()};
inline constexpr Range kSize{1, kWidestGap.inMicrometres()};
inline constexpr Range kDeflection{0, 10'000'000};                 // thousandths
inline constexpr Range kDistance{1, 10'000'000};                   // micrometres
inline constexpr Range kAnyTime{-62'135'596'800, 253'402'300'799}; // the years 1 to 9999
inline constexpr Range kOffset{-86'400, 86'400};

// Whether a raw cell lies in its range. A number beyond it is refused and never cut to fit.
bool lies(const IdBytes& id, const Range& range);
bool lies(std::int64_t number, const Range& range);
bool lies(double number, const Range& range);
bool lies(std::string_view text, const Range& range);
bool lies(BytesView bytes, const Range& range);

struct ColumnInfo
{
    const char* name;
    Storage storage;
    bool mayBeEmpty;
    const char* refersTo; // the table whose ids stand here; null when it is no id of another fact
    Range range;
    std::string_view (*word)(int) = nullptr; // of a Word, each that may stand here; empty beyond the last
};

// What a fact tells its cells to, in the order of its columns: the values of an INSERT, a check, a string of
// canonical bytes. An empty cell comes as an empty one of its column's type.
class CellSink
{
public:
    virtual ~CellSink() = default;

    virtual void put(const ColumnInfo& column, const std::optional<IdBytes>& id) = 0;
    virtual void put(const ColumnInfo& column, const std::optional<std::int64_t>& number) = 0;
    virtual void put(const ColumnInfo& column, const std::optional<double>& number) = 0;
    virtual void put(const ColumnInfo& column, const std::optional<std::string_view>& text) = 0;
    virtual void put(const ColumnInfo& column, const std::optional<BytesView>& bytes) = 0;
};

// What a fact hears its cells from, in the same order. Each gives the next cell: empty where nothing stands
// in it, and where what stands there cannot stand there, which the source then knows by itself.
class CellSource
{
public:
    virtual ~CellSource() = default;

    virtual std::optional<IdBytes> takeId(const ColumnInfo& column) = 0;
    virtual std::optional<std::int64_t> takeInteger(const ColumnInfo& column) = 0;
    virtual std::optional<double> takeReal(const ColumnInfo& column) = 0;
    // Holds until the next cell is taken.
    virtual std::optional<std::string_view> takeText(const ColumnInfo& column) = 0;
    virtual std::optional<BytesView> takeBytes(const ColumnInfo& column) = 0;

    // True, and so many cells on, when all of them are empty.
    virtual bool skipEmpty(int cells) = 0;
    // What was taken last is nothing that a member can be.
    virtual void refuse(const ColumnInfo& column, const char* why) = 0;
};

} // namespace rig
