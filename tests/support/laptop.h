#pragma once

#include "core/store/join.h"
#include "tests/support/hangar.h"

#include <string>

namespace rig::test {

// One of several computers of a syndicate: a file with a clock and ids of its own.
struct Laptop
{
    Laptop(std::string filePath, std::uint64_t seed);

    StoreFile& file() { return *open; }
    ReadingId read(const Hangar& hangar, int entersUm);

    std::string path;
    FixedClock clock;
    IdSource ids;
    std::unique_ptr<StoreFile> open;
    std::unique_ptr<Records> records;
};

// What stands in every table of a file, as text: of the same content the same, in whatever order it came.
std::string contentOf(StoreFile::Connection& connection);
std::string contentOf(const std::string& path);

// Both are only read; `out` must not be there.
Joined joined(const std::string& ours, const std::string& theirs, const std::string& out);
Joined takenIn(Laptop& ours, const std::string& theirs);

// As somebody who knows SQL: with the triggers of a table out of the way meanwhile.
void byHand(StoreFile::Connection& file, const QString& table, const QString& sql,
            const QVariantList& values = {});
// So many readings more, each like one that is there.
void addReadingsByHand(const std::string& path, int count);

// The newest fact of a table once more under another id, which no Rigband saves.
inline void putInOnceMore(StoreFile::Connection& file, const QString& table)
{
    must(file.run("CREATE TEMP TABLE more AS SELECT * FROM " + table + " ORDER BY id DESC LIMIT 1"));
    must(file.run("UPDATE more SET id = CAST(substr(id, 1, 15) || CASE substr(id, 16) WHEN x'01' THEN x'02' "
                  "ELSE x'01' END "
                  "AS BLOB)"));
    must(file.run("INSERT INTO " + table + " SELECT * FROM more"));
    must(file.run("DROP TABLE more"));
}

// What a fact says in this column, as it stands in the file.
inline std::string saidIn(const FaultyFact& fact, const std::string& column)
{
    std::string said;
    for (const FactCells& cells : fact.says)
        if (cells.column == column)
            for (const FactValue& value : cells.values)
                said += value.text;
    return said;
}

} // namespace rig::test
