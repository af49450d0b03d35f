#include "core/exchange/reading_table.h"

#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "core/measure/gap_entry.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <optional>

namespace rig {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
constexpr std::array<const char*, 5> kNeeded = {"airframe", "coupling", "date", "enters_mm", "person"};
constexpr std::array kStates = {RowState::Locked, RowState::PartSeated, RowState::Baseline};
constexpr std::size_t kLongestRepeat = 3; // figures

std::string lowered(std::string_view text)
{
    std::string lower{withoutBlanks(text)};
    std::ranges::transform(lower, lower.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return lower;
}

bool isFigures(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

std::string firstLine(std::string_view text)
{
    return std::string{text.substr(0, text.find_first_of("\r\n"))};
}

std::string headerLine(std::string_view text)
{
    return firstLine(text.substr(text.find_first_not_of(" \t\r\n")));
}

std::string joined(const CsvRow& row, char separator)
{
    std::string text;
    for (std::size_t i = 0; i < row.fields.size(); ++i)
        text += (i == 0 ? std::string{} : std::string{separator}) + row.fields[i];
    return firstLine(text);
}

// Which column stands where.
class Header
{
public:
    Header(const CsvRow& row, std::vector<BadRow>& bad) : m_count{row.fields.size()}
    {
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            const std::string name = lowered(row.fields[i]);
            if (std::ranges::count(readingColumns(), name) == 0)
                bad.push_back({row.line, RowProblem::UnknownColumn, row.fields[i], {}});
            else if (!m_places.emplace(name, i).second)
                bad.push_back({row.line, RowProblem::ColumnTwice, row.fields[i], {}});
        }
        for (const char* name : kNeeded)
            if (!m_places.contains(name))
                bad.push_back({row.line, RowProblem::MissingColumn, name, {}});
    }

    std::size_t count() const { return m_count; }
    std::string_view field(const CsvRow& row, const std::string& name) const
    {
        const auto place = m_places.find(name);
        return place == m_places.end() ? std::string_view{} : std::string_view{row.fields[place->second]};
    }

private:
    std::size_t m_count;
    std::map<std::string, std::size_t> m_places;
};

// Understands one row; every field that cannot be taken is a bad row of its own.
class RowReader
{
public:
    RowReader(const Header& header, const CsvRow& row, std::vector<BadRow>& bad)
        : m_header{header}, m_row{row}, m_bad{bad}
    {
    }

    TableRow read()
    {
        TableRow row;
        row.line = m_row.line;
        row.airframe = needed("airframe", RowProblem::NoAirframe);
        row.coupling = needed("coupling", RowProblem::NoCoupling);
        row.person = needed("person", RowProblem::NoPerson);
        row.gauge = field("gauge");
        row.note = std::string{m_header.field(m_row, "note")};
        row.second = field("second");
        readDay(row);
        readInterval(row);
        readState(row);
        readRepeat(row);
        return row;
    }

private:
    std::string field(const std::string& column) const
    {
        return std::string{withoutBlanks(m_header.field(m_row, column))};
    }

    void refuse(RowProblem problem, const std::string& text, const std::string& column)
    {
        m_bad.push_back({m_row.line, problem, text, column});
    }

    std::string needed(const std::string& column, RowProblem whenEmpty)
    {
        std::string text = field(column);
        if (text.empty())
            refuse(whenEmpty, text, column);
        return text;
    }

    void readDay(TableRow& row)
    {
        const std::string text = needed("date", RowProblem::NoDay);
        const auto day = parseDay(text);
        if (day)
            row.day = *day;
        else if (!text.empty())
            refuse(RowProblem::NotADay, text, "date");
    }

    void readInterval(TableRow& row)
    {
        const std::size_t before = m_bad.size();
        const auto enters = figure("enters_mm");
        const auto refuses = figure("refuses_mm");
        if (m_bad.size() > before)
            return;
        row.interval = GapInterval{enters.value_or(Gap{}), refuses};
        const std::string both = field("enters_mm") + "\u2013" + field("refuses_mm");
        if (row.interval == GapInterval{})
            refuse(RowProblem::NoGap, field("enters_mm"), "enters_mm");
        else if (refuses && *refuses == row.interval.enters)
            refuse(RowProblem::SameBounds, both, "refuses_mm");
        else if (problemOf(row.interval) != IntervalProblem::None)
            refuse(RowProblem::Reversed, both, "refuses_mm");
    }

    // Empty when nothing stands there, and when it is refused.
    std::optional<Gap> figure(const std::string& column)
    {
        const std::string text = field(column);
        const GapEntry entry = parseGap(text);
        if (const Gap* gap = std::get_if<Gap>(&entry))
            return *gap;
        switch (std::get<EntryProblem>(entry)) {
        case EntryProblem::Empty:
            break;
        case EntryProblem::NotANumber:
            refuse(isNotFinite(text) ? RowProblem::NotFinite : RowProblem::NotANumber, text, column);
            break;
        case EntryProblem::TwoSeparators:
            refuse(RowProblem::TwoSeparators, text, column);
            break;
        case EntryProblem::TooManyDecimals:
            refuse(RowProblem::TooFine, text, column);
            break;
        case EntryProblem::Negative:
            refuse(RowProblem::Negative, text, column);
            break;
        case EntryProblem::TooLarge:
            refuse(RowProblem::TooWide, text, column);
            break;
        }
        return std::nullopt;
    }

    // As other programs write a figure that is none.
    static bool isNotFinite(const std::string& text)
    {
        std::string word = lowered(text);
        if (word.starts_with('-') || word.starts_with('+'))
            word.erase(0, 1);
        return word == "nan" || word == "inf" || word == "infinity" || word == "#num!" || word == "#div/0!" ||
               word == "#n/a";
    }

    void readState(TableRow& row)
    {
        const std::string text = field("state");
        if (text.empty())
            return;
        const auto state =
            std::ranges::find_if(kStates, [&](RowState known) { return wordOf(known) == lowered(text); });
        if (state == kStates.end())
            refuse(RowProblem::UnknownState, text, "state");
        else
            row.state = *state;
    }

    void readRepeat(TableRow& row)
    {
        const std::string text = field("repeat");
        if (text.empty())
            return;
        int repeat = 0;
        if (isFigures(text) && text.size() <= kLongestRepeat)
            for (const char c : text)
                repeat = repeat * 10 + (c - '0');
        if (repeat < 1)
            refuse(RowProblem::NotARepeat, text, "repeat");
        else
            row.repeat = repeat;
    }

    const Header& m_header;
    const CsvRow& m_row;
    std::vector<BadRow>& m_bad;
};

// A reading that does not stand is no reading: it is kept where it was taken, and not brought in anew.
bool isSetAside(const Header& header, const CsvRow& row, std::vector<BadRow>& bad)
{
    const std::string aside{withoutBlanks(header.field(row, "set_aside"))};
    if (aside.empty())
        return false;
    const std::string word = lowered(aside);
    if (word == wordOf(RowAside::Corrected) || word == wordOf(RowAside::Struck))
        return true;
    bad.push_back({row.line, RowProblem::UnknownAside, aside, "set_aside"});
    return false;
}

// Commas or semicolons in the header, whose names hold neither; 0 when it has both.
char separatorOf(const std::string& header)
{
    const bool commas = header.find(',') != std::string::npos;
    const bool semicolons = header.find(';') != std::string::npos;
    if (commas && semicolons)
        return 0;
    return semicolons ? ';' : ',';
}

// More fields than columns, and two figures side by side as 0,55 leaves them.
bool isPartedByDecimalComma(const CsvRow& row, std::size_t columns, char separator)
{
    if (separator != ',' || row.fields.size() <= columns)
        return false;
    return std::ranges::adjacent_find(row.fields, [](const std::string& whole, const std::string& decimals) {
               return isFigures(withoutBlanks(whole)) && isFigures(withoutBlanks(decimals));
           }) != row.fields.end();
}

std::optional<RowProblem> shapeProblem(const CsvRow& row, std::size_t columns, char separator)
{
    if (row.unclosedQuote)
        return RowProblem::UnclosedQuote;
    if (row.strayQuote)
        return RowProblem::StrayQuote;
    if (row.fields.size() == columns)
        return std::nullopt;
    return isPartedByDecimalComma(row, columns, separator) ? RowProblem::DecimalComma
                                                           : RowProblem::WrongFieldCount;
}

void readRows(const std::vector<CsvRow>& rows, char separator, ReadingTable& table)
{
    const CsvRow& names = rows.front();
    if (const auto problem = shapeProblem(names, names.fields.size(), separator)) {
        table.bad.push_back({names.line, *problem, joined(names, separator), {}});
        return;
    }
    const Header header{names, table.bad};
    if (!table.bad.empty())
        return;
    if (rows.size() == 1)
        table.bad.push_back({names.line, RowProblem::NoRows, {}, {}});
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (const auto problem = shapeProblem(rows[i], header.count(), separator)) {
            table.bad.push_back({rows[i].line, *problem, joined(rows[i], separator), {}});
            continue;
        }
        const std::size_t before = table.bad.size();
        if (isSetAside(header, rows[i], table.bad)) {
            ++table.setAside;
            continue;
        }
        if (table.bad.size() > before)
            continue;
        TableRow row = RowReader{header, rows[i], table.bad}.read();
        if (table.bad.size() == before)
            table.rows.push_back(std::move(row));
    }
}

} // namespace

ReadingTable parseReadings(std::string_view bytes)
{
    ReadingTable table;
    if (bytes.starts_with(kByteOrderMark))
        bytes.remove_prefix(kByteOrderMark.size());
    for (const int line : linesNotUtf8(bytes))
        table.bad.push_back({line, RowProblem::NotUtf8, {}, {}});
    if (!table.bad.empty())
        return table;
    if (withoutBlanks(bytes).empty()) {
        table.bad.push_back({1, RowProblem::Empty, {}, {}});
        return table;
    }
    const std::string header = headerLine(bytes);
    const char separator = separatorOf(header);
    const std::vector<CsvRow> rows = csvRows(bytes, separator == 0 ? ',' : separator);
    if (rows.empty())
        table.bad.push_back({1, RowProblem::Empty, {}, {}});
    else if (separator == 0)
        table.bad.push_back({rows.front().line, RowProblem::MixedSeparators, header, {}});
    else
        readRows(rows, separator, table);
    return table;
}

const std::vector<std::string>& readingColumns()
{
    static const std::vector<std::string> kColumns = {
        "airframe", "coupling", "date",   "enters_mm", "refuses_mm",    "gauge",     "person",    "state",
        "note",     "repeat",   "second", "set_aside", "set_aside_why", "copied_by", "from_paper"};
    return kColumns;
}

std::string_view wordOf(RowAside aside)
{
    return aside == RowAside::Corrected ? "corrected" : "struck";
}

std::string_view wordOf(RowState state)
{
    switch (state) {
    case RowState::Locked:
        return "locked";
    case RowState::PartSeated:
        return "part-seated";
    case RowState::Baseline:
        return "baseline";
    }
    return {};
}

} // namespace rig
