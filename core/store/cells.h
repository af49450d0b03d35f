#pragma once

#include "core/store/fact_shape.h"
#include "core/store/row.h"

#include <QStringList>
#include <QVariantList>

namespace rig {

// Where shapes meet SQLite: what is bound, what is read from a row, and the two statements that follow from
// the columns. Another database needs these again and nothing else.

// The values of an INSERT, in the order of the columns.
class BoundCells final : public CellSink
{
public:
    QVariantList values;

    void put(const ColumnInfo& column, const std::optional<IdBytes>& id) override;
    void put(const ColumnInfo& column, const std::optional<std::int64_t>& number) override;
    void put(const ColumnInfo& column, const std::optional<double>& number) override;
    void put(const ColumnInfo& column, const std::optional<std::string_view>& text) override;
    void put(const ColumnInfo& column, const std::optional<BytesView>& bytes) override;
};

// The cells of a row. A file may have been changed by hand: what is not of its column's type or lies out of
// its range is refused with the name of the table and the column.
class RowCells final : public CellSource
{
public:
    RowCells(Row& row, const char* table) : m_row{row}, m_table{table} {}

    std::optional<IdBytes> takeId(const ColumnInfo& column) override;
    std::optional<std::int64_t> takeInteger(const ColumnInfo& column) override;
    std::optional<double> takeReal(const ColumnInfo& column) override;
    std::optional<std::string_view> takeText(const ColumnInfo& column) override;
    std::optional<BytesView> takeBytes(const ColumnInfo& column) override;
    bool skipEmpty(int cells) override;
    void refuse(const ColumnInfo& column, const char* why) override;

private:
    bool isThere(const ColumnInfo& column);
    template <typename Raw> std::optional<Raw> inRange(const ColumnInfo& column, Raw raw);

    Row& m_row;
    const char* m_table;
};

template <typename Fact> Fact factFrom(Row& row)
{
    RowCells cells{row, factShape<Fact>().table};
    Fact fact;
    hear(fact, cells);
    return fact;
}

// What a LEFT JOIN may not have found.
template <typename Fact> std::optional<Fact> factIfAnyFrom(Row& row)
{
    RowCells cells{row, factShape<Fact>().table};
    std::optional<Fact> fact;
    if (!cells.skipEmpty(static_cast<int>(factShape<Fact>().columns.size())))
        hear(fact.emplace(), cells);
    return fact;
}

// "t.id, t.stated_by, ..." for the table that the statement calls `t`.
QString columnsSql(const FactShape& shape, const char* alias);

QString insertSql(const char* table, const QStringList& columns);
// Of a thing with versions the row's own id comes first, of what is attached the id of what it is attached
// to.
QString insertSql(const FactShape& shape);

} // namespace rig
