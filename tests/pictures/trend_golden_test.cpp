#include "app/pictures/trend.h"
#include "tests/pictures/trend_scene.h"

#include <QFileInfo>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

QImage painted(const TrendPicture& picture, QSize size, const Theme& theme)
{
    QImage image{size, QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    paint(painter, picture, theme);
    return image;
}

int distance(QRgb a, QRgb b)
{
    return std::max(
        {std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)), std::abs(qBlue(a) - qBlue(b))});
}

// Edges of letters may differ a little with another version of the font engine; shapes and places may not.
void expectLikeGolden(const QImage& image, const QString& name)
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

} // namespace

TEST(TrendGolden, LooksAsAgreedByRiggingInLight)
{
    const QSize size{900, 480};
    const TrendPicture picture = layoutTrend(leftFlap(), {TrendAxis::ByRigging, 0, 0}, size, {});
    expectLikeGolden(painted(picture, size, Theme::light()), "trend-by-rigging-light");
}

TEST(TrendGolden, LooksAsAgreedByDateInDark)
{
    const QSize size{900, 480};
    const TrendPicture picture = layoutTrend(leftFlap(), {TrendAxis::ByDate, 0, 0}, size, {});
    expectLikeGolden(painted(picture, size, Theme::dark()), "trend-by-date-dark");
}
