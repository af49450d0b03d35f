#include "core/store/connection.h"
#include "core/store/create_file.h"
#include "core/store/file_header.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"

#include <QStringList>

#include <filesystem>

namespace rig {

namespace {

// After damage without a readable end, so many missing rows in a row are taken for the end of the table.
constexpr qlonglong kGiveUpAfter = 1000;

struct TableCopy
{
    StoreFile::Connection& from;
    StoreFile::Connection& into;
    QString table;
    QStringList columns;
    int carried = 0;
    qlonglong last = 0;                          // greatest row number read from the front
    std::optional<qlonglong> low = std::nullopt; // smallest row number read from the back
    Outcome outcome = Done{};

    QString select(const char* rest) const
    {
        return QStringLiteral("SELECT rowid, %1 FROM %2 %3")
            .arg(columns.join(u','), table, QString::fromLatin1(rest));
    }

    // A row that the table's own checks refuse is damaged too, and left out.
    qlonglong take(const Row& row)
    {
        QVariantList values;
        for (int i = 1; i <= columns.size(); ++i)
            values.append(row.raw(i));
        const QString marks = QStringList(columns.size(), QStringLiteral("?")).join(u',');
        const Outcome inserted = into.run(
            QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)").arg(table, columns.join(u','), marks), values);
        if (inserted)
            ++carried;
        else if (inserted.problem().kind != ProblemKind::FactRefused)
            outcome = inserted;
        return row.raw(0).toLongLong();
    }

    bool fromTheFront()
    {
        return static_cast<bool>(
            from.each(select("ORDER BY rowid"), {}, [this](const Row& row) { last = take(row); }));
    }

    void fromTheBack()
    {
        // Ends at the damage, or where the front came to.
        static_cast<void>(from.each(select("WHERE rowid > ? ORDER BY rowid DESC"), {last},
                                    [this](const Row& row) { low = take(row); }));
    }

    void oneByOne()
    {
        qlonglong missing = 0;
        for (qlonglong at = last + 1; low ? at < *low : missing < kGiveUpAfter; ++at) {
            bool found = false;
            static_cast<void>(from.each(select("WHERE rowid = ?"), {at}, [&](const Row& row) {
                take(row);
                found = true;
            }));
            missing = found ? 0 : missing + 1;
        }
    }

    void run()
    {
        if (fromTheFront())
            return;
        fromTheBack();
        if (last > 0 || low) // otherwise the way into the table itself is damaged
            oneByOne();
    }
};

Result<QStringList> columnsOf(StoreFile::Connection& connection, const QString& table)
{
    QStringList columns;
    const Outcome read =
        connection.each(QStringLiteral("SELECT name FROM pragma_table_info(?)"), {table},
                        [&columns](Row& row) { columns.append(QString::fromStdString(row.text())); });
    if (!read)
        return read.problem();
    return columns;
}

Result<int> copyTables(StoreFile::Connection& from, StoreFile::Connection& into)
{
    // What refers to something lost is still worth keeping.
    if (const Outcome off = into.run(QStringLiteral("PRAGMA foreign_keys = OFF")); !off)
        return off.problem();
    Transaction transaction{into};
    if (!transaction.begun())
        return transaction.begun().problem();
    int facts = 0;
    std::vector<FactTable> tables{kFactTables.begin(), kFactTables.end()};
    for (const char* table : kChainTables) // what is lost shows as a link without its fact
        tables.push_back({table, false});
    for (const FactTable& table : tables) {
        const QString name = QString::fromLatin1(table.name);
        const Result<QStringList> columns = columnsOf(into, name);
        if (!columns)
            return columns.problem();
        if (columns.value().isEmpty())
            continue; // added by a later layout
        TableCopy copy{.from = from, .into = into, .table = name, .columns = columns.value()};
        copy.run();
        if (!copy.outcome)
            return copy.outcome.problem();
        if (table.isFact)
            facts += copy.carried;
    }
    if (facts == 0)
        return Problem{ProblemKind::DamagedFile, "nothing in the file can be read"};
    if (const Outcome committed = transaction.commit(); !committed)
        return committed.problem();
    if (const Outcome on = into.run(QStringLiteral("PRAGMA foreign_keys = ON")); !on)
        return on.problem();
    if (const Outcome upgraded = migrate(into, newestSchemaVersion()); !upgraded)
        return upgraded.problem();
    return facts;
}

} // namespace

Result<int> StoreFile::salvage(const std::string& damaged, const std::string& into, const Clock&)
{
    const Result<FileHeader> header = readHeader(damaged);
    if (!header)
        return header.problem();
    if (const Outcome known = checkHeader(header.value()); !known)
        return known.problem();
    const auto from = Connection::open(damaged, Connection::Access::Salvaging);
    if (!from)
        return from.problem();
    auto target = createFile(into, static_cast<int>(header.value().userVersion));
    if (!target)
        return target.problem();
    const Result<int> carried = copyTables(*from.value(), *target.value());
    if (!carried) {
        target = carried.problem(); // closes the file
        std::error_code ignored;
        std::filesystem::remove(into, ignored);
    }
    return carried;
}

} // namespace rig
