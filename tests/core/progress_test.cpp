// Long work of several parts, told as one.

#include "core/progress.h"

#include <gtest/gtest.h>
#include <utility>
#include <vector>

using namespace rig;

namespace {

class Heard : public Progress
{
public:
    std::vector<std::size_t> hundredths;

private:
    void told(std::size_t done, std::size_t of) override { hundredths.push_back(done * 100 / of); }
};

} // namespace

TEST(WorkInParts, IsToldAsOneThatGoesOnOverItsParts)
{
    Heard heard;
    WorkInParts parts{&heard, {1, 3}};
    parts.goOn(1, 2);
    parts.endPart();
    parts.goOn(1, 3);
    parts.endPart();
    EXPECT_EQ(heard.hundredths, (std::vector<std::size_t>{12, 25, 50, 100}));
}

TEST(WorkInParts, NeverRunsBackwardsWhateverAPartCounts)
{
    Heard heard;
    WorkInParts parts{&heard, {1, 1}};
    for (const auto& [done, of] : {std::pair{5, 10}, {2, 10}, {9, 0}, {30, 10}})
        parts.goOn(static_cast<std::size_t>(done), static_cast<std::size_t>(of));
    EXPECT_EQ(heard.hundredths, (std::vector<std::size_t>{25, 25, 25, 50}));
}

TEST(WorkInParts, IsStoppedWithTheWholeAndTheWholeWithIt)
{
    Progress whole;
    WorkInParts parts{&whole, {1}};
    WorkInParts within{&parts, {1, 1}};
    EXPECT_TRUE(within.goOn(0, 1));
    whole.stop();
    EXPECT_FALSE(within.goOn(1, 1));
    EXPECT_FALSE(parts.endPart());

    Progress other;
    WorkInParts one{&other, {1}};
    one.stop();
    EXPECT_TRUE(other.isStopped());
}

TEST(WorkInParts, NeedsNobodyWhoWatches)
{
    WorkInParts parts{nullptr, {1, 1}};
    EXPECT_TRUE(parts.goOn(1, 2));
    EXPECT_TRUE(parts.endPart());
}
