#include "core/store/chain.h"
#include "core/store/chain_look.h"
#include "core/store/connection.h"
#include "core/store/tables.h"
#include "core/store/values.h"
#include "tests/support/laptop.h"

#include <QProcess>

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <set>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// A few facts of several kinds, with what belongs to them, and somebody who knows SQL.
class ChainTest : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};

    ReadingId read(int entersUm)
    {
        const Shown shown;
        return must(store.records().add(hangar.reading(between(entersUm, entersUm + 50), store.clock().now()),
                                        shown));
    }
    StoreFile::Connection& file() { return store.file().connection(); }
    void byHand(const QString& table, const QString& sql, const QVariantList& values = {})
    {
        test::byHand(file(), table, sql, values);
    }
    ChainState look() { return must(store.file().lookAtChain()); }
    std::int64_t facts()
    {
        qlonglong all = 0;
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                all += must(file().integer(QString("SELECT count(*) FROM %1").arg(table.name))).value_or(0);
        return all;
    }
    void expectOneFault(ChainFault fault, const std::string& table)
    {
        const ChainState found = look();
        ASSERT_EQ(found.faults, 1);
        EXPECT_EQ(found.told.front().fault, fault);
        EXPECT_EQ(found.told.front().table, table);
    }
};

} // namespace

TEST_F(ChainTest, EveryFactHasOneLinkAndAllOfThemHold)
{
    read(450);
    read(500);
    const ChainState found = look();
    EXPECT_EQ(found.faults, 0);
    EXPECT_EQ(found.end.facts, facts());
    EXPECT_EQ(found.end.hash.size(), 64U);
    EXPECT_EQ(found.end, must(store.file().end()));
}

TEST_F(ChainTest, IsTheSameWorkedOutAnewFromItsDescriptionAlone)
{
    read(450);
    store.close();
    QProcess python;
    python.start("python3",
                 {QString(RIG_TEST_DATA) + "/../store/chain_anew.py", QString::fromStdString(store.path())});
    ASSERT_TRUE(python.waitForFinished());
    store.reopen();
    EXPECT_EQ(python.readAllStandardOutput().trimmed().toStdString(), std::to_string(facts()) + " 0")
        << python.readAllStandardError().toStdString();
}

TEST_F(ChainTest, TellsWhichReadingWasChangedByHandAndWhatItSaysNow)
{
    const ReadingId changed = read(450);
    byHand("reading", "UPDATE reading SET enters_um = 800, refuses_um = 850");
    read(500); // a later save hides nothing
    const ChainState found = look();
    ASSERT_EQ(found.faults, 1);
    const FaultyFact& fact = found.told.front();
    EXPECT_EQ(fact.fault, ChainFault::Changed);
    EXPECT_EQ(fact.fact, changed.bytes);
    EXPECT_EQ(fact.coupling, "Left aileron");
    EXPECT_EQ(fact.savedMilliseconds / 1000, store.clock().now().utcSeconds);
    EXPECT_FALSE(fact.registration.empty());
    EXPECT_EQ(saidIn(fact, "enters_um"), "800");
}

TEST_F(ChainTest, TellsOfWhichCouplingsTheFactsAreInDoubt)
{
    using Couplings = std::set<CouplingId>;
    read(450);
    EXPECT_EQ(look().inDoubt, FactsInDoubt{});
    byHand("fitting", "UPDATE fitting SET reason = 'worn' WHERE coupling = ?",
           {valueOf(hangar.rightAileron)});
    EXPECT_EQ(look().inDoubt.couplings, Couplings{hangar.rightAileron});
    byHand("reading", "UPDATE reading SET enters_um = 400");
    EXPECT_EQ(look().inDoubt.couplings, (Couplings{hangar.leftAileron, hangar.rightAileron}));
    EXPECT_FALSE(look().inDoubt.all);
}

TEST_F(ChainTest, AFactThatIsGoneMayHaveBeenOfAnyCoupling)
{
    read(450);
    byHand("shown", "DELETE FROM shown");
    byHand("reading", "DELETE FROM reading");
    EXPECT_TRUE(look().inDoubt.all);
}

TEST_F(ChainTest, NoCouplingIsInDoubtForWhatItDoesNotRestOn)
{
    read(450);
    byHand("person", "UPDATE person SET phone = '123'");
    const ChainState found = look();
    EXPECT_GT(found.faults, 0);
    EXPECT_EQ(found.inDoubt, FactsInDoubt{});
}

TEST_F(ChainTest, NoticesAChangeInWhatBelongsToAFact)
{
    read(450);
    byHand("shown", "UPDATE shown SET verdict = 'outside'");
    expectOneFault(ChainFault::Changed, "reading");
}

TEST_F(ChainTest, NoticesASizeThatWasPutInOrTakenAway)
{
    byHand("gauge_size", "DELETE FROM gauge_size WHERE size_um = 50");
    expectOneFault(ChainFault::Changed, "gauge");
    must(file().run("INSERT INTO gauge_size (gauge, size_um) SELECT id, 50 FROM gauge"));
    EXPECT_EQ(look().faults, 0) << "as it was";
    must(file().run("INSERT INTO gauge_size (gauge, size_um) SELECT id, 51 FROM gauge"));
    expectOneFault(ChainFault::Changed, "gauge");
}

TEST_F(ChainTest, NoticesAFactThatIsGone)
{
    read(450);
    read(500);
    byHand("shown", "DELETE FROM shown");
    byHand("reading", "DELETE FROM reading WHERE enters_um = 500");
    const ChainState found = look();
    EXPECT_EQ(found.faults, 2); // what was shown with the other is gone too
    EXPECT_EQ(std::ranges::count(found.told, ChainFault::Missing, &FaultyFact::fault), 1);
}

TEST_F(ChainTest, NoticesAFactThatIsGoneWithItsLink)
{
    const ReadingId gone = read(450);
    read(500);
    byHand("link", "DELETE FROM link WHERE fact = ?", {valueOf(gone)});
    byHand("shown", "DELETE FROM shown WHERE reading = ?", {valueOf(gone)});
    byHand("reading", "DELETE FROM reading WHERE id = ?", {valueOf(gone)});
    expectOneFault(ChainFault::Torn, "reading");
}

TEST_F(ChainTest, NoticesARowThatWasPutIn)
{
    read(450);
    must(file().run("CREATE TEMP TABLE more AS SELECT * FROM reading"));
    must(file().run("UPDATE more SET id = x'0193a0000000700080000000000000ff'"));
    must(file().run("INSERT INTO reading SELECT * FROM more"));
    expectOneFault(ChainFault::Inserted, "reading");
}

TEST_F(ChainTest, NoticesFactsThatChangedPlaces)
{
    const ReadingId first = read(450);
    const ReadingId second = read(500);
    byHand("link", "UPDATE link SET fact = CASE fact WHEN ?1 THEN ?2 ELSE ?1 END WHERE fact IN (?1, ?2)",
           {valueOf(first), valueOf(second)});
    EXPECT_EQ(look().faults, 2);
}

TEST_F(ChainTest, NoticesAnOriginThatWasChanged)
{
    byHand("origin", "UPDATE origin SET begun_at = begun_at + 1");
    EXPECT_EQ(look().faults, facts());
}

TEST_F(ChainTest, GoesOnWhereAnotherWindowHasWritten)
{
    read(450);
    {
        auto other = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
        IdSource ids{5};
        Records records{*other, ids, store.clock()};
        for (int i = 0; i < 3; ++i) {
            must(records.add(hangar.reading(between(500, 550), store.clock().now()), std::nullopt));
            read(450);
        }
    }
    const ChainState found = look();
    EXPECT_EQ(found.faults, 0);
    EXPECT_EQ(must(file().integer("SELECT max(sequence) FROM link")), facts()) << "one row of links";
    EXPECT_EQ(must(file().integer("SELECT count(*) FROM origin")), 2);
}

TEST_F(ChainTest, HasNothingOfASaveThatWasTakenBack)
{
    read(450);
    EXPECT_FALSE(store.records().together([this]() -> Outcome {
        read(500);
        return Problem{ProblemKind::Unexpected, "no"};
    }));
    read(550);
    const ChainState found = look();
    EXPECT_EQ(found.faults, 0);
    EXPECT_EQ(found.end.facts, facts());
}

TEST_F(ChainTest, HoldsWhenCopiesThatWereWrittenApartAreJoined)
{
    read(450);
    store.close();
    const std::string theirs = store.folder() / "theirs.rigband";
    fs::copy_file(store.path(), theirs);
    store.reopen();
    read(500);
    read(500);
    {
        auto other = must(StoreFile::open(theirs, OpenAs::Existing, store.clock()));
        IdSource ids{5};
        Records records{*other, ids, store.clock()};
        must(records.add(hangar.reading(between(600, 650), store.clock().now()), std::nullopt));
    }
    must(takeIn(store.file(), *must(OtherFile::read(theirs, store.path()))));
    store.close();
    store.reopen();
    EXPECT_EQ(look().faults, 0);
    const FileEnd joined = must(store.file().end());
    read(450);
    EXPECT_EQ(look().faults, 0);
    EXPECT_EQ(must(file().integer("SELECT count(*) FROM tie")), 2);
    EXPECT_EQ(must(store.file().end()).facts, facts());
    EXPECT_TRUE(must(store.file().placeOfPrint(shortForm(joined.hash)))) << "a print made between";
    byHand("tie", "DELETE FROM tie WHERE sequence = (SELECT max(sequence) FROM tie)");
    expectOneFault(ChainFault::Torn, "reading");
}

TEST_F(ChainTest, TellsWhereAnEarlierPrintStands)
{
    read(450);
    const FileEnd printed = must(store.file().end());
    EXPECT_TRUE(must(store.file().placeOfPrint(shortForm(printed.hash)))) << "nothing saved since";
    read(500);
    const auto place = must(store.file().placeOfPrint(shortForm(printed.hash)));
    ASSERT_TRUE(place);
    EXPECT_EQ(place->sequence, printed.facts);
    EXPECT_EQ(place->savedMilliseconds / 1000, store.clock().now().utcSeconds);
    EXPECT_FALSE(must(store.file().placeOfPrint("AAAAA-AAAAA")));
}

TEST_F(ChainTest, TellsWhenTheLastFactWasSavedOverAllItsEnds)
{
    const auto lastSaved = [this] { return must(store.file().lastSaved()).value_or(Moment{}).utcSeconds; };
    const ReadingId gone = read(450);
    store.close();
    const std::string theirs = store.folder() / "theirs.rigband";
    fs::copy_file(store.path(), theirs);
    store.reopen();
    read(500);
    Laptop other{theirs, 5};
    other.clock.passMinutes(3 * 24 * 60);
    other.read(hangar, 600);
    other.open.reset();
    must(takeIn(store.file(), *must(OtherFile::read(theirs, store.path()))));
    EXPECT_EQ(lastSaved(), other.clock.now().utcSeconds) << "no end of the file is a link";
    byHand("link", "DELETE FROM link WHERE fact = ?", {valueOf(gone)});
    EXPECT_EQ(lastSaved(), other.clock.now().utcSeconds) << "with one gone in the middle too";
    byHand("link", "DELETE FROM link");
    EXPECT_FALSE(must(store.file().lastSaved()));
}

TEST(ShortForm, IsTheFirstFiftyBitsInTheAlphabetOfBase32)
{
    // SHA-256 of "abc" (FIPS 180-4, example in NIST's test vectors): ba7816bf8f01cfea...; the letters by
    // python3 base64.b32encode of its first seven bytes.
    const std::string abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    EXPECT_EQ(shortForm(abc), "XJ4BN-P4PAH");
    EXPECT_EQ(readShortForm(" xj4bn p4pah "), shortForm(abc));
    for (const char* bad : {"", "XJ4BN-P4PA", "XJ4BN-P4PAH2", "XJ4BN-P4PA1"})
        EXPECT_FALSE(readShortForm(bad)) << bad;
}

// Each layout that ever landed.
TEST(TakenOver, FactsFromBeforeTheChainAreLinkedAlikeInEveryCopy)
{
    for (const char* name : {"v1", "v2", "v3", "v4", "v8", "v10"}) {
        SCOPED_TRACE(name);
        TempFolder folder;
        const FixedClock clock;
        std::vector<FileEnd> ends;
        for (const char* copy : {"one.rigband", "two.rigband"}) {
            const std::string path = folder.file(copy);
            fs::copy_file(fs::path(RIG_TEST_DATA) / "released" / (std::string{name} + ".rigband"), path);
            auto file = must(StoreFile::open(path, OpenAs::Existing, clock));
            EXPECT_EQ(must(file->lookAtChain()).faults, 0);
            ends.push_back(must(file->end()));
        }
        EXPECT_EQ(ends[0], ends[1]);
        EXPECT_GT(ends[0].facts, 10);
    }
}
