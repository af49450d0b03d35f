#include "app/pages/prompts.h"
#include "app/window/main_window.h"
#include "app/window/program.h"
#include "app/window/start_up.h"
#include "app/wording/language.h"
#include "app/wording/window_words.h"

#include <QApplication>
#include <QCommandLineParser>

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
        const rig::Speech speech{rig::languageOf({}, QLocale::system())};
        CommandLine line;
        line.arguments.parse(QCoreApplication::arguments());
        if (line.arguments.isSet("help"))
            line.arguments.showHelp();
        if (line.arguments.isSet("version"))
            line.arguments.showVersion();
    }
    QApplication application{argc, argv};
    const rig::Look desktop = rig::desktopLook();
    rig::setUpApplication(application);

    const rig::SystemClock clock;
    rig::WindowPrompts prompts;
    rig::Program program{clock, prompts, desktop};
    CommandLine line; // in the words of the program's language
    line.arguments.process(application);

    rig::MainWindow& window = program.window();
    rig::Look look = window.look();
    if (line.arguments.isSet(line.dark))
        look.theme = rig::Theme::dark();
    if (line.arguments.isSet(line.text))
        look.fonts.scale = rig::withinSizes(line.arguments.value(line.text).toDouble() / 100);
    program.setLook(look);
    if (line.arguments.isSet(line.demo))
        window.openDemo();
    else if (!line.arguments.positionalArguments().isEmpty())
        window.openPath(line.arguments.positionalArguments().constFirst(), rig::OpenAs::Existing);
    program.show();
    return QApplication::exec();
}
