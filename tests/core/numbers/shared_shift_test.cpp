#include "core/numbers/shared_shift.h"

#include <gtest/gtest.h>
#include <limits>

using namespace rig::numbers;

namespace {

bool isCalled(const std::vector<double>& scores)
{
    return sharedShiftOf(scores)->isCalled;
}

} // namespace

TEST(SharedShift, IsCalledWhenTheWholeDayReadsHigh)
{
    const auto shift = sharedShiftOf(std::vector<double>{1.5, 2, 1, 2.5});
    ASSERT_TRUE(shift);
    EXPECT_EQ(shift->scores, 4);
    EXPECT_DOUBLE_EQ(shift->mean, 1.75);
    EXPECT_DOUBLE_EQ(shift->median, 1.75);
    EXPECT_DOUBLE_EQ(shift->z, 3.5);
    EXPECT_NEAR(shift->p, 4.652581580710802e-4, 1e-15); // 2 Phi(-3.5)
    EXPECT_EQ(shift->sameSignShare, 1);
    EXPECT_TRUE(shift->isCalled);
}

TEST(SharedShift, NeedsEachOfItsFourSigns)
{
    EXPECT_TRUE(isCalled({2, 2, 2, 2}));
    EXPECT_FALSE(isCalled({4, 4, 4}));                    // too few
    EXPECT_FALSE(isCalled({1.5, 1.5, 1.5, 1.5}));         // z just 3
    EXPECT_FALSE(isCalled(std::vector<double>(20, 0.9))); // small, however sure
    EXPECT_TRUE(isCalled(std::vector<double>(20, 1)));
    EXPECT_TRUE(isCalled({3, 3, 3, -1}));            // three of four
    EXPECT_FALSE(isCalled({4, 4, 4, 4, 4, -1, -1})); // five of seven
}

TEST(SharedShift, TakesAScoreOfNothingForNeitherSign)
{
    EXPECT_EQ(sharedShiftOf(std::vector<double>{0, 0, 1, -1, -2})->sameSignShare, 0.4);
    EXPECT_EQ(sharedShiftOf(std::vector<double>{0, 0})->sameSignShare, 0);
}

TEST(SharedShift, IsNotCalledForOneWildCoupling)
{
    EXPECT_FALSE(isCalled({4, 0.1, -0.2, 0.3, 0.2, -0.1}));
}

TEST(SharedShift, DoesNotExistWithoutScores)
{
    EXPECT_FALSE(sharedShiftOf({}));
    EXPECT_FALSE(sharedShiftOf(std::vector<double>{1, std::numeric_limits<double>::quiet_NaN()}));
    EXPECT_FALSE(sharedShiftOf(std::vector<double>{1, std::numeric_limits<double>::infinity()}));
}

TEST(SharedShift, LeavesEachCouplingWhatIsItsOwn)
{
    EXPECT_EQ(scoresLessMedian(std::vector<double>{2, 1, 5}), (std::vector<double>{0, -1, 3}));
    EXPECT_EQ(scoresLessMedian(std::vector<double>{1, 2}), (std::vector<double>{-0.5, 0.5}));
    EXPECT_TRUE(scoresLessMedian({}).empty());
}
