#pragma once

#include "core/airframe/coupling.h"
#include "core/clock.h"
#include "core/exchange/bad_row.h"
#include "core/exchange/csv.h"
#include "core/exchange/fields.h"
#include "core/measure/gap.h"
#include "core/measure/gap_interval.h"

#include <chrono>
#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rig {

// What a table must look like.
struct TableForm
{
    TableKind kind = TableKind::Readings;
    const std::vector<std::string>& columns;
    std::vector<std::string> needed; // of these columns
    bool mayBeBare = true;           // the line that names the columns may stand alone
};

std::string lowered(std::string_view text); // without blanks around it
bool isFigures(std::string_view text);

// One row of the right shape. Every field that cannot be taken is a bad row of its own.
class RowFields
{
public:
    using Places = std::map<std::string, std::size_t>; // which column stands where

    RowFields(TableKind table, const Places& places, const CsvRow& row, std::vector<BadRow>& bad);

    int line() const { return m_row.line; }
    bool isBad() const { return m_bad.size() > m_badBefore; }

    std::string_view asWritten(const std::string& column) const; // empty where there is no such column
    std::string field(const std::string& column) const;          // without blanks around it
    Fields fields(const std::vector<std::string>& columns) const;

    // These are empty where nothing stands, and where what stands there is refused.
    std::string text(const std::string& column); // as it was written, unless it is too long
    std::string needed(const std::string& column, RowProblem whenEmpty);
    std::optional<Day> day(const std::string& column);
    std::optional<std::chrono::seconds> time(const std::string& column); // of a day
    std::optional<Day> neededDay(const std::string& column);
    std::optional<Gap> length(const std::string& column);
    std::optional<GapInterval> interval(const std::string& entersColumn, const std::string& refusesColumn);
    std::optional<bool> yesOrNo(const std::string& column);
    // A place on the plan; both of its numbers stand there, or neither.
    std::optional<PlanPlace> place(const std::string& acrossColumn, const std::string& alongColumn);
    template <typename Kind> std::optional<Kind> kind(const std::string& column)
    {
        const std::string word = field(column);
        const auto found = word.empty() ? std::nullopt : kindFrom<Kind>(lowered(word));
        if (!found && !word.empty())
            refuse(RowProblem::NotAWord, word, column, wordsOf<Kind>());
        return found;
    }

    void refuse(RowProblem problem, const std::string& text, const std::string& column,
                const std::string& instead = {});

private:
    std::optional<double> fraction(const std::string& column, double least, double most);

    const TableKind m_table;
    const Places& m_places;
    const CsvRow& m_row;
    std::vector<BadRow>& m_bad;
    std::size_t m_badBefore;
};

// Hands on each row that has the shape of the table; names what else is wrong. False when no row could be
// read.
bool readTable(std::string_view bytes, const TableForm& form, std::vector<BadRow>& bad,
               const std::function<void(RowFields&)>& take);

} // namespace rig
