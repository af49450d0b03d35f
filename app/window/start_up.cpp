#include "app/window/start_up.h"

#include "app/theme/theme.h"
#include "app/widgets/indicator_style.h"
#include "app/wording/english_plurals.h"

#include <QApplication>
#include <QHashFunctions>
#include <QWidget>

namespace rig {

namespace {

constexpr QSize kUsualSize{1280, 800};
constexpr QSize kFrame{16, 48}; // what a window manager adds at the most; known only when the window is shown

} // namespace

void setUpSurroundings()
{
    QHashSeed::setDeterministicGlobalSeed(); // fonts come into a PDF in the order of a hash
    QCoreApplication::setOrganizationName(QStringLiteral("Rigband"));
    QCoreApplication::setApplicationName(QStringLiteral("Rigband"));
    QCoreApplication::setApplicationVersion(QStringLiteral(RIGBAND_VERSION));
}

void setUpApplication(QApplication& application)
{
    application.setStyle(new IndicatorStyle); // the application owns it
    QCoreApplication::installTranslator(new EnglishPlurals{&application});
    loadFonts();
    application.setFont(fontOf(FontSizes{}.body()));
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
