#include "app/wording/chain_words.h"

#include "app/wording/formats.h"
#include "app/wording/stored_words.h"
#include "core/clock.h"
#include "core/day_entry.h"

#include <QLocale>

#include <charconv>
#include <map>
#include <optional>

namespace rig {

namespace {

QString kindIn(const std::string& table);

// So many columns say what a fact says; a long text would hide the others.
constexpr qsizetype kMostColumns = 14;
constexpr qsizetype kLongestValue = 60;

// What a reader of the record knows under another name.
QString columnIn(const std::string& column)
{
    const QString name = StoredWords::column(column);
    return name.isEmpty() ? QString::fromStdString(column).replace('_', ' ') : name;
}

bool areThousandths(const std::string& column)
{
    return column == "value" || column == "most_play" || column.ends_with("_nominal") ||
           column.ends_with("_tolerance");
}

QString numberIn(const std::string& column, std::int64_t number)
{
    if (column.ends_with("_at"))
        return Formats{}.day(Moment{number, 0}.localDay());
    const int decimals = number % 10 == 0 ? 2 : 3;
    if (column.ends_with("_um"))
        return ChainWords::tr("%1 mm").arg(
            QLocale{}.toString(static_cast<double>(number) / 1000.0, 'f', decimals));
    return areThousandths(column) ? QLocale{}.toString(static_cast<double>(number) / 1000.0, 'f', decimals)
                                  : QLocale{}.toString(static_cast<qlonglong>(number));
}

template <typename Number> std::optional<Number> readAll(const std::string& value)
{
    Number number{};
    const auto read = std::from_chars(value.data(), value.data() + value.size(), number);
    const bool isNumber = read.ec == std::errc{} && read.ptr == value.data() + value.size();
    return isNumber ? std::optional{number} : std::nullopt;
}

QString valueIn(const std::string& table, const std::string& column, const FactValue& value)
{
    if (const QString word = StoredWords::yesOrNo(column, value.text); !word.isEmpty())
        return word;
    if (StoredWords::areWords(table, column))
        if (const QString word = StoredWords::word(table, column, value.text); !word.isEmpty())
            return word;
    switch (value.is) {
    case FactValue::Is::Bytes:
        return ChainWords::tr("%Ln byte(s)", nullptr, readAll<int>(value.text).value_or(0));
    case FactValue::Is::WholeNumber:
        if (const auto number = readAll<std::int64_t>(value.text))
            return numberIn(column, *number);
        break;
    case FactValue::Is::Number:
        if (const auto number = readAll<double>(value.text))
            return QLocale{}.toString(*number, 'g', 6);
        break;
    case FactValue::Is::Text:
        if (const auto day = parseDay(value.text))
            return Formats{}.day(*day);
        break;
    }
    return QString::fromStdString(value.text).simplified();
}

QString shortened(const QString& text)
{
    return text.size() <= kLongestValue ? text : text.left(kLongestValue) + QChar{0x2026};
}

} // namespace

QString ChainWords::end(const FileEnd& end)
{
    return tr("%Ln fact(s), end %1", "how many facts a file holds, and their short form",
              static_cast<int>(end.facts))
        .arg(QString::fromStdString(shortForm(end.hash)));
}

QString ChainWords::file(const FileEnd& fileEnd) { return tr("File: %1").arg(end(fileEnd)); }

QString ChainWords::wholeHash(const FileEnd& end)
{
    return tr("Whole hash at the end (SHA-256): %1").arg(QString::fromStdString(end.hash));
}

QString ChainWords::whatItMeans()
{
    return tr(
        "The end stands for every fact as it was saved. Compare it with an earlier print. Whether each fact "
        "still reads as it was saved is told beside it. It is no signature: somebody who works out the whole "
        "file anew leaves no trace. Keep your prints.");
}

QString ChainWords::faults(std::int64_t count)
{
    return count == 1 ? tr("1 fact in this file is not as Rigband saved it.")
                      : tr("%1 facts in this file are not as Rigband saved them.")
                            .arg(QLocale{}.toString(static_cast<qlonglong>(count)));
}

QString ChainWords::faultsHeading() { return tr("What another program changed"); }

QString ChainWords::copiesKey() { return tr("The copies are listed with Ctrl+9."); }

QString ChainWords::faultsAdvice()
{
    return tr(
        "Another program has changed the file. Rigband cannot tell what stood there before: compare with "
        "the copies beside the file and with your prints, and ask who changed it. Until then trust no band "
        "and no verdict that rests on these facts.");
}

QString ChainWords::noFaults()
{
    return tr("Every fact in this file reads as it was saved, as far as its chain tells.");
}

QString ChainWords::noOtherFaults()
{
    return tr("Every other fact in this file reads as it was saved, as far as its chain tells.");
}

QString ChainWords::lastSaved(const Moment& when)
{
    return tr("The last fact was saved on %1. Whether others behind it were cut off cannot be told from the "
              "file: "
              "compare its end with an earlier print or copy.")
        .arg(Formats{}.day(when.localDay()));
}

QString ChainWords::takenOver(std::int64_t facts)
{
    return tr("Nothing is known of changes before the chain began: %1 facts were taken over as they stood, "
              "from an older file or from the one that this was handed on from.")
        .arg(QLocale{}.toString(static_cast<qlonglong>(facts)));
}

QString ChainWords::takenOverAdvice()
{
    return tr("Where you know of no older file, somebody may have set this one back to before its chain "
              "began. Compare it with the copies beside it, and with the ends on earlier prints.");
}

QString ChainWords::barOf(const ChainState& state)
{
    if (state.faults > 0)
        return faults(state.faults);
    return state.takenOver > 0 ? takenOver(state.takenOver) : QString{};
}

QString ChainWords::notLookedAt()
{
    return tr("The facts have not been held against the chain yet, so nothing is said of changes by other "
              "programs.");
}

QString ChainWords::fact(const FaultyFact& one)
{
    QStringList parts{kindIn(one.table)};
    for (const std::string& name : {one.registration, one.coupling})
        if (!name.empty())
            parts << QString::fromStdString(name);
    const Moment saved{one.savedMilliseconds / 1000, 0};
    const QString day = Formats{}.day(saved.localDay());
    parts << (one.savedBy.empty() ? tr("saved on %1").arg(day)
                                  : tr("saved on %1 by %2").arg(day, QString::fromStdString(one.savedBy)));
    return parts.join(QStringLiteral(" · "));
}

QString ChainWords::says(const FaultyFact& one)
{
    QStringList parts;
    for (const FactCells& cells : one.says) {
        if (parts.size() >= kMostColumns || cells.column.ends_with("_offset"))
            continue;
        QStringList values;
        for (const FactValue& value : cells.values)
            values << valueIn(one.table, cells.column, value);
        parts << tr("%1: %2", "what, which value")
                     .arg(columnIn(cells.column), shortened(values.join(QStringLiteral(", "))));
    }
    return parts.join(QStringLiteral("; "));
}

QString ChainWords::fault(const FaultyFact& one)
{
    const QString what = fact(one);
    switch (one.fault) {
    case ChainFault::Missing:
        return tr("Gone from the file: %1.", "which fact").arg(what);
    case ChainFault::Changed:
        return tr("Changed since it was saved: %1. The file now says: %2.", "which fact, what it says")
            .arg(what, says(one));
    case ChainFault::Inserted:
        return tr("Put in by another program: %1. It says: %2.", "which fact, what it says")
            .arg(what, says(one));
    case ChainFault::Torn:
        break;
    }
    return tr("A fact saved just before this one is missing, or the order was changed: %1.", "which fact")
        .arg(what);
}

QString ChainWords::andMore(std::int64_t count)
{
    return tr("And %n more, which are not listed.", nullptr, static_cast<int>(count));
}

QStringList ChainWords::all(const ChainState& state)
{
    QStringList sentences;
    for (const FaultyFact& fact : state.told)
        sentences << fault(fact);
    if (const auto more = state.faults - static_cast<std::int64_t>(state.told.size()); more > 0)
        sentences << andMore(more);
    return sentences;
}

QStringList ChainWords::replacedNames(const ChainState& state)
{
    QStringList sentences;
    for (const ReplacedName& one : state.replacedNames) {
        const QString name = QString::fromStdString(one.name);
        const QString day = Formats{}.day(one.when.localDay());
        if (!one.holds) {
            sentences
                << (one.by.empty()
                        ? tr("On %1 other letters were given for %2. Those given last hold.").arg(day, name)
                        : tr("On %1 %3 gave other letters for %2. Those given last hold.")
                              .arg(day, name, QString::fromStdString(one.by)));
            continue;
        }
        sentences << (one.by.empty() ? tr("Name replaced on request: %1, on %2.").arg(name, day)
                                     : tr("Name replaced on request: %1, on %2 by %3.")
                                           .arg(name, day, QString::fromStdString(one.by)));
    }
    if (!sentences.isEmpty())
        sentences << tr(
            "What was saved of these persons before cannot be held against the chain any more; every "
            "other fact is.");
    return sentences;
}

QString ChainWords::print(const ComparedPrint& print, std::int64_t faultsNow)
{
    const QString typed = QString::fromStdString(print.shortForm);
    if (!print.place)
        return tr("%1 is not an end of this file. Look whether it was typed rightly. It may belong to "
                  "another file or copy, or have been printed between two joinings, or facts were changed or "
                  "taken out. Find the file it was printed from.")
            .arg(typed);
    const Moment saved{print.place->savedMilliseconds / 1000, 0};
    const QString had =
        print.place->savedMilliseconds == 0
            ? tr("%1 is how this file ends now.").arg(typed)
            : tr("%1 is how this file ended after fact %2, saved on %3.")
                  .arg(typed, QLocale{}.toString(static_cast<qlonglong>(print.place->sequence)),
                       Formats{}.day(saved.localDay()));
    const QString stands = faultsNow > 0
                               ? tr("But facts in it have been changed since, see above.")
                               : tr("Every fact saved up to then is there and reads as it was saved.");
    return tr("%1 %2", "two sentences").arg(had, stands);
}

QString ChainWords::printHint()
{
    return tr(
        "Type what stands after “end” at the foot of an earlier print, several with commas between: the "
        "report says whether this file still has it.");
}
QString ChainWords::noShortForm(const QString& typed)
{
    return tr("“%1” is not an end. An end has ten signs, such as ABCDE-FG234; 0, 1, 8 and 9 do not occur. "
              "Look at the "
              "foot of the print again.")
        .arg(typed);
}

QString ChainWords::oddIntro()
{
    return tr(
        "These readings want a second look. Each may have a plain reason: readings that were corrected or "
        "taken out since, another baseline, a laptop whose clock was wrong.");
}

QString ChainWords::nothingOdd()
{
    return tr(
        "No reading of the period was shown another verdict at the time than is worked out now, saved under "
        "a clock that had been set back, or saved into a closed record.");
}

QString ChainWords::shownOtherwise(const QString& shown, const QString& now)
{
    return tr("Shown at the time: %1. Worked out now: %2.").arg(shown, now);
}

QString ChainWords::clockSetBack(const QString& saved)
{
    return tr("Saved at %1 by the clock, which is earlier than something saved before it: the clock had been "
              "set "
              "back.")
        .arg(saved);
}

QString ChainWords::inAClosedRecord(const QString& saved)
{
    return tr("Saved at %1 into a record that had been closed before.").arg(saved);
}

QString ChainWords::inTheFuture(const QString& saved)
{
    return tr("Saved at %1 by the clock, which is still to come: a clock was wrong, or another program wrote "
              "it.")
        .arg(saved);
}

QString ChainWords::odd(const FaultyFact& one, const QString& why)
{
    return tr("Wants a second look: %1. %2", "which fact, why").arg(fact(one), why);
}

QString ChainWords::heading() { return tr("The file as evidence"); }
QString ChainWords::show() { return tr("Show the facts"); }
QString ChainWords::showHint() { return tr("Show what does not stand as it was saved (Ctrl+7)"); }
QString ChainWords::leave() { return tr("Back  (Esc)", "from the list of changed facts"); }
QString ChainWords::leaveHint()
{
    return tr("Back to the page before (Esc)", "from the list of changed facts");
}

namespace {

QString kindIn(const std::string& table)
{
    const std::map<std::string, QString> kinds{
        {"person", ChainWords::tr("person")},
        {"airframe", ChainWords::tr("airframe")},
        {"gauge", ChainWords::tr("leaf set or gauge")},
        {"gauge_check", ChainWords::tr("check of a gauge")},
        {"coupling", ChainWords::tr("coupling")},
        {"fitting", ChainWords::tr("fitting")},
        {"event", ChainWords::tr("event")},
        {"rigging_record", ChainWords::tr("rigging record")},
        {"connected", ChainWords::tr("who connected")},
        {"answer", ChainWords::tr("answer of the look")},
        {"reading", ChainWords::tr("reading")},
        {"exclusion", ChainWords::tr("struck reading")},
        {"baseline", ChainWords::tr("frozen baseline")},
        {"interruption", ChainWords::tr("interruption")},
        {"closing", ChainWords::tr("end of a record")},
        {"surface", ChainWords::tr("control surface")},
        {"surface_answer", ChainWords::tr("answer of the control check")},
        {"surface_measure", ChainWords::tr("measured deflection")},
        {"tick", ChainWords::tr("tick of a list")},
        {"question", ChainWords::tr("question")},
        {"resolution", ChainWords::tr("answer to a question")},
        {"joint_play", ChainWords::tr("joint play")},
        {"photo", ChainWords::tr("photo")},
        {"photo_withdrawn", ChainWords::tr("withdrawn photo")},
        {"lesson_round", ChainWords::tr("round of practice")},
        {"seating_answer", ChainWords::tr("answer in practice")},
        {"recall_answer", ChainWords::tr("answer in practice")},
        {"supervised_rigging", ChainWords::tr("rigging under supervision")},
        {"sign_off", ChainWords::tr("sign-off")},
        {"crossed_study", ChainWords::tr("crossed study")},
        {"study_place", ChainWords::tr("place in a crossed study")},
        {"practice_reading", ChainWords::tr("reading in practice")},
        {"learning_taken_back", ChainWords::tr("taking back")},
        {"name_replaced", ChainWords::tr("replaced name")},
        {"decision", ChainWords::tr("decision between two files")},
        {"practice_shared", ChainWords::tr("who may see own practice")},
    };
    const auto found = kinds.find(table);
    return found == kinds.end() ? ChainWords::tr("fact") : found->second;
}

} // namespace

} // namespace rig
