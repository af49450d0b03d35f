#pragma once

#include "core/store/row.h"
#include "core/store/shape.h"
#include "core/store/values.h"

#include <QStringList>
#include <QVariantList>

namespace rig {

// Where shapes meet SQLite: what is bound, what is read from a row, and the two statements that follow from
// the columns. Another database needs these again and nothing else.

// The values of an INSERT, in the order of the columns.
struct BoundCells
{
    QVariantList values;

    template <typename Raw> void put(const ColumnInfo&, const std::optional<Raw>& raw)
    {
        values.append(valueOf(raw));
    }
};

// The cells of a row. A file may have been changed by hand: what is not of its column's type or lies out of
// its range is refused with the name of the table and the column.
class RowCells
{
public:
    RowCells(Row& row, const char* table) : m_row{row}, m_table{table} {}

    template <typename Raw> std::optional<Raw> take(const ColumnInfo& column)
    {
        if (!isThere(column))
            return std::nullopt;
        std::optional<Raw> raw = next(static_cast<Raw*>(nullptr));
        if (raw && lies(*raw, column.range))
            return raw;
        refuse(column, raw ? "out of its range" : "an id of the wrong length");
        return std::nullopt;
    }

    // True, and so many cells on, when all of them are empty.
    bool skipEmpty(int cells);
    void refuse(const ColumnInfo& column, const char* why);

private:
    bool isThere(const ColumnInfo& column);
    std::optional<IdBytes> next(IdBytes*) { return m_row.bytes(); }
    std::optional<std::int64_t> next(std::int64_t*) { return m_row.integer(); }
    std::optional<double> next(double*) { return m_row.number(); }
    std::optional<std::string> next(std::string*) { return m_row.text(); }

    Row& m_row;
    const char* m_table;
};

template <typename Fact> Fact factFrom(Row& row)
{
    RowCells cells{row, Shape<Fact>::table};
    Fact fact;
    hear(fact, cells);
    return fact;
}

// What a LEFT JOIN may not have found.
template <typename Fact> std::optional<Fact> factIfAnyFrom(Row& row)
{
    RowCells cells{row, Shape<Fact>::table};
    std::optional<Fact> fact;
    if constexpr (IsAttached<Fact>) {
        if (!cells.skipEmpty(decltype(Shape<Fact>::columns)::kColumns))
            Shape<Fact>::columns.hear(fact.emplace(), cells);
    } else if (!cells.skipEmpty(kColumnsOf<Fact>)) {
        hear(fact.emplace(), cells);
    }
    return fact;
}

// "t.id, t.stated_by, ..." for the table that the statement calls `t`.
template <typename Fact> QString columnsSql(const char* alias)
{
    QStringList names;
    const auto append = [&](const ColumnInfo& column) {
        names.append(QStringLiteral("%1.%2").arg(QLatin1String{alias}, QLatin1String{column.name}));
    };
    if constexpr (IsAttached<Fact>)
        Shape<Fact>::columns.visit(append, false);
    else
        forEachColumn<Fact>(append);
    return names.join(u", ");
}

QString insertSql(const char* table, const QStringList& columns);

// Of a thing with versions the row's own id comes first, of what is attached the id of what it is attached
// to.
template <typename Fact> const QString& insertSql()
{
    static const QString sql = [] {
        QStringList names;
        const auto append = [&](const ColumnInfo& column) { names.append(QString::fromLatin1(column.name)); };
        if constexpr (IsAttached<Fact>) {
            names.append(QString::fromLatin1(Shape<Fact>::owner));
            Shape<Fact>::columns.visit(append, false);
        } else {
            if (kNamesVersions<decltype(Fact::id)>)
                names.append(QStringLiteral("id"));
            forEachColumn<Fact>(append);
        }
        return insertSql(Shape<Fact>::table, names);
    }();
    return sql;
}

} // namespace rig
