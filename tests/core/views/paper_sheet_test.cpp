#include "core/views/paper_sheet.h"
#include "tests/support/gaps.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

using namespace rig;

namespace {

// 0.05 to 1.00 in steps of 0.05.
GaugeSet twentyLeaves()
{
    std::vector<Gap> sizes;
    for (int i = 1; i <= 20; ++i)
        sizes.push_back(Gap::micrometres(50 * i));
    return {GaugeKind::Leaves, sizes};
}

CouplingId couplingNumber(std::uint8_t number)
{
    CouplingId id;
    id.bytes[5] = number;
    id.bytes[15] = static_cast<std::uint8_t>(number * 7);
    return id;
}

// Where the leaf that enters a gap of 0.52 stands among the boxes.
std::size_t placeIn(const std::vector<GaugeStep>& leaves)
{
    const auto found = std::ranges::find(leaves, Gap::micrometres(500), &GaugeStep::size);
    return static_cast<std::size_t>(found - leaves.begin());
}

} // namespace

TEST(LeavesOfASheet, AreAsManyAtEveryCouplingWhereverItReads)
{
    for (const double mm : {0.0, 0.02, 0.3, 0.52, 0.97, 1.3, 5.0})
        for (std::uint8_t i = 0; i < 40; ++i)
            EXPECT_EQ(sheetLeaves(twentyLeaves(), mm, couplingNumber(i)).size(), kSheetLeaves) << mm;
}

TEST(LeavesOfASheet, HoldTheOneThatEntersWithRoomOnBothSides)
{
    for (std::uint8_t i = 0; i < 40; ++i) {
        const std::size_t place = placeIn(sheetLeaves(twentyLeaves(), 0.52, couplingNumber(i)));
        EXPECT_GE(place, 2U);
        EXPECT_LE(place, kSheetLeaves - 3);
    }
}

TEST(LeavesOfASheet, DoNotTellByTheirPlaceWhichOneIsExpected)
{
    std::set<std::size_t> places;
    for (std::uint8_t i = 0; i < 100; ++i)
        places.insert(placeIn(sheetLeaves(twentyLeaves(), 0.52, couplingNumber(i))));
    EXPECT_EQ(places.size(), kSheetLeaves - 4) << "every place comes, the middle among others";
}

TEST(LeavesOfASheet, AreTheSameOnEachSheetOfOneCoupling)
{
    EXPECT_EQ(sheetLeaves(twentyLeaves(), 0.51, couplingNumber(3)),
              sheetLeaves(twentyLeaves(), 0.54, couplingNumber(3)));
}

TEST(LeavesOfASheet, AreAllThereAreInASmallSet)
{
    const GaugeSet three{GaugeKind::Pins,
                         {Gap::micrometres(400), Gap::micrometres(500), Gap::micrometres(600)}};
    EXPECT_EQ(sheetLeaves(three, 0.5, couplingNumber(1)).size(), 3U);
    EXPECT_TRUE(sheetLeaves(GaugeSet{}, 0.5, couplingNumber(1)).empty());
}
