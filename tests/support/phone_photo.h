#pragma once

#include <QBuffer>
#include <QByteArray>
#include <QImage>

namespace rig::test {

inline void put16(QByteArray& bytes, quint16 value)
{
    bytes.append(static_cast<char>(value >> 8)).append(static_cast<char>(value & 0xff));
}

inline void put32(QByteArray& bytes, quint32 value)
{
    put16(bytes, static_cast<quint16>(value >> 16));
    put16(bytes, static_cast<quint16>(value & 0xffff));
}

inline void putEntry(QByteArray& bytes, quint16 tag, quint16 type, quint32 count, quint32 value)
{
    put16(bytes, tag);
    put16(bytes, type);
    put32(bytes, count);
    put32(bytes, value);
}

// As a phone writes it: turned by a quarter, taken by a device, at a place. TIFF 6.0, big endian.
inline QByteArray tagsOfAPhone(quint16 orientation)
{
    constexpr quint32 kFirst = 8;
    constexpr quint32 kMake = kFirst + 2 + 3 * 12 + 4;
    constexpr quint32 kGps = kMake + 12;
    constexpr quint32 kLatitude = kGps + 2 + 2 * 12 + 4;
    QByteArray tiff{"MM\0*", 4};
    put32(tiff, kFirst);
    put16(tiff, 3);
    putEntry(tiff, 0x010f, 2, 12, kMake);
    putEntry(tiff, 0x0112, 3, 1, quint32{orientation} << 16);
    putEntry(tiff, 0x8825, 4, 1, kGps);
    put32(tiff, 0);
    tiff.append("PhoneMaker1\0", 12);
    put16(tiff, 2);
    putEntry(tiff, 1, 2, 2, quint32{'N'} << 24);
    putEntry(tiff, 2, 5, 3, kLatitude);
    put32(tiff, 0);
    for (const quint32 part : {47U, 1U, 11U, 1U, 2233U, 100U})
        put32(tiff, part);
    return QByteArray{"Exif\0\0", 6} + tiff;
}

inline QByteArray withTags(const QByteArray& jpeg, const QByteArray& tags)
{
    QByteArray segment{"\xff\xe1", 2};
    put16(segment, static_cast<quint16>(tags.size() + 2));
    return jpeg.left(2) + segment + tags + jpeg.mid(2);
}

// Red at the left, blue at the right.
inline QImage halves(int width, int height)
{
    QImage picture{width, height, QImage::Format_RGB32};
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            picture.setPixel(x, y, x < width / 2 ? qRgb(220, 20, 20) : qRgb(20, 20, 220));
    return picture;
}

inline QByteArray written(const QImage& picture, const char* format)
{
    QByteArray bytes;
    QBuffer buffer{&bytes};
    picture.save(&buffer, format, 90);
    return bytes;
}

} // namespace rig::test
