#include "app/pictures/trend.h"
#include "tests/pictures/trend_scene.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cstdio>
#include <ctime>
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

double processorMilliseconds()
{
    std::timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
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
    for (const DrawnBox& bar : picture.bars)
        if (bar.role == Role::Outside) {
            const double low = picture.mmAtBottom + (picture.plot.bottom() - bar.where.bottom()) / perMm;
            const double high = picture.mmAtBottom + (picture.plot.bottom() - bar.where.top()) / perMm;
            EXPECT_TRUE(low >= 1.27 - 0.002 || high <= 1.05 + 0.002) << low << " to " << high;
        }
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
    EXPECT_LT(best, 200);
}
