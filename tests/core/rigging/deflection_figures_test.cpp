#include "core/rigging/deflection_figures.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

constexpr auto kDegrees = DeflectionUnit::Degrees;
constexpr auto kMillimetres = DeflectionUnit::Millimetres;

SurfaceMeasure measured(MeasureKind kind, int thousandths, DeflectionUnit unit, int hingeMm = 0)
{
    SurfaceMeasure measure;
    measure.kind = kind;
    measure.unit = unit;
    measure.value = {thousandths};
    if (hingeMm > 0)
        measure.measuredAt = Gap::micrometres(hingeMm * 1000);
    return measure;
}

} // namespace

TEST(DeflectionFigures, TurnMillimetresAtTheTrailingEdgeIntoDegrees)
{
    // 42 mm at 120 mm: 20.157 degrees (tests/data/published/control_surface_geometry.json, inv-1)
    EXPECT_EQ(inUnit(measured(MeasureKind::Up, 42'000, kMillimetres, 120), kDegrees), Deflection{20'157});
    EXPECT_EQ(inUnit(measured(MeasureKind::Up, 20'000, kDegrees, 120), kMillimetres), Deflection{41'676});
    EXPECT_EQ(inUnit(measured(MeasureKind::Up, 42'000, kMillimetres), kMillimetres), Deflection{42'000});
}

TEST(DeflectionFigures, AreNotKnownInDegreesWithoutTheDistanceOrBeyondTwiceIt)
{
    EXPECT_FALSE(inUnit(measured(MeasureKind::Up, 42'000, kMillimetres), kDegrees));
    EXPECT_FALSE(inUnit(measured(MeasureKind::Up, 241'000, kMillimetres, 120), kDegrees));
}

TEST(DeflectionFigures, SayHowFarTheyLieBeyondTheManualsRange)
{
    const ManualDeflection manual{{30'000}, {2'000}};
    EXPECT_EQ(beyondRange({34'500}, manual), Deflection{2'500});
    EXPECT_EQ(beyondRange({27'000}, manual), Deflection{-1'000});
    EXPECT_EQ(beyondRange({32'000}, manual), Deflection{0}) << "its edge belongs to it";
    EXPECT_EQ(beyondRange({28'000}, manual), Deflection{0});
}

TEST(DeflectionFigures, TakeTheLatestOfEachKind)
{
    const std::vector all{measured(MeasureKind::Up, 20'000, kDegrees),
                          measured(MeasureKind::Up, 21'000, kDegrees)};
    const MeasuredSurface latest = measuredOn({}, all);
    EXPECT_EQ(latest.up->value, Deflection{21'000});
    EXPECT_FALSE(latest.down);
    EXPECT_FALSE(latest.play);
}

TEST(DeflectionFigures, CompareUpWithDown)
{
    MeasuredSurface ailerons;
    EXPECT_FALSE(upOverDown(ailerons));
    ailerons.up = measured(MeasureKind::Up, 24'000, kDegrees);
    ailerons.down = measured(MeasureKind::Down, 12'000, kDegrees);
    EXPECT_DOUBLE_EQ(upOverDown(ailerons).value(), 2.0);
    ailerons.down = measured(MeasureKind::Down, 25'000, kMillimetres);
    EXPECT_FALSE(upOverDown(ailerons)) << "degrees and millimetres without a distance";
    ailerons.up = measured(MeasureKind::Up, 50'000, kMillimetres);
    EXPECT_DOUBLE_EQ(upOverDown(ailerons).value(), 2.0);
    ailerons.down->value = {};
    EXPECT_FALSE(upOverDown(ailerons));
}

TEST(DeflectionFigures, HoldLeftAgainstRightInDegrees)
{
    const auto left = measured(MeasureKind::Up, 20'157, kDegrees);
    const auto right = measured(MeasureKind::Up, 42'000, kMillimetres, 120);
    EXPECT_EQ(differenceInDegrees(left, right), Deflection{0});
    EXPECT_FALSE(differenceInDegrees(left, std::nullopt));
    EXPECT_FALSE(differenceInDegrees(left, measured(MeasureKind::Up, 42'000, kMillimetres)));
}
