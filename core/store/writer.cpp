#include "core/store/writer.h"

#include "core/airframe/id_source.h"
#include "core/store/tables.h"

#include <QStringList>

#include <algorithm>

namespace rig {

namespace {

QString greatestIdSql()
{
    QStringList each;
    for (const FactTable& table : kFactTables)
        if (table.isFact)
            each.append(QStringLiteral("SELECT max(id) AS id FROM ") + QString::fromLatin1(table.name));
    return QStringLiteral("SELECT max(id) FROM (") + each.join(QStringLiteral(" UNION ALL ")) +
           QStringLiteral(")");
}

Result<IdBytes> greatestIn(StoreFile::Connection& connection)
{
    if (connection.greatestId)
        return *connection.greatestId;
    IdBytes greatest{};
    const Outcome read = connection.each(greatestIdSql(), {}, [&greatest](Row& row) {
        if (!row.skipNull())
            greatest = row.bytes();
    });
    if (!read)
        return read.problem();
    return greatest;
}

std::int64_t millisecondsOf(const IdBytes& id)
{
    std::int64_t milliseconds = 0;
    for (std::size_t i = 0; i < 6; ++i)
        milliseconds = milliseconds << 8 | id[i];
    return milliseconds;
}

} // namespace

Result<IdBytes> Writer::newId()
{
    const Result<IdBytes> greatest = greatestIn(m_connection);
    if (!greatest)
        return greatest;
    IdBytes id = m_ids.next(m_now.utcSeconds * 1000);
    if (id <= greatest.value())
        id = m_ids.next(millisecondsOf(greatest.value()) + 1);
    m_connection.greatestId = id;
    return id;
}

Columns Writer::stamped(const IdBytes& id, const Stamp& stamp, Columns columns) const
{
    Columns all{{"id", valueOf(id)},
                {"stated_by", valueOf(stamp.by)},
                {"stated_at", valueOf(m_now.utcSeconds)},
                {"stated_offset", valueOf(m_now.offsetSeconds)}};
    std::ranges::move(columns, std::back_inserter(all));
    return all;
}

Outcome Writer::insert(const char* table, const Columns& columns)
{
    QStringList names;
    QStringList marks;
    QVariantList values;
    for (const ColumnValue& column : columns) {
        names.append(QString::fromLatin1(column.name));
        marks.append(QStringLiteral("?"));
        values.append(column.value);
    }
    return m_connection.run(QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
                                .arg(QString::fromLatin1(table), names.join(u", "), marks.join(u", ")),
                            values);
}

Result<IdBytes> Writer::fact(const char* table, const Stamp& stamp, Columns columns)
{
    const Result<IdBytes> id = newId();
    if (!id)
        return id;
    if (const Outcome done = insert(table, stamped(id.value(), stamp, std::move(columns))); !done)
        return done.problem();
    m_connection.saved.note(table, id.value());
    return id;
}

Result<Writer::Version> Writer::version(const char* table, const IdBytes& subject, const Stamp& stamp,
                                        Columns columns)
{
    const Result<IdBytes> id = newId();
    if (!id)
        return id.problem();
    const bool first = subject == IdBytes{};
    const Version version{id.value(), first ? id.value() : subject};
    columns.push_back({"subject", valueOf(version.subject)});
    if (const Outcome done = insert(table, stamped(version.id, stamp, std::move(columns))); !done)
        return done.problem();
    m_connection.saved.note(table, version.id);
    return version;
}

} // namespace rig
