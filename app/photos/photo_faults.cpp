#include "app/photos/photo_faults.h"

#include "app/photos/photo_format.h"
#include "app/photos/photo_picture.h"

#include <QByteArray>

#include <string_view>

namespace rig {

namespace {

// ITU T.81, table B.1: the second bytes of markers.
constexpr unsigned kEnd = 0xd9;
constexpr unsigned kScan = 0xda;
constexpr unsigned kFirstApplication = 0xe0; // JFIF
constexpr unsigned kLastApplication = 0xef;
constexpr unsigned kColours = 0xee; // APP14, which says how its colours are to be read
constexpr unsigned kComment = 0xfe;

// Walks from segment to segment; an offset of npos ends it.
class Segments
{
public:
    explicit Segments(std::string_view bytes) : m_bytes{bytes} {}

    bool isOnlyAPicture() const
    {
        std::size_t at = 2; // behind the marker that begins it
        while (at + 4 <= m_bytes.size() && byte(at) == 0xff) {
            const unsigned marker = byte(at + 1);
            const bool isOther =
                marker > kFirstApplication && marker <= kLastApplication && marker != kColours;
            if (isOther || marker == kComment)
                return false;
            at += 2 + (byte(at + 2) << 8 | byte(at + 3));
            if (marker == kScan)
                at = behindScan(at);
            if (at + 2 == m_bytes.size() && byte(at) == 0xff && byte(at + 1) == kEnd)
                return true;
        }
        return false; // something stands behind the end, or there is none
    }

private:
    unsigned byte(std::size_t at) const { return static_cast<unsigned char>(m_bytes[at]); }

    // The next marker that is neither a byte of the picture nor a restart.
    std::size_t behindScan(std::size_t at) const
    {
        for (; at + 1 < m_bytes.size(); ++at)
            if (byte(at) == 0xff && byte(at + 1) != 0 && (byte(at + 1) & 0xf8) != 0xd0)
                break;
        return at;
    }

    std::string_view m_bytes;
};

} // namespace

std::optional<PhotoFault> faultOf(const Photo& photo, const PhotoImage& image)
{
    const std::string& bytes = image.jpeg.bytes;
    const QImage picture = bytes.starts_with("\xff\xd8\xff") ? pictureOf(image) : QImage{};
    if (picture.isNull() || isCutShort(QByteArray::fromStdString(bytes), "jpeg"))
        return PhotoFault::NoPicture;
    if (picture.width() != photo.width || picture.height() != photo.height)
        return PhotoFault::OtherSize;
    if (!Segments{bytes}.isOnlyAPicture())
        return PhotoFault::MoreThanPicture;
    return std::nullopt;
}

} // namespace rig
