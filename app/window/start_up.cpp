#include "app/window/start_up.h"

#include "app/theme/theme.h"
#include "app/widgets/heard.h"
#include "app/widgets/indicator_style.h"

#include <QApplication>
#include <QHashFunctions>
#include <QPalette>
#include <QStyle>
#include <QWidget>

#include <algorithm>

namespace rig {

namespace {

constexpr QSize kUsualSize{1280, 800};
constexpr double kSmallestText = 1.0;
constexpr double kLargestText = 2.0;
constexpr double kHighContrast = 15; // the usual desktops have 11 to 14
constexpr double kUsualPoints = 11;  // of a desktop's font
constexpr QSize kFrame{16, 48}; // what a window manager adds at the most; known only when the window is shown

} // namespace

void setUpSurroundings()
{
    QHashSeed::setDeterministicGlobalSeed(); // fonts come into a PDF in the order of a hash
    QCoreApplication::setOrganizationName(QStringLiteral("Rigband"));
    QCoreApplication::setApplicationName(QStringLiteral("Rigband"));
    QCoreApplication::setApplicationVersion(QStringLiteral(RIGBAND_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.rigband.Rigband"));
}

QIcon programIcon()
{
    QIcon icon;
    for (const int size : {16, 24, 32, 48, 64, 128, 256})
        icon.addFile(QStringLiteral(":/icons/rigband-%1.png").arg(size), {size, size});
    return icon;
}

void setUpApplication(QApplication& application)
{
    application.setStyle(new IndicatorStyle); // the application owns it
    hearWhatIsPainted();
    loadFonts();
    application.setFont(fontOf(FontSizes{}.body()));
    QGuiApplication::setWindowIcon(programIcon());
}

double withinSizes(double scale)
{
    return std::clamp(scale, kSmallestText, kLargestText);
}

Scheme schemeFor(const QPalette& desktop, const QPalette& plain)
{
    const QColor ground = desktop.color(QPalette::Window);
    const QColor words = desktop.color(QPalette::WindowText);
    if (ground.lightness() < words.lightness())
        return Scheme::Dark;
    const bool isChosen =
        ground != plain.color(QPalette::Window) || words != plain.color(QPalette::WindowText);
    return isChosen && contrastOf(ground, words) > kHighContrast ? Scheme::Sunlight : Scheme::Light;
}

Look desktopLook()
{
    Look look;
    look.theme = Theme::of(schemeFor(QApplication::palette(), QApplication::style()->standardPalette()));
    look.fonts.scale = withinSizes(QGuiApplication::font().pointSizeF() / kUsualPoints);
    return look;
}

void showWithin(QWidget& window, const QSize& room)
{
    const QSize inside = room - kFrame;
    window.resize(kUsualSize.boundedTo(inside)); // what a maximised one goes back to
    if (inside.width() < kUsualSize.width() || inside.height() < kUsualSize.height())
        window.showMaximized();
    else
        window.show();
}

} // namespace rig
