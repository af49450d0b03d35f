#include "core/exchange/csv.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstddef>

namespace rig {

namespace {

bool endsLine(char c)
{
    return c == '\n' || c == '\r';
}

// What a spreadsheet takes for the beginning of a formula, or drops.
bool beginsFormula(std::string_view field)
{
    constexpr std::string_view kBeginnings = "=+-@\t\r";
    return !field.empty() && kBeginnings.find(field.front()) != std::string_view::npos;
}

// Figures stay figures: -0.05, +3, 1e-9.
bool isNumber(std::string_view field)
{
    if (field.starts_with('+'))
        field.remove_prefix(1);
    double value = 0;
    const auto [end, error] = std::from_chars(field.data(), field.data() + field.size(), value);
    return error == std::errc{} && end == field.data() + field.size() && std::isfinite(value);
}

// An apostrophe before a formula or before another such apostrophe, and nothing else.
bool isGuarded(std::string_view field)
{
    if (!field.starts_with('\''))
        return false;
    field.remove_prefix(1);
    return beginsFormula(field) || field.starts_with('\'');
}

std::string guarded(const std::string& field)
{
    const bool isFormula = beginsFormula(field) && !isNumber(field);
    return isFormula || isGuarded(field) ? "'" + field : field;
}

// Walks through the text once; `m_at` is the next byte.
class Reader
{
public:
    Reader(std::string_view text, char separator) : m_text{text}, m_separator{separator} {}

    bool atEnd() const { return m_at == m_text.size(); }

    CsvRow row()
    {
        CsvRow row;
        row.line = m_line;
        for (;;) {
            if (row.fields.size() > kMostRowFields)
                row.fields.pop_back();
            row.fields.push_back(atQuote() ? quoted(row) : std::string{});
            plain(row);
            if (isGuarded(row.fields.back()))
                row.fields.back().erase(0, 1);
            if (atEnd() || m_text[m_at] != m_separator)
                break;
            ++m_at;
        }
        if (!atEnd())
            lineEnd(nullptr);
        return row;
    }

private:
    bool atQuote() const { return !atEnd() && m_text[m_at] == '"'; }

    std::string quoted(CsvRow& row)
    {
        std::string field;
        ++m_at;
        while (!atEnd()) {
            if (endsLine(m_text[m_at])) {
                lineEnd(&field);
            } else if (m_text[m_at] != '"') {
                field += m_text[m_at++];
            } else {
                ++m_at;
                if (!atQuote())
                    return field;
                field += m_text[m_at++];
            }
        }
        row.unclosedQuote = true;
        return field;
    }

    // What stands unquoted: a whole field, or what wrongly follows a closing quote.
    void plain(CsvRow& row)
    {
        const std::size_t begin = m_at;
        while (!atEnd() && m_text[m_at] != m_separator && !endsLine(m_text[m_at]))
            ++m_at;
        const std::string_view text = m_text.substr(begin, m_at - begin);
        const bool behindQuote = begin > 0 && m_text[begin - 1] == '"' && !text.empty();
        row.strayQuote = row.strayQuote || behindQuote || text.find('"') != std::string_view::npos;
        row.fields.back() += text;
    }

    void lineEnd(std::string* into)
    {
        const std::size_t begin = m_at++;
        if (m_text[begin] == '\r' && !atEnd() && m_text[m_at] == '\n')
            ++m_at;
        if (into)
            *into += m_text.substr(begin, m_at - begin);
        ++m_line;
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    int m_line = 1;
};

std::string csvField(const std::string& field)
{
    const bool edgeBlank = !field.empty() && (field.front() == ' ' || field.back() == ' ');
    if (!edgeBlank && field.find_first_of(",;\"\r\n") == std::string::npos)
        return field;
    std::string quoted = "\"";
    for (const char c : field) {
        if (c == '"')
            quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

bool follows(unsigned char byte)
{
    return (byte & 0xC0) == 0x80;
}

// Bytes of the sequence that begins here; 0 when it is none. RFC 3629 section 4: no overlong forms, no
// surrogates, nothing beyond U+10FFFF.
std::size_t sequenceAt(std::string_view text)
{
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
    };
    const auto tail = [&](std::size_t i) { return follows(static_cast<unsigned char>(byte(i))); };
    const unsigned first = byte(0);
    if (first == 0)
        return 0;
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first <= 0xDF)
        return tail(1) ? 2 : 0;
    if (first >= 0xE0 && first <= 0xEF) {
        const bool second = !(first == 0xE0 && byte(1) < 0xA0) && !(first == 0xED && byte(1) > 0x9F);
        return second && tail(1) && tail(2) ? 3 : 0;
    }
    if (first >= 0xF0 && first <= 0xF4) {
        const bool second = !(first == 0xF0 && byte(1) < 0x90) && !(first == 0xF4 && byte(1) > 0x8F);
        return second && tail(1) && tail(2) && tail(3) ? 4 : 0;
    }
    return 0;
}

} // namespace

bool CsvRow::isBlank() const
{
    return std::ranges::all_of(fields, [](const std::string& field) { return withoutBlanks(field).empty(); });
}

bool isTooLarge(std::string_view text)
{
    return text.size() > kMostTableBytes || static_cast<std::size_t>(std::ranges::count_if(text, [](char c) {
                                                return c == '\n' || c == '\r';
                                            })) > 2 * kMostTableLines;
}

std::vector<CsvRow> csvRows(std::string_view text, char separator)
{
    std::vector<CsvRow> rows;
    Reader reader{text, separator};
    while (!reader.atEnd()) {
        CsvRow row = reader.row();
        if (!row.isBlank() || row.unclosedQuote || row.strayQuote)
            rows.push_back(std::move(row));
    }
    return rows;
}

std::string csvLine(const std::vector<std::string>& fields)
{
    std::string line;
    for (std::size_t i = 0; i < fields.size(); ++i)
        line += (i == 0 ? "" : ",") + csvField(guarded(fields[i]));
    return line + "\r\n";
}

std::string_view withoutBlanks(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

std::vector<int> linesNotUtf8(std::string_view text)
{
    std::vector<int> lines;
    int line = 1;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = sequenceAt(text.substr(at));
        if (length == 0 && (lines.empty() || lines.back() != line))
            lines.push_back(line);
        const bool crlf = text[at] == '\r' && at + 1 < text.size() && text[at + 1] == '\n';
        if (endsLine(text[at]) && !crlf)
            ++line;
        at += std::max<std::size_t>(length, 1);
    }
    return lines;
}

} // namespace rig
