#include "core/store/connection.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QUuid>

#include <sqlite3.h>

namespace rig {

namespace {

// Not per file but per connection. EXTRA is FULL and also syncs the folder once the journal is gone: without
// that a power cut just after a save could bring the journal back and take the save away again.
constexpr const char* kSettings[] = {
    "PRAGMA foreign_keys = ON",    "PRAGMA synchronous = EXTRA", "PRAGMA recursive_triggers = ON",
    "PRAGMA trusted_schema = OFF", "PRAGMA temp_store = MEMORY",
};

} // namespace

Result<std::unique_ptr<StoreFile::Connection>> StoreFile::Connection::open(const std::string& path,
                                                                           Access access)
{
    std::unique_ptr<Connection> connection{new Connection(path)};
    const QString name = QStringLiteral("rigband-") + QUuid::createUuid().toString(QUuid::WithoutBraces);
    connection->database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
    QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyWaitMilliseconds);
    if (access != Access::Writing)
        options += QStringLiteral(";QSQLITE_OPEN_READONLY");
    connection->database.setConnectOptions(options);
    connection->database.setDatabaseName(QString::fromStdString(path));
    if (!connection->database.open()) {
        const QSqlError error = connection->database.lastError();
        return Problem{ProblemKind::CannotOpen, error.text().toStdString()};
    }
    if (access == Access::Salvaging)
        if (const Outcome set = connection->run(QStringLiteral("PRAGMA writable_schema = ON")); !set)
            return set.problem();
    for (const char* setting : kSettings)
        if (const Outcome set = connection->run(QString::fromLatin1(setting)); !set)
            return set.problem();
    return connection;
}

StoreFile::Connection::~Connection()
{
    const QString name = database.connectionName();
    m_prepared.clear();
    database.close();
    database = QSqlDatabase{};
    QSqlDatabase::removeDatabase(name);
}

Problem StoreFile::Connection::problem(const QSqlQuery& query) const
{
    return problemFrom(query.lastError(), path);
}

Result<QSqlQuery*> StoreFile::Connection::execute(const QString& sql, const QVariantList& values)
{
    std::unique_ptr<QSqlQuery>& kept = m_prepared[sql];
    if (!kept) {
        auto fresh = std::make_unique<QSqlQuery>(database);
        fresh->setForwardOnly(true);
        if (!fresh->prepare(sql)) {
            const Problem met = problem(*fresh);
            m_prepared.erase(sql);
            return met;
        }
        kept = std::move(fresh);
    }
    QSqlQuery& query = *kept;
    for (int i = 0; i < values.size(); ++i)
        query.bindValue(i, values[i]);
    if (!query.exec()) {
        const Problem met = problem(query);
        query.finish();
        return met;
    }
    return &query;
}

Outcome StoreFile::Connection::run(const QString& sql, const QVariantList& values)
{
    const Result<QSqlQuery*> executed = execute(sql, values);
    if (!executed)
        return executed.problem();
    executed.value()->finish();
    return Done{};
}

Result<std::optional<qlonglong>> StoreFile::Connection::integer(const QString& sql,
                                                                const QVariantList& values)
{
    std::optional<qlonglong> first;
    const Outcome read = each(sql, values, [&first](Row& row) {
        if (!first && !row.skipNull())
            first = row.integer();
    });
    if (!read)
        return read.problem();
    return first;
}

Result<QString> StoreFile::Connection::word(const QString& sql)
{
    QString first;
    const Outcome read = each(sql, {}, [&first](Row& row) {
        if (first.isEmpty())
            first = QString::fromStdString(row.text());
    });
    if (!read)
        return read.problem();
    return first;
}

Transaction::Transaction(StoreFile::Connection& connection) : m_connection{connection}, m_begun{Done{}}
{
    if (m_connection.readOnlyFor) {
        m_begun = Problem{*m_connection.readOnlyFor, "opened for reading: " + m_connection.path};
        return;
    }
    if (m_connection.depth == 0) {
        m_connection.spoilt.reset();
        m_connection.greatestId.reset();
        m_begun = m_connection.run(QStringLiteral("BEGIN IMMEDIATE"));
        if (!m_begun)
            return;
    }
    ++m_connection.depth;
    m_open = true;
}

Transaction::~Transaction()
{
    if (!m_open)
        return;
    --m_connection.depth;
    if (m_connection.depth > 0) {
        if (!m_connection.spoilt)
            m_connection.spoilt = Problem{ProblemKind::Unexpected, "an inner write failed"};
        return;
    }
    // After a full disk SQLite has already rolled back and this only reports that there is nothing to do.
    static_cast<void>(m_connection.run(QStringLiteral("ROLLBACK")));
    m_connection.saved.loseTrack();
}

Outcome Transaction::commit()
{
    if (m_connection.depth > 1) {
        --m_connection.depth;
        m_open = false;
        return Done{};
    }
    if (m_connection.spoilt)
        return *m_connection.spoilt;
    const Outcome committed = m_connection.run(QStringLiteral("COMMIT"));
    if (!committed)
        return committed; // the destructor rolls back
    --m_connection.depth;
    m_open = false;
    return Done{};
}

} // namespace rig
