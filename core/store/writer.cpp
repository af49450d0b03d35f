#include "core/store/writer.h"

#include "core/airframe/id_source.h"
#include "core/store/tables.h"

#include <QStringList>

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
    const Outcome read = connection.each(
        greatestIdSql(), {}, [&greatest](Row& row) { greatest = row.bytes().value_or(greatest); });
    if (!read)
        return read.problem();
    return greatest;
}

} // namespace

Result<IdBytes> Writer::newId()
{
    const Result<IdBytes> greatest = greatestIn(m_connection);
    if (!greatest)
        return greatest;
    IdBytes id = m_ids.next(m_now.utcSeconds * 1000);
    if (id <= greatest.value())
        id = m_ids.next(millisecondsIn(greatest.value()) + 1);
    m_connection.greatestId = id;
    return id;
}

} // namespace rig
