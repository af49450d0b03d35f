#include "core/store/values.h"
#include "tests/support/laptop.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

std::string bytesOf(const std::string& path)
{
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, std::istreambuf_iterator<char>{}};
}

// One file, copied onto two laptops that are then written to apart.
class JoinTest : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};
    std::string twin = store.folder() / "twin.rigband";
    std::string third = store.folder() / "third.rigband";
    std::string out = store.folder() / "joined.rigband";

    void SetUp() override
    {
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), Shown{}));
        store.close();
        for (const std::string& copy : {twin, third})
            fs::copy_file(store.path(), copy);
    }
    void writeApart()
    {
        Laptop{store.path(), 3}.read(hangar, 500);
        Laptop other{twin, 5};
        other.clock.passMinutes(30);
        other.read(hangar, 600);
        other.read(hangar, 650);
        must(other.records->add(aLeafSet("B")));
    }
    std::int64_t faultsOf(const std::string& path)
    {
        return must(must(OtherFile::read(path, path))->lookAtChain()).faults;
    }
    std::int64_t rows(const std::string& path, const QString& from)
    {
        const auto file = must(OtherFile::read(path, path));
        return must(file->connection().integer("SELECT count(*) FROM " + from)).value_or(0);
    }
    static void changeByHand(const std::string& path, int um)
    {
        const auto file = must(StoreFile::Connection::open(path, StoreFile::Connection::Access::Writing));
        byHand(*file, "reading", QString("UPDATE reading SET enters_um = %1, refuses_um = 900").arg(um));
    }
};

} // namespace

TEST_F(JoinTest, MakesANewFileOfBothAndTouchesNeither)
{
    writeApart();
    const std::string ours = bytesOf(store.path());
    const std::string theirs = bytesOf(twin);
    const Joined made = joined(store.path(), twin, out);
    EXPECT_EQ(made.onlyOurs, 1);
    ASSERT_EQ(made.came.size(), 2U);
    EXPECT_EQ(made.came[0].table, "gauge");
    EXPECT_EQ(made.came[1].table, "reading");
    EXPECT_EQ(made.came[1].facts, 2);
    EXPECT_EQ(made.onlyTheirs(), 3);
    EXPECT_EQ(made.end.facts, made.all);
    EXPECT_EQ(bytesOf(store.path()), ours);
    EXPECT_EQ(bytesOf(twin), theirs);
    EXPECT_EQ(rows(out, "reading"), 4);
    EXPECT_EQ(rows(out, "shown"), 1);
    EXPECT_EQ(rows(out, "gauge_size"), 40);
    EXPECT_EQ(faultsOf(out), 0);
    for (const auto& left : fs::directory_iterator{store.folder()})
        EXPECT_EQ(left.path().filename().string().find("ing-"), std::string::npos) << left.path();
}

TEST_F(JoinTest, OfAFileWithItselfIsThatFile)
{
    writeApart();
    const Joined made = joined(twin, twin, out);
    EXPECT_TRUE(made.came.empty());
    EXPECT_EQ(made.onlyOurs, 0);
    EXPECT_EQ(contentOf(out), contentOf(twin));
}

TEST_F(JoinTest, ForeseesWhatWouldComeAndWritesNothing)
{
    writeApart();
    const std::string ours = bytesOf(store.path());
    const auto theirs = must(OtherFile::read(twin, store.path()));
    const Foreseen foreseen = must(foresee(store.path(), *theirs));
    EXPECT_EQ(foreseen.joined.onlyTheirs(), 3);
    EXPECT_EQ(foreseen.couplings, std::vector<std::string>{"Left aileron"});
    EXPECT_EQ(foreseen.first, dayOf(2026, 5, 2));
    EXPECT_EQ(foreseen.last, dayOf(2026, 5, 2));
    EXPECT_TRUE(foreseen.conflicts.empty());
    EXPECT_EQ(foreseen.ours.faults + foreseen.theirs.faults, 0);
    EXPECT_EQ(bytesOf(store.path()), ours);
}

TEST_F(JoinTest, NeverWritesOverAFileThatIsThere)
{
    std::ofstream{out} << "mine";
    const auto file = must(OtherFile::read(twin, out));
    const auto refused = join(*file, *file, out);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problem().kind, ProblemKind::FileExists);
    EXPECT_EQ(bytesOf(out), "mine");
}

TEST_F(JoinTest, TakesIntoAnOpenFileWhatItsWindowThenShowsAndGoesOnWriting)
{
    writeApart();
    Laptop ours{store.path(), 7};
    ours.read(hangar, 700); // it has begun an origin
    EXPECT_EQ(must(ours.records->book().airframe(hangar.airframe))->facts().readings.size(), 3U);
    const std::string theirs = bytesOf(twin);
    const Joined came = takenIn(ours, twin);
    EXPECT_EQ(came.onlyTheirs(), 3);
    EXPECT_EQ(must(ours.records->book().airframe(hangar.airframe))->facts().readings.size(), 5U);
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0);
    const FileEnd joinedEnd = came.end;
    EXPECT_EQ(must(ours.file().end()), joinedEnd);
    ours.read(hangar, 750);
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0);
    EXPECT_TRUE(must(ours.file().placeOfPrint(shortForm(joinedEnd.hash))));
    EXPECT_EQ(bytesOf(twin), theirs);
    const std::string before = contentOf(ours.file().connection());
    EXPECT_EQ(takenIn(ours, twin).onlyTheirs(), 0);
    EXPECT_EQ(contentOf(ours.file().connection()), before) << "the same again changes nothing";
    EXPECT_FALSE(ours.file().connection().run("UPDATE reading SET enters_um = 1")) << "still append-only";
    EXPECT_FALSE(ours.file().connection().run("INSERT INTO exclusion (id, stated_at, stated_offset, reading, "
                                              "reason) VALUES (zeroblob(16), 0, 0, zeroblob(16), 'x')"))
        << "references are looked at again";
}

TEST_F(JoinTest, TakesTheRowThatItsLinkConfirmsWhereOneWasChangedByHand)
{
    writeApart();
    const std::string sound = contentOf(must(OtherFile::read(twin, out))->connection());
    changeByHand(store.path(), 800);
    for (const bool turned : {false, true}) {
        const Joined made = turned ? joined(twin, store.path(), out) : joined(store.path(), twin, out);
        ASSERT_EQ(made.leftOut.size(), 1U);
        EXPECT_EQ(made.leftOut.front().table, "reading");
        EXPECT_EQ(made.leftOut.front().coupling, "Left aileron");
        EXPECT_EQ(rows(out, "reading WHERE enters_um = 450"), 1) << "as the other file has it";
        EXPECT_EQ(rows(out, "shown"), 1);
        EXPECT_EQ(faultsOf(out), 1) << "what only the changed file had stays changed";
        fs::remove(out);
    }
    Laptop ours{third, 9};
    byHand(ours.file().connection(), "shown", "DELETE FROM shown");
    EXPECT_EQ(takenIn(ours, twin).leftOut.size(), 1U);
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0);
    EXPECT_FALSE(ours.file().connection().run("DELETE FROM shown")) << "as append-only as before";
}

TEST_F(JoinTest, JoinsNothingWhereNoLinkTellsWhichOfTwoRowsWasSaved)
{
    changeByHand(store.path(), 800);
    changeByHand(twin, 820);
    const Joined made = joined(store.path(), twin, out);
    ASSERT_EQ(made.undecided.size(), 1U);
    const auto& [ours, theirs] = made.undecided.front();
    EXPECT_EQ(saidIn(ours, "enters_um"), "800");
    EXPECT_EQ(saidIn(theirs, "enters_um"), "820");
    EXPECT_FALSE(fs::exists(out));
    Laptop open{third, 9};
    byHand(open.file().connection(), "reading", "UPDATE reading SET refuses_um = 900");
    const std::string before = contentOf(open.file().connection());
    EXPECT_EQ(takenIn(open, twin).undecided.size(), 1U);
    EXPECT_EQ(contentOf(open.file().connection()), before);
}

TEST_F(JoinTest, TakesTheOriginThatItsLinksConfirm)
{
    writeApart();
    {
        const auto file = must(StoreFile::Connection::open(twin, StoreFile::Connection::Access::Writing));
        byHand(*file, "origin", "UPDATE origin SET begun_at = 7 WHERE rowid = 1");
    }
    EXPECT_EQ(joined(store.path(), twin, out).leftOut.size(), 1U);
    EXPECT_EQ(faultsOf(out), 0);
}

TEST_F(JoinTest, CarriesNoTieThatNoLinkStandsOn)
{
    {
        const auto file = must(StoreFile::Connection::open(twin, StoreFile::Connection::Access::Writing));
        must(
            file->run("INSERT INTO tie (before, hash, sequence) VALUES (randomblob(32), randomblob(32), 1)"));
    }
    joined(store.path(), twin, out);
    EXPECT_EQ(rows(out, "tie"), 0);
}

TEST_F(JoinTest, FindsThePrintOfAJoinedFileAlsoWhereNothingWasSavedBeforeItWasJoinedOnceMore)
{
    writeApart();
    {
        Laptop last{third, 9};
        last.clock.passMinutes(60);
        last.read(hangar, 700);
    }
    const FileEnd printed = joined(store.path(), twin, out).end;
    const std::string all = store.folder() / "all.rigband";
    joined(out, third, all);
    Laptop on{all, 11};
    const auto isFound = [&on, &printed] {
        return must(on.file().placeOfPrint(shortForm(printed.hash))).has_value();
    };
    EXPECT_TRUE(isFound());
    EXPECT_FALSE(must(on.file().placeOfPrint("AAAAA-AAAAA")));
    on.read(hangar, 750);
    EXPECT_TRUE(isFound()) << "and it stays found";
    const auto place = must(on.file().placeOfPrint(shortForm(printed.hash)));
    EXPECT_GT(place->savedMilliseconds, 0) << "it tells which fact was the last one";
    EXPECT_EQ(must(on.file().lookAtChain()).faults, 0);
}

TEST_F(JoinTest, BringsAnOlderLayoutUpToDateInACopy)
{
    const std::string old = fs::path(RIG_TEST_DATA) / "released" / "v4.rigband";
    const std::string before = bytesOf(old);
    const auto theirs = must(OtherFile::read(old, out));
    const std::string empty = store.folder() / "empty.rigband";
    must(StoreFile::open(empty, OpenAs::New, store.clock()));
    const auto ours = must(OtherFile::read(empty, out));
    const Joined made = must(join(*ours, *theirs, out));
    EXPECT_GT(made.onlyTheirs(), 10);
    EXPECT_EQ(faultsOf(out), 0);
    EXPECT_EQ(bytesOf(old), before);
}

TEST_F(JoinTest, RefusesADamagedFileAndAForeignOne)
{
    const std::string bad = store.folder() / "bad.rigband";
    std::ofstream{bad} << "no database";
    EXPECT_EQ(OtherFile::read(bad, out).problem().kind, ProblemKind::NotOurFile);
    std::string cut = bytesOf(twin);
    cut.resize(cut.size() / 2);
    std::ofstream{bad, std::ios::binary} << cut;
    EXPECT_EQ(OtherFile::read(bad, out).problem().kind, ProblemKind::DamagedFile);
    EXPECT_EQ(OtherFile::read(store.folder() / "none.rigband", out).problem().kind, ProblemKind::NoSuchFile);
}

TEST_F(JoinTest, ObeysNothingThatAnotherProgramBuiltIntoTheOtherFile)
{
    for (const char* sql :
         {"CREATE TRIGGER more AFTER INSERT ON reading BEGIN SELECT 1; END", "DROP TRIGGER reading_no_update",
          "CREATE VIEW looked AS SELECT * FROM reading"}) {
        SCOPED_TRACE(sql);
        const std::string foreign = store.folder() / "foreign.rigband";
        fs::remove(foreign);
        fs::copy_file(twin, foreign);
        must(must(StoreFile::Connection::open(foreign, StoreFile::Connection::Access::Writing))->run(sql));
        EXPECT_EQ(OtherFile::read(foreign, out).problem().kind, ProblemKind::ForeignLayout);
    }
}
