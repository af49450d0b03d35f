#include "core/store/attached.h"

#include "core/store/values.h"

namespace rig {

Attached::Attached(StoreFile::Connection& connection, const std::string& theirs)
    : m_connection{connection}, m_outcome{Done{}}
{
    connection.allowAttaching(true);
    m_outcome = connection.run(QStringLiteral("ATTACH ? AS theirs"), {valueOf(theirs)});
    if (m_outcome)
        m_outcome = connection.run(QStringLiteral("PRAGMA foreign_keys = OFF"));
}

Attached::~Attached()
{
    for (const char* undo : {"PRAGMA foreign_keys = ON", "DETACH theirs"})
        static_cast<void>(m_connection.run(QString::fromLatin1(undo)));
    m_connection.allowAttaching(false);
}

Result<QStringList> columnsIn(StoreFile::Connection& connection, std::string_view table)
{
    QStringList columns;
    const Outcome read =
        connection.each(QStringLiteral("SELECT name FROM pragma_table_info(?, 'main')"), {valueOf(table)},
                        [&columns](Row& row) { columns.append(QString::fromStdString(row.text())); });
    if (!read)
        return read.problem();
    return columns;
}

Outcome takeRows(StoreFile::Connection& connection, std::string_view table, const QString& which)
{
    const auto columns = columnsIn(connection, table);
    if (!columns)
        return columns.problem();
    return connection.run(QStringLiteral("INSERT INTO main.%1 (%2) SELECT %2 FROM theirs.%1 AS t WHERE %3")
                              .arg(valueOf(table).toString(), columns.value().join(u','), which));
}

} // namespace rig
