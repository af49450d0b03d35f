#include "app/wording/file_words.h"

#include <QStringList>

namespace rig {

namespace {

constexpr qsizetype kLineWidth = 100; // characters of a line

struct Verb
{
    const char* form; // typed as it stands in every language
    QString does;
};

QString wrapped(const QString& text, const QString& indent)
{
    QStringList lines{indent};
    for (const QString& word : text.split(' ')) {
        if (lines.last().size() + word.size() >= kLineWidth)
            lines << indent;
        lines.last() += lines.last() == indent ? word : ' ' + word;
    }
    return lines.join('\n');
}

// Their names are the same in every language.
QString columns(const QStringList& names) { return names.join(QLatin1String(", ")); }

} // namespace

QString FileWords::usage()
{
    const Verb verbs[] = {
        {"demo OUT.rigband", tr("writes an invented hangar to look around in")},
        {"check FILE", tr("says what is in a file, or what is wrong with it")},
        {"export FILE --csv FOLDER [--nameless]", tr("writes the file's facts as tables; with --nameless "
                                                     "letters and numbers stand for names, words of "
                                                     "anybody's own are left out, and counts.csv counts")},
        {"import FILE [--couplings X.csv] [--people X.csv] [--gauges X.csv]\n"
         "                      [--events X.csv] [--joint-play X.csv] [--csv READINGS.csv]",
         tr("adds these tables to a file, all of them or none; where the file is not there yet, --couplings, "
            "--people or --gauges makes it; READINGS.csv has the columns %1 and, "
            "where wanted, %2; a row with 2, 3 and on in %3 is the same as one before it in all of the first "
            "eight")
             .arg(columns({"airframe", "coupling", "date", "enters_mm", "refuses_mm", "gauge", "person",
                           "state"}),
                  columns({"time", "rigging", "note", "second", "repeat"}), columns({"repeat"}))},
        {"export FILE --json OUT.json [--as-found]",
         tr("writes everything that is in a file as one document, with photos and the chain")},
        {"import NEW.rigband --json IN.json [--as-found]",
         tr("makes a new file of such a document, equal to the one that went out; where another program has "
            "changed something, only with --as-found")},
        {"record FILE --airframe REG --out X.pdf [--day yyyy-mm-dd [--time hh:mm]] [--letter]",
         tr("a rigging record as pages to print: the last one that was closed, or the last that began on a "
            "day; where there are several on it they are named, and --time chooses one")},
        {"report FILE --airframe REG --out X.pdf [--day yyyy-mm-dd] [--letter]\n"
         "                      [--from yyyy-mm-dd] [--to yyyy-mm-dd] [--without-appendix]\n"
         "                      [--earlier ABCDE-FG234,...]",
         tr("the engineer's report since the last annual, up to a day or between two; its tables come beside "
            "it, in the folder X-csv, whole also where the appendix of lists, looks and control checks is "
            "left out; with --earlier it compares the ends on earlier prints")},
        {"sheet FILE --airframe REG --out X.pdf [--gauge NAME] [--letter | --a5]",
         tr("boxes to tick by hand at a rigging without the program; the gauge is the one that was last "
            "used")},
        {"card FILE --airframe REG --out X.pdf",
         tr("a card to fold once: where the couplings are, what locked looks like, whom to call; A5, both "
            "sides")},
        {"manual --out X.pdf [--letter]", tr("the manual, as pages to print")},
        {"join FILE OTHER --out NEW.rigband [--as-found]",
         tr("the facts of two files, such as two laptops hold, in a new one; where another program has "
            "changed one of them, it is joined only with --as-found")},
        {"part FILE --airframe REG --out NEW.rigband",
         tr("hands one airframe on, with all that belongs to it and the people and gauges named in it")},
        {"rename-person FILE --person NAME --as LETTERS --by NAME --out NEW.rigband",
         tr("a new file in which letters stand for the name of a person who asked for it; that it was done, "
            "and "
            "by whom, is told there from then on")},
        {"salvage FILE OUT.rigband", tr("reads what can be read of a damaged file")},
        {"--help | --version", tr("this page; which Rigband it is")},
    };
    QStringList lines{tr("Use one of these:")};
    for (const Verb& verb : verbs)
        lines << QStringLiteral("  rigband-file ") + QLatin1String(verb.form)
              << wrapped(verb.does, QStringLiteral("        "));
    lines << wrapped(tr("Nothing that is there already is ever written over."), {})
          << wrapped(
                 tr("Ends with 0 when all was done; with 1 when it could not be; with 2 when the command was "
                    "not understood, a day in it is still to come, or rows of a table are bad, and nothing "
                    "was done; with 3 when it was done, and something was found or left out, which is "
                    "said."),
                 {});
    return lines.join('\n');
}

} // namespace rig
