#include "core/store/attached.h"

#include "core/store/create_file.h"
#include "core/store/migrations.h"
#include "core/store/values.h"

#include <filesystem>
#include <unistd.h>

namespace rig {

namespace {

// An empty one keeps the name, so that a file that turned up meanwhile is never written over.
Outcome giveName(const std::string& making, const std::string& path)
{
    if (const auto reserved = createFile(path, newestSchemaVersion()); !reserved)
        return reserved.problem();
    std::error_code failed;
    std::filesystem::rename(making, path, failed);
    if (failed)
        return Problem{ProblemKind::CannotOpen, path + ": " + failed.message()};
    return Done{};
}

} // namespace

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

Outcome makeUnderAnotherName(const std::string& path,
                             const std::function<Result<bool>(const std::string& making)>& make)
{
    std::error_code ignored;
    if (std::filesystem::exists(std::filesystem::symlink_status(path, ignored)))
        return Problem{ProblemKind::FileExists, path};
    const std::string making = path + ".joining-" + std::to_string(::getpid());
    std::filesystem::remove(making, ignored); // left behind by another one of that number
    const Result<bool> made = make(making);
    const Outcome named = !made          ? Outcome{made.problem()}
                          : made.value() ? giveName(making, path)
                                         : Outcome{Done{}};
    std::filesystem::remove(making, ignored);
    return named;
}

} // namespace rig
