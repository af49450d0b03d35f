#include "core/store/cells.h"

namespace rig {

namespace {

bool fits(CellType type, Storage storage)
{
    switch (storage) {
    case Storage::Id:
        return type == CellType::Bytes;
    case Storage::Integer:
        return type == CellType::Integer;
    case Storage::Real:
        return type == CellType::Real || type == CellType::Integer;
    case Storage::Text:
    case Storage::Word:
    case Storage::Date:
        return type == CellType::Text;
    }
    return false;
}

} // namespace

bool RowCells::isThere(const ColumnInfo& column)
{
    const CellType type = m_row.type();
    if (fits(type, column.storage))
        return true;
    m_row.skip(1);
    if (type != CellType::Empty)
        refuse(column, "not of the type of its column");
    else if (!column.mayBeEmpty)
        refuse(column, "empty");
    return false;
}

bool RowCells::skipEmpty(int cells)
{
    for (int i = 0; i < cells; ++i)
        if (m_row.type(i) != CellType::Empty)
            return false;
    m_row.skip(cells);
    return true;
}

void RowCells::refuse(const ColumnInfo& column, const char* why)
{
    m_row.refuse(std::string{m_table} + '.' + column.name + ": " + why);
}

QString insertSql(const char* table, const QStringList& columns)
{
    return QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
        .arg(QString::fromLatin1(table), columns.join(u", "),
             QStringList(columns.size(), QStringLiteral("?")).join(u", "));
}

} // namespace rig
