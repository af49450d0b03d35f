#include "core/exchange/table_rows.h"

#include "core/day_entry.h"
#include "core/measure/gap_entry.h"
#include "core/plain_text.h"
#include "core/store/columns.h"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <variant>

namespace rig {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

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

// As other programs write a figure that is none.
bool isNotFinite(const std::string& text)
{
    std::string word = lowered(text);
    if (word.starts_with('-') || word.starts_with('+'))
        word.erase(0, 1);
    return word == "nan" || word == "inf" || word == "infinity" || word == "#num!" || word == "#div/0!" ||
           word == "#n/a";
}

RowProblem figureProblem(EntryProblem problem, const std::string& text)
{
    switch (problem) {
    case EntryProblem::Empty:
    case EntryProblem::NotANumber:
        break;
    case EntryProblem::TwoSeparators:
        return RowProblem::TwoSeparators;
    case EntryProblem::TooManyDecimals:
        return RowProblem::TooFine;
    case EntryProblem::Negative:
        return RowProblem::Negative;
    case EntryProblem::TooLarge:
        return RowProblem::TooWide;
    }
    return isNotFinite(text) ? RowProblem::NotFinite : RowProblem::NotANumber;
}

// The rows of one table; every complaint names the table.
class TableReader
{
public:
    TableReader(const TableForm& form, std::vector<BadRow>& bad) : m_form{form}, m_bad{bad} {}

    bool read(std::string_view bytes, const std::function<void(RowFields&)>& take)
    {
        if (bytes.starts_with(kByteOrderMark))
            bytes.remove_prefix(kByteOrderMark.size());
        if (isTooLarge(bytes))
            return refuse(1, RowProblem::TableTooLarge);
        const std::vector<int> foreign = linesNotUtf8(bytes);
        for (const int line : foreign)
            refuse(line, RowProblem::NotUtf8);
        if (!foreign.empty())
            return false;
        if (withoutBlanks(bytes).empty())
            return refuse(1, RowProblem::Empty);
        const std::string header = headerLine(bytes);
        const char separator = separatorOf(header);
        const std::vector<CsvRow> rows = csvRows(bytes, separator == 0 ? ',' : separator);
        if (rows.empty())
            return refuse(1, RowProblem::Empty);
        if (separator == 0)
            return refuse(rows.front().line, RowProblem::MixedSeparators, header);
        return takesHeader(rows.front(), separator) && takesRows(rows, separator, take);
    }

private:
    bool refuse(int line, RowProblem problem, const std::string& text = {})
    {
        m_bad.push_back({line, problem, text, {}, m_form.kind});
        return false;
    }

    bool takesHeader(const CsvRow& row, char separator)
    {
        if (const auto problem = shapeProblem(row, row.fields.size(), separator))
            return refuse(row.line, *problem, joined(row, separator));
        const std::size_t before = m_bad.size();
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            const std::string name = lowered(row.fields[i]);
            if (std::ranges::count(m_form.columns, name) == 0)
                refuse(row.line, RowProblem::UnknownColumn, row.fields[i]);
            else if (!m_places.emplace(name, i).second)
                refuse(row.line, RowProblem::ColumnTwice, row.fields[i]);
        }
        for (const std::string& name : m_form.needed)
            if (!m_places.contains(name))
                refuse(row.line, RowProblem::MissingColumn, name);
        return m_bad.size() == before;
    }

    bool takesRows(const std::vector<CsvRow>& rows, char separator,
                   const std::function<void(RowFields&)>& take)
    {
        if (rows.size() == 1 && !m_form.mayBeBare)
            refuse(rows.front().line, RowProblem::NoRows);
        bool whole = true;
        for (std::size_t i = 1; i < rows.size(); ++i) {
            if (const auto problem = shapeProblem(rows[i], rows.front().fields.size(), separator)) {
                refuse(rows[i].line, *problem, joined(rows[i], separator));
                whole = whole && *problem != RowProblem::UnclosedQuote;
                continue;
            }
            RowFields fields{m_form.kind, m_places, rows[i], m_bad};
            take(fields);
        }
        return whole;
    }

    const TableForm& m_form;
    std::vector<BadRow>& m_bad;
    RowFields::Places m_places;
};

} // namespace

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

RowFields::RowFields(TableKind table, const Places& places, const CsvRow& row, std::vector<BadRow>& bad)
    : m_table{table}, m_places{places}, m_row{row}, m_bad{bad}, m_badBefore{bad.size()}
{
}

std::string_view RowFields::asWritten(const std::string& column) const
{
    const auto place = m_places.find(column);
    return place == m_places.end() ? std::string_view{} : std::string_view{m_row.fields[place->second]};
}

std::string RowFields::field(const std::string& column) const
{
    return std::string{withoutBlanks(asWritten(column))};
}

Fields RowFields::fields(const std::vector<std::string>& columns) const
{
    Fields all;
    for (const std::string& column : columns)
        all.push_back(field(column));
    return all;
}

void RowFields::refuse(RowProblem problem, const std::string& text, const std::string& column,
                       const std::string& instead)
{
    m_bad.push_back({m_row.line, problem, text, column, m_table, instead});
}

namespace {

std::optional<RowProblem> problemOf(std::string_view text)
{
    if (!lies(text, kAnyText))
        return RowProblem::TooLong;
    return hasInvisible(text) ? std::optional{RowProblem::Invisible} : std::nullopt;
}

} // namespace

std::string RowFields::text(const std::string& column)
{
    const std::string_view text = asWritten(column);
    const auto problem = problemOf(text);
    if (!problem)
        return std::string{text};
    refuse(*problem, withPlaceholders(text), column);
    return {};
}

std::string RowFields::needed(const std::string& column, RowProblem whenEmpty)
{
    std::string text = field(column);
    if (text.empty())
        refuse(whenEmpty, text, column);
    else if (column == "note" || column == "done")
        return this->text(column);
    else if (const auto problem = problemOf(text))
        refuse(*problem, withPlaceholders(text), column);
    else if (!lies(text, kName))
        refuse(RowProblem::NameTooLong, {}, column);
    return text;
}

std::optional<Day> RowFields::day(const std::string& column)
{
    const std::string text = field(column);
    const auto day = parseDay(text);
    if (!day && !text.empty())
        refuse(RowProblem::NotADay, text, column);
    return day;
}

// 9:40, 09:40 and 09:40:12.
std::optional<std::chrono::seconds> RowFields::time(const std::string& column)
{
    const std::string text = field(column);
    const std::size_t first = std::min(text.find(':'), text.size());
    const std::size_t second = std::min(text.find(':', first + 1), text.size());
    const auto figures = [&text](std::size_t from, std::size_t to, std::size_t least, int below) {
        const std::string part = from < to ? text.substr(from, to - from) : std::string{};
        const bool isRight = isFigures(part) && part.size() <= 2 && part.size() >= least;
        return isRight && std::stoi(part) < below ? std::optional{std::stoi(part)} : std::nullopt;
    };
    const auto hours = figures(0, first, 1, 24);
    const auto minutes = figures(first + 1, second, 2, 60);
    const auto seconds = second == text.size() ? std::optional{0} : figures(second + 1, text.size(), 2, 60);
    if (hours && minutes && seconds)
        return std::chrono::hours{*hours} + std::chrono::minutes{*minutes} + std::chrono::seconds{*seconds};
    if (!text.empty())
        refuse(RowProblem::NotATime, text, column);
    return std::nullopt;
}

std::optional<Day> RowFields::neededDay(const std::string& column)
{
    if (field(column).empty())
        refuse(RowProblem::NoDay, {}, column);
    return day(column);
}

std::optional<Gap> RowFields::length(const std::string& column)
{
    const std::string text = field(column);
    const GapEntry entry = parseGap(text);
    if (const Gap* gap = std::get_if<Gap>(&entry))
        return *gap;
    if (const EntryProblem problem = std::get<EntryProblem>(entry); problem != EntryProblem::Empty)
        refuse(figureProblem(problem, text), text, column);
    return std::nullopt;
}

std::optional<GapInterval> RowFields::interval(const std::string& entersColumn,
                                               const std::string& refusesColumn)
{
    const std::size_t before = m_bad.size();
    const auto enters = length(entersColumn);
    const auto refuses = length(refusesColumn);
    if (m_bad.size() > before)
        return std::nullopt;
    const GapInterval interval{enters.value_or(Gap{}), refuses};
    const std::string both = field(entersColumn) + "\u2013" + field(refusesColumn);
    if (interval == GapInterval{})
        refuse(RowProblem::NoGap, field(entersColumn), entersColumn);
    else if (refuses && *refuses == interval.enters)
        refuse(RowProblem::SameBounds, both, refusesColumn);
    else if (problemOf(interval) != IntervalProblem::None)
        refuse(RowProblem::Reversed, both, refusesColumn);
    return m_bad.size() == before ? std::optional{interval} : std::nullopt;
}

std::optional<bool> RowFields::yesOrNo(const std::string& column)
{
    const std::string word = lowered(field(column));
    if (word.empty())
        return std::nullopt;
    if (word != "yes" && word != "no")
        refuse(RowProblem::NotAWord, field(column), column, "yes, no");
    return word == "yes";
}

std::optional<double> RowFields::fraction(const std::string& column, double least, double most)
{
    const std::string text = field(column);
    double value = 0;
    const char* const end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value, std::chars_format::fixed);
    if (read.ec == std::errc{} && read.ptr == end && value >= least && value <= most)
        return value;
    refuse(RowProblem::NotAPlace, text, column);
    return std::nullopt;
}

std::optional<PlanPlace> RowFields::place(const std::string& acrossColumn, const std::string& alongColumn)
{
    if (field(acrossColumn).empty() && field(alongColumn).empty())
        return std::nullopt;
    const auto across = fraction(acrossColumn, -1, 1);
    const auto along = fraction(alongColumn, 0, 1);
    return across && along ? std::optional{PlanPlace{*across, *along}} : std::nullopt;
}

bool readTable(std::string_view bytes, const TableForm& form, std::vector<BadRow>& bad,
               const std::function<void(RowFields&)>& take)
{
    return TableReader{form, bad}.read(bytes, take);
}

} // namespace rig
