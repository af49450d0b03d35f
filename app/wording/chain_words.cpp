#include "app/wording/chain_words.h"

#include "app/wording/formats.h"
#include "core/clock.h"

#include <QLocale>

#include <charconv>
#include <map>

namespace rig {

namespace {

QString kindIn(const std::string& table);
QString columnIn(const std::string& column);

// So many columns say what a fact says; a long text would hide the others.
constexpr qsizetype kMostColumns = 8;
constexpr qsizetype kLongestValue = 60;

QString valueIn(const std::string& column, const std::string& value)
{
    std::int64_t number = 0;
    const bool isNumber =
        std::from_chars(value.data(), value.data() + value.size(), number).ec == std::errc{};
    if (isNumber && column.ends_with("_at"))
        return Formats{}.day(Moment{number, 0}.localDay());
    if (isNumber && column.ends_with("_um"))
        return ChainWords::tr("%1 mm").arg(
            QLocale{}.toString(static_cast<double>(number) / 1000.0, 'f', number % 10 == 0 ? 2 : 3));
    const QString text = QString::fromStdString(value).simplified();
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
        "The end is worked out from every fact in the file. Written down or printed, it shows later whether "
        "all of them are still there as they were. It is evidence and no signature: somebody who works all "
        "of it out anew leaves no trace in the file itself, so keep your prints.");
}

QString ChainWords::faults(std::int64_t count)
{
    return tr("%Ln fact(s) in this file do not stand as Rigband saved them.", nullptr,
              static_cast<int>(count));
}

QString ChainWords::faultsAdvice()
{
    return tr(
        "Another program has changed the file. Rigband cannot tell what stood there before: compare with "
        "the copies beside the file and with your prints, and ask who changed it. Until then trust no band "
        "and no verdict that rests on these facts.");
}

QString ChainWords::noFaults()
{
    return tr(
        "Every fact was held against the chain: all of them stand as they were saved, as far as the chain "
        "tells.");
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
    for (const auto& [column, value] : one.says)
        if (parts.size() < kMostColumns && !column.ends_with("_offset"))
            parts << tr("%1: %2", "what, which value").arg(columnIn(column), valueIn(column, value));
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
    return tr("What was saved just before this is gone, or stands in another order: %1.", "which fact")
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

QString ChainWords::print(const std::string& form, const std::optional<PrintPlace>& place)
{
    const QString typed = QString::fromStdString(form);
    if (!place)
        return tr("%1 is not in this file: the print is of another file, or of a copy that went its own way, "
                  "or "
                  "it was read wrongly, or facts that it stands for were changed or taken out.")
            .arg(typed);
    const QString number = QLocale{}.toString(static_cast<qlonglong>(place->sequence));
    if (place->savedMilliseconds == 0)
        return tr("%1 is how this file ends now, after fact %2.").arg(typed, number);
    const Moment saved{place->savedMilliseconds / 1000, 0};
    return tr("%1 is how this file ended after fact %2, saved on %3: all that stood in it then is still in "
              "it.")
        .arg(typed, number, Formats{}.day(saved.localDay()));
}

QString ChainWords::printHint()
{
    return tr(
        "Type what stands after “end” at the foot of an earlier print, several with commas between: the "
        "report says whether this file still has it.");
}
QString ChainWords::noShortForm(const QString& typed)
{
    return tr("“%1” is no end of a print: that is ten letters and digits, like ABCDE-FG234, without 0, 1, 8 "
              "and "
              "9. Look at the foot of the print again.")
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
        {"practice_shared", ChainWords::tr("who may see own practice")},
    };
    const auto found = kinds.find(table);
    return found == kinds.end() ? ChainWords::tr("fact") : found->second;
}

// What a reader of the record knows under another name; the others as they stand in the file.
QString columnIn(const std::string& column)
{
    const std::map<std::string, QString> names{
        {"enters_um", ChainWords::tr("enters")},
        {"refuses_um", ChainWords::tr("does not enter")},
        {"measured_at", ChainWords::tr("measured at")},
        {"note", ChainWords::tr("note")},
        {"name", ChainWords::tr("name")},
        {"answer", ChainWords::tr("answer")},
        {"reason", ChainWords::tr("reason")},
        {"purpose", ChainWords::tr("purpose")},
    };
    const auto found = names.find(column);
    return found == names.end() ? QString::fromStdString(column).replace('_', ' ') : found->second;
}

} // namespace

} // namespace rig
