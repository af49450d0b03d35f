// rigband-file VERB ...: what can be done with a .rigband file without a window (docs/import.md).

#include "app/file/verbs.h"
#include "app/wording/file_words.h"

#include <QCommandLineParser>
#include <QCoreApplication>

namespace {

using namespace rig::file;

int badUse()
{
    complain(rig::FileWords::usage());
    return kBadUse;
}

// `named` are the files given by place, `csv` the one behind --csv.
int run(const QString& verb, const QStringList& named, const QString& csv)
{
    const bool withTable = !csv.isEmpty();
    const auto files = named.size();
    if (verb == "demo" && files == 1 && !withTable)
        return writeDemo(named[0]);
    if (verb == "check" && files == 1 && !withTable)
        return check(named[0]);
    if (verb == "salvage" && files == 2 && !withTable)
        return salvage(named[0], named[1]);
    if (verb == "export" && files == 1 && withTable)
        return exportTables(named[0], csv);
    if (verb == "import" && files == 1 && withTable)
        return importTable(named[0], csv);
    const QStringList known{"demo", "check", "salvage", "export", "import"};
    if (!known.contains(verb))
        complain(rig::FileWords::unknownVerb(verb));
    return badUse();
}

} // namespace

int main(int argc, char* argv[])
{
    const QCoreApplication application{argc, argv};
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 2)
        return badUse();
    const QString verb = arguments[1];
    if (verb == "--help" || verb == "-h" || verb == "help") {
        say(rig::FileWords::usage());
        return kDone;
    }
    if (verb == "report") {
        complain(rig::FileWords::noReportsYet());
        return kBadUse;
    }
    QCommandLineParser parser;
    const QCommandLineOption csv{"csv", {}, "csv"};
    parser.addOption(csv);
    if (!parser.parse(arguments) || parser.values(csv).size() > 1)
        return badUse();
    return run(verb, parser.positionalArguments().mid(1), parser.value(csv));
}
