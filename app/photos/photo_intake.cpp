#include "app/photos/photo_intake.h"

#include "app/photos/photo_format.h"

#include <QBuffer>
#include <QColorSpace>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

#include <algorithm>
#include <array>
#include <optional>

namespace rig {

namespace {

// Qt keeps one limit for all readers; here it has to hold the largest picture that is taken, and no more.
class AllocationLimit
{
public:
    AllocationLimit() : m_before{QImageReader::allocationLimit()}
    {
        QImageReader::setAllocationLimit(kMegabytes);
    }
    ~AllocationLimit() { QImageReader::setAllocationLimit(m_before); }
    AllocationLimit(const AllocationLimit&) = delete;
    AllocationLimit& operator=(const AllocationLimit&) = delete;

private:
    static constexpr int kMegabytes = kMostPixelsBrought / 1024 * 4 / 1024 + 1;
    int m_before;
};

std::optional<PhotoRefusal> refusalOf(QSize size)
{
    if (size.isEmpty())
        return PhotoRefusal::Unreadable;
    if (std::max(size.width(), size.height()) > kLongestEdgeBrought)
        return PhotoRefusal::EdgeTooLong;
    if (qint64{size.width()} * size.height() > kMostPixelsBrought)
        return PhotoRefusal::TooManyPixels;
    return std::nullopt;
}

QSize keptSize(QSize brought)
{
    if (std::max(brought.width(), brought.height()) <= kPhotoEdge)
        return brought;
    return brought.scaled(kPhotoEdge, kPhotoEdge, Qt::KeepAspectRatio).expandedTo({1, 1});
}

// A new picture, so that texts, resolution and colour profile of the old one are not written with it.
QImage flattened(QImage picture)
{
    if (picture.colorSpace().isValid() && picture.colorSpace() != QColorSpace{QColorSpace::SRgb})
        picture.convertToColorSpace(QColorSpace::SRgb);
    picture.setDevicePixelRatio(1);
    QImage flat{picture.size(), QImage::Format_RGB32};
    flat.fill(QColor{255, 255, 255});
    QPainter{&flat}.drawImage(0, 0, picture);
    return flat;
}

PhotoTaken keptAs(const QImage& picture)
{
    constexpr std::array kQualities{85, 75, 60, 45, 30, 15};
    const QImage flat = flattened(picture);
    for (const int quality : kQualities) {
        QByteArray bytes;
        QBuffer buffer{&bytes};
        QImageWriter writer{&buffer, "jpeg"};
        writer.setQuality(quality);
        if (!writer.write(flat))
            return PhotoRefusal::Unreadable;
        if (bytes.size() < kMostPhotoBytes)
            return TakenPhoto{flat.size(), {{bytes.toStdString()}}};
    }
    return PhotoRefusal::TooManyBytes;
}

} // namespace

PhotoTaken takenInFile(const QString& path)
{
    if (QFileInfo{path}.size() > kMostBytesBrought)
        return PhotoRefusal::TooManyBytes;
    QFile file{path};
    if (!QFileInfo{path}.isFile() || !file.open(QIODevice::ReadOnly))
        return PhotoRefusal::CannotOpen;
    return takenIn(file.read(kMostBytesBrought + 1));
}

PhotoTaken takenIn(const QByteArray& bytes)
{
    if (bytes.size() > kMostBytesBrought)
        return PhotoRefusal::TooManyBytes;
    const auto format = photoFormatOf(bytes);
    if (const auto* refusal = std::get_if<PhotoRefusal>(&format))
        return *refusal;
    const QByteArray& name = *std::get_if<QByteArray>(&format);
    const AllocationLimit limit;
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader{&buffer, name};
    reader.setAutoDetectImageFormat(false);
    reader.setAutoTransform(true);
    const bool isShort = isCutShort(bytes, name);
    if (const auto refusal = refusalOf(reader.size()))
        return isShort && *refusal == PhotoRefusal::Unreadable ? PhotoRefusal::CutShort : *refusal;
    if (isShort)
        return PhotoRefusal::CutShort;
    const bool several = reader.supportsAnimation() && reader.imageCount() > 1;
    if (keptSize(reader.size()) != reader.size())
        reader.setScaledSize(keptSize(reader.size()));
    const QImage picture = reader.read();
    if (picture.isNull())
        return PhotoRefusal::Unreadable;
    PhotoTaken taken = keptAs(picture);
    if (auto* photo = std::get_if<TakenPhoto>(&taken))
        photo->isFirstOfSeveral = several;
    return taken;
}

PhotoTaken takenIn(const QImage& picture)
{
    if (picture.isNull())
        return PhotoRefusal::NoPicture;
    if (const auto refusal = refusalOf(picture.size()))
        return *refusal;
    return keptAs(picture.scaled(keptSize(picture.size()), Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
}

} // namespace rig
