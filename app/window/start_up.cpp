#include "app/window/start_up.h"

#include "app/theme/theme.h"
#include "app/wording/english_plurals.h"

#include <QApplication>
#include <QHashFunctions>
#include <QStyleFactory>

namespace rig {

void setUpSurroundings()
{
    QHashSeed::setDeterministicGlobalSeed(); // fonts come into a PDF in the order of a hash
    QCoreApplication::setOrganizationName(QStringLiteral("Rigband"));
    QCoreApplication::setApplicationName(QStringLiteral("Rigband"));
    QCoreApplication::setApplicationVersion(QStringLiteral(RIGBAND_VERSION));
}

void setUpApplication(QApplication& application)
{
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QCoreApplication::installTranslator(new EnglishPlurals{&application});
    loadFonts();
    application.setFont(fontOf(FontSizes{}.body()));
}

} // namespace rig
