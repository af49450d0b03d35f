#include "core/store/conflicts_in.h"
#include "core/store/decide.h"
#include "core/store/facts_book.h"
#include "core/store/values.h"
#include "tests/support/laptop.h"

#include <filesystem>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// Two laptops that begin with one file, are written to apart, and then one takes the other in.
class ConflictsTest : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};
    std::string twin = store.folder() / "twin.rigband";
    std::unique_ptr<Laptop> ours;
    std::unique_ptr<Laptop> theirs;

    void apart()
    {
        store.close();
        fs::copy_file(store.path(), twin);
        ours = std::make_unique<Laptop>(store.path(), 3);
        theirs = std::make_unique<Laptop>(twin, 5);
        theirs->clock.passMinutes(30);
    }
    void takeIn()
    {
        takenIn(*ours, twin);
        ours->clock.passMinutes(60);
    }
    std::vector<Conflict> open() { return must(openConflictsIn(ours->file().connection())); }
    Conflict one(ConflictKind kind)
    {
        const std::vector<Conflict> all = open();
        EXPECT_EQ(all.size(), 1U);
        EXPECT_EQ(all.at(0).kind, kind);
        return all.at(0);
    }
    Decision decisionOn(const Conflict& conflict, Holds holds)
    {
        Decision decision;
        decision.kind = conflict.kind;
        decision.first.bytes = conflict.first;
        decision.second.bytes = conflict.second;
        decision.holds = holds;
        decision.person = hangar.vale;
        decision.reason = "asked both";
        decision.stamp.by = hangar.vale;
        return decision;
    }
    void settle(ConflictKind kind, Holds holds)
    {
        must(decide(*ours->records, decisionOn(one(kind), holds)));
        EXPECT_TRUE(open().empty());
        EXPECT_EQ(must(ours->file().lookAtChain()).faults, 0);
    }
    const AirframeFacts& facts() { return must(ours->records->book().airframe(hangar.airframe))->facts(); }
};

} // namespace

TEST_F(ConflictsTest, OfTwoClosingsThatCountsWhichAPersonDecidedFor)
{
    const RecordId record = must(store.records().add(hangar.record(store.clock().now())));
    apart();
    for (Laptop* laptop : {ours.get(), theirs.get()}) {
        RecordClose close;
        close.record = record;
        close.note = laptop == ours.get() ? "ours" : "theirs";
        close.stamp.by = hangar.oren;
        must(laptop->records->add(close));
    }
    takeIn();
    EXPECT_EQ(facts().closings.at(0).note, "ours") << "saved first";
    settle(ConflictKind::Closings, Holds::Second);
    EXPECT_EQ(facts().closings.at(0).note, "theirs");
    EXPECT_EQ(must(ours->records->content(record)).close->note, "theirs");
}

TEST_F(ConflictsTest, OfTwoAnswersToAQuestionThatCountsWhichAPersonDecidedFor)
{
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::AnsweredNo;
    Resolution resolution;
    resolution.question = must(store.records().add(question));
    resolution.person = hangar.oren;
    resolution.done = "cleaned";
    apart();
    resolution.found = "sand";
    must(ours->records->add(resolution));
    resolution.found = "a burr";
    must(theirs->records->add(resolution));
    takeIn();
    EXPECT_EQ(facts().questions.at(0).resolution->found, "sand");
    settle(ConflictKind::Resolutions, Holds::Second);
    EXPECT_EQ(facts().questions.at(0).resolution->found, "a burr");
}

TEST_F(ConflictsTest, OfTwoNewestVersionsThatHoldsWhichAPersonDecidedForUntilTheNext)
{
    apart();
    const auto rename = [this](Laptop& laptop, const char* name) {
        Coupling left = aCoupling(hangar.airframe, name);
        left.id = hangar.leftAileron;
        must(laptop.records->add(left));
    };
    rename(*ours, "Left A");
    rename(*theirs, "Left B");
    takeIn();
    const auto nameNow = [this] { return facts().couplings.at(0).name; };
    EXPECT_EQ(nameNow(), "Left B") << "the newer";
    settle(ConflictKind::Versions, Holds::Second);
    EXPECT_EQ(nameNow(), "Left A");
    rename(*ours, "Left C");
    EXPECT_EQ(nameNow(), "Left C");
    EXPECT_TRUE(open().empty());
}

TEST_F(ConflictsTest, TwoVersionsInOneFileAreNone)
{
    for (const char* name : {"Left A", "Left B"}) {
        Coupling left = aCoupling(hangar.airframe, name);
        left.id = hangar.leftAileron;
        must(store.records().add(left));
    }
    apart();
    theirs->read(hangar, 500);
    ours->read(hangar, 500);
    takeIn();
    EXPECT_TRUE(open().empty());
}

TEST_F(ConflictsTest, OfTwoCorrectionsTheOtherIsStruckWhenAPersonDecides)
{
    Reading wrong = hangar.reading(between(450, 500), store.clock().now());
    const ReadingId corrected = must(store.records().add(wrong, std::optional<Shown>{}));
    apart();
    for (Laptop* laptop : {ours.get(), theirs.get()}) {
        Reading right = hangar.reading(between(600, 650), laptop->clock.now());
        right.corrects = corrected;
        right.note = "wrong leaf";
        must(laptop->records->add(right, std::optional<Shown>{}));
    }
    takeIn();
    const Conflict conflict = one(ConflictKind::Corrections);
    EXPECT_TRUE(facts().exclusions.empty()) << "both count";
    settle(ConflictKind::Corrections, Holds::First);
    ASSERT_EQ(facts().exclusions.size(), 1U);
    EXPECT_EQ(facts().exclusions.at(0).reading.bytes, conflict.second);
    EXPECT_EQ(facts().exclusions.at(0).reason, "asked both");
}

TEST_F(ConflictsTest, TwoRecordsOfOneDayBegunApartAreAskedAbout)
{
    apart();
    must(ours->records->add(hangar.record(ours->clock.now())));
    must(theirs->records->add(hangar.record(theirs->clock.now())));
    takeIn();
    settle(ConflictKind::Records, Holds::TwoThings);
    EXPECT_EQ(facts().riggingRecords.size(), 2U);
}

TEST_F(ConflictsTest, AFactThatIsGoneWithItsLinkMakesNoOtherLaptop)
{
    StoreFile::Connection& file = store.file().connection();
    const auto rename = [&](const char* name) {
        Coupling left = aCoupling(hangar.airframe, name);
        left.id = hangar.leftAileron;
        must(store.records().add(left));
    };
    const auto readOnce = [&] {
        return must(
            store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    };
    must(store.records().add(hangar.record(store.clock().now())));
    rename("Left A");
    const ReadingId gone = readOnce();
    must(store.records().add(hangar.record(store.clock().now())));
    rename("Left B");
    byHand(file, "link", "DELETE FROM link WHERE fact = ?", {valueOf(gone)});
    byHand(file, "reading", "DELETE FROM reading WHERE id = ?", {valueOf(gone)});
    EXPECT_EQ(must(store.file().lookAtChain()).faults, 1);
    EXPECT_TRUE(must(openConflictsIn(file)).empty());
}

TEST_F(ConflictsTest, TwoClosingsInOneFileAreNotOfTwoLaptops)
{
    RecordClose close;
    close.record = must(store.records().add(hangar.record(store.clock().now())));
    close.stamp.by = hangar.oren;
    must(store.records().add(close));
    putInOnceMore(store.file().connection(), "closing");
    const auto open = must(openConflictsIn(store.file().connection()));
    ASSERT_EQ(open.size(), 1U);
    EXPECT_FALSE(open.front().areApart);
}

TEST_F(ConflictsTest, PersonsAndGaugesThatAreOneAreReadAsOneEverywhere)
{
    apart();
    const auto tell = [this](Laptop& laptop, const char* person, int um) {
        const PersonId own = must(laptop.records->add(aPerson(person)));
        Reading reading = hangar.reading(between(um, um + 50), laptop.clock.now());
        reading.person = own;
        reading.gauge = must(laptop.records->add(aLeafSet("B")));
        must(laptop.records->add(reading, std::optional<Shown>{}));
        SideConnected connected;
        connected.record = must(laptop.records->add(hangar.record(laptop.clock.now())));
        connected.persons = {own};
        must(laptop.records->add(connected));
        RecordClose close;
        close.record = connected.record;
        close.stamp.by = own;
        must(laptop.records->add(close));
        return own;
    };
    const PersonId first = tell(*ours, "R. Sand", 500);
    theirs->clock.set(dayOf(2026, 5, 3)); // another day: the records are no conflict
    tell(*theirs, " r. sand ", 550);
    takeIn();
    ours->clock.set(dayOf(2026, 5, 4));
    EXPECT_EQ(must(ours->records->persons()).size(), 4U);
    ASSERT_EQ(open().size(), 2U);
    for (const Conflict& conflict : open()) {
        EXPECT_EQ(conflict.kind, ConflictKind::Names);
        must(decide(*ours->records, decisionOn(conflict, Holds::OneThing)));
    }
    EXPECT_TRUE(open().empty());
    EXPECT_EQ(must(ours->records->persons()).size(), 3U);
    EXPECT_EQ(must(ours->records->gauges()).size(), 2U);
    EXPECT_EQ(must(ours->records->gauges()).back().set.sizes().size(), 20U);
    ASSERT_EQ(facts().readings.size(), 2U);
    for (const KeptReading& kept : facts().readings)
        EXPECT_EQ(kept.reading.person, first);
    EXPECT_EQ(facts().readings[0].reading.gauge, facts().readings[1].reading.gauge);
    for (const PartInRigging& part : must(ours->records->partsInRiggings(hangar.airframe)))
        EXPECT_EQ(part.person, first);
    for (const RiggingRecord& record : facts().riggingRecords)
        EXPECT_EQ(must(ours->records->content(record.id)).connected.at(0).persons.at(0), first);
    EXPECT_EQ(must(ours->file().lookAtChain()).faults, 0);
}

TEST_F(ConflictsTest, TwoCouplingsOfOneNameAreTwoThingsOrAreRenamed)
{
    apart();
    must(ours->records->add(aCoupling(hangar.airframe, "Flap")));
    must(theirs->records->add(aCoupling(hangar.airframe, "flap")));
    takeIn();
    const auto refused = ours->records->add(decisionOn(one(ConflictKind::Names), Holds::OneThing));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problem().kind, ProblemKind::FactRefused);
    Coupling renamed = facts().couplings.back();
    renamed.name = "Flap inboard";
    must(ours->records->add(renamed));
    EXPECT_TRUE(open().empty());
}

TEST_F(ConflictsTest, ADecisionIsAFactOfTwoFactsWithAReason)
{
    apart();
    must(ours->records->add(aPerson("R. Sand")));
    must(theirs->records->add(aPerson("R. Sand")));
    takeIn();
    const Conflict conflict = one(ConflictKind::Names);
    Decision unlike = decisionOn(conflict, Holds::First);
    EXPECT_FALSE(ours->records->add(unlike)) << "a name is no choice";
    Decision bare = decisionOn(conflict, Holds::TwoThings);
    bare.reason = "  ";
    EXPECT_FALSE(ours->records->add(bare));
    Decision lost = decisionOn(conflict, Holds::TwoThings);
    lost.second.bytes[3] ^= 1;
    EXPECT_FALSE(ours->records->add(lost)) << "of what is not there";
    must(ours->records->add(decisionOn(conflict, Holds::TwoThings)));
    EXPECT_EQ(must(ours->records->persons()).size(), 4U);
    Laptop third{twin, 9};
    takenIn(third, ours->path);
    EXPECT_TRUE(must(openConflictsIn(third.file().connection())).empty()) << "a decision is told on";
}
