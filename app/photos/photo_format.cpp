#include "app/photos/photo_format.h"

#include <QtEndian>

#include <algorithm>
#include <array>

namespace rig {

namespace {

struct Beginning
{
    const char* bytes;
    const char* format;
};

constexpr std::array kRead{Beginning{"\xff\xd8\xff", "jpeg"}, Beginning{"\x89PNG\r\n\x1a\n", "png"},
                           Beginning{"GIF87a", "gif"}, Beginning{"GIF89a", "gif"}, Beginning{"BM", "bmp"}};

constexpr std::array kOther{"II*", "<svg", "<?xml", "P5", "P6", "8BPS"};

bool isPhoneFormat(const QByteArray& bytes)
{
    constexpr std::array kBrands{"heic", "heix", "hevc", "heim", "heis", "mif1", "msf1", "avif"};
    const QByteArray brand = bytes.mid(8, 4);
    return bytes.mid(4, 4) == "ftyp" &&
           std::ranges::any_of(kBrands, [&brand](const char* one) { return brand == one; });
}

bool isOtherFormat(const QByteArray& bytes)
{
    return (bytes.startsWith("RIFF") && bytes.mid(8, 4) == "WEBP") ||
           std::ranges::any_of(kOther, [&bytes](const char* one) { return bytes.startsWith(one); });
}

unsigned byteAt(const QByteArray& bytes, qsizetype at)
{
    return static_cast<unsigned char>(bytes[at]);
}

// The next marker that stands in the stream itself, past 0xff00 and the restarts of a scan; -1: none.
qsizetype nextMarker(const QByteArray& bytes, qsizetype from)
{
    for (qsizetype at = from; at + 1 < bytes.size(); ++at) {
        const unsigned marker = byteAt(bytes, at + 1);
        const bool isRestart = marker >= 0xd0 && marker <= 0xd7;
        if (byteAt(bytes, at) == 0xff && marker != 0 && marker != 0xff && !isRestart)
            return at;
    }
    return -1;
}

// From segment to segment, so that the end of a small picture inside a tag is not taken for the end.
bool isJpegCutShort(const QByteArray& bytes)
{
    constexpr unsigned kEndOfImage = 0xd9;
    qsizetype at = 2;
    while ((at = nextMarker(bytes, at)) >= 0) {
        if (byteAt(bytes, at + 1) == kEndOfImage)
            return false;
        if (at + 4 > bytes.size())
            return true;
        at += 2 + std::max<qsizetype>(2, qFromBigEndian<quint16>(bytes.constData() + at + 2));
    }
    return true;
}

bool isPngCutShort(const QByteArray& bytes)
{
    return bytes.lastIndexOf("IEND") < 0;
}

bool isBmpCutShort(const QByteArray& bytes)
{
    constexpr qsizetype kSizeAt = 2;
    if (bytes.size() < kSizeAt + 4)
        return true;
    return qFromLittleEndian<quint32>(bytes.constData() + kSizeAt) > static_cast<quint64>(bytes.size());
}

} // namespace

std::variant<QByteArray, PhotoRefusal> photoFormatOf(const QByteArray& bytes)
{
    for (const auto& [beginning, format] : kRead)
        if (bytes.startsWith(beginning))
            return QByteArray{format};
    if (isPhoneFormat(bytes))
        return PhotoRefusal::PhoneFormat;
    return isOtherFormat(bytes) ? PhotoRefusal::OtherFormat : PhotoRefusal::NoPicture;
}

bool isCutShort(const QByteArray& bytes, const QByteArray& format)
{
    if (format == "jpeg")
        return isJpegCutShort(bytes);
    if (format == "png")
        return isPngCutShort(bytes);
    return format == "bmp" && isBmpCutShort(bytes);
}

} // namespace rig
