#pragma once

#include "core/store/shapes.h"

#include <random>
#include <sstream>
#include <string>
#include <vector>

namespace rig::test {

// A source for hear(): whatever may stand in each column, drawn with a seed.
class DrawnCells
{
public:
    explicit DrawnCells(unsigned seed) : m_random{seed} {}

    template <typename Raw> std::optional<Raw> take(const ColumnInfo& column)
    {
        if (column.mayBeEmpty && drawn(0, 2) == 0)
            return std::nullopt;
        return next(column, static_cast<Raw*>(nullptr));
    }
    bool skipEmpty(int) { return drawn(0, 2) == 0; }
    void refuse(const ColumnInfo& column, const char* why)
    {
        refused.push_back(std::string{column.name} + why);
    }

    std::int64_t drawn(std::int64_t least, std::int64_t most)
    {
        return std::uniform_int_distribution<std::int64_t>{least, most}(m_random);
    }

    std::vector<std::string> refused;

private:
    std::optional<IdBytes> next(const ColumnInfo&, IdBytes*)
    {
        IdBytes id{};
        for (std::uint8_t& byte : id)
            byte = static_cast<std::uint8_t>(drawn(1, 255));
        return id;
    }
    std::optional<std::int64_t> next(const ColumnInfo& column, std::int64_t*)
    {
        return drawn(column.range.least, column.range.most);
    }
    std::optional<double> next(const ColumnInfo&, double*)
    {
        return static_cast<double>(drawn(-1'000'000, 1'000'000)) / 1024;
    }
    std::optional<std::string> next(const ColumnInfo& column, std::string*)
    {
        if (column.storage == Storage::Date)
            return "20" + std::to_string(drawn(10, 99)) + "-0" + std::to_string(drawn(1, 9)) + "-1" +
                   std::to_string(drawn(0, 9));
        if (column.word) {
            int words = 0;
            while (!column.word(words).empty())
                ++words;
            return std::string{column.word(static_cast<int>(drawn(0, words - 1)))};
        }
        std::string text;
        for (std::int64_t left = drawn(column.range.least, 12); left > 0; --left)
            text += left % 3 == 0 ? "Ł" : std::string(1, static_cast<char>(drawn(' ', '~')));
        return text;
    }

    std::mt19937_64 m_random;
};

// A sink for tell(): "column=value" in each line. Two facts are the same when these are.
struct WrittenCells
{
    std::ostringstream text;

    void put(const ColumnInfo& column, const std::optional<IdBytes>& raw)
    {
        text << column.name << '=' << (raw ? textOf(*raw) : "-") << '\n';
    }
    template <typename Raw> void put(const ColumnInfo& column, const std::optional<Raw>& raw)
    {
        text << column.name << '=';
        raw ? text << *raw : text << '-';
        text << '\n';
    }
};

template <typename Fact> std::string written(const Fact& fact)
{
    WrittenCells cells;
    cells.text.precision(17);
    if constexpr (IsAttached<Fact>)
        Shape<Fact>::columns.tell(fact, cells);
    else
        tell(fact, cells);
    if constexpr (HasChildren<Fact>)
        for (const auto& value : Shape<Fact>::children.all(fact))
            cells.put(Shape<Fact>::children.value, std::optional{Shape<Fact>::children.raw(value)});
    return cells.text.str();
}

} // namespace rig::test
