#include "app/pictures/trend.h"
#include "tests/pictures/trend_scene.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

TrendWindow wholeOf(const TrendSeries& series, TrendAxis axis)
{
    return layoutTrend(series, {axis, 0, 0}, kUsual, {}).window;
}

double widthOf(const TrendWindow& window)
{
    return window.to - window.from;
}

} // namespace

TEST(TrendWindow, KeepsThePlaceUnderTheCursorWhenZooming)
{
    const TrendSeries series = leftFlap();
    for (const TrendAxis axis : {TrendAxis::ByDate, TrendAxis::ByRigging})
        for (const double about : {0.2, 0.5, 0.6}) {
            const TrendWindow whole = wholeOf(series, axis);
            const TrendWindow near = zoomed(series, whole, 3, about);
            EXPECT_NEAR(widthOf(near), widthOf(whole) / 3, widthOf(whole) * 1e-9);
            EXPECT_NEAR(near.from + about * widthOf(near), whole.from + about * widthOf(whole),
                        widthOf(whole) * 1e-9);
        }
}

TEST(TrendWindow, ZoomsOutToEverythingAndNoFurther)
{
    const TrendSeries series = leftFlap();
    const TrendWindow whole = wholeOf(series, TrendAxis::ByRigging);
    const TrendWindow out = zoomed(series, zoomed(series, whole, 4, 0.9), 0.01, 0.1);
    EXPECT_DOUBLE_EQ(out.from, whole.from);
    EXPECT_DOUBLE_EQ(out.to, whole.to);
}

TEST(TrendWindow, ZoomsInNoFurtherThanWhatSeparatesTwoReadings)
{
    TrendSeries series = leftFlap();
    const TrendWindow near = zoomed(series, wholeOf(series, TrendAxis::ByRigging), 1e6, 0.5);
    EXPECT_GE(widthOf(near), 1);
    EXPECT_LE(widthOf(near), 4);
}

TEST(TrendWindow, PansNoMoreThanHalfAWindowBeyondTheReadings)
{
    const TrendSeries series = leftFlap();
    TrendWindow window = zoomed(series, wholeOf(series, TrendAxis::ByRigging), 10, 0.5);
    const double width = widthOf(window);
    for (int i = 0; i < 100; ++i)
        window = panned(series, window, -0.4);
    EXPECT_NEAR(window.from, 210 - width / 2, 0.5);
    EXPECT_NEAR(widthOf(window), width, 1e-9);
    for (int i = 0; i < 100; ++i)
        window = panned(series, window, 0.4);
    const double end =
        wholeOf(series, TrendAxis::ByRigging).to; // the forecast reaches further than the readings
    EXPECT_LE(window.to, end + 1e-9);
    EXPECT_NEAR(window.to, end, 1e-6);
}

TEST(TrendWindow, FindsTheReadingUnderTheCursor)
{
    const TrendSeries series = leftFlap();
    for (const TrendAxis axis : {TrendAxis::ByDate, TrendAxis::ByRigging}) {
        const TrendPicture picture = layoutTrend(series, {axis, 0, 0}, {1900, 700}, {});
        for (std::size_t i = 0; i < series.readings.size(); ++i) {
            const QRectF place = *placeOf(series, picture, i);
            const auto found = readingAt(series, picture, place.center());
            ASSERT_TRUE(found);
            EXPECT_TRUE(placeOf(series, picture, *found)->contains(place.center())) << i;
        }
        EXPECT_FALSE(readingAt(series, picture, {picture.plot.left() + 5, picture.plot.top() + 2}));
    }
}

TEST(TrendWindow, FindsNoReadingThatIsOutOfSight)
{
    const TrendSeries series = leftFlap();
    const TrendPicture picture = layoutTrend(series, {TrendAxis::ByRigging, 230, 240}, kUsual, {});
    EXPECT_FALSE(placeOf(series, picture, 0));
    EXPECT_TRUE(placeOf(series, picture, 24));
    for (double x = 0; x < 900; x += 7)
        if (const auto found = readingAt(series, picture, {x, picture.plot.center().y()})) {
            EXPECT_GE(series.readings[*found].rigging, 230);
            EXPECT_LE(series.readings[*found].rigging, 240);
        }
}

TEST(TrendWindow, FindsTheEventUnderTheCursor)
{
    const TrendSeries series = leftFlap();
    const TrendPicture picture = layoutTrend(series, {TrendAxis::ByRigging, 0, 0}, kUsual, {});
    const double share = (244.5 - picture.window.from) / widthOf(picture.window);
    const double x = picture.plot.left() + share * picture.plot.width();
    const auto found = eventAt(series, picture, {x + 2, picture.eventLane.top() + 3});
    ASSERT_TRUE(found);
    EXPECT_EQ(*found, 3U);
    EXPECT_FALSE(eventAt(series, picture, {x, picture.plot.center().y()}));
}
