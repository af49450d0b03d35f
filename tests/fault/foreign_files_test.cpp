#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/inspection.h"
#include "core/store/layout.h"
#include "core/store/migrations.h"
#include "tests/fault/file_bytes.h"
#include "tests/fault/raw_change.h"
#include "tests/support/hangar.h"

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// A file of ours that another program changed in how it is built.
class ForeignFile : public testing::Test
{
protected:
    ForeignFile()
    {
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
        store.close();
    }

    // Refused with what differs first, and not a byte of it or beside it is touched.
    void expectRefused(ProblemKind kind, const std::string& name = {})
    {
        const std::string before = bytesOf(store.path());
        for (const LookedThrough when : {LookedThrough::First, LookedThrough::Behind}) {
            const auto opened = StoreFile::open(store.path(), OpenAs::Existing, store.clock(), when);
            ASSERT_FALSE(opened);
            EXPECT_EQ(opened.problem().kind, kind) << describe(opened.problem());
            if (!name.empty()) {
                EXPECT_EQ(opened.problem().detail, name);
            }
        }
        EXPECT_TRUE(before == bytesOf(store.path()));
        EXPECT_FALSE(fs::exists(copiesFolder(store.path()))) << "it must not push a good copy out";
    }

    TempStore store;
    Hangar hangar{store.records()};
};

// The row stands in its table and holds against the chain, but no page and no report would find it.
TEST_F(ForeignFile, HidesAReadingFromAnIndex)
{
    changeBy(store.path(),
             "PRAGMA writable_schema = ON;"
             "DROP INDEX reading_of_coupling;"
             "CREATE INDEX reading_of_coupling ON reading(coupling, measured_at) WHERE enters_um <> 450;"
             "UPDATE sqlite_schema SET sql = 'CREATE INDEX reading_of_coupling ON reading(coupling, "
             "measured_at)' WHERE name = 'reading_of_coupling';");
    const auto opened = StoreFile::open(store.path(), OpenAs::Existing, store.clock(), LookedThrough::First);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.problem().kind, ProblemKind::DamagedFile) << describe(opened.problem());
    EXPECT_NE(opened.problem().detail.find("reading_of_coupling"), std::string::npos);
}

TEST_F(ForeignFile, HoldsWhatRigbandNeverMade)
{
    const std::string asItWas = bytesOf(store.path());
    const std::pair<const char*, const char*> table[] = {
        {"CREATE TRIGGER spy AFTER INSERT ON reading BEGIN INSERT INTO tick SELECT * FROM tick; END", "spy"},
        {"CREATE TRIGGER endless AFTER INSERT ON reading BEGIN INSERT INTO connected_person SELECT "
         "randomblob(16), randomblob(16) FROM (WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM "
         "n) "
         "SELECT i FROM n); END",
         "endless"},
        {"CREATE TABLE notes (text)", "notes"},
        {"CREATE VIEW all_readings AS SELECT * FROM reading", "all_readings"},
        {"CREATE INDEX quick ON reading(note)", "quick"},
        {"DROP TRIGGER reading_no_update", "reading_no_update"},
        {"CREATE TABLE \"\x1b[31m\u202e;\" (text)", "??31m????"},
        {"ALTER TABLE shown RENAME TO kept; CREATE VIEW shown AS SELECT * FROM kept", "kept"},
        {"ALTER TABLE person ADD COLUMN size TEXT", "person"},
    };
    for (const auto& [sql, name] : table) {
        SCOPED_TRACE(sql);
        writeBytes(store.path(), asItWas);
        changeBy(store.path(), sql);
        expectRefused(ProblemKind::ForeignLayout, name);
    }
}

TEST_F(ForeignFile, HasATableThatTakesAnythingInItsPlace)
{
    changeBy(store.path(), "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, "
                           "') STRICT', ')') WHERE name = 'reading'");
    expectRefused(ProblemKind::ForeignLayout, "reading");
}

TEST_F(ForeignFile, SaysThatItIsOfAnotherVersionThanItIs)
{
    const std::string asItWas = bytesOf(store.path());
    for (const int version : {3, newestSchemaVersion() - 1, -1}) {
        SCOPED_TRACE(version);
        writeBytes(store.path(), asItWas);
        changeBy(store.path(), "PRAGMA user_version = " + std::to_string(version));
        expectRefused(ProblemKind::WrongVersion);
    }
    fs::copy_file(RIG_TEST_DATA "/released/v3.rigband", store.path(), fs::copy_options::overwrite_existing);
    changeBy(store.path(), "PRAGMA user_version = " + std::to_string(newestSchemaVersion()));
    expectRefused(ProblemKind::WrongVersion);
}

TEST_F(ForeignFile, IsStillOursWithTheStatisticsOfTheDatabase)
{
    changeBy(store.path(), "ANALYZE");
    EXPECT_TRUE(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
}

TEST_F(ForeignFile, TakesNoWriteOnceAnotherProgramBuiltSomethingIntoItWhileItWasOpen)
{
    store.reopen();
    changeBy(store.path(), "CREATE TRIGGER spy AFTER INSERT ON reading BEGIN SELECT 1; END");
    const std::string before = bytesOf(store.path());
    for (int again = 0; again < 2; ++again) {
        const auto added =
            store.records().add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt);
        ASSERT_FALSE(added);
        EXPECT_EQ(added.problem().kind, ProblemKind::ForeignLayout);
    }
    EXPECT_TRUE(before == bytesOf(store.path()));
    changeBy(store.path(), "DROP TRIGGER spy");
    must(store.records().add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt));
}

TEST_F(ForeignFile, IsComparedWithWhatTheMigrationsMake)
{
    for (int version = 1; version <= newestSchemaVersion(); ++version) {
        const std::string hash = must(layoutHash(version));
        EXPECT_TRUE(isLayoutKnown(version, hash))
            << "version " << version << " belongs into kKnown of core/store/layout.cpp: \"" << hash << '"';
    }
}

TEST_F(ForeignFile, IsKnownInSomeMilliseconds)
{
    store.reopen();
    constexpr int kTimes = 10;
    const auto begin = std::chrono::steady_clock::now();
    for (int i = 0; i < kTimes; ++i)
        must(checkLayout(store.file().connection()));
    const std::chrono::duration<double, std::milli> each =
        (std::chrono::steady_clock::now() - begin) / kTimes;
    EXPECT_LT(each.count(), 100) << "a hundred so that a busy machine fails no test";
    RecordProperty("milliseconds", std::to_string(each.count()));
}

TEST_F(ForeignFile, CannotReachBeyondItsOwnConnection)
{
    store.reopen();
    StoreFile::Connection& connection = store.file().connection();
    EXPECT_FALSE(connection.run("ATTACH ? AS other", {QString::fromStdString(store.path())}));
    must(connection.run("PRAGMA writable_schema = ON"));
    EXPECT_FALSE(connection.run("UPDATE sqlite_schema SET sql = '' WHERE name = 'reading'"));
    EXPECT_EQ(must(connection.integer("PRAGMA trusted_schema")), 0);
    EXPECT_EQ(must(connection.integer("PRAGMA cell_size_check")), 1);
}

// As Rigband lays it out, and with something in it that no Rigband would have saved.
void changeFacts(const std::string& path, const std::string& sql)
{
    sqlite3* file = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &file), SQLITE_OK);
    sqlite3_db_config(file, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    EXPECT_EQ(sqlite3_exec(file, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(file);
    sqlite3_close(file);
}

TEST_F(ForeignFile, TakesNothingMoreAfterTheGreatestIdThereIs)
{
    changeFacts(store.path(), "UPDATE reading SET id = x'ffffffffffffffffffffffffffffffff'");
    store.reopen();
    const auto added =
        store.records().add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt);
    ASSERT_FALSE(added);
    EXPECT_EQ(added.problem().kind, ProblemKind::NoGreaterId);
    const auto found = must(findingsIn(store.file().connection(), store.clock().now()));
    EXPECT_EQ(std::ranges::count(found, FindingKind::LastId, &Finding::kind), 1);
    EXPECT_EQ(std::ranges::count(found, FindingKind::FutureId, &Finding::kind), 1);
}

TEST_F(ForeignFile, IsFoundToHoldNumbersOutOfTheirRangeAndThingsThatDoNotBelongTogether)
{
    store.reopen();
    EXPECT_TRUE(must(findingsIn(store.file().connection(), store.clock().now())).empty());
    const AirframeId other = must(store.records().add(anAirframe("QX-18")));
    must(store.records().add(aCoupling(other, "Elevator")));
    store.close();
    changeFacts(store.path(),
                "UPDATE reading SET enters_um = 4294967296 + 450, refuses_um = 4294967296 + 500, "
                "coupling = (SELECT subject FROM coupling WHERE name = 'Elevator')");
    store.reopen();
    EXPECT_EQ(store.records().readings(other).problem().kind, ProblemKind::DamagedFile);
    const auto found = must(findingsIn(store.file().connection(), store.clock().now()));
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0],
              (Finding{FindingKind::Unreadable, "reading", 1, "reading.enters_um: out of its range"}));
    EXPECT_EQ(found[1], (Finding{FindingKind::NotTogether, "reading", 1, {}}));
}

TEST_F(ForeignFile, IsSalvagedWithoutWhatIsNoFactAndWithoutWhatBelongsToItAndSaysSo)
{
    changeFacts(store.path(), "UPDATE coupling SET rigging_order = 4294967296 WHERE name = 'Left aileron'");
    const std::string into = store.folder() / "saved.rigband";
    const Salvaged told = must(StoreFile::salvage(store.path(), into, store.clock()));
    const auto of = [&told](const char* table) {
        const auto found = std::ranges::find(told.notCarried, table, &NotCarried::table);
        return found == told.notCarried.end() ? NotCarried{} : *found;
    };
    EXPECT_EQ(of("coupling").refused, 1);
    EXPECT_EQ(of("fitting").lost, 1);
    EXPECT_EQ(of("reading").lost, 1);
    EXPECT_EQ(told.notCarried.size(), 3U);
    EXPECT_EQ(told.dangling, 0);
    const auto file = must(StoreFile::open(into, OpenAs::Existing, store.clock()));
    EXPECT_TRUE(must(findingsIn(file->connection(), store.clock().now())).empty());
}

TEST_F(ForeignFile, IsSalvagedFromItsTablesAloneAndNeverFromAViewInTheirPlace)
{
    changeBy(store.path(), "ALTER TABLE shown RENAME TO kept; CREATE VIEW shown AS WITH RECURSIVE n(i) AS "
                           "(SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT i AS rowid, i AS reading FROM n");
    const std::string into = store.folder() / "saved.rigband";
    const Salvaged told = must(StoreFile::salvage(store.path(), into, store.clock()));
    ASSERT_EQ(told.notCarried.size(), 1U);
    EXPECT_EQ(told.notCarried.front().table, "shown");
    EXPECT_TRUE(StoreFile::open(into, OpenAs::Existing, store.clock()));
}

TEST_F(ForeignFile, IsLookedAtWithoutBeingTouchedThoughItIsOfAnOlderLayout)
{
    fs::copy_file(RIG_TEST_DATA "/released/v3.rigband", store.path(), fs::copy_options::overwrite_existing);
    const std::string before = bytesOf(store.path());
    {
        const auto file = must(StoreFile::open(store.path(), OpenAs::ToLook, store.clock()));
        EXPECT_TRUE(file->isUpgraded());
        EXPECT_TRUE(file->isReadOnly());
        must(findingsIn(file->connection(), store.clock().now()));
    }
    EXPECT_TRUE(before == bytesOf(store.path()));
    EXPECT_FALSE(fs::exists(copiesFolder(store.path())));
}

} // namespace
