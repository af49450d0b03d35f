#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace rig {

// One row of a table as it stands, not yet understood.
struct CsvRow
{
    int line = 0; // where it begins, counted from 1; a quoted field may hold line ends
    std::vector<std::string> fields;
    bool unclosedQuote = false; // a quote opens in it and nothing closes it: all that follows was swallowed
    bool strayQuote = false;    // a quote inside a field that is not quoted, or text behind a closing one

    bool isBlank() const;
};

// What is taken of a table at most, so that none takes all memory before it is refused. Fields beyond the
// last are counted and not kept.
inline constexpr std::size_t kMostTableBytes = 20'000'000;
inline constexpr std::size_t kMostTableLines = 200'000;
inline constexpr std::size_t kMostRowFields = 100;

// Told without keeping anything of it.
bool isTooLarge(std::string_view text);

// Parts a text by RFC 4180: fields parted by `separator`, quoted where they hold it, a quote or a line end;
// "" is a quote within quotes. Lines end with CRLF, LF or CR. Rows without anything in them are left out.
std::vector<CsvRow> csvRows(std::string_view text, char separator);

// One row, ended by CRLF as RFC 4180 has it, parted by commas. A field that a spreadsheet would take for a
// formula, and one that begins as if it had been, gets an apostrophe before it, which csvRows() takes off.
std::string csvLine(const std::vector<std::string>& fields);

// Surrounding blanks do not count.
std::string_view withoutBlanks(std::string_view text);

// Lines, counted from 1, with bytes that are not UTF-8 (RFC 3629). A byte 0 counts as such, as UTF-16 is full
// of them.
std::vector<int> linesNotUtf8(std::string_view text);

} // namespace rig
