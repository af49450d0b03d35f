#include "core/rigging/counts_as.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

Reading takenFor(Purpose purpose, SeatState state)
{
    Reading reading;
    reading.purpose = purpose;
    reading.state = state;
    return reading;
}

} // namespace

TEST(CountsAs, OnlyLockedBaselineReadingsMayMakeABand)
{
    EXPECT_TRUE(mayMakeBand(takenFor(Purpose::Baseline, SeatState::Locked)));
    EXPECT_FALSE(mayMakeBand(takenFor(Purpose::Baseline, SeatState::PartSeated)));
    EXPECT_FALSE(mayMakeBand(takenFor(Purpose::Rigging, SeatState::Locked)));
    EXPECT_FALSE(mayMakeBand(takenFor(Purpose::Demonstration, SeatState::Locked)));
}

TEST(CountsAs, ADemonstrationIsNeitherJudgedNorARigging)
{
    const Reading locked = takenFor(Purpose::Demonstration, SeatState::Locked);
    EXPECT_FALSE(isHeldAgainstBand(locked));
    EXPECT_FALSE(isLockedAtRigging(locked));
    EXPECT_TRUE(wasShownPartSeated(takenFor(Purpose::Demonstration, SeatState::PartSeated)));
}

TEST(CountsAs, WhatWasFoundPartSeatedAtARiggingWasNotShown)
{
    EXPECT_FALSE(wasShownPartSeated(takenFor(Purpose::Rigging, SeatState::PartSeated)));
    EXPECT_FALSE(isHeldAgainstBand(takenFor(Purpose::Rigging, SeatState::PartSeated)));
    EXPECT_TRUE(isHeldAgainstBand(takenFor(Purpose::Rigging, SeatState::Locked)));
    EXPECT_TRUE(isHeldAgainstBand(takenFor(Purpose::Baseline, SeatState::Locked)));
}
