#include "tests/support/laptop.h"

#include "core/store/tables.h"

#include <QStringList>

#include <algorithm>
#include <sstream>

namespace rig::test {

Laptop::Laptop(std::string filePath, std::uint64_t seed)
    : path{std::move(filePath)}, ids{seed}, open{must(StoreFile::open(path, OpenAs::Existing, clock))},
      records{std::make_unique<Records>(*open, ids, clock)}
{
}

ReadingId Laptop::read(const Hangar& hangar, int entersUm)
{
    return must(
        records->add(hangar.reading(between(entersUm, entersUm + 50), clock.now()), std::optional<Shown>{}));
}

std::string contentOf(StoreFile::Connection& connection)
{
    std::ostringstream all;
    std::vector<std::string> tables{kChainTables.begin(), kChainTables.end()};
    for (const FactTable& table : kFactTables)
        tables.emplace_back(table.name);
    for (const std::string& table : tables) {
        std::vector<std::string> rows;
        const auto columns = must(
            connection.integer(QString("SELECT count(*) FROM pragma_table_info('%1')").arg(table.c_str())));
        must(connection.each(QString("SELECT * FROM %1").arg(table.c_str()), {}, [&](Row& row) {
            std::string& told = rows.emplace_back();
            for (int i = 0; i < columns; ++i) {
                const QVariant value = row.raw(i);
                told += value.typeId() == QMetaType::QByteArray ? value.toByteArray().toHex().toStdString()
                                                                : value.toString().toStdString();
                told += ';';
            }
        }));
        std::ranges::sort(rows);
        all << table << '\n';
        for (const std::string& row : rows)
            all << row << '\n';
    }
    return all.str();
}

std::string contentOf(const std::string& path)
{
    return contentOf(must(OtherFile::read(path, path))->connection());
}

Joined joined(const std::string& ours, const std::string& theirs, const std::string& out)
{
    const auto one = must(OtherFile::read(ours, out));
    const auto other = must(OtherFile::read(theirs, out));
    return must(join(*one, *other, out));
}

Joined takenIn(Laptop& ours, const std::string& theirs)
{
    const auto other = must(OtherFile::read(theirs, ours.path));
    return must(takeIn(ours.file(), *other));
}

void byHand(StoreFile::Connection& file, const QString& table, const QString& sql, const QVariantList& values)
{
    QStringList triggers;
    must(file.each("SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = ?", {table},
                   [&triggers](Row& row) { triggers.append(QString::fromStdString(row.text())); }));
    for (const char* each : {"update", "delete"})
        must(file.run(QString("DROP TRIGGER %1_no_%2").arg(table, each)));
    must(file.run(sql, values));
    for (const QString& trigger : triggers)
        must(file.run(trigger));
}

void addReadingsByHand(const std::string& path, int count)
{
    const auto file = must(StoreFile::Connection::open(path, StoreFile::Connection::Access::Writing));
    const QString columns =
        must(file->word("SELECT group_concat(name) FROM pragma_table_info('reading') WHERE name <> 'id'"));
    byHand(
        *file, "reading",
        QString("INSERT INTO reading (id, %1) WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n "
                "WHERE i < %2) SELECT randomblob(16), %1 FROM n, (SELECT * FROM reading LIMIT 1)")
            .arg(columns)
            .arg(count));
}

} // namespace rig::test
