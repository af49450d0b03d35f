#include "app/pictures/drawn_photo.h"

#include <QByteArray>
#include <QImage>

#include <gtest/gtest.h>
#include <set>

using namespace rig;

namespace {

Coupling hatchCoupling()
{
    Coupling coupling;
    coupling.circuit = Circuit::Aileron;
    coupling.side = Side::Left;
    coupling.layout = Layout::C;
    coupling.seenFrom = AccessSide::Above;
    return coupling;
}

} // namespace

TEST(DrawnPhoto, IsASmallJpegOfTheSizeItSays)
{
    for (const PhotoOf of : {PhotoOf::Locked, PhotoOf::PartSeated, PhotoOf::Empty, PhotoOf::Access}) {
        const DrawnPhoto drawn = drawnPhoto(hatchCoupling(), of);
        const auto bytes = QByteArray::fromStdString(drawn.image.jpeg.bytes);
        EXPECT_TRUE(bytes.startsWith("\xff\xd8\xff")) << "a JPEG";
        EXPECT_LT(bytes.size(), 50'000);
        const QImage image = QImage::fromData(bytes, "jpg");
        EXPECT_EQ(image.size(), QSize(drawn.width, drawn.height));
        EXPECT_LE(std::max(drawn.width, drawn.height), 1600);
    }
}

TEST(DrawnPhoto, ShowsEachStateAnotherWay)
{
    std::set<std::string> pictures;
    for (const PhotoOf of : {PhotoOf::Locked, PhotoOf::PartSeated, PhotoOf::Empty, PhotoOf::Access})
        pictures.insert(drawnPhoto(hatchCoupling(), of).image.jpeg.bytes);
    EXPECT_EQ(pictures.size(), 4U);
    Coupling right = hatchCoupling();
    right.side = Side::Right;
    EXPECT_NE(drawnPhoto(right, PhotoOf::Access).image.jpeg.bytes,
              drawnPhoto(hatchCoupling(), PhotoOf::Access).image.jpeg.bytes);
}
