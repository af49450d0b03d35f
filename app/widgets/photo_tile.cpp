#include "app/widgets/photo_tile.h"

#include "app/widgets/parts.h"
#include "app/widgets/plain_tip.h"

#include <QVBoxLayout>

#include <cmath>

namespace rig {

PhotoTile::PhotoTile(const char* objectName, QWidget* parent) : Pressable{parent}
{
    setObjectName(QLatin1String{objectName});
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(4, 4, 4, 4);
    column->setSpacing(2);
    m_shown = new QLabel;
    m_small = labelOf({}, "soft");
    m_small->setWordWrap(false);
    column->addWidget(m_shown);
    column->addWidget(m_small);
}

void PhotoTile::setPhoto(const QImage& picture, const QString& small, const QString& whole)
{
    const bool isOther = picture.cacheKey() != m_picture.cacheKey();
    m_picture = picture;
    sayIn(m_small, small);
    setAccessibleName(whole);
    m_shown->setAccessibleName(whole);
    m_shown->setAccessibleDescription(whole);
    setToolTip(plainTip(whole));
    if (isOther)
        scale();
}

void PhotoTile::setWraps()
{
    m_small->setWordWrap(true);
    scale();
}

void PhotoTile::setHeight(int pixels)
{
    if (pixels == m_height)
        return;
    m_height = pixels;
    scale();
}

// As sharp as the screen is.
void PhotoTile::scale()
{
    if (m_picture.isNull())
        return m_shown->clear();
    constexpr int kWidest = 2; // of the height, so that a long one leaves room to others
    const double ratio = devicePixelRatioF();
    const QSize room{static_cast<int>(std::lround(kWidest * m_height * ratio)),
                     static_cast<int>(std::lround(m_height * ratio))};
    QPixmap pixmap =
        QPixmap::fromImage(m_picture.scaled(room, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    pixmap.setDevicePixelRatio(ratio);
    m_shown->setPixmap(pixmap);
    if (m_small->wordWrap())
        m_small->setFixedWidth(static_cast<int>(std::lround(pixmap.width() / ratio)));
    updateGeometry();
}

} // namespace rig
