#include "core/store/connection.h"
#include "core/store/create_file.h"
#include "core/store/file_header.h"
#include "core/store/inspection.h"
#include "core/store/layout.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"

#include <QStringList>

#include <algorithm>
#include <filesystem>
#include <map>
#include <string_view>

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
    Progress* progress;
    std::size_t& rows;  // taken so far, of all tables
    qlonglong mostRows; // that a file of its size can hold: a damaged row number leads anywhere
    NotCarried told = {};
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
        const qlonglong number = row.raw(0).toLongLong();
        if (!goesOn(progress, ++rows, 0))
            return number; // the whole new file goes
        QVariantList values;
        for (int i = 1; i <= columns.size(); ++i)
            values.append(row.raw(i));
        const QString marks = QStringList(columns.size(), QStringLiteral("?")).join(u',');
        const Outcome inserted = into.run(
            QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)").arg(table, columns.join(u','), marks), values);
        if (!inserted && inserted.problem().kind == ProblemKind::FactRefused)
            ++told.refused;
        else if (!inserted)
            outcome = inserted;
        return number;
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
        qlonglong missing = 0; // in a row
        qlonglong looked = 0;
        for (qlonglong at = last + 1; low ? at < *low : missing < kGiveUpAfter; ++at) {
            if (++looked > mostRows) {
                told.endUnread = true;
                return;
            }
            bool found = false;
            static_cast<void>(from.each(select("WHERE rowid = ?"), {at}, [&](const Row& row) {
                take(row);
                found = true;
            }));
            missing = found ? 0 : missing + 1;
            told.unread += low && !found ? 1 : 0;
        }
    }

    void run()
    {
        if (fromTheFront())
            return;
        fromTheBack();
        told.endUnread = !low;
        if (last > 0 || low) // otherwise the way into the table itself is damaged
            oneByOne();
    }
};

// Each has an id of 16 bytes at least.
qlonglong mostRowsIn(const std::string& path)
{
    std::error_code failed;
    const std::uintmax_t size = std::filesystem::file_size(path, failed);
    return failed ? 0 : static_cast<qlonglong>(size / 16);
}

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

// Nothing but a table of its own name: what another program put in its place could give anything, for ever.
Result<bool> isTable(StoreFile::Connection& from, const QString& table)
{
    const auto found = from.integer(
        QStringLiteral(
            "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = ? AND rootpage > 0"),
        {table});
    if (!found)
        return found.problem();
    return found.value().value_or(0) == 1;
}

Outcome copyTables(StoreFile::Connection& from, StoreFile::Connection& into, Salvaged& told,
                   Progress* progress)
{
    // What refers to something lost is looked at once everything is there.
    if (const Outcome off = into.run(QStringLiteral("PRAGMA foreign_keys = OFF")); !off)
        return off;
    Transaction transaction{into};
    if (!transaction.begun())
        return transaction.begun();
    const Watched watchedFrom{from, progress};
    const qlonglong mostRows = mostRowsIn(from.path);
    std::size_t rows = 0;
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
        const Result<bool> is = isTable(from, name);
        TableCopy copy{.from = from,
                       .into = into,
                       .table = name,
                       .columns = columns.value(),
                       .progress = progress,
                       .rows = rows,
                       .mostRows = mostRows};
        if (is && is.value())
            copy.run();
        else
            copy.told.endUnread = true;
        if (isStopped(progress))
            return stoppedWork();
        if (!copy.outcome)
            return copy.outcome;
        copy.told.table = table.name;
        told.notCarried.push_back(copy.told);
    }
    return transaction.commit();
}

NotCarried& of(Salvaged& told, const std::string& table)
{
    const auto found = std::ranges::find(told.notCarried, table, &NotCarried::table);
    return found != told.notCarried.end() ? *found : told.notCarried.emplace_back(NotCarried{table});
}

Outcome removeRows(StoreFile::Connection& into, const QString& table, const std::vector<qlonglong>& rows)
{
    for (const qlonglong row : rows)
        if (const Outcome gone = into.run(QStringLiteral("DELETE FROM %1 WHERE rowid = ?").arg(table), {row});
            !gone)
            return gone;
    return Done{};
}

// What the program could not read again, which would make it refuse the whole file.
Outcome removeUnreadable(StoreFile::Connection& into, Salvaged& told)
{
    std::map<std::string, std::vector<qlonglong>> rows;
    if (const Outcome read =
            eachUnreadableRow(into, [&rows](const char* table, std::int64_t row,
                                            const std::string&) { rows[table].push_back(row); });
        !read)
        return read;
    for (const auto& [table, refused] : rows) {
        if (const Outcome gone = removeRows(into, QString::fromStdString(table), refused); !gone)
            return gone;
        of(told, table).refused += static_cast<std::int64_t>(refused.size());
    }
    return Done{};
}

// What belongs to something lost is shown nowhere and only in the way. Who stated or did something, and with
// which gauge, may be missing: the fact still says what was found.
Outcome removeLost(StoreFile::Connection& into, Salvaged& told)
{
    for (bool removed = true; removed;) {
        removed = false;
        const Outcome found = eachLostReference(into, [&](const LostReference& lost) -> Outcome {
            if (std::string_view{lost.named} == "person" || std::string_view{lost.named} == "gauge")
                return Done{};
            const auto rows = lost.rows();
            if (!rows)
                return rows.problem();
            removed = removed || !rows.value().empty();
            of(told, lost.table).lost += static_cast<std::int64_t>(rows.value().size());
            return removeRows(into, QString::fromLatin1(lost.table), rows.value());
        });
        if (!found)
            return found;
    }
    return Done{};
}

Outcome countWhatIsThere(StoreFile::Connection& into, Salvaged& told)
{
    for (const FactTable& table : kFactTables) {
        if (!table.isFact)
            continue;
        const auto rows =
            into.integer(QStringLiteral("SELECT count(*) FROM ") + QString::fromLatin1(table.name));
        if (!rows)
            return rows.problem();
        told.facts += static_cast<int>(rows.value().value_or(0));
    }
    if (told.facts == 0)
        return Problem{ProblemKind::DamagedFile, "nothing in the file can be read"};
    const auto lost = lostReferences(into);
    if (!lost)
        return lost.problem();
    for (const Finding& one : lost.value())
        told.dangling += static_cast<int>(one.rows);
    std::erase_if(told.notCarried, [](const NotCarried& one) { return !one.isAnything(); });
    return Done{};
}

Outcome carryInto(StoreFile::Connection& from, StoreFile::Connection& into, Salvaged& told,
                  Progress* progress)
{
    if (const Outcome copied = copyTables(from, into, told, progress); !copied)
        return copied;
    if (const Outcome upgraded = migrate(into, newestSchemaVersion()); !upgraded)
        return upgraded;
    if (const Outcome off = into.run(QStringLiteral("PRAGMA foreign_keys = OFF")); !off)
        return off;
    const SilencedTriggers silenced{into};
    Transaction transaction{into};
    if (!transaction.begun())
        return transaction.begun();
    for (const auto& step : {removeUnreadable, removeLost, countWhatIsThere}) {
        const Watched watched{into, progress};
        if (const Outcome done = step(into, told); !done)
            return done;
    }
    return isStopped(progress) ? Outcome{stoppedWork()} : transaction.commit();
}

// The version that it is laid out as; what it says of itself where it is none of ours.
int versionOf(StoreFile::Connection& from, const FileHeader& header)
{
    if (const auto version = versionLaidOutAs(from))
        return *version;
    const auto said = static_cast<int>(header.userVersion);
    return said >= 1 && said <= newestSchemaVersion() ? said : newestSchemaVersion();
}

} // namespace

Result<Salvaged> StoreFile::salvage(const std::string& damaged, const std::string& into, const Clock&,
                                    Progress* progress)
{
    const Result<FileHeader> header = readHeader(damaged);
    if (!header)
        return header.problem();
    if (const Outcome known = checkHeader(header.value());
        !known && known.problem().kind != ProblemKind::WrongVersion)
        return known.problem();
    const auto from = Connection::open(damaged, Connection::Access::Salvaging);
    if (!from)
        return from.problem();
    Salvaged told;
    const Outcome made = makeUnderAnotherName(into, [&](const std::string& making) -> Outcome {
        const auto target = createFile(making, versionOf(*from.value(), header.value()));
        return target ? carryInto(*from.value(), *target.value(), told, progress) : Outcome{target.problem()};
    });
    if (!made)
        return made.problem();
    return told;
}

} // namespace rig
