#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/kind_words.h"
#include "core/store/migrations.h"
#include "core/store/passing_file.h"
#include "core/store/tables.h"
#include "core/store/values.h"
#include "tests/support/hangar.h"

#include <QCryptographicHash>
#include <QFile>

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <unistd.h>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

std::vector<std::string> namesIn(const fs::path& folder)
{
    std::vector<std::string> names;
    for (const fs::directory_entry& entry : fs::directory_iterator{folder})
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

StoreFile::Connection& connectionOf(TempStore& store)
{
    return store.file().connection();
}

// Each row that the other lacks.
void join(TempStore& ours, const std::string& theirs)
{
    const auto other = must(OtherFile::read(theirs, ours.path()));
    must(takeIn(ours.file(), *other));
}

} // namespace

TEST(File, SaysWhatItIs)
{
    TempStore store;
    EXPECT_EQ(must(connectionOf(store).integer("PRAGMA application_id")), kApplicationId);
    EXPECT_EQ(must(connectionOf(store).integer("PRAGMA user_version")), newestSchemaVersion());
    EXPECT_EQ(store.file().schemaVersion(), newestSchemaVersion());
    EXPECT_EQ(must(connectionOf(store).word("PRAGMA journal_mode")), "delete");
    EXPECT_EQ(must(connectionOf(store).integer("PRAGMA foreign_keys")), 1);
    EXPECT_GE(must(connectionOf(store).integer("PRAGMA synchronous")), 2) << "FULL or more";
    EXPECT_FALSE(store.file().isReadOnly());
}

TEST(File, IsTheOneThatWasNamedThoughItsNameMeansMoreToTheDatabase)
{
    const TempFolder folder;
    const fs::path before = fs::current_path();
    fs::current_path(folder.path());
    const FixedClock clock;
    for (const char* name : {":memory:", "file:other.rigband", "file:a?mode=memory"}) {
        SCOPED_TRACE(name);
        EXPECT_TRUE(StoreFile::open(name, OpenAs::New, clock));
        EXPECT_GT(fs::file_size(folder.path() / name), 4096U);
        EXPECT_TRUE(StoreFile::open(name, OpenAs::Existing, clock));
    }
    EXPECT_FALSE(fs::exists(folder.path() / "other.rigband"));
    fs::current_path(before);
}

TEST(File, IsMadeUnderANameOfItsOwnSoThatNothingHalfMadeEverHasTheOther)
{
    const TempFolder folder;
    const std::string path = folder.file("new.rigband");
    std::ofstream{makingName(path)} << "left behind by one that was killed";
    const FixedClock clock;
    EXPECT_TRUE(StoreFile::open(path, OpenAs::New, clock));
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"new.rigband"});
    EXPECT_EQ(StoreFile::open(path, OpenAs::New, clock).problem().kind, ProblemKind::FileExists);
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"new.rigband"});
}

TEST(File, IsOneFileAtRest)
{
    TempStore store;
    const Hangar hangar{store.records()};
    store.close();
    EXPECT_EQ(namesIn(store.folder()), std::vector<std::string>{"hangar.rigband"});
}

std::vector<std::string> everyTable()
{
    std::vector<std::string> all{kChainTables.begin(), kChainTables.end()};
    for (const FactTable& table : kFactTables)
        all.emplace_back(table.name);
    return all;
}

TEST(File, EveryTableIsStrictAndRefusesChangeAndRemoval)
{
    TempStore store;
    int tables = 0;
    must(connectionOf(store).each(
        "SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE "
        "'sqlite_%'",
        {}, [&](Row& row) {
            ++tables;
            const std::string name = row.text();
            EXPECT_TRUE(row.integer() != 0) << name;
            EXPECT_EQ(std::ranges::count(everyTable(), name), 1) << name;
        }));
    EXPECT_EQ(tables, static_cast<int>(everyTable().size()));
    for (const std::string& table : everyTable())
        for (const char* event : {"update", "delete"})
            EXPECT_EQ(
                must(connectionOf(store).integer(
                    "SELECT count(*) FROM sqlite_master WHERE type = 'trigger' AND tbl_name = ? AND name = ?",
                    {QString::fromStdString(table), QString::fromStdString(table + "_no_" + event)})),
                1)
                << table << ' ' << event;
}

TEST(File, FactsCanNeitherBeChangedNorRemoved)
{
    TempStore store;
    const Hangar hangar{store.records()};
    must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    const RecordId record = must(store.records().add(hangar.record(store.clock().now())));
    must(store.records().add(SideConnected{{}, record, Side::Left, {hangar.oren}, {}}));
    for (const char* sql :
         {"UPDATE reading SET enters_um = 400", "DELETE FROM reading", "UPDATE person SET name = 'X'",
          "DELETE FROM gauge_size", "DELETE FROM connected", "DELETE FROM connected_person",
          "INSERT OR REPLACE INTO gauge_size (gauge, size_um) SELECT gauge, size_um FROM "
          "gauge_size LIMIT 1"}) {
        const Outcome done = connectionOf(store).run(sql);
        ASSERT_FALSE(done) << sql;
        EXPECT_NE(done.problem().detail.find("append-only"), std::string::npos) << done.problem().detail;
    }
    EXPECT_EQ(must(store.records().readings(hangar.airframe)).front().reading.interval.enters,
              Gap::micrometres(450));
}

// A released layout is never changed, only added to. When this fails, write a new migration.
TEST(File, ReleasedMigrationsAreFrozen)
{
    const char* const checksums[] = {
        "c99930cf58841e2d0f51cc3fdc304d7e204de36029fef3566b0695076e00df2a",
        "03300914e551002f8438520f02cc448f535e2bd25c2c108a79d84f41f29a0526",
        "2de7bc0d6dd48a6e755bab124cfd854a3e453087b4f5d91f853b088407496a9b",
        "08a4318fe624d8f6c0b52859ddc2e9a7ab0763a11b9f1ec2ea717aec14f3a07a",
        "1e2b3ab58fe25b9b71b64ea41b95b8c711151312cd09c6901da651797547c911",
        "7a2b8d037660b72ea5cc98ab2cf2f8206bd5dd5af29697ee26ab01e155cabb44",
        "383aa75418d30eaa0045a433bf33230bb0c1c5081f887703c46afe4485e4abf3",
        "a1871ffa9fe547e4384409d46657c945fb7eeb47c074464cc55af7a1a62c16e5",
        "f918da73f5960521f36955fbd9aa268b10d5ae5c7eafdaee81134d11583963d6",
        "494c3266cf1d2af6ace7225aa3ad3b65341b8bb363bcfbda5150a5c47db89f27",
        "81eaee543158fa5511c14c07b639a8523d2143a35e871e9b5ea98f87f7843487",
        "3a21e71d7b091b7b087bca116e2519aecdb8c5b64fb8e663b7ce545a600b23b3",
        "a82871c7421293affde4202fe6090b2c5b135bce9ae6063778dc4d892cb1551b",
        "400a00014a319b495a1704ae3fc3739b469367a89e4e081edc290c48c3279606",
    };
    ASSERT_EQ(newestSchemaVersion(), 14);
    for (int version = 1; version <= newestSchemaVersion(); ++version)
        EXPECT_EQ(QCryptographicHash::hash(migrationStatements(version).join("\n-- next\n").toUtf8(),
                                           QCryptographicHash::Sha256)
                      .toHex()
                      .toStdString(),
                  checksums[version - 1]);
}

TEST(File, TwoFilesJoinAsAUnionOfFacts)
{
    TempStore ours;
    const Hangar hangar{ours.records()};
    ours.close();
    const std::string theirs = ours.folder() / "theirs.rigband";
    fs::copy_file(ours.path(), theirs);
    ours.reopen();
    must(ours.records().add(hangar.reading(between(450, 500), ours.clock().now()), std::nullopt));
    {
        auto file = must(StoreFile::open(theirs, OpenAs::Existing, ours.clock()));
        IdSource ids{77};
        Records records{*file, ids, ours.clock()};
        must(records.add(hangar.reading(between(500, 550), ours.clock().now()), std::nullopt));
        must(records.add(aPerson("R. Sand")));
    }
    join(ours, theirs);
    EXPECT_EQ(must(ours.file().danglingReferences()), 0);
    EXPECT_EQ(must(ours.records().readings(hangar.airframe)).size(), 2U);
    EXPECT_EQ(must(ours.records().persons()).size(), 3U);
    EXPECT_EQ(must(ours.records().couplings(hangar.airframe)).size(), 2U);
}

// The second layout held one resolution of a question and lost the other.
TEST(File, TwoFilesThatEachClosedOneRecordAndOneQuestionLoseNeitherAndTheFirstCounts)
{
    TempStore ours;
    const Hangar hangar{ours.records()};
    RecordClose close;
    close.record = must(ours.records().add(hangar.record(ours.clock().now())));
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::AnsweredNo;
    Resolution resolution;
    resolution.question = must(ours.records().add(question));
    resolution.person = hangar.oren;
    ours.close();
    const std::string theirs = ours.folder() / "theirs.rigband";
    fs::copy_file(ours.path(), theirs);
    const auto closeBoth = [&](Records& records, const char* where) {
        close.note = resolution.found = resolution.done = where;
        must(records.add(close));
        must(records.add(resolution));
    };
    {
        FixedClock later;
        later.set(dayOf(2026, 5, 4));
        auto file = must(StoreFile::open(theirs, OpenAs::Existing, later));
        IdSource ids{77};
        Records records{*file, ids, later};
        closeBoth(records, "at the second laptop");
    }
    ours.clock().set(dayOf(2026, 5, 3));
    ours.reopen();
    closeBoth(ours.records(), "at the first laptop");
    join(ours, theirs);
    EXPECT_EQ(must(connectionOf(ours).integer("SELECT count(*) FROM closing")), 2);
    EXPECT_EQ(must(connectionOf(ours).integer("SELECT count(*) FROM resolution")), 2);
    const std::vector<RecordClose> closings = must(ours.records().closings(hangar.airframe));
    ASSERT_EQ(closings.size(), 1U);
    EXPECT_EQ(closings[0].note, "at the first laptop");
    EXPECT_EQ(must(ours.records().content(close.record)).close->note, "at the first laptop");
    const std::vector<QuestionStory> questions = must(ours.records().questions(hangar.airframe));
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_EQ(questions[0].resolution->found, "at the first laptop");
}

TEST(File, SecondWindowSeesWhatTheFirstSaved)
{
    TempStore store;
    const Hangar hangar{store.records()};
    auto second = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{5};
    Records records{*second, ids, store.clock()};
    const ReadingId here =
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    const ReadingId there =
        must(records.add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    EXPECT_LT(here.bytes, there.bytes) << "saved later, whichever window";
    EXPECT_EQ(must(store.records().readings(hangar.airframe)).size(), 2U);
}

TEST(File, EachDayOfUseKeepsACopyAndTenStay)
{
    TempStore store;
    const Hangar hangar{store.records()};
    for (unsigned day = 3; day <= 15; ++day) {
        store.clock().set(dayOf(2026, 5, day));
        store.reopen();
        must(store.records().add(aPerson("M. Oren of day " + std::to_string(day))));
        store.reopen(); // a second time on the same day keeps the morning's copy
    }
    const fs::path folder = copiesFolder(store.path());
    const std::vector<std::string> names = namesIn(folder);
    ASSERT_EQ(names.size(), 10U);
    EXPECT_EQ(names.front(), "hangar 2026-05-06.rigband");
    EXPECT_EQ(names.back(), "hangar 2026-05-15.rigband");
}

TEST(File, IsNotCopiedAgainWhileItIsAsTheNewestCopyHasIt)
{
    TempStore store;
    const Hangar hangar{store.records()};
    for (unsigned day = 3; day <= 9; ++day) {
        store.clock().set(dayOf(2026, 5, day));
        store.reopen();
    }
    EXPECT_EQ(namesIn(copiesFolder(store.path())), std::vector<std::string>{"hangar 2026-05-03.rigband"});
    must(store.records().add(aPerson("R. Sand")));
    store.clock().set(dayOf(2026, 5, 10));
    store.reopen();
    EXPECT_EQ(namesIn(copiesFolder(store.path())).back(), "hangar 2026-05-10.rigband");
}

TEST(File, CopiesTakeNoMoreThanTheirShareOfTheDisk)
{
    TempStore store;
    const Hangar hangar{store.records()};
    const std::uintmax_t size = fs::file_size(store.path());
    const auto keep = [&](unsigned day, std::uintmax_t free) {
        must(store.records().add(aPerson("M. Oren of day " + std::to_string(day))));
        return keepTodaysCopy(store.path(), dayOf(2026, 5, day), free);
    };
    must(keep(3, 100 * size));
    must(keep(4, 100 * size));
    must(keep(5, 100 * size));
    must(keep(6, 7 * size)); // ten files' worth with the three copies: room for two
    EXPECT_EQ(namesIn(copiesFolder(store.path())),
              (std::vector<std::string>{"hangar 2026-05-05.rigband", "hangar 2026-05-06.rigband"}));
    const Outcome none = keep(7, size);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.problem().kind, ProblemKind::NoRoomForCopy);
    EXPECT_EQ(namesIn(copiesFolder(store.path())).size(), 2U) << "the copies that are there stay";
}

TEST(File, CopyHoldsTheFileAsItWasBeforeTheDaysWork)
{
    TempStore store;
    const Hangar hangar{store.records()};
    store.reopen();
    must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    store.close();
    auto copy = must(StoreFile::open(copiesFolder(store.path()) / "hangar 2026-05-02.rigband",
                                     OpenAs::Existing, store.clock()));
    IdSource ids{5};
    Records records{*copy, ids, store.clock()};
    EXPECT_EQ(must(records.airframes()).front().registration, "QX-17");
    EXPECT_TRUE(must(records.readings(hangar.airframe)).empty());
}

TEST(File, OtherFilesAmongTheCopiesAreLeftAlone)
{
    TempStore store;
    const fs::path folder = copiesFolder(store.path());
    fs::create_directory(folder);
    for (const char* name :
         {"hangar before version 2 2026-01-01.rigband", "hangar kept.rigband", "notes.txt"})
        QFile{QString::fromStdString(folder / name)}.open(QIODevice::WriteOnly);
    for (unsigned day = 3; day <= 15; ++day) {
        store.clock().set(dayOf(2026, 5, day));
        store.reopen();
        must(store.records().add(aPerson("M. Oren of day " + std::to_string(day))));
    }
    EXPECT_EQ(namesIn(folder).size(), 13U);
}

TEST(File, CopyBeforeAnUpgradeIsNeverWrittenOver)
{
    TempStore store;
    must(copyBeforeUpgrade(store.path(), dayOf(2026, 5, 2), 2));
    must(copyBeforeUpgrade(store.path(), dayOf(2026, 5, 2), 2));
    EXPECT_EQ(namesIn(copiesFolder(store.path())),
              (std::vector<std::string>{"hangar before version 2 2026-05-02 2.rigband",
                                        "hangar before version 2 2026-05-02.rigband"}));
}

TEST(File, CopyThatCannotBeMadeIsSaidAndDoesNotStopTheWork)
{
    TempStore store;
    store.close();
    QFile{QString::fromStdString(copiesFolder(store.path()))}.open(
        QIODevice::WriteOnly); // a file in the folder's place
    store.reopen();
    ASSERT_TRUE(store.file().copyProblem());
    const Hangar hangar{store.records()};
}

TEST(File, EveryKindHasItsWord)
{
    const auto countOf = []<typename Kind>(Kind) {
        int count = 0;
        while (!wordOf(static_cast<Kind>(count)).empty()) {
            EXPECT_EQ(kindFrom<Kind>(wordOf(static_cast<Kind>(count))), static_cast<Kind>(count));
            ++count;
        }
        return count;
    };
    EXPECT_EQ(countOf(GaugeKind::Leaves), 4);
    EXPECT_EQ(countOf(Technique::Leaf), 8);
    EXPECT_EQ(countOf(EventKind::Note), 8);
    EXPECT_EQ(countOf(SurfaceCheckKind::Sense), 13);
    EXPECT_EQ(countOf(Movement::Up), 9);
    EXPECT_EQ(countOf(QuestionKind::CannotSee), 10);
    EXPECT_EQ(countOf(Reason::None), 12);
    EXPECT_EQ(countOf(CouplingKind::Sleeve), 6);
    EXPECT_EQ(countOf(CheckKind::BallInSocket), 10);
    EXPECT_EQ(countOf(PlayFelt::None), 3);
    EXPECT_EQ(countOf(Verdict::Inside), 5);
    EXPECT_FALSE(kindFrom<Verdict>("safe"));
}

TEST(File, KeepsTheCopyOfTodayAlsoWhenTheClockWasOnceFarAhead)
{
    TempStore store;
    const Hangar hangar{store.records()};
    store.close();
    const fs::path folder = copiesFolder(store.path());
    fs::create_directory(folder);
    for (int day = 10; day < 22; ++day)
        fs::copy_file(store.path(), folder / ("hangar 2099-01-" + std::to_string(day) + ".rigband"));
    const auto kept = keepTodaysCopy(store.path(), dayOf(2026, 5, 2), 1'000'000'000);
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.problem().kind, ProblemKind::CopyOfLaterDay);
    EXPECT_EQ(kept.problem().detail, "hangar 2099-01-21.rigband");
    EXPECT_TRUE(fs::exists(folder / "hangar 2026-05-02.rigband"));
    EXPECT_EQ(namesIn(folder).size(), 13U) << "nothing of another day is taken away";
}
