#include "app/shots/palette.h"

#include <QHash>

#include <algorithm>
#include <limits>
#include <vector>

namespace rig {

namespace {

constexpr qsizetype kColours = 256;

QHash<QRgb, int> countsOf(const QImage& picture)
{
    QHash<QRgb, int> counts;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            ++counts[picture.pixel(x, y)];
    return counts;
}

int distance(QRgb one, QRgb other)
{
    const int red = qRed(one) - qRed(other);
    const int green = qGreen(one) - qGreen(other);
    const int blue = qBlue(one) - qBlue(other);
    return red * red + green * green + blue * blue;
}

// One after the other, each time the colour that is shown worst so far, over all its places: a state told in
// few letters of its own colour keeps that colour. The same for the same picture: a hash has no order of its
// own.
QList<QRgb> chosenColours(const QHash<QRgb, int>& counts)
{
    struct Colour
    {
        QRgb rgb;
        double count;
        int away; // from the nearest chosen one
    };
    std::vector<Colour> all;
    for (auto one = counts.begin(); one != counts.end(); ++one)
        all.push_back({one.key(), double(one.value()), std::numeric_limits<int>::max()});
    std::ranges::sort(all, {}, &Colour::rgb);
    QList<QRgb> chosen;
    while (chosen.size() < kColours) {
        const auto worst =
            std::ranges::max_element(all, {}, [](const Colour& one) { return one.count * one.away; });
        if (worst->away == 0)
            break;
        chosen.push_back(worst->rgb);
        for (Colour& one : all)
            one.away = std::min(one.away, distance(one.rgb, chosen.back()));
    }
    return chosen;
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
    const QList<QRgb> colours = chosenColours(counts);
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
