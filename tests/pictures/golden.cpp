#include "tests/pictures/golden.h"

#include <QFileInfo>
#include <QPainter>

#include <algorithm>
#include <array>
#include <gtest/gtest.h>
#include <vector>

namespace rig::test {

namespace {

constexpr int kTolerance = 24;   // of 255, beyond what the other picture has within one pixel
constexpr int kSpeckOfNoise = 4; // pixels side by side; the smallest mark of a picture has ten times as many

using Channels = std::array<int, 3>;

Channels channelsOf(QRgb pixel)
{
    return {qRed(pixel), qGreen(pixel), qBlue(pixel)};
}

// Whether the pixel lies, in every channel, between the darkest and the lightest that `other` has around it.
bool isFoundAt(int x, int y, QRgb pixel, const QImage& other)
{
    Channels least{255, 255, 255};
    Channels most{0, 0, 0};
    for (int ny = std::max(0, y - 1); ny <= std::min(other.height() - 1, y + 1); ++ny)
        for (int nx = std::max(0, x - 1); nx <= std::min(other.width() - 1, x + 1); ++nx) {
            const Channels near = channelsOf(other.pixel(nx, ny));
            for (std::size_t i = 0; i < near.size(); ++i) {
                least[i] = std::min(least[i], near[i]);
                most[i] = std::max(most[i], near[i]);
            }
        }
    const Channels own = channelsOf(pixel);
    for (std::size_t i = 0; i < own.size(); ++i)
        if (own[i] < least[i] - kTolerance || own[i] > most[i] + kTolerance)
            return false;
    return true;
}

// Which pixels of one have nothing like them in the other, row by row.
std::vector<bool> differing(const QImage& one, const QImage& other)
{
    std::vector<bool> found(static_cast<std::size_t>(one.width()) * static_cast<std::size_t>(one.height()));
    auto into = found.begin();
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x, ++into)
            *into = one.pixel(x, y) != other.pixel(x, y) &&
                    (!isFoundAt(x, y, one.pixel(x, y), other) || !isFoundAt(x, y, other.pixel(x, y), one));
    return found;
}

// Takes the spot around (x, y) out of `found`: pixels that touch, across a corner too.
Unlike takeSpot(std::vector<bool>& found, QSize size, int x, int y)
{
    Unlike spot;
    std::vector<QPoint> waiting{{x, y}};
    const auto take = [&](int at, int row) {
        if (at < 0 || row < 0 || at >= size.width() || row >= size.height())
            return false;
        const auto index = static_cast<std::size_t>(row) * static_cast<std::size_t>(size.width()) +
                           static_cast<std::size_t>(at);
        const bool there = found[index];
        found[index] = false;
        return there;
    };
    take(x, y);
    while (!waiting.empty()) {
        const QPoint here = waiting.back();
        waiting.pop_back();
        ++spot.pixels;
        spot.where |= QRect{here, QSize{1, 1}};
        for (int dy = -1; dy <= 1; ++dy)
            for (int dx = -1; dx <= 1; ++dx)
                if (take(here.x() + dx, here.y() + dy))
                    waiting.push_back(here + QPoint{dx, dy});
    }
    return spot;
}

} // namespace

QImage painted(const Drawing& drawing, QSize size, const Theme& theme)
{
    QImage image{size, QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    paint(painter, drawing, theme);
    return image;
}

std::optional<Unlike> unlike(const QImage& one, const QImage& other)
{
    if (one.size() != other.size())
        return Unlike{one.rect() | other.rect(), one.width() * one.height()};
    std::vector<bool> found = differing(one, other);
    Unlike largest;
    std::size_t index = 0;
    for (int y = 0; y < one.height(); ++y)
        for (int x = 0; x < one.width(); ++x, ++index)
            if (found[index]) {
                const Unlike spot = takeSpot(found, one.size(), x, y);
                if (spot.pixels > largest.pixels)
                    largest = spot;
            }
    return largest.pixels > kSpeckOfNoise ? std::optional{largest} : std::nullopt;
}

void expectLikeGolden(const QImage& image, const QString& name)
{
    const QString path = QStringLiteral(RIG_TEST_DATA "/golden/%1.png").arg(name);
    const QString beside = name + QStringLiteral(".failed.png");
    const QImage golden = QImage{path}.convertToFormat(QImage::Format_RGB32);
    ASSERT_FALSE(golden.isNull()) << "no picture " << path.toStdString();
    const auto spot = unlike(image, golden);
    if (!spot)
        return;
    image.save(beside);
    const QRect& where = spot->where;
    ADD_FAILURE() << spot->pixels << " pixels side by side are unlike, at " << where.x() << ", " << where.y()
                  << ", " << where.width() << " wide and " << where.height()
                  << " high; what was drawn now: " << QFileInfo{beside}.absoluteFilePath().toStdString();
}

} // namespace rig::test
