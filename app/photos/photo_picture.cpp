#include "app/photos/photo_picture.h"

#include "app/photos/photo_intake.h"

#include <QBuffer>
#include <QImageReader>

namespace rig {

QImage pictureOf(const PhotoImage& image)
{
    QBuffer buffer;
    buffer.setData(QByteArray::fromStdString(image.jpeg.bytes));
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader{&buffer, "jpeg"};
    reader.setAutoDetectImageFormat(false);
    const QSize size = reader.size();
    if (size.isEmpty() || size.width() > kPhotoEdge || size.height() > kPhotoEdge)
        return {};
    return reader.read();
}

} // namespace rig
