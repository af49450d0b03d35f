// rigband-file VERB ...: what can be done with a .rigband file without a window (docs/import.md).

#include "app/file/verbs.h"
#include "app/theme/theme.h"
#include "app/wording/file_words.h"
#include "app/wording/language.h"

#include <QCommandLineParser>
#include <QGuiApplication>
#include <QHashFunctions>

#include <memory>

namespace {

using namespace rig::file;

int badUse()
{
    complain(rig::FileWords::usage());
    return kBadUse;
}

// What was given on the command line; empty where it was not.
struct Given
{
    QStringList named;   // by place
    TablesWanted tables; // readings under --csv, which names a folder where tables go out
    QString airframe;
    QString out;
    QString day;
    QString time; // of a record, with its day
    QString from;
    QString to;
    QString gauge;
    bool letter = false;
    bool a5 = false;
    bool withoutAppendix = false;
    QStringList earlier; // ends on earlier prints
    bool asFound = false;
    bool nameless = false;
    QString document; // under --json
    QString person;
    QString as;
    QString by;

    bool isPrinted() const
    {
        return !airframe.isEmpty() || !out.isEmpty() || !day.isEmpty() || !time.isEmpty() ||
               !from.isEmpty() || !to.isEmpty() || !gauge.isEmpty() || hasNames() || letter || a5 ||
               withoutAppendix || !earlier.isEmpty() || asFound;
    }
    bool hasNames() const { return !person.isEmpty() || !as.isEmpty() || !by.isEmpty(); }
    bool isRenamed() const
    {
        Given without = *this;
        for (QString* taken : {&without.person, &without.as, &without.by, &without.out})
            taken->clear();
        return !person.isEmpty() && !as.isEmpty() && !by.isEmpty() && !out.isEmpty() && without.hasOnly(1);
    }
    bool hasThings() const
    {
        return !tables.couplings.isEmpty() || !tables.people.isEmpty() || !tables.gauges.isEmpty() ||
               !tables.events.isEmpty() || !tables.jointPlays.isEmpty();
    }
    bool hasTables() const { return hasThings() || !tables.readings.isEmpty(); }
    bool hasOnly(qsizetype files) const { return named.size() == files && !hasTables() && !isPrinted(); }
    bool isExported() const
    {
        return named.size() == 1 && !tables.readings.isEmpty() && !hasThings() && !isPrinted();
    }
    bool isImported() const { return named.size() == 1 && hasTables() && !isPrinted(); }
    // With --as-found and nothing else besides.
    bool isDocument() const
    {
        Given without = *this;
        without.asFound = false;
        return !document.isEmpty() && !nameless && without.hasOnly(1);
    }
    bool hasPages() const
    {
        return named.size() == 1 && !hasTables() && !airframe.isEmpty() && !out.isEmpty() && !asFound;
    }
    bool isJoined() const
    {
        return named.size() == 2 && !hasTables() && !out.isEmpty() && airframe.isEmpty() && isOfADay() &&
               day.isEmpty() && from.isEmpty() && to.isEmpty() && !letter && !withoutAppendix;
    }
    bool isPart() const
    {
        return named.size() == 1 && !hasTables() && !airframe.isEmpty() && !out.isEmpty() && isOfADay() &&
               day.isEmpty() && from.isEmpty() && to.isEmpty() && !letter && !withoutAppendix;
    }
    bool isManual() const
    {
        return named.isEmpty() && !hasTables() && airframe.isEmpty() && !out.isEmpty() && isOfADay() &&
               day.isEmpty() && from.isEmpty() && to.isEmpty() && !withoutAppendix && earlier.isEmpty() &&
               !asFound;
    }
    bool isOfADay() const { return gauge.isEmpty() && !a5 && !hasNames(); }
    bool hasRecord() const
    {
        return hasPages() && isOfADay() && from.isEmpty() && to.isEmpty() && !withoutAppendix &&
               earlier.isEmpty();
    }
    bool hasReport() const
    {
        return hasPages() && isOfADay() && (day.isEmpty() || (from.isEmpty() && to.isEmpty()));
    }
    bool hasSheet() const
    {
        return hasPages() && day.isEmpty() && from.isEmpty() && to.isEmpty() && !(letter && a5) &&
               !hasNames() && !withoutAppendix && earlier.isEmpty();
    }
    bool hasCard() const { return hasRecord() && day.isEmpty() && !letter; }
};

// Nothing, after saying why, where the options are none of ours.
std::optional<Given> givenOn(const QStringList& arguments)
{
    QCommandLineParser parser;
    const QCommandLineOption csv{"csv", {}, "csv"};
    const QCommandLineOption couplings{"couplings", {}, "couplings"};
    const QCommandLineOption people{"people", {}, "people"};
    const QCommandLineOption gauges{"gauges", {}, "gauges"};
    const QCommandLineOption events{"events", {}, "events"};
    const QCommandLineOption jointPlay{"joint-play", {}, "joint-play"};
    const QCommandLineOption airframe{"airframe", {}, "registration"};
    const QCommandLineOption day{"day", {}, "day"};
    const QCommandLineOption time{"time", {}, "time"};
    const QCommandLineOption from{"from", {}, "from"};
    const QCommandLineOption to{"to", {}, "to"};
    const QCommandLineOption out{"out", {}, "out"};
    const QCommandLineOption gauge{"gauge", {}, "gauge"};
    const QCommandLineOption letter{"letter"};
    const QCommandLineOption a5{"a5"};
    const QCommandLineOption withoutAppendix{"without-appendix"};
    const QCommandLineOption earlier{"earlier", {}, "ends"};
    const QCommandLineOption asFound{"as-found"};
    const QCommandLineOption nameless{"nameless"};
    const QCommandLineOption json{"json", {}, "json"};
    const QCommandLineOption person{"person", {}, "person"};
    const QCommandLineOption as{"as", {}, "as"};
    const QCommandLineOption by{"by", {}, "by"};
    const QList<QCommandLineOption> withValue{csv,      couplings, people, gauges, events, jointPlay,
                                              airframe, day,       from,   to,     out,    gauge,
                                              earlier,  json,      person, as,     by,     time};
    parser.addOptions(withValue);
    parser.addOptions({letter, a5, withoutAppendix, asFound, nameless});
    if (!parser.parse(arguments)) {
        const QStringList unknown = parser.unknownOptionNames();
        complain(unknown.isEmpty() ? rig::FileWords::optionWithoutValue()
                                   : rig::FileWords::unknownOption(unknown.constFirst()));
        return std::nullopt;
    }
    for (const QCommandLineOption& option : withValue)
        if (parser.values(option).size() > 1) {
            complain(rig::FileWords::optionTwice(option.names().constFirst()));
            return std::nullopt;
        }
    const QStringList named = parser.positionalArguments().mid(1);
    return Given{named,
                 {named.value(0), parser.value(couplings), parser.value(people), parser.value(gauges),
                  parser.value(events), parser.value(jointPlay), parser.value(csv)},
                 parser.value(airframe),
                 parser.value(out),
                 parser.value(day),
                 parser.value(time),
                 parser.value(from),
                 parser.value(to),
                 parser.value(gauge),
                 parser.isSet(letter),
                 parser.isSet(a5),
                 parser.isSet(withoutAppendix),
                 parser.value(earlier).split(',', Qt::SkipEmptyParts),
                 parser.isSet(asFound),
                 parser.isSet(nameless),
                 parser.value(json),
                 parser.value(person),
                 parser.value(as),
                 parser.value(by)};
}

int run(const QString& verb, const Given& given)
{
    if (given.nameless && verb != "export")
        return badUse();
    if (!given.time.isEmpty() && (verb != "record" || given.day.isEmpty()))
        return badUse();
    if (!given.document.isEmpty()) {
        if (verb == "export" && given.isDocument())
            return exportDocument({given.named[0], given.document, given.asFound});
        if (verb == "import" && given.isDocument())
            return importDocument({given.named[0], given.document, given.asFound});
        return badUse();
    }
    if (verb == "demo" && given.hasOnly(1))
        return writeDemo(given.named[0]);
    if (verb == "check" && given.hasOnly(1))
        return check(given.named[0]);
    if (verb == "salvage" && given.hasOnly(2))
        return salvage(given.named[0], given.named[1]);
    if (verb == "export" && given.isExported())
        return exportTables(given.named[0], given.tables.readings,
                            given.nameless ? NamesOut::Nameless : NamesOut::AsTyped);
    if (verb == "import" && given.isImported())
        return importTables(given.tables);
    if (verb == "record" && given.hasRecord())
        return printRecord({given.named[0], given.airframe, given.day, given.time, given.out, given.letter});
    if (verb == "report" && given.hasReport())
        return printReport({given.named[0], given.airframe, given.out,
                            given.to.isEmpty() ? given.day : given.to, given.from, given.letter,
                            !given.withoutAppendix, given.earlier});
    if (verb == "sheet" && given.hasSheet())
        return printSheet({given.named[0], given.airframe, given.gauge, given.out, given.letter, given.a5});
    if (verb == "card" && given.hasCard())
        return printCard({given.named[0], given.airframe, given.out});
    if (verb == "manual" && given.isManual())
        return printManual({given.out, given.letter});
    if (verb == "join" && given.isJoined())
        return joinFiles({given.named[0], given.named[1], given.out, given.asFound});
    if (verb == "part" && given.isPart())
        return handOnPart({given.named[0], given.airframe, given.out});
    if (verb == "rename-person" && given.isRenamed())
        return renamePerson({given.named[0], given.person, given.as, given.by, given.out});
    const QStringList known{"rename-person", "demo",  "check", "salvage", "export", "import", "record",
                            "report",        "sheet", "card",  "manual",  "join",   "part"};
    if (!known.contains(verb))
        complain(rig::FileWords::unknownVerb(verb));
    return badUse();
}

// Printing and drawing measure text, which takes fonts; no screen is needed for it.
std::unique_ptr<QCoreApplication> applicationFor(bool withFonts, int& argc, char** argv)
{
    if (!withFonts)
        return std::make_unique<QCoreApplication>(argc, argv);
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QHashSeed::setDeterministicGlobalSeed(); // fonts come into a PDF in the order of a hash
    auto application = std::make_unique<QGuiApplication>(argc, argv);
    rig::loadFonts();
    return application;
}

} // namespace

int main(int argc, char* argv[])
{
    QCoreApplication::setApplicationVersion(QStringLiteral(RIGBAND_VERSION));
    const QByteArray first = argc > 1 ? argv[1] : "";
    const bool draws = QByteArrayList{"record", "report", "sheet", "card", "manual", "demo"}.contains(first);
    const auto application = applicationFor(draws, argc, argv);
    const rig::Speech speech{rig::languageOf({}, QLocale::system())};
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 2)
        return badUse();
    const QString verb = arguments[1];
    if (verb == "help" || arguments.contains("--help") || arguments.contains("-h")) {
        say(rig::FileWords::usage());
        return kDone;
    }
    if (verb == "--version" || verb == "-v") {
        say(rig::FileWords::version(QCoreApplication::applicationVersion()));
        return kDone;
    }
    const auto given = givenOn(arguments);
    return given ? run(verb, *given) : badUse();
}
