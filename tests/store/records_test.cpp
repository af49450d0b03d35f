#include "core/store/records.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

TEST(Records, KeepAReadingWithWhatWasShown)
{
    TempStore store;
    const Hangar hangar{store.records()};
    const Reading reading = hangar.reading(between(600, 650), store.clock().now());
    Shown shown;
    shown.methodVersion = 7;
    shown.judgement = {Verdict::NearEdge,     Reason::None,
                       Direction::Above,      0.02,
                       {Witness::Weak, 0.04}, Band{{0.5, 0.66}, {0.45, 0.7}, 0.58, 0.02, 12, true}};
    const ReadingId id = must(store.records().add(reading, shown));
    store.reopen();

    const auto kept = must(store.records().readings(hangar.airframe));
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept[0].reading.id, id);
    EXPECT_EQ(kept[0].reading.interval, between(600, 650));
    ASSERT_TRUE(kept[0].shown);
    EXPECT_EQ(kept[0].shown->judgement.band->scatter, 0.02);
}
