#include "app/pages/prompts.h"
#include "app/theme/theme.h"
#include "app/window/main_window.h"
#include "app/window/start_up.h"
#include "app/wording/window_words.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QScreen>

#include <algorithm>

namespace {

struct CommandLine
{
    CommandLine()
    {
        arguments.setApplicationDescription(rig::WindowWords::commandLine());
        arguments.addHelpOption();
        arguments.addVersionOption();
        arguments.addPositionalArgument("FILE", rig::WindowWords::commandFile(), "[FILE]");
        arguments.addOptions({demo, dark, text});
    }

    QCommandLineParser arguments;
    QCommandLineOption demo{"demo", rig::WindowWords::commandDemo()};
    QCommandLineOption dark{"dark", rig::WindowWords::commandDark()};
    QCommandLineOption text{"text", rig::WindowWords::commandText(), "PERCENT", "100"};
};

} // namespace

int main(int argc, char* argv[])
{
    rig::setUpSurroundings();
    {
        // What is only told needs no display.
        const QCoreApplication withoutDisplay{argc, argv};
        CommandLine line;
        line.arguments.parse(QCoreApplication::arguments());
        if (line.arguments.isSet("help"))
            line.arguments.showHelp();
        if (line.arguments.isSet("version"))
            line.arguments.showVersion();
    }
    QApplication application{argc, argv};
    rig::setUpApplication(application);

    CommandLine line;
    line.arguments.process(application);

    const rig::SystemClock clock;
    rig::WindowPrompts prompts;
    rig::MainWindow window{clock, prompts};
    rig::Look look;
    if (line.arguments.isSet(line.dark))
        look.theme = rig::Theme::dark();
    look.fonts.scale = std::clamp(line.arguments.value(line.text).toDouble() / 100, 1.0, 2.0);
    window.setLook(look);
    if (line.arguments.isSet(line.demo))
        window.openDemo();
    else if (!line.arguments.positionalArguments().isEmpty())
        window.openPath(line.arguments.positionalArguments().constFirst(), rig::OpenAs::Existing);
    rig::showWithin(window, window.screen()->availableSize());
    return QApplication::exec();
}
