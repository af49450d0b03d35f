#include "app/pictures/gap_strip.h"

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;

namespace {

Band stripBand(double middle)
{
    Band band;
    band.inner = {middle - 0.08, middle + 0.08};
    band.outer = {middle - 0.11, middle + 0.11};
    band.median = middle;
    band.readings = 12;
    return band;
}

GapStripView usualView()
{
    GapStripView view;
    view.band = stripBand(0.63);
    view.reading = GapInterval{600_um, 650_um};
    view.verdict = Verdict::Inside;
    view.partSeated = {{1700_um, 1750_um}, {2050_um, 2100_um}};
    return view;
}

const StripBox* boxOf(const GapStripPicture& picture, Role role, bool hatched = false)
{
    for (const StripBox& box : picture.boxes)
        if (box.role == role && box.hatched == hatched)
            return &box;
    return nullptr;
}

struct StripCanvas
{
    QSizeF size;
    double scale;

    friend std::ostream& operator<<(std::ostream& out, const StripCanvas& canvas)
    {
        return out << canvas.size.width() << 'x' << canvas.size.height() << " at " << canvas.scale;
    }
};

class GapStripCanvas : public testing::TestWithParam<StripCanvas>
{
};

} // namespace

TEST(GapStrip, DrawsTheBandWhereItsEdgesAre)
{
    const GapStripPicture picture = layoutGapStrip(usualView(), {800, 92}, {});
    const StripBox* band = boxOf(picture, Role::Band);
    ASSERT_TRUE(band);
    const double perMm = picture.strip.width() / (picture.mmAtRight - picture.mmAtLeft);
    EXPECT_NEAR(band->where.left(), picture.strip.left() + (0.55 - picture.mmAtLeft) * perMm, 1e-6);
    EXPECT_NEAR(band->where.width(), 0.16 * perMm, 1e-6);
}

TEST(GapStrip, HatchesOnlyTheSideWherePartSeatedWasSeen)
{
    const GapStripPicture above = layoutGapStrip(usualView(), {800, 92}, {});
    const StripBox* hatch = boxOf(above, Role::Hatch, true);
    ASSERT_TRUE(hatch);
    EXPECT_GT(hatch->where.left(), boxOf(above, Role::Band)->where.right());

    GapStripView below = usualView();
    below.partSeated = {{100_um, 150_um}};
    const GapStripPicture picture = layoutGapStrip(below, {800, 92}, {});
    EXPECT_LT(boxOf(picture, Role::Hatch, true)->where.right(), boxOf(picture, Role::Band)->where.left());
}

TEST(GapStrip, IsFilledByTheBandHoweverFarPartSeatedWasSeen)
{
    GapStripView view = usualView();
    view.band->inner = {0.61, 0.65};
    view.band->outer = {0.60, 0.66};
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    const QRectF whole = boxOf(picture, Role::StripGround)->where;
    EXPECT_GT(boxOf(picture, Role::Band)->where.width(), 0.13 * 800);
    EXPECT_EQ(whole, picture.strip);
    EXPECT_GT(boxOf(picture, Role::Hatch, true)->where.left(), picture.strip.right())
        << "on a scale of its own";
    EXPECT_LE(boxOf(picture, Role::Hatch, true)->where.right(), 800);
}

TEST(GapStrip, HasOneScaleWherePartSeatedIsNear)
{
    GapStripView view = usualView();
    view.partSeated = {{800_um, 850_um}};
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    EXPECT_LT(boxOf(picture, Role::Hatch, true)->where.right(), picture.strip.right());
    EXPECT_GT(picture.mmAtRight, 0.85);
}

TEST(GapStrip, DrawsAReadingAmongThePartSeatedOnesWhereTheyStand)
{
    GapStripView view = usualView();
    view.reading = GapInterval{1750_um, 1800_um};
    view.verdict = Verdict::Outside;
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    const QRectF hatch = boxOf(picture, Role::Hatch, true)->where;
    EXPECT_LT(picture.mmAtRight, 1.0) << "the band still fills its scale";
    int inside = 0;
    for (const StripLine& line : picture.lines)
        if (line.width >= 3 && line.from.x() >= hatch.left() && line.to.x() <= hatch.right())
            ++inside;
    EXPECT_EQ(inside, 3) << "the bar and its two ends";
}

TEST(GapStrip, DrawsAReadingBetweenTheTwoOnTheBandsScale)
{
    GapStripView view = usualView();
    view.reading = GapInterval{1100_um, 1150_um};
    view.verdict = Verdict::Outside;
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    EXPECT_GT(picture.mmAtRight, 1.15);
    EXPECT_GT(boxOf(picture, Role::Hatch, true)->where.left(), picture.strip.right());
}

TEST(GapStrip, LeavesTheBandClearWhenPartSeatedWasSeenOnBothSides)
{
    GapStripView view = usualView();
    view.partSeated = {{100_um, 150_um}, {1700_um, 1750_um}};
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    int hatched = 0;
    for (const StripBox& box : picture.boxes) {
        if (!box.hatched)
            continue;
        ++hatched;
        EXPECT_FALSE(box.where.intersects(boxOf(picture, Role::Band)->where));
    }
    EXPECT_EQ(hatched, 2);
}

TEST(GapStrip, SaysWhenPartSeatedWasNeverShown)
{
    GapStripView view = usualView();
    view.partSeated.clear();
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    EXPECT_FALSE(boxOf(picture, Role::Hatch, true));
    EXPECT_TRUE(picture.inWords.contains("No reading was noted as part-seated"));
}

TEST(GapStrip, ShowsANegativeEdgeAsZero)
{
    GapStripView view;
    view.band = stripBand(0.05);
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    EXPECT_EQ(picture.mmAtLeft, 0);
    EXPECT_GE(boxOf(picture, Role::Band)->where.left(), picture.strip.left());
}

TEST(GapStrip, KeepsAnOpenReadingOnTheStrip)
{
    GapStripView view = usualView();
    view.reading = GapInterval{1000_um, std::nullopt};
    view.verdict = Verdict::Outside;
    const GapStripPicture picture = layoutGapStrip(view, {800, 92}, {});
    for (const StripLine& line : picture.lines) {
        EXPECT_LE(line.to.x(), 800);
        EXPECT_GE(line.to.x(), 0);
    }
    EXPECT_TRUE(picture.inWords.contains("above 1.00 mm"));
}

TEST_P(GapStripCanvas, NeverLetsTwoLabelsMeetOrLeaveThePicture)
{
    const FontSizes fonts{GetParam().scale};
    for (const double middle : {0.05, 0.36, 0.63, 1.16, 1.95}) {
        GapStripView view = usualView();
        view.band = stripBand(middle);
        const GapStripPicture picture = layoutGapStrip(view, GetParam().size, fonts);
        const QRectF canvas{QPointF{}, GetParam().size};
        EXPECT_FALSE(picture.labels.empty()) << "there is nothing to read";
        for (std::size_t i = 0; i < picture.labels.size(); ++i) {
            const StripLabel& label = picture.labels[i];
            const QFontMetricsF metrics{
                fontOf(label.pixels, label.strong ? Weight::SemiBold : Weight::Regular)};
            EXPECT_GE(label.where.width() + 0.5, metrics.horizontalAdvance(label.text))
                << label.text.toStdString();
            EXPECT_TRUE(canvas.adjusted(-1, -1, 1, 1).contains(label.where)) << label.text.toStdString();
            for (std::size_t j = i + 1; j < picture.labels.size(); ++j)
                EXPECT_FALSE(label.where.intersects(picture.labels[j].where))
                    << label.text.toStdString() << " / " << picture.labels[j].text.toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, GapStripCanvas,
                         testing::Values(StripCanvas{{420, 92}, 1}, StripCanvas{{880, 92}, 1},
                                         StripCanvas{{1500, 92}, 1}, StripCanvas{{640, 138}, 1.5},
                                         StripCanvas{{880, 138}, 1.5}));

TEST(GapStrip, PaintsTheReadingDarkerThanItsBand)
{
    QImage image{800, 92, QImage::Format_RGB32};
    image.fill(Theme::light().color(Role::Card));
    const GapStripPicture picture = layoutGapStrip(usualView(), image.size(), {});
    QPainter painter{&image};
    paint(painter, picture, Theme::light());
    painter.end();
    const double perMm = picture.strip.width() / (picture.mmAtRight - picture.mmAtLeft);
    const int x = static_cast<int>(picture.strip.left() + (0.61 - picture.mmAtLeft) * perMm);
    const QColor reading = image.pixelColor(x, static_cast<int>(picture.strip.center().y()));
    EXPECT_LT(reading.lightness(), Theme::light().color(Role::Band).lightness() - 80);
}
