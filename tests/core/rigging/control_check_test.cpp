#include "core/rigging/control_check.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;

namespace {

Surface aSurface(SurfaceKind kind, Side side = Side::None)
{
    Surface surface;
    surface.kind = kind;
    surface.side = side;
    return surface;
}

} // namespace

// docs/terms.md, control check: what each does while its control is moved one way and the other.
TEST(ExpectedOfASurface, FollowsFromItsKindAndSide)
{
    using enum rig::Movement;
    struct Row
    {
        Surface surface;
        std::optional<rig::Movement> oneWay;
        std::optional<rig::Movement> otherWay;
    };
    for (const Row& row : {
             Row{aSurface(SurfaceKind::Aileron, Side::Left), Up, Down},
             Row{aSurface(SurfaceKind::Aileron, Side::Right), Down, Up},
             Row{aSurface(SurfaceKind::Aileron), {}, {}},
             Row{aSurface(SurfaceKind::Elevator), Up, Down},
             Row{aSurface(SurfaceKind::Rudder), Left, Right},
             Row{aSurface(SurfaceKind::Flap, Side::Left), Down, Up},
             Row{aSurface(SurfaceKind::Flap, Side::Right), Down, Up},
             Row{aSurface(SurfaceKind::Airbrake, Side::Left), Out, In},
             Row{aSurface(SurfaceKind::WaterDump), Opens, Shuts},
             Row{aSurface(SurfaceKind::Trim), {}, {}},
             Row{aSurface(SurfaceKind::Other), {}, {}},
         }) {
        const int kind = static_cast<int>(row.surface.kind);
        EXPECT_EQ(expectedOf(row.surface).oneWay, row.oneWay) << kind;
        EXPECT_EQ(expectedOf(row.surface).otherWay, row.otherWay) << kind;
        const auto offered = movementsOf(row.surface.kind);
        EXPECT_EQ(offered.back(), Nothing) << kind;
        for (const auto& expected : {row.oneWay, row.otherWay}) {
            EXPECT_TRUE(!expected || std::ranges::count(offered, *expected) == 1) << kind;
        }
    }
}

TEST(ExpectedOfASurface, IsNotKnownWhereTheOwnerWroteWhatIsCalled)
{
    Surface aileron = aSurface(SurfaceKind::Aileron, Side::Left);
    aileron.senseCall = "Stick to the hangar: left wing up.";
    EXPECT_FALSE(expectedOf(aileron).areKnown());
}

TEST(ChecksOfASurface, AskInWordsOnlyWhereTheCallsDoNotTellWhetherItMovesAsItShould)
{
    const auto asks = [](const Surface& surface, SurfaceCheckKind kind) {
        return std::ranges::count(checksOf(surface), kind) == 1;
    };
    const Surface aileron = aSurface(SurfaceKind::Aileron, Side::Left);
    EXPECT_FALSE(asks(aileron, SurfaceCheckKind::Sense));
    for (const Surface& surface : {aileron, aSurface(SurfaceKind::Trim), aSurface(SurfaceKind::Other)}) {
        EXPECT_TRUE(asks(surface, SurfaceCheckKind::CalledOneWay));
        EXPECT_TRUE(asks(surface, SurfaceCheckKind::CalledOtherWay));
    }
    EXPECT_TRUE(asks(aSurface(SurfaceKind::Trim), SurfaceCheckKind::Sense));
    EXPECT_TRUE(asks(aSurface(SurfaceKind::Other), SurfaceCheckKind::Sense));
}
