#include "core/store/conflicts_in.h"
#include "core/store/facts_book.h"
#include "core/store/part.h"
#include "core/store/tables.h"
#include "tests/support/laptop.h"
#include "tests/support/made_id.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// A hangar of two airframes, of which one is handed on.
class PartTest : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};
    std::string out = store.folder() / "part.rigband";
    PersonId other = must(store.records().add(aPerson("of the other airframe")));
    PersonId connecting = must(store.records().add(aPerson("who connected")));
    GaugeId otherSet = must(store.records().add(aLeafSet("of the other airframe")));
    AirframeId otherAirframe = must(store.records().add(anAirframe("QX-99")));

    void SetUp() override
    {
        const Moment now = store.clock().now();
        takeTwelve(store, hangar);
        must(store.records().add(hangar.reading(between(450, 500), now), Shown{}));
        SideConnected connected;
        connected.record = must(store.records().add(hangar.record(now)));
        connected.persons = {connecting};
        must(store.records().add(connected));
        GaugeCheck check;
        check.gauge = hangar.setA;
        check.day = now.localDay();
        check.how = "against a micrometer";
        check.found = "as marked";
        must(store.records().add(check));
        tellOfTheOther(now);
    }
    void tellOfTheOther(Moment now)
    {
        Reading reading = hangar.reading(between(700, 750), now);
        reading.coupling = must(store.records().add(aCoupling(otherAirframe, "Other")));
        Fitting fitting;
        fitting.coupling = reading.coupling;
        fitting.begins = now.localDay();
        fitting.kind = FittingKind::First;
        reading.fitting = must(store.records().add(fitting));
        reading.person = other;
        reading.stamp.by = other;
        reading.gauge = otherSet;
        must(store.records().add(reading, Shown{}));
    }
    HandedOn handedOn()
    {
        const auto whole = must(OtherFile::read(store.path(), out));
        return must(handOn(*whole, hangar.airframe, out));
    }
};

std::string historyOf(Records& records, AirframeId airframe)
{
    const KnownAirframe& known = *must(records.book().airframe(airframe));
    std::string told;
    for (const Coupling& coupling : known.facts().couplings)
        for (const FittingHistory& fitting : known.history(coupling.id).fittings)
            told += coupling.name + std::to_string(fitting.admitted.size()) +
                    (fitting.baseline.band() ? std::to_string(fitting.baseline.band()->outer.upper) : "") +
                    ';';
    return told;
}

} // namespace

TEST_F(PartTest, HoldsOneAirframeWithAllThatBelongsToItAndNothingOfOthers)
{
    const std::string history = historyOf(store.records(), hangar.airframe);
    const FileEnd whole = must(store.file().end());
    const HandedOn handed = handedOn();
    EXPECT_EQ(handed.original, whole);
    Laptop theirs{out, 5};
    EXPECT_EQ(handed.end, must(theirs.file().end()));
    EXPECT_EQ(must(theirs.file().lookAtChain()).faults, 0);
    EXPECT_EQ(must(theirs.file().danglingReferences()), 0);
    EXPECT_EQ(must(theirs.records->airframes()).size(), 1U);
    std::vector<std::string> names;
    for (const Person& person : must(theirs.records->persons()))
        names.push_back(person.name);
    EXPECT_EQ(names, (std::vector<std::string>{"M. Oren", "who connected"})) << "nobody who is not named";
    EXPECT_EQ(must(theirs.records->gauges()).size(), 1U);
    EXPECT_EQ(must(theirs.records->gaugeChecks()).size(), 1U);
    EXPECT_EQ(must(theirs.records->readings(hangar.airframe)).size(), 13U);
    EXPECT_EQ(historyOf(*theirs.records, hangar.airframe), history);
    theirs.read(hangar, 500);
    EXPECT_EQ(must(theirs.file().lookAtChain()).faults, 0);
}

TEST_F(PartTest, ComesBackIntoTheWholeWithWhatWasSavedInItSince)
{
    handedOn();
    store.close();
    {
        Laptop theirs{out, 5};
        theirs.read(hangar, 550);
    }
    Laptop ours{store.path(), 7};
    const FileEnd before = must(ours.file().end());
    EXPECT_EQ(takenIn(ours, out).onlyTheirs(), 1);
    EXPECT_EQ(must(ours.file().end()).facts, before.facts + 1) << "each once, whatever links it has";
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0);
    ours.read(hangar, 500);
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0);
    EXPECT_EQ(must(ours.records->airframes()).size(), 2U);
    EXPECT_TRUE(must(openConflictsIn(ours.file().connection())).empty());
}

TEST_F(PartTest, BringsTheOtherOfTwoPersonsThatAreOne)
{
    Decision decision;
    decision.kind = ConflictKind::Names;
    decision.first.bytes = other.bytes;
    decision.second.bytes = connecting.bytes;
    decision.holds = Holds::OneThing;
    decision.person = hangar.vale;
    decision.reason = "one and the same";
    must(store.records().add(decision));
    handedOn();
    Laptop theirs{out, 5};
    EXPECT_EQ(must(theirs.file().danglingReferences()), 0);
    EXPECT_EQ(must(theirs.records->persons()).size(), 3U) << "and who decided it";
}

TEST_F(PartTest, NeedsAnAirframeThatIsThere)
{
    const auto whole = must(OtherFile::read(store.path(), out));
    const auto refused = handOn(*whole, madeId<AirframeId>(7), out);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problem().kind, ProblemKind::NotFound);
    EXPECT_FALSE(std::filesystem::exists(out));
}
