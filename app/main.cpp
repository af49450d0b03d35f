#include "app/pages/prompts.h"
#include "app/theme/theme.h"
#include "app/window/main_window.h"
#include "app/window/start_up.h"
#include "app/wording/window_words.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QScreen>

#include <algorithm>

int main(int argc, char* argv[])
{
    rig::setUpSurroundings();
    QApplication application{argc, argv};
    rig::setUpApplication(application);

    QCommandLineParser arguments;
    arguments.setApplicationDescription(rig::WindowWords::commandLine());
    arguments.addHelpOption();
    arguments.addVersionOption();
    arguments.addPositionalArgument("FILE", rig::WindowWords::commandFile(), "[FILE]");
    const QCommandLineOption demo{"demo", rig::WindowWords::commandDemo()};
    const QCommandLineOption dark{"dark", rig::WindowWords::commandDark()};
    const QCommandLineOption text{"text", rig::WindowWords::commandText(), "PERCENT", "100"};
    arguments.addOptions({demo, dark, text});
    arguments.process(application);

    const rig::SystemClock clock;
    rig::WindowPrompts prompts;
    rig::MainWindow window{clock, prompts};
    rig::Look look;
    if (arguments.isSet(dark))
        look.theme = rig::Theme::dark();
    look.fonts.scale = std::clamp(arguments.value(text).toDouble() / 100, 1.0, 2.0);
    window.setLook(look);
    if (arguments.isSet(demo))
        window.openDemo();
    else if (!arguments.positionalArguments().isEmpty())
        window.openPath(arguments.positionalArguments().constFirst(), rig::OpenAs::Existing);
    rig::showWithin(window, window.screen()->availableSize());
    return QApplication::exec();
}
