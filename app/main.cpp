#include "app/pages/prompts.h"
#include "app/window/end_signals.h"
#include "app/window/main_window.h"
#include "app/window/program.h"
#include "app/window/start_up.h"
#include "app/window/window_calls.h"
#include "app/wording/language.h"
#include "app/wording/window_words.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>

#include <cstdio>
#include <optional>

namespace {

constexpr int kDone = 0;
constexpr int kBadUse = 2;
constexpr int kSmallestPercent = 100;
constexpr int kLargestPercent = 200;

struct CommandLine
{
    CommandLine()
    {
        arguments.setApplicationDescription(rig::WindowWords::commandLine());
        arguments.addHelpOption();
        arguments.addVersionOption();
        arguments.addPositionalArgument("FILE", rig::WindowWords::commandFile(), "[FILE]");
        arguments.addOptions({demo, dark, sun, text});
    }

    QCommandLineParser arguments;
    QCommandLineOption demo{"demo", rig::WindowWords::commandDemo()};
    QCommandLineOption dark{"dark", rig::WindowWords::commandDark()};
    QCommandLineOption sun{"sun", rig::WindowWords::commandSun()};
    QCommandLineOption text{"text", rig::WindowWords::commandText(), "PERCENT", "100"};

    // Of the usual text; empty where what was typed is no size.
    std::optional<double> scale() const
    {
        bool isNumber = false;
        const int percent = arguments.value(text).toInt(&isNumber);
        if (!isNumber || percent < kSmallestPercent || percent > kLargestPercent)
            return std::nullopt;
        return percent / 100.0;
    }
};

// What the desktop gave to this start, so that a window of it may come to the front; empty where it gave
// nothing.
QByteArray startToken()
{
    const QByteArray token = qgetenv("XDG_ACTIVATION_TOKEN");
    return token.isEmpty() ? qgetenv("DESKTOP_STARTUP_ID") : token;
}

// A sentence on what is wrong with the arguments; empty where nothing is.
QString wrongWith(CommandLine& line, const QStringList& given)
{
    if (!line.arguments.parse(given)) {
        const QStringList unknown = line.arguments.unknownOptionNames();
        return unknown.isEmpty() ? rig::WindowWords::commandNoValue()
                                 : rig::WindowWords::commandUnknown(unknown.constFirst());
    }
    if (!line.scale())
        return rig::WindowWords::commandNoSize(line.arguments.value(line.text));
    const qsizetype files = line.arguments.positionalArguments().size();
    return files + (line.arguments.isSet(line.demo) ? 1 : 0) > 1 ? rig::WindowWords::commandOneFile()
                                                                 : QString{};
}

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
    const QByteArray token = startToken(); // which the QApplication takes away
    QApplication application{argc, argv};
    const rig::Look desktop = rig::desktopLook();
    rig::setUpApplication(application);

    const rig::SystemClock clock;
    rig::WindowPrompts prompts;
    rig::Program program{clock, prompts, desktop};
    CommandLine line; // in the words of the program's language
    if (const QString wrong = wrongWith(line, QCoreApplication::arguments()); !wrong.isEmpty()) {
        std::fprintf(stderr, "%s\n", qUtf8Printable(wrong));
        return kBadUse;
    }
    if (line.arguments.isSet("help-all")) // Qt's own options are known by now
        line.arguments.process(application);

    const QString file = line.arguments.positionalArguments().value(0);
    const rig::Called called = file.isEmpty() ? rig::Called::Nobody : rig::callWindowOf(file, token);
    if (called == rig::Called::Raised)
        return kDone;
    rig::MainWindow& window = program.window();
    rig::Look look = window.look();
    if (line.arguments.isSet(line.dark))
        look.theme = rig::Theme::dark();
    if (line.arguments.isSet(line.sun))
        look.theme = rig::Theme::outdoor();
    if (line.arguments.isSet(line.text))
        look.fonts.scale = *line.scale();
    program.setLook(look);
    if (line.arguments.isSet(line.demo))
        window.openDemo();
    else if (!file.isEmpty())
        window.openPath(file, rig::OpenAs::Existing);
    if (called == rig::Called::NoAnswer && window.page(window.moment())) // else a refusal stands there
        window.showProblem(rig::WindowWords::otherHangs(QFileInfo{file}.fileName()));
    program.show();
    rig::EndSignals endings;
    QObject::connect(&endings, &rig::EndSignals::ended, &program,
                     [&program] { program.window().closeUnasked(); });
    return QApplication::exec();
}
