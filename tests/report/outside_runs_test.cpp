// Readings outside a band that follow one another are one run, and what stands between them parts it.

#include "app/report/outside_runs.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::engineer;
using namespace rig::test;

namespace {

constexpr Day kTold = dayOf(2024, 3, 1);

class OutsideRuns : public testing::Test
{
protected:
    OutsideRuns() { told.addCoupling("Elevator", 0.50, kTold); }

    Reading& read(double gap)
    {
        day += std::chrono::days{2};
        told.rig(day);
        return told.read(told.facts.couplings.front().id, gap);
    }

    // How many readings each run has.
    std::vector<std::size_t> runs()
    {
        const ReviewPeriod period{kTold, day, {}};
        review = airframeReviewOf(told.facts, period);
        std::vector<std::size_t> sizes;
        for (const OutsideStories& run :
             outsideRunsOf(review.couplings.front(), judgedReadings(told.facts, day)))
            sizes.push_back(run.stories.size());
        return sizes;
    }

    AirframeInMemory told;
    AirframeReview review;
    Day day = kTold;
};

using Sizes = std::vector<std::size_t>;

} // namespace

TEST_F(OutsideRuns, JoinWhatFollowsOnTheSameSide)
{
    for (int i = 0; i < 3; ++i)
        read(0.80);
    EXPECT_EQ(runs(), Sizes{3});
}

TEST_F(OutsideRuns, ArePartedByTheOtherSide)
{
    read(0.80);
    read(0.80);
    read(0.20);
    EXPECT_EQ(runs(), (Sizes{2, 1}));
}

TEST_F(OutsideRuns, ArePartedByAReadingThatLaySomewhereElse)
{
    read(0.80);
    read(0.50);
    read(0.80);
    EXPECT_EQ(runs(), (Sizes{1, 1}));
}

TEST_F(OutsideRuns, ArePartedByANewFitting)
{
    read(0.80);
    told.addFitting(told.facts.couplings.front().id, "ball replaced", 0.50, day + std::chrono::days{1});
    read(0.80);
    EXPECT_EQ(runs(), (Sizes{1, 1}));
}

TEST_F(OutsideRuns, KeepWhatWasStruckByItselfAndGoOnBehindIt)
{
    read(0.80);
    const ReadingId slip = read(0.90).id;
    read(0.80);
    told.facts.exclusions.push_back({{}, slip, "read on the wrong joint", {}});
    EXPECT_EQ(runs(), (Sizes{2, 1}));
}

TEST_F(OutsideRuns, OfNothingAreNone)
{
    read(0.50);
    EXPECT_TRUE(runs().empty());
}
