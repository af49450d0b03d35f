#include "core/airframe/id_source.h"
#include "core/airframe/saved_before.h"
#include "core/rigging/rigging_record.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

constexpr std::int64_t kMorning = 1'777'712'400; // 2 May 2026, 9:00 UTC

// A fact saved by a clock that showed this many seconds after that morning, with an id made at such a time.
Interruption savedAt(std::int64_t seconds, IdBytes id)
{
    Interruption fact;
    fact.id.bytes = id;
    fact.stamp.when.utcSeconds = kMorning + seconds;
    return fact;
}

IdBytes idAt(IdSource& ids, std::int64_t seconds)
{
    return ids.next((kMorning + seconds) * 1000);
}

} // namespace

TEST(SavedBefore, GoesByTheOrderOfIdsWithinOneSecond)
{
    IdSource ids{1};
    const Interruption first = savedAt(0, idAt(ids, 0));
    const Interruption second = savedAt(0, idAt(ids, 0));
    EXPECT_TRUE(savedBefore(first, second));
    EXPECT_FALSE(savedBefore(second, first));
    EXPECT_FALSE(savedBefore(first, first));
}

TEST(SavedBefore, StandsWhenTheClockOfTheFileWasSetBackBetweenTwoSaves)
{
    IdSource ids{1};
    const Interruption first = savedAt(0, idAt(ids, 0));
    const Interruption second = savedAt(-3600, idAt(ids, -3600)); // the id goes on from the first
    EXPECT_TRUE(savedBefore(first, second));
    EXPECT_FALSE(savedBefore(second, first));
}

TEST(SavedBefore, GoesByTheStampWhereAnIdWasMadeUnderAnotherClock)
{
    IdSource ours{1};
    IdSource theirs{2};
    const Interruption earlier = savedAt(0, idAt(ours, 0));
    const Interruption later = savedAt(60, idAt(theirs, -7200)); // its id is the smaller one
    ASSERT_LT(later.id, earlier.id);
    EXPECT_TRUE(savedBefore(earlier, later));
    EXPECT_FALSE(savedBefore(later, earlier));
}

TEST(SavedBefore, PartsTwoClocksOfTheSameSecondTheSameWayEverywhere)
{
    IdSource ours{1};
    IdSource theirs{2};
    const Interruption one = savedAt(0, idAt(ours, 0));
    const Interruption other = savedAt(0, idAt(theirs, 0));
    EXPECT_NE(savedBefore(one, other), savedBefore(other, one));
}

TEST(SavedBefore, IsOneOrderForAllFacts)
{
    IdSource ours{1};
    IdSource theirs{2};
    std::vector<Interruption> facts;
    for (const std::int64_t seconds : {0, 30, -3600, 10, 31, -50})
        facts.push_back(savedAt(seconds, idAt(seconds % 20 == 0 ? ours : theirs, seconds)));
    for (const Interruption& a : facts)
        for (const Interruption& b : facts)
            for (const Interruption& c : facts)
                if (savedBefore(a, b) && savedBefore(b, c)) {
                    EXPECT_TRUE(savedBefore(a, c));
                }
}
