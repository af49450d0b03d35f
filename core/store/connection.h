#pragma once

#include "core/store/problems.h"
#include "core/store/row.h"
#include "core/store/saved_log.h"
#include "core/store/store_file.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QString>
#include <QVariantList>

#include <memory>
#include <unordered_map>
#include <vector>

namespace rig {

inline constexpr int kBusyWaitMilliseconds = 4000;

// One open SQLite file. Statements are prepared once and kept.
struct StoreFile::Connection
{
    // Salvaging also reads a file that is shorter than its header says.
    enum class Access { Reading, Writing, Salvaging };

    // The file must exist. Sets what holds for every connection; reads nothing of the content.
    static Result<std::unique_ptr<Connection>> open(const std::string& path, Access access);
    ~Connection();

    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    Outcome run(const QString& sql, const QVariantList& values = {});
    // Calls `take(Row&)` for each row.
    template <typename Take> Outcome each(const QString& sql, const QVariantList& values, Take take);
    // The first column of the first row; empty without a row.
    Result<std::optional<qlonglong>> integer(const QString& sql, const QVariantList& values = {});
    Result<QString> word(const QString& sql);

    Problem problem(const QSqlQuery& query) const;

    const std::string path;
    QSqlDatabase database;
    std::optional<ProblemKind> readOnlyFor; // why writing is refused
    std::optional<Problem> copyProblem;     // why today's copy could not be made
    int schemaVersion = 0;
    int depth = 0;                     // of transactions, see Transaction
    std::optional<IdBytes> greatestId; // of the file, known within one transaction
    SavedLog saved;                    // what Writer appended, for the books
    std::optional<Problem> spoilt;     // an inner transaction failed: the outer one may not commit

private:
    explicit Connection(std::string filePath) : path{std::move(filePath)} {}
    Result<QSqlQuery*> execute(const QString& sql, const QVariantList& values);

    std::unordered_map<QString, std::unique_ptr<QSqlQuery>> m_prepared;
};

template <typename Take>
Outcome StoreFile::Connection::each(const QString& sql, const QVariantList& values, Take take)
{
    const Result<QSqlQuery*> executed = execute(sql, values);
    if (!executed)
        return executed.problem();
    QSqlQuery& query = *executed.value();
    std::string unreadable;
    while (unreadable.empty() && query.next()) {
        Row row{query};
        take(row);
        unreadable = row.problem();
    }
    const bool failed = query.lastError().isValid();
    const Problem met = failed ? problem(query) : Problem{ProblemKind::DamagedFile, unreadable};
    query.finish(); // an unfinished query holds a lock against other windows
    if (failed || !unreadable.empty())
        return met;
    return Done{};
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
