#pragma once

#include "app/pictures/drawing.h"

#include <QFileInfo>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>

namespace rig::test {

inline QImage painted(const Drawing& drawing, QSize size, const Theme& theme)
{
    QImage image{size, QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    paint(painter, drawing, theme);
    return image;
}

inline int distance(QRgb a, QRgb b)
{
    return std::max(
        {std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)), std::abs(qBlue(a) - qBlue(b))});
}

// Edges of letters may differ a little with another version of the font engine; shapes and places may not.
inline void expectLikeGolden(const QImage& image, const QString& name)
{
    const QString path = QStringLiteral(RIG_TEST_DATA "/golden/%1.png").arg(name);
    const QString beside = name + QStringLiteral(".failed.png");
    const QImage golden = QImage{path}.convertToFormat(QImage::Format_RGB32);
    const bool sameSize = golden.size() == image.size();
    int different = sameSize ? 0 : image.width() * image.height();
    for (int y = 0; sameSize && y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            different += distance(image.pixel(x, y), golden.pixel(x, y)) > 48 ? 1 : 0;
    const int allowed = image.width() * image.height() / 1000;
    if (different > allowed)
        image.save(beside);
    EXPECT_LE(different, allowed) << "pixels differ; what was drawn now: "
                                  << QFileInfo{beside}.absoluteFilePath().toStdString();
}

} // namespace rig::test
