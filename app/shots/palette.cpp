#include "app/shots/palette.h"

#include <QHash>

#include <algorithm>
#include <functional>
#include <vector>

namespace rig {

namespace {

constexpr std::size_t kColours = 256;

QHash<QRgb, int> countsOf(const QImage& picture)
{
    QHash<QRgb, int> counts;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            ++counts[picture.pixel(x, y)];
    return counts;
}

// The same for the same picture: a hash has no order of its own.
QList<QRgb> mostFrequent(const QHash<QRgb, int>& counts)
{
    std::vector<std::pair<int, QRgb>> all;
    for (auto one = counts.begin(); one != counts.end(); ++one)
        all.emplace_back(one.value(), one.key());
    std::ranges::sort(all, std::greater{});
    QList<QRgb> colours;
    for (std::size_t i = 0; i < std::min(all.size(), kColours); ++i)
        colours.push_back(all[i].second);
    return colours;
}

int distance(QRgb one, QRgb other)
{
    const int red = qRed(one) - qRed(other);
    const int green = qGreen(one) - qGreen(other);
    const int blue = qBlue(one) - qBlue(other);
    return red * red + green * green + blue * blue;
}

uint nearest(const QList<QRgb>& colours, QRgb wanted)
{
    const auto found =
        std::ranges::min_element(colours, {}, [wanted](QRgb one) { return distance(one, wanted); });
    return static_cast<uint>(found - colours.begin());
}

} // namespace

QImage inFewColours(const QImage& picture)
{
    const QHash<QRgb, int> counts = countsOf(picture);
    const QList<QRgb> colours = mostFrequent(counts);
    QHash<QRgb, uint> places;
    for (auto one = counts.begin(); one != counts.end(); ++one)
        places.insert(one.key(), nearest(colours, one.key()));
    QImage few{picture.size(), QImage::Format_Indexed8};
    few.setColorTable(colours);
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            few.setPixel(x, y, places.value(picture.pixel(x, y)));
    return few;
}

} // namespace rig
