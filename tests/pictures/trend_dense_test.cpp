#include "app/pictures/trend.h"
#include "tests/pictures/trend_scene.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

const QSizeF kWide{1280, 560};

// Every half hour for years: far more than a glider will see, so that nobody has to wait.
TrendSeries longHistory(int count)
{
    TrendSeries series;
    const Band band = bandAround(1.16, 0.075, 0.11);
    series.fittings = {{{1600000000, 0}, -0.5, band, ""}};
    series.readings.reserve(static_cast<std::size_t>(count));
    Dice dice;
    for (int i = 0; i < count; ++i) {
        const auto um = static_cast<std::int32_t>((1.16 + dice.bell(0.035)) * 1000);
        const GapInterval gap{Gap::micrometres(um), Gap::micrometres(um + 20)};
        series.readings.push_back(readingOf(gap, i, {1600000000 + i * 1800LL, 0}, verdictIn(band, gap)));
    }
    return series;
}

} // namespace

TEST(DenseTrend, KeepsEveryOutsideReadingInSightAtItsFullLength)
{
    const TrendSeries series = longHistory(20000);
    const TrendPicture picture = layoutTrend(series, {}, kWide, {});
    const TrendIndex index = indexOf(series, picture.window.axis);
    int outside = 0;
    for (std::size_t i = 0; i < series.readings.size(); ++i) {
        if (series.readings[i].verdict != Verdict::Outside)
            continue;
        ++outside;
        const QRectF place = *rig::placeOf(index, picture, i);
        EXPECT_TRUE(std::any_of(picture.bars.begin(), picture.bars.end(), [&place](const DrawnBox& bar) {
            return bar.role == Role::Outside &&
                   bar.where.adjusted(-0.01, -0.01, 0.01, 0.01).contains(place.center()) &&
                   bar.where.top() <= place.top() + 0.01 && bar.where.bottom() >= place.bottom() - 0.01;
        })) << i;
    }
    EXPECT_GT(outside, 10);
}

TEST(DenseTrend, NeverColoursMoreThanWhatIsOutside)
{
    const TrendSeries series = longHistory(20000);
    const TrendPicture picture = layoutTrend(series, {}, kWide, {});
    const double perMm = picture.plot.height() / (picture.mmAtTop - picture.mmAtBottom);
    EXPECT_GT(std::ranges::count(picture.bars, Role::Outside, &DrawnBox::role), 10);
    for (const DrawnBox& bar : picture.bars)
        if (bar.role == Role::Outside) {
            const double low = picture.mmAtBottom + (picture.plot.bottom() - bar.where.bottom()) / perMm;
            const double high = picture.mmAtBottom + (picture.plot.bottom() - bar.where.top()) / perMm;
            EXPECT_TRUE(low >= 1.27 - 0.002 || high <= 1.05 + 0.002) << low << " to " << high;
        }
}

namespace {

// A hundred thousand ordinary readings of one band and a single one far above it.
TrendSeries oneOutside(std::size_t at)
{
    TrendSeries series = longHistory(100000);
    for (TrendReading& reading : series.readings) {
        reading.interval = {Gap::micrometres(1140), Gap::micrometres(1180)};
        reading.verdict = Verdict::Inside;
    }
    series.readings[at].interval = {Gap::micrometres(1290), Gap::micrometres(1310)};
    series.readings[at].verdict = Verdict::Outside;
    return series;
}

QImage paintedBars(const TrendPicture& picture)
{
    QImage image{kWide.toSize(), QImage::Format_RGB32};
    const Theme theme = Theme::light();
    image.fill(theme.color(Role::Card));
    Drawing bars;
    bars.bars = picture.bars;
    QPainter painter{&image};
    paint(painter, bars, theme);
    return image;
}

int pixelsOf(const QImage& image, const QRect& where, Role role)
{
    int count = 0;
    for (int y = where.top(); y <= where.bottom(); ++y)
        for (int x = where.left(); x <= where.right(); ++x)
            count += image.pixelColor(x, y) == Theme::light().color(role) ? 1 : 0;
    return count;
}

} // namespace

TEST(DenseTrend, ShowsOneOutsideReadingAmongAHundredThousandAtItsTrueExtent)
{
    const TrendSeries series = oneOutside(61234);
    const TrendPicture picture = layoutTrend(series, {}, kWide, {});
    const QRectF place = *placeOf(series, picture, 61234);
    std::vector<QRectF> outside;
    for (const DrawnBox& bar : picture.bars)
        if (bar.role == Role::Outside)
            outside.push_back(bar.where);
    ASSERT_EQ(outside.size(), 1U);
    EXPECT_GE(outside[0].width(), 1);
    EXPECT_NEAR(outside[0].top(), place.top(), 0.01);
    EXPECT_NEAR(outside[0].bottom(), place.bottom(), 0.01);
    const int seen = pixelsOf(paintedBars(picture), outside[0].toAlignedRect(), Role::Outside);
    EXPECT_GE(seen, static_cast<int>(place.height()) - 2);
}

TEST(DenseTrend, DoesNotColourAColumnForOneOutsideReadingInIt)
{
    const TrendSeries series = oneOutside(61234);
    const TrendPicture picture = layoutTrend(series, {}, kWide, {});
    const QRectF outside = *placeOf(series, picture, 61234);
    const QRectF inside = *placeOf(series, picture, 61235);
    const QImage image = paintedBars(picture);
    const QRect column{static_cast<int>(std::floor(outside.center().x())),
                       static_cast<int>(picture.plot.top()), 1, static_cast<int>(picture.plot.height())};
    EXPECT_GE(pixelsOf(image, column, Role::Ink), static_cast<int>(inside.height()) - 2);
    EXPECT_LE(pixelsOf(image, column, Role::Outside), static_cast<int>(outside.height()) + 1);
}

TEST(DenseTrend, DrawsTheWorseOnTop)
{
    const TrendPicture picture = layoutTrend(longHistory(20000), {}, kWide, {});
    const auto rank = [](const DrawnBox& bar) {
        return bar.role == Role::Outside    ? 3
               : bar.role == Role::NearEdge ? 2
               : bar.role == Role::Unknown  ? 1
                                            : 0;
    };
    EXPECT_TRUE(std::is_sorted(picture.bars.begin(), picture.bars.end(),
                               [&rank](const DrawnBox& a, const DrawnBox& b) { return rank(a) < rank(b); }));
}

TEST(DenseTrend, NeverPutsOneMarkOverAnother)
{
    const TrendPicture picture = layoutTrend(longHistory(20000), {}, kWide, {});
    ASSERT_GT(picture.marks.size(), 20U);
    for (std::size_t i = 0; i < picture.marks.size(); ++i)
        for (std::size_t j = i + 1; j < picture.marks.size(); ++j)
            EXPECT_FALSE(picture.marks[i].where.intersects(picture.marks[j].where));
}

// Processor time, so that a busy machine does not count; the best of five. In a release build it is meant to
// stay under one frame of 16 ms; asserted only far above, as sanitizers cost several times that.
TEST(DenseTrend, ShowsAHundredThousandReadingsWithoutAWait)
{
    const TrendSeries series = longHistory(100000);
    QImage image{kWide.toSize(), QImage::Format_RGB32};
    double best = 1e9;
    for (int i = 0; i < 5; ++i) {
        const double begin = processorMilliseconds();
        const TrendPicture picture = layoutTrend(series, {}, kWide, {});
        QPainter painter{&image};
        paint(painter, picture, Theme::light());
        painter.end();
        best = std::min(best, processorMilliseconds() - begin);
    }
    std::printf("layout and paint of 100,000 readings: %.1f ms of processor time\n", best);
    EXPECT_LT(best, 160);
}
