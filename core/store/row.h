#pragma once

#include "core/airframe/ids.h"
#include "core/review/decided.h"

#include <QVariant>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace rig {

enum class CellType { Empty, Integer, Real, Text, Bytes };

// Reads the cells of one row from left to right. What does not fit (a file changed by hand) is remembered
// in problem() and the row is not used.
class Row
{
public:
    explicit Row(sqlite3_stmt* statement, const Decided* decided = nullptr)
        : m_statement{statement}, m_decided{decided}
    {
    }

    std::int64_t integer();
    double number();
    std::string text() { return std::string{textView()}; }
    std::string_view textView();    // holds until the next row, or until this cell is asked for otherwise
    std::string_view bytesView();   // likewise
    std::optional<IdBytes> bytes(); // empty when it has another length than an id

    // What stands in the next cell, or so many after it.
    CellType type(int ahead = 0) const;
    // True, and one cell on, when the next one is empty.
    bool skipNull();
    void skip(int cells) { m_column += cells; }
    QVariant raw(int column) const;

    const std::string& problem() const { return m_problem; }
    void refuse(const std::string& why); // the first stays

    // Of a person or a gauge that was decided to be another one too: that one.
    IdBytes asRead(const IdBytes& id) const { return m_decided ? m_decided->asRead(id) : id; }

private:
    sqlite3_stmt* m_statement;
    const Decided* m_decided;
    int m_column = 0;
    std::string m_problem;
};

} // namespace rig
