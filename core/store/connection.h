#pragma once

#include "core/progress.h"
#include "core/store/look_through.h"
#include "core/store/problems.h"
#include "core/store/row.h"
#include "core/store/saved_log.h"
#include "core/store/store_file.h"

#include <QByteArray>
#include <QString>
#include <QVariantList>

#include <functional>
#include <map>
#include <memory>
#include <set>
#include <unordered_map>
#include <utility>

struct sqlite3;
struct sqlite3_stmt;

namespace rig {

class Chain;

// A save waits so long for another window, and for the file to be looked through, before it says so.
inline constexpr int kBusyWaitMilliseconds = 4000;

// One open SQLite file. Statements are prepared once and kept.
struct StoreFile::Connection
{
    // Salvaging also reads a file that is shorter than its header says; InMemory has no file.
    enum class Access { Reading, Writing, Salvaging, InMemory };

    // The file must exist. Sets what holds for every connection; reads nothing of the content.
    static Result<std::unique_ptr<Connection>> open(const std::string& path, Access access);
    ~Connection();

    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    Outcome run(const QString& sql, const QVariantList& values = {});
    // Calls `take` for each row.
    Outcome each(const QString& sql, const QVariantList& values, const std::function<void(Row&)>& take);
    // The first column of the first row; empty without a row.
    Result<std::optional<qlonglong>> integer(const QString& sql, const QVariantList& values = {});
    Result<QString> word(const QString& sql);

    // See SilencedTriggers.
    void allowTriggers(bool isAllowed);
    // Every page of it into another one, which is emptied before.
    Outcome copyInto(Connection& other);

    // See Watched; null: nobody. Who watched before.
    const Progress* watchWith(const Progress* progress);

    // Whether other files may be attached, which they may not unless somebody joins two.
    void allowAttaching(bool isAllowed);

    // Whether the whole file may be written to: it takes no write before it is known to be whole.
    Outcome awaitWhole() const;

    Problem problem() const { return problemFrom(m_database, path); } // what went wrong last

    const std::string path;
    std::optional<ProblemKind> readOnlyFor; // why writing is refused
    std::optional<Problem> copyProblem;     // why today's copy could not be made before it was opened
    int schemaVersion = 0;
    std::optional<qlonglong> schemaCookie; // SQLite's count of changes when the layout was looked at last
    bool isUpgraded = false;               // from an older layout, when it was opened
    int depth = 0;                         // of transactions, see Transaction
    std::optional<IdBytes> greatestId;     // of the file, known within one transaction
    // Comparable names in use, by table and by what they are unique within; likewise.
    std::map<std::pair<std::string, QByteArray>, std::set<std::string>> namesTaken;
    std::unordered_map<std::string_view, QString>
        insertInto;                // the INSERT of each table, made when first asked for
    Decided decided;               // by persons, as it was read last, see readDecided()
    SavedLog saved;                // what Writer appended, for the books
    std::optional<Problem> spoilt; // an inner transaction failed: the outer one may not commit
    std::unique_ptr<Chain> chain;  // of what is written here, see Writer
    std::optional<qlonglong>
        chainLookedAt;    // PRAGMA data_version when looking at the chain behind the window began
    FactsInDoubt inDoubt; // as the chain told it when it was looked at last, not behind it
    std::unique_ptr<LookThrough> looking; // behind the window; empty when that was done before opening

private:
    using Statement = std::unique_ptr<sqlite3_stmt, void (*)(sqlite3_stmt*)>;

    // A prepared statement with its values, ready for its first step. An unfinished one holds a lock against
    // other windows, so it is reset when this goes.
    class Execution
    {
    public:
        explicit Execution(sqlite3_stmt* statement) : m_statement{statement} {}
        ~Execution();
        Execution(const Execution&) = delete;
        Execution& operator=(const Execution&) = delete;

        bool next(); // a row stands ready
        bool failed() const { return m_failed; }
        sqlite3_stmt* statement() const { return m_statement; }

    private:
        sqlite3_stmt* m_statement;
        bool m_failed = false;
    };

    explicit Connection(std::string filePath);
    Result<sqlite3_stmt*> prepared(const QString& sql, const QVariantList& values);

    sqlite3* m_database = nullptr;
    const Progress* m_watching = nullptr;
    std::unordered_map<QString, Statement> m_prepared;
};

// As long as it lives what refuses changes is silent: where a file is made that nobody has yet, and where a
// row that another program changed gives way to the one that was saved.
class SilencedTriggers
{
public:
    explicit SilencedTriggers(StoreFile::Connection& connection) : m_connection{connection}
    {
        m_connection.allowTriggers(false);
    }
    ~SilencedTriggers() { m_connection.allowTriggers(true); }
    SilencedTriggers(const SilencedTriggers&) = delete;
    SilencedTriggers& operator=(const SilencedTriggers&) = delete;

private:
    StoreFile::Connection& m_connection;
};

// As long as it lives a statement of the connection ends in the middle, with Unexpected, once the work is
// stopped. Within a transaction begun before: what is undone is not to be stopped again.
class Watched
{
public:
    Watched(StoreFile::Connection& connection, const Progress* progress)
        : m_connection{connection}, m_before{connection.watchWith(progress)}
    {
    }
    ~Watched() { m_connection.watchWith(m_before); }
    Watched(const Watched&) = delete;
    Watched& operator=(const Watched&) = delete;

private:
    StoreFile::Connection& m_connection;
    const Progress* m_before;
};

// What is said where work was stopped.
inline Problem stoppedWork()
{
    return {ProblemKind::Unexpected, "stopped"};
}

// One immediate transaction; rolls back unless committed. Inside another one it only joins: the outer one
// decides, and may not commit once an inner one was left without commit.
class Transaction
{
public:
    explicit Transaction(StoreFile::Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    const Outcome& begun() const { return m_begun; }
    Outcome commit();

private:
    StoreFile::Connection& m_connection;
    Outcome m_begun;
    bool m_open = false;
};

} // namespace rig
