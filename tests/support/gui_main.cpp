// The main() of every test program with pictures or windows: bundled fonts, one scale, no surroundings of the
// machine.

#include "app/theme/theme.h"
#include "app/wording/language.h"

#include <QApplication>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QStyleFactory>
#include <QTemporaryDir>

#include <gtest/gtest.h>

int main(int argc, char* argv[])
{
    qputenv("QT_SCALE_FACTOR", "1");
    qputenv("QT_FONT_DPI", "96");
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    const QTemporaryDir settings; // of this process alone: another one may run the same test beside it
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QCoreApplication::setOrganizationName("RigbandTests");
    QCoreApplication::setApplicationName("RigbandTests");
    QApplication application{argc, argv};
    const rig::Speech speech{"en", QLocale{QLocale::English, QLocale::UnitedKingdom}};
    QApplication::setStyle(QStyleFactory::create("Fusion"));
    QApplication::setCursorFlashTime(0);
    if (!rig::loadFonts())
        return 1;
    application.setFont(rig::fontOf(14));
    return RUN_ALL_TESTS();
}
