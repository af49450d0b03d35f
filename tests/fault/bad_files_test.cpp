#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/tables.h"
#include "tests/fault/file_bytes.h"
#include "tests/support/hangar.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <sqlite3.h>
#include <thread>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// Versions and superseded ones included.
int factsIn(StoreFile& file)
{
    int facts = 0;
    for (const FactTable& table : kFactTables)
        if (table.isFact)
            facts += static_cast<int>(*must(file.connection().integer(
                QStringLiteral("SELECT count(*) FROM ") + QLatin1String(table.name))));
    return facts;
}

// A file with some hundreds of readings: enough pages to damage some and not others.
class BadFile : public testing::Test
{
protected:
    BadFile() : airframe{hangar.airframe}
    {
        must(store.records().together([this]() -> Outcome {
            for (int i = 0; i < kReadings; ++i) {
                Reading reading = hangar.reading(between(450, 500), store.clock().now());
                reading.note = "reading " + std::to_string(i) + std::string(60, '.');
                must(store.records().add(reading, std::nullopt));
            }
            return Done{};
        }));
        store.close();
    }

    // What is wrong with it is said, and not a byte of it or beside it is touched.
    void expectRefused(ProblemKind kind)
    {
        const std::string before = bytesOf(path());
        const auto opened = StoreFile::open(path(), OpenAs::Existing, store.clock());
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.problem().kind, kind) << describe(opened.problem());
        EXPECT_TRUE(before == bytesOf(path()));
        EXPECT_FALSE(fs::exists(path() + "-journal"));
        EXPECT_FALSE(fs::exists(copiesFolder(path()))) << "a bad file must not push a good copy out";
    }

    std::string path() const { return store.path(); }

    static constexpr int kReadings = 400;
    TempStore store;
    Hangar hangar{store.records()};
    AirframeId airframe;
};

} // namespace

TEST_F(BadFile, IsMissing)
{
    fs::remove(path());
    const auto opened = StoreFile::open(path(), OpenAs::Existing, store.clock());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.problem().kind, ProblemKind::NoSuchFile);
    EXPECT_FALSE(fs::exists(path())) << "looking for a file must not make one";
}

TEST_F(BadFile, IsAFolder)
{
    const auto opened = StoreFile::open(store.folder().string(), OpenAs::Existing, store.clock());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.problem().kind, ProblemKind::CannotOpen);
}

TEST_F(BadFile, IsAText)
{
    writeBytes(path(), "airframe,coupling,date\nQX-17,Left aileron,2026-05-02\n");
    expectRefused(ProblemKind::NotOurFile);
}

TEST_F(BadFile, IsADatabaseOfSomethingElse)
{
    fs::remove(path());
    sqlite3* other = nullptr;
    ASSERT_EQ(sqlite3_open(path().c_str(), &other), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(other, "CREATE TABLE reading (id INTEGER); PRAGMA user_version = 1", nullptr,
                           nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(other);
    expectRefused(ProblemKind::NotOurFile);
}

TEST_F(BadFile, IsEmpty)
{
    writeBytes(path(), "");
    expectRefused(ProblemKind::DamagedFile);
}

TEST_F(BadFile, IsCutOffWithinItsHeader)
{
    writeBytes(path(), bytesOf(path()).substr(0, 60));
    expectRefused(ProblemKind::DamagedFile);
}

TEST_F(BadFile, IsCutOffHalfWay)
{
    const std::string whole = bytesOf(path());
    writeBytes(path(), whole.substr(0, whole.size() / 2));
    expectRefused(ProblemKind::DamagedFile);
}

TEST_F(BadFile, IsCutOffWithinAPage)
{
    const std::string whole = bytesOf(path());
    writeBytes(path(), whole.substr(0, whole.size() - 1000));
    expectRefused(ProblemKind::DamagedFile);
}

TEST_F(BadFile, IsDamagedInTheMiddle)
{
    std::string bytes = bytesOf(path());
    bytes.replace(bytes.size() / 2, 3 * 4096, 3 * 4096, '\xA5');
    writeBytes(path(), bytes);
    expectRefused(ProblemKind::DamagedFile);
}

TEST_F(BadFile, IsDamagedInItsFirstPage)
{
    std::string bytes = bytesOf(path());
    bytes.replace(100, 2000, 2000, '\xA5');
    writeBytes(path(), bytes);
    expectRefused(ProblemKind::DamagedFile);
}

TEST_F(BadFile, ComesFromANewerProgram)
{
    std::string bytes = bytesOf(path());
    bytes[63] = 99; // last byte of user_version, at 60
    writeBytes(path(), bytes);
    expectRefused(ProblemKind::NewerFile);
}

TEST_F(BadFile, StandsWhereANewOneIsWanted)
{
    const std::string before = bytesOf(path());
    const auto opened = StoreFile::open(path(), OpenAs::New, store.clock());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.problem().kind, ProblemKind::FileExists);
    EXPECT_TRUE(before == bytesOf(path()));
}

TEST_F(BadFile, IsShownButTakesNoWriteWhenItsDamageIsFoundBehindTheWindow)
{
    std::string bytes = bytesOf(path());
    const std::size_t at = bytes.find("reading 200.") / 4096 * 4096;
    bytes.replace(at, 3 * 4096, 3 * 4096, '\xA5');
    writeBytes(path(), bytes);
    auto file = must(StoreFile::open(path(), OpenAs::Existing, store.clock(), LookedThrough::Behind));
    IdSource ids{5};
    Records records{*file, ids, store.clock()};
    EXPECT_EQ(must(records.airframes()).size(), 1U);
    const auto added = records.add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt);
    ASSERT_FALSE(added);
    EXPECT_EQ(added.problem().kind, ProblemKind::DamagedFile);
    ASSERT_TRUE(file->wholeness());
    EXPECT_FALSE(*file->wholeness());
    file.reset();
    EXPECT_TRUE(bytes == bytesOf(path()));
    EXPECT_FALSE(fs::exists(copiesFolder(path()))) << "a bad file must not push a good copy out";
}

TEST_F(BadFile, IsWholeAfterAllAndTakesWritesAndGetsItsCopyBehindTheWindow)
{
    auto file = must(StoreFile::open(path(), OpenAs::Existing, store.clock(), LookedThrough::Behind));
    IdSource ids{5};
    Records records{*file, ids, store.clock()};
    must(records.add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt));
    while (!file->isLookedThrough())
        std::this_thread::yield();
    EXPECT_FALSE(file->copyProblem());
    EXPECT_TRUE(fs::exists(copiesFolder(path()) / "hangar 2026-05-02.rigband"));
    const auto copy = must(
        StoreFile::open(copiesFolder(path()) / "hangar 2026-05-02.rigband", OpenAs::Existing, store.clock()));
    Records copied{*copy, ids, store.clock()};
    EXPECT_GE(must(copied.readings(airframe)).size(), static_cast<std::size_t>(kReadings));
}

TEST_F(BadFile, IsLeftAtOnceWhileItIsStillLookedThrough)
{
    for (int i = 0; i < 20; ++i)
        must(StoreFile::open(path(), OpenAs::Existing, store.clock(), LookedThrough::Behind));
}

TEST_F(BadFile, SalvageCarriesOverAllOfASoundFile)
{
    const std::string before = bytesOf(path());
    const std::string into = store.folder() / "saved.rigband";
    const Salvaged told = must(StoreFile::salvage(path(), into, store.clock()));
    const int carried = told.facts;
    for (const NotCarried& one : told.notCarried)
        ADD_FAILURE() << one.table << ' ' << one.unread << ' ' << one.endUnread << ' ' << one.refused << ' '
                      << one.lost;
    EXPECT_EQ(told.dangling, 0);
    EXPECT_TRUE(before == bytesOf(path()));
    auto file = must(StoreFile::open(into, OpenAs::Existing, store.clock()));
    EXPECT_EQ(carried, factsIn(*file));
    EXPECT_EQ(must(file->danglingReferences()), 0);
    IdSource ids{5};
    Records records{*file, ids, store.clock()};
    EXPECT_EQ(must(records.readings(airframe)).size(), static_cast<std::size_t>(kReadings));
    must(records.add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt));
}

TEST_F(BadFile, SalvageCarriesOverWhatIsNotDamaged)
{
    std::string bytes = bytesOf(path());
    // Three pages out of the readings: found by their text, so that other tables stay whole.
    const std::size_t at = bytes.find("reading 200.") / 4096 * 4096;
    bytes.replace(at, 3 * 4096, 3 * 4096, '\xA5');
    writeBytes(path(), bytes);
    expectRefused(ProblemKind::DamagedFile);
    const std::string into = store.folder() / "saved.rigband";
    must(StoreFile::salvage(path(), into, store.clock()));
    EXPECT_TRUE(bytes == bytesOf(path()));
    auto file = must(StoreFile::open(into, OpenAs::Existing, store.clock()));
    IdSource ids{5};
    Records records{*file, ids, store.clock()};
    const std::size_t kept = must(records.readings(airframe)).size();
    EXPECT_GT(kept, 300U);
    EXPECT_LT(kept, static_cast<std::size_t>(kReadings));
    EXPECT_EQ(must(records.couplings(airframe)).size(), 2U);
    const std::vector<KeptReading> readings = must(records.readings(airframe));
    EXPECT_EQ(readings.front().reading.note.substr(0, 10), "reading 0.");
    EXPECT_EQ(readings.back().reading.note.substr(0, 12), "reading 399.");
}

TEST_F(BadFile, SalvageReadsTheBeginningOfAFileCutOff)
{
    const std::string whole = bytesOf(path());
    writeBytes(path(), whole.substr(0, whole.size() * 19 / 20));
    const std::string into = store.folder() / "saved.rigband";
    must(StoreFile::salvage(path(), into, store.clock()));
    auto file = must(StoreFile::open(into, OpenAs::Existing, store.clock()));
    IdSource ids{5};
    Records records{*file, ids, store.clock()};
    EXPECT_EQ(must(records.airframes()).size(), 1U);
    EXPECT_GT(must(records.readings(airframe)).size(), 50U);
}

TEST_F(BadFile, SalvageNeverWritesOverAFileAndLeavesNoneWhenThereIsNothing)
{
    const std::string other = store.folder() / "other.rigband";
    writeBytes(other, "mine");
    EXPECT_EQ(StoreFile::salvage(path(), other, store.clock()).problem().kind, ProblemKind::FileExists);
    EXPECT_EQ(bytesOf(other), "mine");
    std::string bytes = bytesOf(path());
    bytes.replace(100, bytes.size() - 100, bytes.size() - 100, '\xA5');
    writeBytes(path(), bytes);
    const std::string into = store.folder() / "saved.rigband";
    EXPECT_EQ(StoreFile::salvage(path(), into, store.clock()).problem().kind, ProblemKind::DamagedFile);
    EXPECT_FALSE(fs::exists(into));
}
