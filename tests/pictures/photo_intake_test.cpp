#include "app/photos/photo_format.h"
#include "app/photos/photo_intake.h"
#include "app/photos/photo_picture.h"
#include "app/wording/photo_words.h"
#include "tests/support/phone_photo.h"

#include <QColorSpace>
#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <set>

using namespace rig;
using namespace rig::test;

namespace {

QByteArray aPngOf(quint32 width, quint32 height)
{
    QByteArray header{"IHDR"};
    put32(header, width);
    put32(header, height);
    header.append("\x08\x02\x00\x00\x00", 5);
    QByteArray png{"\x89PNG\r\n\x1a\n", 8};
    put32(png, 13);
    png += header;
    quint32 crc = 0xffffffff;
    for (const char one : header) {
        crc ^= static_cast<unsigned char>(one);
        for (int bit = 0; bit < 8; ++bit)
            crc = crc & 1 ? (crc >> 1) ^ 0xedb88320U : crc >> 1;
    }
    put32(png, ~crc);
    png.append("\0\0\0\x08IDAT01234567crc!\0\0\0\0IEND\xae\x42\x60\x82", 32);
    return png;
}

TakenPhoto taken(const PhotoTaken& result)
{
    const auto* photo = std::get_if<TakenPhoto>(&result);
    EXPECT_NE(photo, nullptr);
    return photo ? *photo : TakenPhoto{};
}

testing::AssertionResult isRefused(const PhotoTaken& result, PhotoRefusal refusal)
{
    const auto* refused = std::get_if<PhotoRefusal>(&result);
    if (!refused)
        return testing::AssertionFailure() << "it was taken";
    if (*refused != refusal)
        return testing::AssertionFailure() << PhotoWords::refusal(*refused).toStdString();
    return testing::AssertionSuccess();
}

QByteArray bytesOf(const TakenPhoto& photo)
{
    return QByteArray::fromStdString(photo.image.jpeg.bytes);
}

} // namespace

TEST(PhotoIntake, LeavesThePlaceAndTheDeviceBehindAndTurnsThePictureAsItWasTaken)
{
    const QByteArray brought = withTags(written(halves(80, 40), "jpeg"), tagsOfAPhone(6));
    ASSERT_TRUE(brought.contains("PhoneMaker1"));
    const TakenPhoto photo = taken(takenIn(brought));
    EXPECT_EQ(photo.size, QSize(40, 80));
    const QByteArray kept = bytesOf(photo);
    for (const char* tag : {"Exif", "PhoneMaker1", "\xff\xe1", "\xff\xe2", "\xff\xfe"})
        EXPECT_FALSE(kept.left(kept.indexOf("\xff\xda")).contains(tag)) << tag;
    const QImage picture = pictureOf(photo.image);
    ASSERT_EQ(picture.size(), QSize(40, 80));
    EXPECT_GT(qRed(picture.pixel(20, 10)), 150); // a quarter clockwise: left is above now
    EXPECT_GT(qBlue(picture.pixel(20, 70)), 150);
}

TEST(PhotoIntake, WritesNoTextAndNoColourProfile)
{
    QImage picture = halves(30, 30);
    picture.setText("Comment", "at the hangar of somebody");
    picture.setColorSpace(QColorSpace{QColorSpace::DisplayP3});
    const QByteArray kept = bytesOf(taken(takenIn(written(picture, "png"))));
    EXPECT_FALSE(kept.contains("hangar"));
    EXPECT_FALSE(kept.contains("ICC_PROFILE"));
}

TEST(PhotoIntake, MakesALargePictureSmall)
{
    const TakenPhoto photo = taken(takenIn(written(halves(4000, 2000), "jpeg")));
    EXPECT_EQ(photo.size, QSize(1600, 800));
    EXPECT_EQ(pictureOf(photo.image).size(), QSize(1600, 800));
}

TEST(PhotoIntake, KeepsNoiseBelowTheMostThatAFileTakes)
{
    QImage noise{1600, 1600, QImage::Format_RGB32};
    quint32 state = 1;
    for (int y = 0; y < noise.height(); ++y)
        for (int x = 0; x < noise.width(); ++x)
            noise.setPixel(x, y, (state = state * 1664525U + 1013904223U) >> 8);
    EXPECT_LT(bytesOf(taken(takenIn(noise))).size(), kMostPhotoBytes);
}

TEST(PhotoIntake, TakesOnePixel)
{
    EXPECT_EQ(taken(takenIn(written(halves(1, 1), "png"))).size, QSize(1, 1));
}

TEST(PhotoIntake, TakesAVeryLongAndThinPicture)
{
    EXPECT_EQ(taken(takenIn(written(halves(19'000, 2), "png"))).size, QSize(1600, 1));
}

TEST(PhotoIntake, PutsATransparentPictureOnWhite)
{
    QImage clear{20, 20, QImage::Format_ARGB32};
    clear.fill(0);
    const QImage kept = pictureOf(taken(takenIn(written(clear, "png"))).image);
    EXPECT_GT(qGray(kept.pixel(10, 10)), 250);
}

TEST(PhotoIntake, RefusesAPictureOfTooManyPixelsByItsHeadAlone)
{
    EXPECT_TRUE(isRefused(takenIn(aPngOf(15'000, 15'000)), PhotoRefusal::TooManyPixels));
    EXPECT_TRUE(isRefused(takenIn(aPngOf(60'000, 2)), PhotoRefusal::EdgeTooLong));
    EXPECT_TRUE(isRefused(takenIn(aPngOf(2'000'000'000, 2'000'000'000)), PhotoRefusal::Unreadable));
}

TEST(PhotoIntake, LeavesTheLimitOfTheReadersAsItWas)
{
    const int before = QImageReader::allocationLimit();
    taken(takenIn(written(halves(10, 10), "png")));
    EXPECT_EQ(QImageReader::allocationLimit(), before);
}

TEST(PhotoIntake, RefusesAFileThatWasNotCopiedWhole)
{
    for (const char* format : {"jpeg", "png", "bmp"}) {
        const QByteArray whole = written(halves(300, 300), format);
        EXPECT_TRUE(isRefused(takenIn(whole.left(whole.size() * 2 / 3)), PhotoRefusal::CutShort)) << format;
        EXPECT_TRUE(isRefused(takenIn(whole.left(12)), PhotoRefusal::CutShort)) << format;
    }
}

TEST(PhotoIntake, LooksForTheEndBehindASmallPictureInATag)
{
    const QByteArray small = written(halves(8, 8), "jpeg");
    const QByteArray brought = withTags(written(halves(300, 300), "jpeg"), QByteArray{"Exif\0\0", 6} + small);
    EXPECT_EQ(taken(takenIn(brought)).size, QSize(300, 300));
    EXPECT_TRUE(isRefused(takenIn(brought.left(small.size() + 200)), PhotoRefusal::CutShort));
}

TEST(PhotoIntake, RefusesWhatIsNoPictureOrNoneThatItReads)
{
    EXPECT_TRUE(isRefused(takenIn(QByteArray{"Left aileron 0.45"}), PhotoRefusal::NoPicture));
    EXPECT_TRUE(isRefused(takenIn(QByteArray{}), PhotoRefusal::NoPicture));
    EXPECT_TRUE(isRefused(takenIn(QByteArray{"\0\0\0\x18"
                                             "ftypheic\0\0\0\0",
                                             16}),
                          PhotoRefusal::PhoneFormat));
    EXPECT_TRUE(isRefused(takenIn(QByteArray{"RIFF\0\0\0\0WEBPVP8 ", 16}), PhotoRefusal::OtherFormat));
    EXPECT_TRUE(isRefused(takenIn(QByteArray{"<svg xmlns='a'/>"}), PhotoRefusal::OtherFormat));
    EXPECT_TRUE(isRefused(takenIn(QImage{}), PhotoRefusal::NoPicture));
}

TEST(PhotoIntake, RefusesAFileThatIsTooLargeOrNotThere)
{
    const QTemporaryDir folder;
    EXPECT_TRUE(isRefused(takenInFile(folder.filePath("none.jpg")), PhotoRefusal::CannotOpen));
    EXPECT_TRUE(isRefused(takenInFile(folder.path()), PhotoRefusal::CannotOpen));
    QFile large{folder.filePath("large.jpg")};
    ASSERT_TRUE(large.open(QIODevice::WriteOnly));
    large.resize(kMostBytesBrought + 1);
    EXPECT_TRUE(isRefused(takenInFile(large.fileName()), PhotoRefusal::TooManyBytes));
}

TEST(PhotoIntake, TakesAFileFromTheDisk)
{
    const QTemporaryDir folder;
    ASSERT_TRUE(halves(50, 20).save(folder.filePath("one.png")));
    EXPECT_EQ(taken(takenInFile(folder.filePath("one.png"))).size, QSize(50, 20));
}

TEST(PhotoIntake, ShowsNothingOfAPictureThatAFileHoldsAndNobodyCanDecode)
{
    EXPECT_TRUE(pictureOf({{"no picture"}}).isNull());
    EXPECT_TRUE(pictureOf({{written(halves(1700, 10), "jpeg").toStdString()}}).isNull());
}

TEST(PhotoWords, SaySomethingElseOfEachRefusal)
{
    std::set<QString> said;
    for (int i = 0; i <= static_cast<int>(PhotoRefusal::Unreadable); ++i)
        said.insert(PhotoWords::refusal(static_cast<PhotoRefusal>(i)));
    EXPECT_EQ(said.size(), static_cast<std::size_t>(PhotoRefusal::Unreadable) + 1);
}
