#include "core/store/cells.h"

#include "core/store/values.h"

namespace rig {

namespace {

// Persons and gauges may be read as one, see Decided.
constexpr std::string_view kTableOfPersons = "person";
constexpr std::string_view kTableOfGauges = "gauge";

bool fits(CellType type, Storage storage)
{
    switch (storage) {
    case Storage::Id:
    case Storage::Bytes:
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

void BoundCells::put(const ColumnInfo&, const std::optional<IdBytes>& id)
{
    values.append(valueOf(id));
}

void BoundCells::put(const ColumnInfo&, const std::optional<std::int64_t>& number)
{
    values.append(valueOf(number));
}

void BoundCells::put(const ColumnInfo&, const std::optional<double>& number)
{
    values.append(valueOf(number));
}

void BoundCells::put(const ColumnInfo&, const std::optional<std::string_view>& text)
{
    values.append(valueOf(text));
}

void BoundCells::put(const ColumnInfo&, const std::optional<BytesView>& bytes)
{
    values.append(bytes
                      ? QVariant{QByteArray(bytes->bytes.data(), static_cast<qsizetype>(bytes->bytes.size()))}
                      : QVariant{});
}

template <typename Raw> std::optional<Raw> RowCells::inRange(const ColumnInfo& column, Raw raw)
{
    if (lies(raw, column.range))
        return raw;
    refuse(column, "out of its range");
    return std::nullopt;
}

std::optional<IdBytes> RowCells::takeId(const ColumnInfo& column)
{
    if (!isThere(column))
        return std::nullopt;
    const std::optional<IdBytes> id = m_row.bytes();
    if (!id)
        refuse(column, "an id of the wrong length");
    const bool mayBeOne =
        id && column.refersTo && (column.refersTo == kTableOfPersons || column.refersTo == kTableOfGauges);
    return mayBeOne ? m_row.asRead(*id) : id;
}

std::optional<std::int64_t> RowCells::takeInteger(const ColumnInfo& column)
{
    return isThere(column) ? inRange(column, m_row.integer()) : std::nullopt;
}

std::optional<double> RowCells::takeReal(const ColumnInfo& column)
{
    return isThere(column) ? inRange(column, m_row.number()) : std::nullopt;
}

std::optional<std::string_view> RowCells::takeText(const ColumnInfo& column)
{
    return isThere(column) ? inRange(column, m_row.textView()) : std::nullopt;
}

std::optional<BytesView> RowCells::takeBytes(const ColumnInfo& column)
{
    return isThere(column) ? inRange(column, BytesView{m_row.bytesView()}) : std::nullopt;
}

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

QString insertSql(const FactShape& shape)
{
    QStringList names;
    if (shape.owner)
        names.append(QString::fromLatin1(shape.owner));
    else if (shape.hasVersions)
        names.append(QStringLiteral("id"));
    for (const ColumnInfo& column : shape.columns)
        names.append(QString::fromLatin1(column.name));
    return insertSql(shape.table, names);
}

QString columnsSql(const FactShape& shape, const char* alias)
{
    QStringList names;
    for (const ColumnInfo& column : shape.columns)
        names.append(QStringLiteral("%1.%2").arg(QLatin1String{alias}, QLatin1String{column.name}));
    return names.join(u", ");
}

} // namespace rig
