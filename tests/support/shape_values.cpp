#include "tests/support/shape_values.h"

#include <sstream>

namespace rig::test {

std::int64_t DrawnCells::drawn(std::int64_t least, std::int64_t most)
{
    return std::uniform_int_distribution<std::int64_t>{least, most}(m_random);
}

std::optional<IdBytes> DrawnCells::takeId(const ColumnInfo& column)
{
    if (staysEmpty(column))
        return std::nullopt;
    IdBytes id{};
    for (std::uint8_t& byte : id)
        byte = static_cast<std::uint8_t>(drawn(1, 255));
    return id;
}

std::optional<std::int64_t> DrawnCells::takeInteger(const ColumnInfo& column)
{
    if (staysEmpty(column))
        return std::nullopt;
    return drawn(column.range.least, column.range.most);
}

std::optional<double> DrawnCells::takeReal(const ColumnInfo& column)
{
    if (staysEmpty(column))
        return std::nullopt;
    return static_cast<double>(drawn(-1'000'000, 1'000'000)) / 1024;
}

std::optional<std::string_view> DrawnCells::takeText(const ColumnInfo& column)
{
    if (staysEmpty(column))
        return std::nullopt;
    m_text = text(column);
    return m_text;
}

std::optional<BytesView> DrawnCells::takeBytes(const ColumnInfo& column)
{
    m_text.assign(static_cast<std::size_t>(drawn(column.range.least, 300)), '\0');
    for (char& byte : m_text)
        byte = static_cast<char>(drawn(0, 255));
    return BytesView{m_text};
}

bool DrawnCells::skipEmpty(int)
{
    return drawn(0, 2) == 0;
}

void DrawnCells::refuse(const ColumnInfo&, const char*)
{
    ++m_refusals;
}

std::string DrawnCells::text(const ColumnInfo& column)
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

namespace {

class WrittenCells final : public CellSink
{
public:
    WrittenCells() { m_text.precision(17); }

    void put(const ColumnInfo& column, const std::optional<IdBytes>& id) override
    {
        line(column, id ? textOf(*id) : "-");
    }
    void put(const ColumnInfo& column, const std::optional<std::int64_t>& number) override
    {
        number ? line(column, *number) : line(column, '-');
    }
    void put(const ColumnInfo& column, const std::optional<double>& number) override
    {
        number ? line(column, *number) : line(column, '-');
    }
    void put(const ColumnInfo& column, const std::optional<std::string_view>& text) override
    {
        line(column, text.value_or("-"));
    }
    void put(const ColumnInfo& column, const std::optional<BytesView>& bytes) override
    {
        line(column, bytes ? bytes->bytes : "-");
    }
    std::string text() const { return m_text.str(); }

private:
    template <typename Value> void line(const ColumnInfo& column, const Value& value)
    {
        m_text << column.name << '=' << value << '\n';
    }

    std::ostringstream m_text;
};

} // namespace

std::string written(const AnyFact& fact)
{
    WrittenCells cells;
    fact.tell(cells);
    fact.tellChildren(cells);
    return cells.text();
}

} // namespace rig::test
