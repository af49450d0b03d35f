#include "core/store/connection.h"

#include "core/store/chain.h"
#include "core/store/layout.h"
#include "core/store/raw_file.h"
#include "core/store/settings.h"

#include <QByteArray>
#include <QVariant>

#include <sqlite3.h>
#include <utility>

namespace rig {

namespace {

// Not per file but per connection. EXTRA is FULL and also syncs the folder once the journal is gone: without
// that a power cut just after a save could bring the journal back and take the save away again.
constexpr const char* kSettings[] = {
    "PRAGMA foreign_keys = ON",
    "PRAGMA synchronous = EXTRA",
    "PRAGMA recursive_triggers = ON",
    "PRAGMA temp_store = MEMORY",
};

// Numbered from 1. SQLite takes a copy of texts and ids.
int bind(sqlite3_stmt* statement, int place, const QVariant& value)
{
    switch (value.typeId()) {
    case QMetaType::UnknownType:
        return sqlite3_bind_null(statement, place);
    case QMetaType::QByteArray: {
        const QByteArray blob = value.toByteArray();
        return sqlite3_bind_blob(statement, place, blob.constData(), static_cast<int>(blob.size()),
                                 SQLITE_TRANSIENT);
    }
    case QMetaType::Double:
        return sqlite3_bind_double(statement, place, value.toDouble());
    case QMetaType::Int:
    case QMetaType::LongLong:
        return sqlite3_bind_int64(statement, place, value.toLongLong());
    default: {
        const QByteArray text = value.toString().toUtf8();
        return sqlite3_bind_text(statement, place, text.constData(), static_cast<int>(text.size()),
                                 SQLITE_TRANSIENT);
    }
    }
}

int wantsEnd(void* progress)
{
    return static_cast<const Progress*>(progress)->isStopped() ? 1 : 0;
}

void finalize(sqlite3_stmt* statement)
{
    sqlite3_finalize(statement);
}

} // namespace

StoreFile::Connection::Connection(std::string filePath) : path{std::move(filePath)} {}

Result<std::unique_ptr<StoreFile::Connection>> StoreFile::Connection::open(const std::string& path,
                                                                           Access access)
{
    std::unique_ptr<Connection> connection{new Connection(path)};
    // Each connection is used by one thread alone.
    const bool isInMemory = access == Access::InMemory;
    const bool writes = isInMemory || access == Access::Writing;
    const int flags = SQLITE_OPEN_NOMUTEX | (writes ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY);
    const std::string name = isInMemory ? ":memory:" : asFileName(path);
    if (sqlite3_open_v2(name.c_str(), &connection->m_database, flags, nullptr) != SQLITE_OK)
        return Problem{ProblemKind::CannotOpen, sqlite3_errmsg(connection->m_database)};
    sqlite3_extended_result_codes(connection->m_database, 1);
    sqlite3_busy_timeout(connection->m_database, kBusyWaitMilliseconds);
    if (!setUp(connection->m_database, access == Access::Salvaging ? ReadsDamage::Yes : ReadsDamage::No))
        return connection->problem();
    for (const char* setting : kSettings)
        if (const Outcome set = connection->run(QString::fromLatin1(setting)); !set)
            return set.problem();
    return connection;
}

StoreFile::Connection::~Connection()
{
    chain.reset();
    m_prepared.clear();
    sqlite3_close(m_database);
}

StoreFile::Connection::Execution::~Execution()
{
    sqlite3_reset(m_statement);
}

bool StoreFile::Connection::Execution::next()
{
    const int step = sqlite3_step(m_statement);
    m_failed = step != SQLITE_ROW && step != SQLITE_DONE;
    return step == SQLITE_ROW;
}

Result<sqlite3_stmt*> StoreFile::Connection::prepared(const QString& sql, const QVariantList& values)
{
    auto known = m_prepared.find(sql);
    if (known == m_prepared.end()) {
        sqlite3_stmt* fresh = nullptr;
        const QByteArray text = sql.toUtf8();
        if (sqlite3_prepare_v3(m_database, text.constData(), static_cast<int>(text.size()),
                               SQLITE_PREPARE_PERSISTENT, &fresh, nullptr) != SQLITE_OK)
            return problem();
        known = m_prepared.emplace(sql, Statement{fresh, finalize}).first;
    }
    sqlite3_stmt* statement = known->second.get();
    for (int i = 0; i < values.size(); ++i)
        if (bind(statement, i + 1, values[i]) != SQLITE_OK)
            return problem();
    return statement;
}

Outcome StoreFile::Connection::each(const QString& sql, const QVariantList& values,
                                    const std::function<void(Row&)>& take)
{
    const Result<sqlite3_stmt*> statement = prepared(sql, values);
    if (!statement)
        return statement.problem();
    Execution execution{statement.value()};
    while (execution.next()) {
        Row row{execution.statement(), &decided};
        take(row);
        if (!row.problem().empty())
            return Problem{ProblemKind::DamagedFile, row.problem()};
    }
    if (execution.failed())
        return problem();
    return Done{};
}

const Progress* StoreFile::Connection::watchWith(const Progress* progress)
{
    constexpr int kStepsBetween = 10'000; // of SQLite's machine
    sqlite3_progress_handler(m_database, progress ? kStepsBetween : 0, wantsEnd,
                             const_cast<Progress*>(progress));
    return std::exchange(m_watching, progress);
}

void StoreFile::Connection::allowAttaching(bool isAllowed)
{
    sqlite3_limit(m_database, SQLITE_LIMIT_ATTACHED, isAllowed ? 1 : 0);
}

Outcome StoreFile::Connection::awaitWhole() const
{
    if (!looking)
        return Done{};
    const std::optional<Outcome> whole = looking->wholeness(std::chrono::milliseconds{kBusyWaitMilliseconds});
    return whole ? *whole : Problem{ProblemKind::StillLookedThrough, path};
}

void StoreFile::Connection::allowTriggers(bool isAllowed)
{
    sqlite3_db_config(m_database, SQLITE_DBCONFIG_ENABLE_TRIGGER, isAllowed ? 1 : 0, nullptr);
}

Outcome StoreFile::Connection::copyInto(Connection& other)
{
    sqlite3_backup* const backup = sqlite3_backup_init(other.m_database, "main", m_database, "main");
    if (!backup)
        return other.problem();
    const int copied = sqlite3_backup_step(backup, -1);
    sqlite3_backup_finish(backup);
    return copied == SQLITE_DONE ? Outcome{Done{}} : Outcome{other.problem()};
}

Outcome StoreFile::Connection::run(const QString& sql, const QVariantList& values)
{
    return each(sql, values, [](Row&) {});
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
        if (m_begun = m_connection.awaitWhole(); !m_begun)
            return;
        m_connection.spoilt.reset();
        m_connection.greatestId.reset();
        m_connection.namesTaken.clear();
        m_begun = m_connection.run(QStringLiteral("BEGIN IMMEDIATE"));
        if (!m_begun)
            return;
    }
    ++m_connection.depth;
    m_open = true;
    if (m_connection.depth == 1)
        m_begun = checkLayoutAgain(m_connection);
    if (m_begun && m_connection.depth == 1 && m_connection.chain)
        m_begun = m_connection.chain->catchUp();
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
    if (m_connection.chain)
        m_connection.chain->forget();
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
