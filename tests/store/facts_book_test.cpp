#include "core/airframe/id_source.h"
#include "core/store/airframe_facts.h"
#include "core/store/facts_book.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class Book : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};
    FactsBook& book{store.records().book()};

    const KnownAirframe& known() { return *must(book.airframe(hangar.airframe)); }
    Reading reading(int entersUm)
    {
        return hangar.reading(between(entersUm, entersUm + 50), store.clock().now());
    }
    Reading baselineReading(int entersUm)
    {
        Reading one = reading(entersUm);
        one.purpose = Purpose::Baseline;
        return one;
    }
};

std::vector<ReadingId> idsOf(const std::vector<KeptReading>& readings)
{
    std::vector<ReadingId> ids;
    for (const KeptReading& kept : readings)
        ids.push_back(kept.reading.id);
    return ids;
}

} // namespace

TEST_F(Book, TakesInAReadingSavedHere)
{
    EXPECT_TRUE(known().facts().readings.empty());
    const ReadingId saved = must(store.records().add(reading(600), std::nullopt));
    EXPECT_EQ(idsOf(known().facts().readings), std::vector{saved});
}

TEST_F(Book, PutsAReadingMeasuredEarlierBeforeTheOthers)
{
    const ReadingId second = must(store.records().add(reading(600), std::nullopt));
    known();
    Reading earlier = reading(650);
    earlier.when.utcSeconds -= 3600;
    const ReadingId first = must(store.records().add(earlier, std::nullopt));
    EXPECT_EQ(idsOf(known().facts().readings), (std::vector{first, second}));
    EXPECT_EQ(known().readingsOf(hangar.leftAileron).front()->reading.id, first);
}

TEST_F(Book, MakesTheBandAnewWithABaselineReadingSavedHere)
{
    for (int i = 0; i < 4; ++i)
        must(store.records().add(baselineReading(600), std::nullopt));
    EXPECT_FALSE(known().history(hangar.leftAileron).fittings.front().baseline.band());
    must(store.records().add(baselineReading(650), std::nullopt));
    EXPECT_TRUE(known().history(hangar.leftAileron).fittings.front().baseline.band());
}

TEST_F(Book, SeesWhatAnotherWindowSaved)
{
    EXPECT_TRUE(known().facts().readings.empty());
    const auto otherFile = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource otherIds{7};
    Records other{*otherFile, otherIds, store.clock()};
    const ReadingId saved = must(other.add(reading(600), std::nullopt));
    EXPECT_EQ(idsOf(known().facts().readings), std::vector{saved});
}

TEST_F(Book, SeesAReadingWithinItsTransactionAndForgetsItWhenThatIsTakenBack)
{
    known();
    const Outcome done = store.records().together([&]() -> Outcome {
        must(store.records().add(reading(600), std::nullopt));
        EXPECT_EQ(known().facts().readings.size(), 1u);
        return Problem{ProblemKind::Unexpected, "taken back"};
    });
    EXPECT_FALSE(done);
    EXPECT_TRUE(known().facts().readings.empty());
}

TEST_F(Book, LeavesWhatItHandedOutAsItIsUntilItIsAskedAgain)
{
    const KnownAirframe& before = known();
    const CouplingHistory& history = before.history(hangar.leftAileron);
    for (int i = 0; i < 5; ++i)
        must(store.records().add(baselineReading(600), std::nullopt));
    EXPECT_TRUE(before.facts().readings.empty());
    EXPECT_FALSE(history.fittings.front().baseline.band());
    EXPECT_EQ(known().facts().readings.size(), 5u);
}

TEST_F(Book, HoldsTheContentOfARecordUntilSomethingWasSaved)
{
    RiggingRecord begun = hangar.record(store.clock().now());
    const RecordId record = must(store.records().add(begun));
    known();
    EXPECT_TRUE(must(book.content(record))->readings.empty());
    Reading one = reading(600);
    one.record = record;
    must(store.records().add(one, std::nullopt));
    known();
    EXPECT_EQ(must(book.content(record))->readings.size(), 1u);
}

TEST_F(Book, GoesFromOneAirframeToAnother)
{
    const AirframeId second = must(store.records().add(anAirframe("QX-88")));
    EXPECT_EQ(known().facts().airframe.registration, "QX-17");
    EXPECT_EQ(must(book.airframe(second))->facts().airframe.registration, "QX-88");
    EXPECT_EQ(known().facts().couplings.size(), 2u);
}

TEST_F(Book, GivesEverythingButTheReadingsAloneAndThenThoseToo)
{
    const ReadingId saved = must(store.records().add(reading(600), std::nullopt));
    const AirframeFacts& rest = *must(book.withoutReadings(hangar.airframe));
    EXPECT_TRUE(rest.readings.empty());
    EXPECT_EQ(rest.couplings.size(), 2u);
    EXPECT_EQ(idsOf(known().facts().readings), std::vector{saved});
    EXPECT_EQ(must(book.withoutReadings(hangar.airframe)), &known().facts());
}

TEST_F(Book, SeesWhatWasSavedSinceItReadEverythingButTheReadings)
{
    must(book.withoutReadings(hangar.airframe));
    must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_EQ(must(book.withoutReadings(hangar.airframe))->riggingRecords.size(), 1u);

    const auto otherFile = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource otherIds{7};
    Records other{*otherFile, otherIds, store.clock()};
    must(other.add(hangar.record(store.clock().now())));
    EXPECT_EQ(known().facts().riggingRecords.size(), 2u);
}

TEST_F(Book, GoesToAnotherAirframeWithoutItsReadings)
{
    const AirframeId second = must(store.records().add(anAirframe("QX-88")));
    known();
    EXPECT_EQ(must(book.withoutReadings(second))->airframe.registration, "QX-88");
    EXPECT_EQ(known().facts().airframe.registration, "QX-17");
}

TEST_F(Book, SaysThatAnAirframeIsNotThere)
{
    const auto asked = book.airframe(AirframeId{});
    ASSERT_FALSE(asked);
    EXPECT_EQ(asked.problem().kind, ProblemKind::NotFound);
}

TEST_F(Book, ReadsAnewAfterMoreWasSavedThanIsToldOneByOne)
{
    known();
    must(store.records().together([&]() -> Outcome {
        for (int i = 0; i < 300; ++i)
            must(store.records().add(reading(600), std::nullopt));
        return Done{};
    }));
    EXPECT_EQ(known().facts().readings.size(), 300u);
}
