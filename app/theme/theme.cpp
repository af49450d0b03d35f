#include "app/theme/theme.h"

#include <QFontDatabase>
#include <QPaintEngine>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr std::size_t kRoles = static_cast<std::size_t>(Role::Last_);

// In the order of Role.
constexpr std::array<QRgb, kRoles> kLight = {
    0xfff6f4ee, 0xffffffff, 0xffd9d6cc, 0xff8c877b, 0xff1d2a30, 0xff59666c, 0xff1f4e5f,
    0xffffffff, 0xffc7dbe2, 0xff2d6579, 0xff1f4e5f, 0xffffffff, 0xffe8f0f3, 0xff2a7861,
    0xffe8f2ee, 0xffa96b12, 0xff855208, 0xfffaf3e6, 0xffab3428, 0xfff9ebe8, 0xff5d686d,
    0xfff0efea, 0xffcae3d9, 0xfff1dcb4, 0xff2b7a63, 0xffefede4, 0xff8c7a5c, 0xffe9e7e0,
};
constexpr std::array<QRgb, kRoles> kDark = {
    0xff14191c, 0xff1d2428, 0xff3a444a, 0xff727e84, 0xffe9ecea, 0xffa9b4b8, 0xff123440,
    0xffffffff, 0xffb3cbd3, 0xff29596a, 0xff7fb9cc, 0xff0e1c22, 0xff22343c, 0xff6cc3a6,
    0xff1c3029, 0xffe3a541, 0xfff0bd68, 0xff33291a, 0xfff0897c, 0xff3a2320, 0xffa9b4b8,
    0xff2a3236, 0xff2f5a4b, 0xff5f4a20, 0xff6cc3a6, 0xff2a3236, 0xffb0a080, 0xff2d363b,
};
constexpr std::array<QRgb, kRoles> kOutdoor = {
    0xffffffff, 0xffffffff, 0xff6b675e, 0xff44423c, 0xff000000, 0xff2b3235, 0xff06242e,
    0xffffffff, 0xffe6f1f5, 0xff1a4656, 0xff0a3a4b, 0xffffffff, 0xffe1edf2, 0xff0c4a37,
    0xffe8f4ef, 0xff6e4200, 0xff573200, 0xfffbf2e0, 0xff7d130a, 0xfffbe9e6, 0xff343d41,
    0xfff1f0ea, 0xffd6ebe1, 0xfff6e5c3, 0xff0c4a37, 0xfff3f1ea, 0xff5c4a2c, 0xffc9c6bb,
};

// 0 is black, 1 is white.
double luminanceOf(const QColor& color)
{
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

} // namespace

Theme::Theme(Scheme scheme, const std::array<QRgb, kRoles>& values) : m_scheme{scheme}
{
    for (std::size_t i = 0; i < kRoles; ++i)
        m_colors[i] = QColor::fromRgb(values[i]);
}

Theme Theme::light()
{
    return {Scheme::Light, kLight};
}

Theme Theme::dark()
{
    return {Scheme::Dark, kDark};
}

Theme Theme::outdoor()
{
    return {Scheme::Sunlight, kOutdoor};
}

Theme Theme::of(Scheme scheme)
{
    switch (scheme) {
    case Scheme::Dark:
        return dark();
    case Scheme::Sunlight:
        return outdoor();
    case Scheme::Light:
        break;
    }
    return light();
}

double contrastOf(const QColor& one, const QColor& other)
{
    const double a = luminanceOf(one);
    const double b = luminanceOf(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QFont fontOf(double pixels, Weight weight)
{
    QFont font{QStringLiteral("Inter")};
    font.setPixelSize(static_cast<int>(std::lround(pixels)));
    switch (weight) {
    case Weight::Regular:
        font.setWeight(QFont::Normal);
        break;
    case Weight::Medium:
        font.setWeight(QFont::Medium);
        break;
    case Weight::SemiBold:
        font.setWeight(QFont::DemiBold);
        break;
    case Weight::Bold:
        font.setWeight(QFont::Bold);
        break;
    }
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::StyleStrategy(QFont::PreferAntialias | QFont::NoSubpixelAntialias));
    return font;
}

QFont plainFontOf(double pixels, Weight weight)
{
    QFont font = fontOf(pixels, weight);
    font.setStyleStrategy(
        static_cast<QFont::StyleStrategy>(int{font.styleStrategy()} | int{QFont::PreferNoShaping}));
    return font;
}

QFont fontOn(const QPainter& painter, double pixels, Weight weight)
{
    const QPaintEngine* engine = painter.paintEngine();
    const bool isPdf = engine && engine->type() == QPaintEngine::Pdf;
    return isPdf ? plainFontOf(pixels, weight) : fontOf(pixels, weight);
}

bool loadFonts()
{
    bool all = true;
    for (const char* name : {"Regular", "Medium", "SemiBold", "Bold"}) {
        const QString path = QStringLiteral(":/fonts/Inter-%1.otf").arg(QLatin1String(name));
        all = QFontDatabase::addApplicationFont(path) >= 0 && all;
    }
    return all;
}

} // namespace rig
