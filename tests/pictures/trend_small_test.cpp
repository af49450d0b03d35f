#include "app/pictures/trend.h"
#include "tests/pictures/trend_scene.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

const QSizeF kRow{270, 34};

TrendSeries steady(double middle, double half)
{
    TrendSeries series;
    series.fittings = {{at(2025, 4, 1, 14), 0.5, bandAround(middle, half, half * 1.4), ""}};
    for (unsigned i = 0; i < 12; ++i)
        series.readings.push_back(
            readingOf(leafReading(middle), 1.0 + i, at(2025, 4, 2 + i), Verdict::Inside));
    return series;
}

} // namespace

TEST(SmallTrend, HasTheSameMillimetresPerPixelForEveryCoupling)
{
    const TrendPicture narrow = layoutSmallTrend(steady(0.47, 0.04), 40, kRow);
    const TrendPicture wide = layoutSmallTrend(steady(1.16, 0.09), 40, kRow);
    EXPECT_NEAR(narrow.mmAtTop - narrow.mmAtBottom, wide.mmAtTop - wide.mmAtBottom, 1e-9);
    EXPECT_EQ(narrow.plot, wide.plot);
}

TEST(SmallTrend, StretchesOnlyForABandThatWouldNotFit)
{
    const TrendPicture picture = layoutSmallTrend(steady(1.40, 0.20), 40, kRow);
    EXPECT_GT(picture.mmAtTop, 1.60);
    EXPECT_LT(picture.mmAtBottom, 1.20);
}

TEST(SmallTrend, ShowsTheLastReadingsOnTheirOwnBand)
{
    const TrendPicture picture = layoutSmallTrend(leftFlap(), 40, kRow);
    EXPECT_EQ(picture.bars.size(), 40U);
    const auto bands = std::count_if(picture.boxes.begin(), picture.boxes.end(),
                                     [](const DrawnBox& box) { return box.role == Role::Band; });
    EXPECT_EQ(bands, 1);
    for (const DrawnBox& bar : picture.bars)
        EXPECT_TRUE(picture.plot.contains(bar.where));
    for (const DrawnMark& mark : picture.marks)
        EXPECT_TRUE(picture.plot.contains(mark.where));
}

TEST(SmallTrend, PutsAReadingFarOffAtTheEdgeWithItsMark)
{
    TrendSeries series = steady(0.47, 0.04);
    series.readings.back().interval = leafReading(1.90);
    series.readings.back().verdict = Verdict::Outside;
    const TrendPicture picture = layoutSmallTrend(series, 40, kRow);
    ASSERT_EQ(picture.marks.size(), 1U);
    EXPECT_EQ(picture.marks[0].shape, MarkShape::Diamond);
    EXPECT_NEAR(picture.marks[0].where.top(), picture.plot.top(), 3);
}

TEST(SmallTrend, WritesTheFigureOfAReadingOffItsScaleBesideTheMark)
{
    TrendSeries series = steady(0.47, 0.04);
    series.readings[5].interval = leafReading(1.70);
    series.readings[5].verdict = Verdict::Outside;
    const TrendPicture picture = layoutSmallTrend(series, 40, kRow);
    ASSERT_EQ(picture.labels.size(), 1U);
    EXPECT_TRUE(picture.labels[0].text.contains("1.70"));
    EXPECT_TRUE(picture.plot.contains(picture.labels[0].where));
    EXPECT_FALSE(picture.labels[0].where.intersects(picture.marks[0].where));
    EXPECT_TRUE(picture.inWords.contains("off this small scale")) << qPrintable(picture.inWords);
    EXPECT_TRUE(layoutSmallTrend(steady(0.47, 0.04), 40, kRow).labels.empty());
}

TEST(SmallTrend, LeavesOutPartSeatedReadingsAndThoseSetAside)
{
    TrendSeries series = steady(0.47, 0.04);
    series.readings[2].state = SeatState::PartSeated;
    series.readings[3].setAside = true;
    EXPECT_EQ(layoutSmallTrend(series, 40, kRow).bars.size(), 10U);
}

TEST(SmallTrend, DrawsReadingsInDoubtHollowAndNeverAsGood)
{
    TrendSeries series = steady(0.47, 0.04);
    for (TrendReading& reading : series.readings)
        reading.inDoubt = true;
    const TrendPicture picture = layoutSmallTrend(series, 40, kRow);
    ASSERT_EQ(picture.bars.size(), 12U);
    EXPECT_TRUE(std::all_of(picture.bars.begin(), picture.bars.end(),
                            [](const DrawnBox& bar) { return bar.hollow; }));
    EXPECT_TRUE(picture.inWords.contains("all in doubt"));
}

TEST(SmallTrend, SaysThatNothingWasReadYet)
{
    const TrendPicture picture = layoutSmallTrend({}, 40, kRow);
    ASSERT_EQ(picture.labels.size(), 1U);
    EXPECT_TRUE(picture.bars.empty());
    EXPECT_TRUE(picture.inWords.startsWith("No readings yet"));
}
