#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/measure/gap.h"
#include "core/store/kind_words.h"

#include <QVariant>

#include <cstdint>
#include <optional>
#include <string>

struct sqlite3_stmt;

namespace rig {

// Reads the columns of one row from left to right. What does not fit (a file changed by hand) is remembered
// in problem() and the row is not used.
class Row
{
public:
    explicit Row(sqlite3_stmt* statement) : m_statement{statement} {}

    std::int64_t integer();
    double number();
    bool flag() { return integer() != 0; }
    int count() { return static_cast<int>(integer()); }
    Gap gap() { return Gap::micrometres(static_cast<std::int32_t>(integer())); }
    std::string text();
    Day day();
    Moment moment();
    IdBytes bytes();
    template <typename SomeId> SomeId id() { return SomeId{bytes()}; }
    Stamp stamp();

    std::optional<double> maybeNumber();
    std::optional<Gap> maybeGap();
    std::optional<Day> maybeDay();
    template <typename SomeId> std::optional<SomeId> maybeId()
    {
        if (skipNull())
            return std::nullopt;
        return id<SomeId>();
    }
    template <typename Kind> Kind kind()
    {
        const std::string word = text();
        const std::optional<Kind> found = kindFrom<Kind>(word);
        if (!found)
            m_problem = "unknown word " + word;
        return found.value_or(Kind{});
    }
    template <typename Kind> std::optional<Kind> maybeKind()
    {
        if (skipNull())
            return std::nullopt;
        return kind<Kind>();
    }
    // True, and one column on, when the next one is empty.
    bool skipNull();
    void skip(int columns) { m_column += columns; }
    QVariant raw(int column) const;

    const std::string& problem() const { return m_problem; }

private:
    sqlite3_stmt* m_statement;
    int m_column = 0;
    std::string m_problem;
};

} // namespace rig
