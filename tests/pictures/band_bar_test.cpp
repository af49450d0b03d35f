#include "app/pictures/band_bar.h"
#include "tests/pictures/readable.h"
#include "tests/pictures/trend_scene.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;
using namespace rig::literals;

namespace {

const QSizeF kBarSize{280, 26};

BandBarPicture laidBar(const std::optional<Band>& band, const GapInterval& reading, Verdict verdict)
{
    return layoutBandBar({band, reading, verdict}, kBarSize, {});
}

GapInterval um(std::int32_t enters, std::int32_t refuses)
{
    return {Gap::micrometres(enters), Gap::micrometres(refuses)};
}

} // namespace

TEST(BandBar, PutsEveryBandInTheSamePlace)
{
    const QRectF one = laidBar(bandAround(1.16, 0.08, 0.11), um(1150, 1200), Verdict::Inside).band;
    const QRectF other = laidBar(bandAround(0.40, 0.03, 0.05), um(350, 400), Verdict::Inside).band;
    EXPECT_NEAR(one.left(), other.left(), 1e-6);
    EXPECT_NEAR(one.width(), other.width(), 1e-6);
    EXPECT_NEAR(one.width(), kBarSize.width() / 2, 2);
}

TEST(BandBar, DrawsTheReadingOnItsBandsScale)
{
    const BandBarPicture picture = laidBar(bandAround(1.16, 0.08, 0.11), um(1080, 1160), Verdict::Inside);
    ASSERT_EQ(picture.bars.size(), 1U);
    EXPECT_NEAR(picture.bars[0].where.left(), picture.band.left(), 0.01);
    EXPECT_NEAR(picture.bars[0].where.right(), picture.band.center().x(), 0.01);
    EXPECT_TRUE(picture.arrows.empty());
}

TEST(BandBar, PointsOnToAReadingFarOutside)
{
    const BandBarPicture picture = laidBar(bandAround(1.16, 0.08, 0.11), um(1800, 1850), Verdict::Outside);
    ASSERT_EQ(picture.arrows.size(), 1U);
    EXPECT_TRUE(picture.arrows[0].up && picture.arrows[0].level);
    EXPECT_EQ(picture.bars[0].role, Role::Outside);
    EXPECT_LE(picture.bars[0].where.right(), picture.bar.right() + 0.01);
}

TEST(BandBar, WithoutABandIsADashedOutlineAndNothingThatLooksGood)
{
    const BandBarPicture picture = laidBar(std::nullopt, um(1150, 1200), Verdict::NoBandYet);
    EXPECT_TRUE(picture.boxes.empty());
    EXPECT_TRUE(picture.bars.empty());
    ASSERT_EQ(picture.lines.size(), 4U);
    for (const DrawnLine& line : picture.lines)
        EXPECT_TRUE(line.dashed);
    EXPECT_TRUE(picture.inWords.startsWith("No band yet."));
    expectReadable(picture, kBarSize);
}

TEST(BandBar, SaysTheBandTheReadingAndTheVerdict)
{
    EXPECT_EQ(laidBar(bandAround(1.16, 0.08, 0.11), um(1300, 1350), Verdict::Outside).inWords,
              "Band 1.08–1.24 mm. Latest reading 1.30–1.35 mm: Outside the band.");
}
