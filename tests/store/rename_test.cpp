// The name of a person is replaced on request, and everything else is still held against the chain.

#include "core/store/chain_look.h"
#include "core/store/part.h"
#include "core/store/rename_person.h"
#include "core/store/values.h"
#include "tests/store/through_a_document.h"
#include "tests/support/laptop.h"

#include <QProcess>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <optional>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

class Rename : public testing::Test
{
protected:
    void SetUp() override
    {
        Laptop laptop{path, 1};
        Person oren;
        oren.id = hangar.oren;
        oren.name = "Orsolya Oren-Marsh";
        oren.phone = "01632 960999";
        must(laptop.records->add(oren));
        Event event;
        event.airframe = hangar.airframe;
        event.kind = EventKind::Note;
        event.day = dayOf(2026, 4, 2);
        event.note = "asked ORSOLYA OREN-MARSH about it";
        must(laptop.records->add(event));
        laptop.read(hangar, 450);
        before = must(laptop.file().end());
    }

    // On a laptop of its own, so many minutes later by the clock of all.
    std::string renamedOn(std::uint64_t laptop, const std::string& as, int minutes)
    {
        const std::string made = store.folder() / ("laptop " + std::to_string(laptop) + ".rigband");
        const auto whole = must(OtherFile::read(path, made));
        IdSource own{laptop};
        FixedClock later;
        later.passMinutes(minutes);
        must(replaceName(*whole, {hangar.oren, as, hangar.vale}, own, later, made));
        return made;
    }
    Result<Renamed> renamed(const std::string& as = "P 1")
    {
        const auto whole = must(OtherFile::read(path, out));
        return replaceName(*whole, {hangar.oren, as, hangar.vale}, ids, clock, out);
    }
    static ChainState chainOf(const std::string& file)
    {
        return must(must(OtherFile::read(file, file))->lookAtChain());
    }
    static std::string bytesOf(const std::string& file)
    {
        std::ifstream stream{file, std::ios::binary};
        return {std::istreambuf_iterator<char>{stream}, {}};
    }
    std::string namesIn(const std::string& file, PersonId person)
    {
        const auto open = must(OtherFile::read(file, file));
        std::string names;
        must(open->connection().each("SELECT name, phone FROM person WHERE subject = ? ORDER BY id",
                                     {valueOf(person)}, [&names](Row& row) {
                                         names += row.text();
                                         names += row.text() + ';';
                                     }));
        return names;
    }
    void changeByHand(const QString& table, const QString& sql)
    {
        const auto open = must(StoreFile::Connection::open(out, StoreFile::Connection::Access::Writing));
        byHand(*open, table, sql);
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::string path = (store.close(), store.path());
    std::string out = store.folder() / "out.rigband";
    IdSource ids{77};
    FixedClock clock;
    FileEnd before;
};

} // namespace

TEST_F(Rename, ReplacesTheNameInEveryVersionAndLeavesNoneOfItButInNotes)
{
    const Renamed made = must(renamed());
    EXPECT_EQ(made.versions, 2);
    EXPECT_EQ(namesIn(out, hangar.oren), "P 1;P 1;");
    EXPECT_EQ(bytesOf(out).find("Orsolya Oren-Marsh"), std::string::npos) << "not in a free place either";
    EXPECT_EQ(bytesOf(out).find("960999"), std::string::npos);
    ASSERT_EQ(made.stillNamed.size(), 1U);
    EXPECT_EQ(made.stillNamed.front().table, "event");
    EXPECT_EQ(made.stillNamed.front().facts, 1);
    EXPECT_NE(bytesOf(path).find("Orsolya Oren-Marsh"), std::string::npos) << "the file itself is only read";
}

TEST_F(Rename, IsToldAndIsNoFaultAndEarlierPrintsAreFound)
{
    must(renamed());
    const ChainState chain = chainOf(out);
    EXPECT_EQ(chain.faults, 0);
    ASSERT_EQ(chain.replacedNames.size(), 1U) << "once for a person";
    EXPECT_EQ(chain.replacedNames.front().name, "P 1");
    EXPECT_EQ(chain.replacedNames.front().by + ';', namesIn(path, hangar.vale));
    EXPECT_EQ(chain.replacedNames.front().when, clock.now());
    EXPECT_EQ(chain.end.facts, before.facts + 2) << "that it was replaced is a fact for each version";
    const auto file = must(OtherFile::read(out, out));
    EXPECT_TRUE(must(placeOfPrint(file->connection(), *readShortForm(shortForm(before.hash)))));
    EXPECT_TRUE(chainOf(path).replacedNames.empty());
}

TEST_F(Rename, IsToldApartFromAChangeByAScriptThatKnowsOnlyTheDocument)
{
    must(renamed());
    QProcess python;
    python.start("python3",
                 {QString(RIG_TEST_DATA) + "/../store/chain_anew.py", QString::fromStdString(out)});
    ASSERT_TRUE(python.waitForFinished());
    const std::string held = std::to_string(chainOf(out).end.facts - 2); // both versions of the person
    EXPECT_EQ(python.readAllStandardOutput().trimmed().toStdString(), held + " 0 2")
        << python.readAllStandardError().toStdString();
}

TEST_F(Rename, StillShowsWhatIsChangedByHandAfterwards)
{
    must(renamed());
    changeByHand("person", "UPDATE person SET name = 'P 2' WHERE name = 'P 1'");
    const ChainState chain = chainOf(out);
    EXPECT_EQ(chain.faults, 2);
    ASSERT_FALSE(chain.told.empty());
    EXPECT_EQ(chain.told.front().fault, ChainFault::Changed);
}

TEST_F(Rename, CannotBeClaimedByAnotherProgramWithoutATrace)
{
    must(renamed());
    changeByHand("reading", "UPDATE reading SET enters_um = 400");
    EXPECT_EQ(chainOf(out).faults, 1) << "of nothing but a person";
    changeByHand("name_replaced", "INSERT INTO name_replaced SELECT randomblob(16), stated_by, stated_at, "
                                  "stated_offset, replaced, reads, person FROM name_replaced LIMIT 1");
    EXPECT_EQ(chainOf(out).faults, 2) << "a fact that nobody saved";
}

TEST_F(Rename, StaysWhenItIsJoinedWithAFileFromBefore)
{
    must(renamed());
    for (const auto& [one, other] : {std::pair{path, out}, std::pair{out, path}}) {
        const std::string both = store.folder() / "both.rigband";
        const Joined made = joined(one, other, both);
        EXPECT_TRUE(made.leftOut.empty());
        EXPECT_TRUE(made.undecided.empty());
        EXPECT_EQ(namesIn(both, hangar.oren), "P 1;P 1;");
        EXPECT_EQ(chainOf(both).faults, 0);
        EXPECT_EQ(chainOf(both).replacedNames.size(), 1U);
        fs::remove(both);
    }
}

TEST_F(Rename, ByOtherLettersOnAnotherLaptopHoldsAsItWasGivenLastInWhateverOrderFilesAreJoined)
{
    const std::vector<std::string> laptops{renamedOn(901, "P 1", 10), renamedOn(902, "P 2", 30),
                                           renamedOn(903, "P 3", 20), path};
    std::vector<std::size_t> order{0, 1, 2, 3};
    std::optional<std::string> same;
    do {
        std::string all = laptops[order[0]];
        for (std::size_t i = 1; i <= order.size(); ++i) { // the first one once more at the end
            const std::string next = store.folder() / ("joined " + std::to_string(i) + ".rigband");
            fs::remove(next);
            const Joined made = joined(all, laptops[order[i % order.size()]], next);
            ASSERT_TRUE(made.undecided.empty());
            EXPECT_TRUE(made.leftOut.empty()) << "nobody changed anything by hand";
            all = next;
        }
        EXPECT_EQ(namesIn(all, hangar.oren), "P 2;P 2;");
        const ChainState chain = chainOf(all);
        EXPECT_EQ(chain.faults, 0);
        EXPECT_EQ(chain.end.facts, before.facts + 6) << "each laptop's statements stay";
        EXPECT_EQ(std::ranges::count(chain.replacedNames, true, &ReplacedName::holds), 1);
        EXPECT_EQ(chain.replacedNames.size(), 3U);
        EXPECT_EQ(same.value_or(contentOf(all)), contentOf(all));
        same = contentOf(all);
    } while (std::ranges::next_permutation(order).found);
}

TEST_F(Rename, OnceMoreHoldsAgainstAFileFromBefore)
{
    must(renamed());
    const std::string again = store.folder() / "again.rigband";
    clock.passMinutes(1);
    must(replaceName(*must(OtherFile::read(out, again)), {hangar.oren, "P 2", hangar.vale}, ids, clock,
                     again));
    for (const auto& [one, other] : {std::pair{again, out}, std::pair{out, again}}) {
        const std::string both = store.folder() / "both.rigband";
        EXPECT_TRUE(joined(one, other, both).undecided.empty());
        EXPECT_EQ(namesIn(both, hangar.oren), "P 2;P 2;");
        EXPECT_EQ(chainOf(both).faults, 0);
        fs::remove(both);
    }
}

TEST_F(Rename, GoesAlongWithAPartAndADocument)
{
    must(renamed());
    const auto whole = must(OtherFile::read(out, out));
    const std::string part = store.folder() / "part.rigband";
    must(handOn(*whole, hangar.airframe, part));
    EXPECT_EQ(namesIn(part, hangar.oren), "P 1;P 1;");
    EXPECT_EQ(chainOf(part).faults, 0);
    const auto told = must(OtherFile::read(part, part));
    EXPECT_EQ(must(told->connection().integer("SELECT count(*) FROM name_replaced")), 2);
    EXPECT_EQ(chainOf(part).replacedNames, chainOf(out).replacedNames);
    const std::string again = store.folder() / "again.rigband";
    EXPECT_TRUE(joined(part, path, again).undecided.empty()) << "the whole, in which nothing was replaced";
    EXPECT_EQ(namesIn(again, hangar.oren), "P 1;P 1;");
    const std::string back = store.folder() / "back.rigband";
    throughADocument(whole->connection(), back);
    EXPECT_EQ(contentOf(back), contentOf(out));
    EXPECT_EQ(chainOf(back).replacedNames.size(), 1U);
}

TEST_F(Rename, IsRefusedWhereSomebodyElseHasThatNameOrAFileIsThere)
{
    std::string vale = namesIn(path, hangar.vale);
    vale.pop_back();
    const auto refused = renamed(vale);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problem().kind, ProblemKind::FactRefused);
    EXPECT_FALSE(fs::exists(out));
    std::ofstream{out} << "mine";
    const auto there = renamed();
    ASSERT_FALSE(there);
    EXPECT_EQ(there.problem().kind, ProblemKind::FileExists);
}
