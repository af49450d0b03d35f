#include "core/store/fact_bytes.h"

#include "core/store/every_shape.h"
#include "core/store/values.h"

#include <QtEndian>

#include <algorithm>
#include <bit>

namespace rig {

namespace {

template <typename Number> void putNumber(QByteArray& into, Number number)
{
    const Number bigEndian = qToBigEndian(number);
    into.append(reinterpret_cast<const char*>(&bigEndian), sizeof bigEndian);
}

void putBytes(QByteArray& into, std::string_view bytes)
{
    putNumber(into, static_cast<quint32>(bytes.size()));
    into.append(bytes.data(), static_cast<qsizetype>(bytes.size()));
}

// The letter of its type, and the value of the next cell.
void putCell(QByteArray& into, Row& row)
{
    switch (row.type()) {
    case CellType::Integer:
        into.append('i');
        return putNumber(into, static_cast<qint64>(row.integer()));
    case CellType::Real:
        into.append('r');
        return putNumber(into, std::bit_cast<quint64>(row.number()));
    case CellType::Text:
        into.append('t');
        return putBytes(into, row.textView());
    case CellType::Bytes:
        into.append('b');
        return putBytes(into, row.bytesView());
    case CellType::Empty:
        break;
    }
}

QByteArray block(std::string_view table, const std::vector<QByteArray>& columns, Row& row)
{
    QByteArray cells;
    quint32 filled = 0;
    for (const QByteArray& column : columns) {
        if (row.skipNull())
            continue;
        ++filled;
        putBytes(cells, {column.constData(), static_cast<std::size_t>(column.size())});
        putCell(cells, row);
    }
    QByteArray all;
    putBytes(all, table);
    putNumber(all, filled);
    return all + cells;
}

} // namespace

Result<const FactBytes::Select*> FactBytes::select(std::string_view table, std::string_view key)
{
    const auto known = m_selects.find(table);
    if (known != m_selects.end())
        return &known->second;
    Select select;
    const Outcome read = m_connection.each(
        QStringLiteral("SELECT name FROM pragma_table_info(?) ORDER BY name COLLATE BINARY"),
        {valueOf(table)},
        [&select](Row& row) { select.columns.push_back(QByteArray::fromStdString(row.text())); });
    if (!read)
        return read.problem();
    QByteArrayList names{select.columns.begin(), select.columns.end()};
    if (!names.isEmpty()) // a layout from before this table has none
        select.sql =
            QStringLiteral("SELECT %1 FROM %2 WHERE %3 = ?")
                .arg(QString::fromUtf8(names.join(',')), valueOf(table).toString(), valueOf(key).toString());
    return &m_selects.emplace(table, std::move(select)).first->second;
}

Result<std::vector<QByteArray>> FactBytes::blocks(std::string_view table, std::string_view key,
                                                  const IdBytes& of)
{
    const Result<const Select*> found = select(table, key);
    if (!found)
        return found.problem();
    const Select& wanted = *found.value();
    std::vector<QByteArray> all;
    if (wanted.columns.empty())
        return all;
    const Outcome read = m_connection.each(
        wanted.sql, {valueOf(of)}, [&](Row& row) { all.push_back(block(table, wanted.columns, row)); });
    if (!read)
        return read.problem();
    std::ranges::sort(all);
    return all;
}

Result<std::optional<QByteArray>> FactBytes::ofRow(std::string_view table, const IdBytes& row)
{
    const auto found = blocks(table, "id", row);
    if (!found)
        return found.problem();
    return found.value().empty() ? std::optional<QByteArray>{} : found.value().front();
}

Result<std::optional<QByteArray>> FactBytes::of(std::string_view table, const IdBytes& row)
{
    Result<std::optional<QByteArray>> bytes = ofRow(table, row);
    if (!bytes || !bytes.value())
        return bytes;
    QByteArray all = *bytes.value();
    for (const BelongingTable& belonging : tablesBelongingTo(table)) {
        const auto found = blocks(belonging.table, belonging.owner, row);
        if (!found)
            return found.problem();
        for (const QByteArray& each : found.value())
            all += each;
    }
    return std::optional{all};
}

Result<std::optional<QByteArray>> FactBytes::ofOrigin(const IdBytes& origin)
{
    if (const auto known = m_origins.find(origin); known != m_origins.end())
        return std::optional{known->second};
    const auto bytes = ofRow("origin", origin);
    if (bytes && bytes.value())
        m_origins.emplace(origin, *bytes.value());
    return bytes;
}

} // namespace rig
