#include "app/pictures/offsets.h"
#include "tests/pictures/readable.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

std::vector<OffsetRow> fourPeople()
{
    return {{"M. Oren", 0.008, -0.002, 0.018, 0.014, 112, false, {}},
            {"T. Vale", -0.012, -0.024, 0.000, 0.017, 98, false, {}},
            {"J. Iver", 0.041, 0.020, 0.063, 0.029, 41, true, {}},
            {"A. Guest", {}, {}, {}, {}, 3, false, "3 readings: too few to tell"}};
}

OffsetsPicture laid(const std::vector<OffsetRow>& rows)
{
    return layoutOffsets(rows, {600, heightOfOffsets(rows, {})}, {});
}

} // namespace

TEST(Offsets, StandOnOneScaleAroundZero)
{
    const OffsetsPicture picture = laid(fourPeople());
    const double perMm = picture.plot.width() / (picture.mmAtRight - picture.mmAtLeft);
    ASSERT_EQ(picture.bars.size(), 3U);
    EXPECT_NEAR(picture.bars[0].where.left(), picture.plot.center().x() - 0.002 * perMm, 0.01);
    EXPECT_NEAR(picture.bars[2].where.right(), picture.plot.center().x() + 0.063 * perMm, 0.01);
    EXPECT_TRUE(says(picture, "mm"));
    EXPECT_TRUE(says(picture, "0.00"));
}

TEST(Offsets, GiveAReasonAndNoFigureWithoutAnEstimate)
{
    const OffsetsPicture picture = laid(fourPeople());
    EXPECT_TRUE(says(picture, "too few to tell"));
    EXPECT_EQ(picture.marks.size(), 3U) << "a dot at zero would be an estimate";
    EXPECT_TRUE(picture.inWords.contains("A. Guest: 3 readings: too few to tell."));
}

TEST(Offsets, MarkWhoStandsOutByShapeAndWord)
{
    const OffsetsPicture picture = laid(fourPeople());
    EXPECT_EQ(picture.marks[2].shape, MarkShape::Triangle);
    EXPECT_NE(picture.marks[0].shape, MarkShape::Triangle);
    EXPECT_TRUE(picture.inWords.contains("J. Iver: +0.041 mm"));
    EXPECT_TRUE(picture.inWords.contains("stands out"));
}

TEST(Offsets, KeepBothEndsOfANameThatIsCut)
{
    std::vector<OffsetRow> rows = fourPeople();
    rows[1].name = "A member with a name of very many parts, written out in full, no. 7";
    const OffsetsPicture picture = laid(rows);
    EXPECT_TRUE(std::ranges::any_of(picture.labels, [](const DrawnLabel& label) {
        return label.text.startsWith("A member") && label.text.contains(QChar{0x2026}) &&
               label.text.endsWith("no. 7");
    }));
}

TEST(Offsets, AreReadableWithLongNamesAndLargeText)
{
    std::vector<OffsetRow> rows = fourPeople();
    rows[1].name = "A member with a name of very many parts, written out in full";
    rows[3].instead = "read together with nobody else on any rigging, so there is nothing to compare yet";
    for (const double scale : {1.0, 1.5})
        for (const double width : {320.0, 600.0, 1100.0}) {
            FontSizes fonts;
            fonts.scale = scale;
            const QSizeF size{width, heightOfOffsets(rows, fonts)};
            expectReadable(layoutOffsets(rows, size, fonts), size);
        }
}

TEST(Offsets, OfNobodySaySo)
{
    EXPECT_EQ(layoutOffsets({}, {600, 60}, {}).labels.size(), 1U);
}
