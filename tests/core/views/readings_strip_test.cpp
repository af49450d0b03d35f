#include "core/views/readings_strip.h"
#include "tests/support/gaps.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::tests;

namespace {

ReadingsStripView strip(std::vector<GapInterval> locked, std::vector<GapInterval> partSeated,
                        std::vector<GapInterval> asFound = {})
{
    return {std::nullopt, std::move(locked), std::move(partSeated), std::move(asFound), {}, {}};
}

} // namespace

TEST(ReadingsStrip, NamesTheStretchInWhichNothingWasEverRead)
{
    const auto found =
        emptyBetween(strip({aGap(600, 650), aGap(550, 600)}, {aGap(1900, 1950), aGap(1700, 1750)}));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_DOUBLE_EQ(found[0].from, 0.65);
    EXPECT_DOUBLE_EQ(found[0].to, 1.7);
}

TEST(ReadingsStrip, NamesItOnTheSideOnWhichPartSeatedWasRead)
{
    const auto below = emptyBetween(strip({aGap(550, 600)}, {aGap(100, 150), aGap(150, 200)}));
    ASSERT_EQ(below.size(), 1U);
    EXPECT_DOUBLE_EQ(below[0].from, 0.2);
    EXPECT_DOUBLE_EQ(below[0].to, 0.55);
    const auto both = emptyBetween(strip({aGap(550, 600)}, {aGap(100, 150), aGap(1500, 1550)}));
    ASSERT_EQ(both.size(), 2U);
    EXPECT_DOUBLE_EQ(both[0].to, 0.55);
    EXPECT_DOUBLE_EQ(both[1].from, 0.6);
}

TEST(ReadingsStrip, NamesNoneWhereOneKindWasNeverRead)
{
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600)}, {})).empty());
    EXPECT_TRUE(emptyBetween(strip({}, {aGap(1500, 1550)})).empty());
    EXPECT_TRUE(emptyBetween(strip({}, {})).empty());
}

TEST(ReadingsStrip, NamesNoneWhereTheyOverlapOrTouch)
{
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600), aGap(700, 750)}, {aGap(620, 640)})).empty());
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600)}, {aGap(580, 650), aGap(1500, 1550)})).empty());
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600)}, {aGap(600, 650)})).empty());
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600)}, {aGap(500, 550)})).empty());
}

TEST(ReadingsStrip, CountsWhatWasFoundAtARiggingAsSeen)
{
    const auto shorter = emptyBetween(strip({aGap(550, 600)}, {aGap(1500, 1550)}, {aGap(900, 950)}));
    ASSERT_EQ(shorter.size(), 1U);
    EXPECT_DOUBLE_EQ(shorter[0].to, 0.9);
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600)}, {aGap(1500, 1550)}, {aGap(580, 620)})).empty());
    EXPECT_EQ(emptyBetween(strip({aGap(550, 600)}, {}, {aGap(900, 950)})).size(), 1U);
}

TEST(ReadingsStrip, NamesNoneAboveALockedReadingWithoutAnUpperEnd)
{
    EXPECT_TRUE(emptyBetween(strip({aGap(550, 600), anOpenGap(1000)}, {aGap(1500, 1550)})).empty());
    EXPECT_EQ(emptyBetween(strip({anOpenGap(1000)}, {aGap(200, 250)})).size(), 1U);
    EXPECT_EQ(emptyBetween(strip({aGap(550, 600)}, {anOpenGap(1000)})).size(), 1U);
}

TEST(ReadingsStrip, EndsAWholeStepAboveWhatWasReadAndNeverBeyondItsWidest)
{
    EXPECT_DOUBLE_EQ(stripEnd(strip({aGap(550, 600)}, {})), 1.0);
    EXPECT_NEAR(stripEnd(strip({aGap(550, 600)}, {aGap(2050, 2100)})), 2.2, 1e-9);
    EXPECT_DOUBLE_EQ(stripEnd(strip({aGap(550, 600)}, {aGap(9000, 9500)})), kWidestStrip);
    EXPECT_TRUE(isOffStrip(aGap(9000, 9500), kWidestStrip));
    EXPECT_FALSE(isOffStrip(aGap(2050, 2100), kWidestStrip));
}

TEST(ReadingsStrip, NamesNoStretchInWhichAnotherFittingWasRead)
{
    ReadingsStripView view = strip({aGap(550, 600)}, {aGap(100, 150), aGap(1500, 1550)});
    view.earlier = {aGap(950, 1000)};
    const auto found = emptyBetween(view);
    ASSERT_EQ(found.size(), 1U) << "only the one below is empty";
    EXPECT_DOUBLE_EQ(found[0].to, 0.55);
    view.earlier = {GapInterval{Gap::micrometres(200), std::nullopt}};
    EXPECT_TRUE(emptyBetween(view).empty()) << "nobody knows how far it reached";
    view.earlier = {aGap(560, 600)};
    EXPECT_EQ(emptyBetween(view).size(), 2U);
}
