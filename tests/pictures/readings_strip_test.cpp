#include "app/pictures/readings_strip.h"
#include "tests/pictures/golden.h"
#include "tests/pictures/readable.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

GapInterval readAt(int enters, int wide = 50)
{
    return {Gap::micrometres(enters), Gap::micrometres(enters + wide)};
}

ReadingsStripView rightAileron()
{
    ReadingsStripView view;
    view.band = Band{{0.55, 0.71}, {0.50, 0.76}, 0.63, 0.03, 58};
    for (int i = 0; i < 58; ++i)
        view.locked.push_back(readAt(530 + 10 * ((i * 7 + i / 5) % 13), i % 3 == 0 ? 20 : 50));
    view.partSeated = {readAt(1700), readAt(1850), readAt(1950), readAt(2100)};
    return view;
}

FontSizes stripText(double scale)
{
    FontSizes fonts;
    fonts.scale = scale;
    return fonts;
}

ReadingsStripPicture laidStrip(const ReadingsStripView& view, double width = 880, double scale = 1)
{
    return layoutReadingsStrip(view, {width, readingsStripHeight(stripText(scale))}, stripText(scale));
}

} // namespace

TEST(ReadingsStripPicture, DrawsEveryLockedReadingOnceAndNoneOverAnother)
{
    const ReadingsStripPicture picture = laidStrip(rightAileron());
    ASSERT_EQ(picture.bars.size(), 1 + 58U); // one in the legend
    for (std::size_t i = 1; i < picture.bars.size(); ++i) {
        EXPECT_TRUE(picture.strip.contains(picture.bars[i].where));
        for (std::size_t j = i + 1; j < picture.bars.size(); ++j)
            EXPECT_FALSE(picture.bars[i].where.intersects(picture.bars[j].where));
    }
}

TEST(ReadingsStripPicture, SaysNothingBetweenOnlyWhereItIsTrue)
{
    EXPECT_TRUE(laidStrip(rightAileron()).saysNothingBetween);
    ReadingsStripView overlapping = rightAileron();
    overlapping.partSeated.push_back(readAt(640));
    EXPECT_FALSE(laidStrip(overlapping).saysNothingBetween);
    ReadingsStripView never = rightAileron();
    never.partSeated.clear();
    EXPECT_FALSE(laidStrip(never).saysNothingBetween);
    EXPECT_TRUE(says(laidStrip(never), "none noted as part-seated"));
}

TEST(ReadingsStripPicture, PartSeatedAndFoundOnesHaveMarksOfTheirOwn)
{
    ReadingsStripView view = rightAileron();
    view.asFound = {readAt(1500)};
    const ReadingsStripPicture picture = laidStrip(view);
    const auto count = [&](MarkShape shape) {
        return std::ranges::count(picture.marks, shape, &DrawnMark::shape);
    };
    EXPECT_EQ(count(MarkShape::Diamond), 1 + 4);
    EXPECT_EQ(count(MarkShape::HalfDisc), 1 + 1);
    EXPECT_TRUE(says(picture, "4 part-seated on purpose"));
    EXPECT_TRUE(says(picture, "1 outside or part-seated at a rigging"));
}

TEST(ReadingsStripPicture, PointsToWhatLiesOffItsScale)
{
    ReadingsStripView view = rightAileron();
    view.partSeated.push_back(readAt(9000));
    EXPECT_EQ(laidStrip(view).arrows.size(), 1U);
    EXPECT_TRUE(laidStrip(rightAileron()).arrows.empty());
}

TEST(ReadingsStripPicture, CutsNoTextAtAnySizeOfTextAndWidth)
{
    ReadingsStripView view = rightAileron();
    view.asFound = {readAt(1500)};
    for (const double scale : {1.0, 1.25, 1.5})
        for (const double width : {320.0, 480.0, 880.0, 1400.0})
            for (const ReadingsStripView& one : {view, rightAileron(), ReadingsStripView{}})
                expectReadable(laidStrip(one, width * scale, scale),
                               {width * scale, readingsStripHeight(stripText(scale))});
}

TEST(ReadingsStripPicture, TellsInWordsWhatItShows)
{
    ReadingsStripView view;
    view.locked = {readAt(550), readAt(600)};
    view.partSeated = {readAt(1700)};
    EXPECT_EQ(laidStrip(view).inWords.toStdString(),
              "2 locked readings, from 0.55–0.60 mm to 0.60–0.65 mm. Part-seated on purpose: 1.70–1.75 mm. "
              "Between 0.65 and 1.70 mm nothing was ever seen.");
    EXPECT_EQ(laidStrip({}).inWords, "No locked reading yet. No reading was noted as part-seated.");
}

TEST(ReadingsStripGolden, AllReadingsOfOneCoupling)
{
    expectLikeGolden(painted(laidStrip(rightAileron()), {880, 110}, Theme::light()), "readings-strip-light");
}

TEST(ReadingsStripGolden, PartSeatedBelowAndFoundInLargeText)
{
    ReadingsStripView view;
    view.band = Band{{0.52, 0.60}, {0.49, 0.63}, 0.55, 0.02, 20};
    for (int i = 0; i < 20; ++i)
        view.locked.push_back(readAt(500 + 10 * (i % 5)));
    view.partSeated = {readAt(100), readAt(120)};
    view.asFound = {readAt(150)};
    expectLikeGolden(painted(laidStrip(view, 880, 1.5), {880, 165}, Theme::dark()),
                     "readings-strip-large-dark");
}
