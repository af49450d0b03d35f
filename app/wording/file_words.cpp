#include "app/wording/file_words.h"

#include "app/wording/chain_words.h"
#include "app/wording/formats.h"

namespace rig {

QString FileWords::version(const QString& version) { return tr("rigband-file %1").arg(version); }

QString FileWords::unknownVerb(const QString& verb)
{
    return tr("“%1” is nothing that can be done here.").arg(verb);
}

QString FileWords::unknownOption(const QString& option) { return tr("There is no option “%1”.").arg(option); }

QString FileWords::optionWithoutValue()
{
    return tr("An option lacks what belongs behind it, or has something behind it that it does not take.");
}

QString FileWords::optionTwice(const QString& option)
{
    return tr("--%1 stands there twice; once is enough.").arg(option);
}

QString FileWords::isAFile(const QString& file)
{
    return tr("%1 is a Rigband file, whole and readable.").arg(file);
}

QString FileWords::madeNewer(const QString& file)
{
    return tr("%1 was written by an older Rigband and is now in the form of this one, which the older one "
              "cannot open. A copy of it as it was stands in the folder of copies beside it.")
        .arg(file);
}

QString FileWords::readOnly() { return tr("It may only be read; nothing can be saved in it where it is."); }

QString FileWords::people(int people, int gauges)
{
    return tr("People in it: %1. Leaf sets and gauges: %2.")
        .arg(Formats{}.count(people), Formats{}.count(gauges));
}

QString FileWords::cannotStand(const QString& what)
{
    return tr("This cannot stand in a file, and was not written by Rigband: %1.").arg(what);
}

QString FileWords::toBeDecided(int conflicts)
{
    return tr("Two files that were joined say different things; to be decided by a person: %1.")
        .arg(Formats{}.count(conflicts));
}

QString FileWords::saidTwice(int conflicts)
{
    return tr("Said twice in this file, differently; to be decided by a person: %1.")
        .arg(Formats{}.count(conflicts));
}

QString FileWords::noAirframes() { return tr("It holds no airframe yet."); }

QString FileWords::airframe(const AirframeTally& tally)
{
    return tr("Airframe %1. Couplings: %2. Riggings: %3. Readings: %4.")
        .arg(tally.registration, Formats{}.count(tally.couplings), Formats{}.count(tally.riggings),
             Formats{}.count(tally.readings));
}

QString FileWords::dangling(int facts)
{
    if (facts == 1)
        return tr(
            "One fact names another that is not in the file. This is what salvaging leaves behind; look "
            "for a copy from before the damage.");
    return tr("%1 facts name others that are not in the file. This is what salvaging leaves behind; look for "
              "a "
              "copy from before the damage.")
        .arg(Formats{}.count(facts));
}

QString FileWords::isAFileWithFindings(const QString& file)
{
    return tr("%1 is a Rigband file and was read to its end, but not everything in it is as Rigband saves "
              "it.")
        .arg(file);
}

QString FileWords::isOlder()
{
    return tr(
        "It is of an older layout and was left so; it would be brought up to date when it is opened, after "
        "a copy was made.");
}

QString FileWords::unreadable(const QString& table, std::int64_t rows, const QString& first)
{
    return tr("Rows of the table “%1” that cannot be read: %2. The first one: %3. Salvage the file to go on "
              "without them.")
        .arg(table, Formats{}.count(static_cast<int>(rows)), first);
}

QString FileWords::lostReference(const QString& table, std::int64_t rows, const QString& named)
{
    return tr("Rows of the table “%1” that name something of the table “%3” that is not in the file: %2. "
              "Salvaging leaves such rows behind, or another program took something out; look for a copy "
              "from "
              "before.")
        .arg(table, Formats{}.count(static_cast<int>(rows)), named);
}

QString FileWords::notTogether(const QString& table, std::int64_t rows)
{
    return tr("Rows of the table “%1” that name things of two airframes or of two couplings: %2. No Rigband "
              "saves "
              "such a thing; look for a copy from before.")
        .arg(table, Formats{}.count(static_cast<int>(rows)));
}

QString FileWords::lastId(const QString& table)
{
    return tr("A row of the table “%1” has the last number that there is, so nothing can be saved after it. "
              "Open "
              "a copy from before.")
        .arg(table);
}

QString FileWords::futureId(const QString& table, std::int64_t rows)
{
    return tr("Rows of the table “%1” whose number says that they were saved in the future: %2. A clock was "
              "wrong, "
              "or another program wrote them.")
        .arg(table, Formats{}.count(static_cast<int>(rows)));
}

QString FileWords::noPicture(int photos)
{
    return tr("Photos that hold no picture that can be shown: %1.").arg(Formats{}.count(photos));
}

QString FileWords::otherSize(int photos)
{
    return tr("Photos of another size than is said beside them: %1.").arg(Formats{}.count(photos));
}

QString FileWords::moreThanPicture(int photos)
{
    return tr("Photos that hold more than the picture, such as where and with what they were taken: %1. "
              "Rigband "
              "keeps nothing of that; take them in again before you hand the file on.")
        .arg(Formats{}.count(photos));
}

QString FileWords::copyOfLaterDay(const QString& copy)
{
    return tr("The copy “%1” beside it is of a day that is still to come: the clock was wrong when it was "
              "made.")
        .arg(copy);
}

QStringList FileWords::notCarried(const std::string& table, std::int64_t unread, bool endUnread,
                                  std::int64_t refused, std::int64_t lost)
{
    const QString name = QString::fromStdString(table);
    const auto count = [](std::int64_t rows) { return Formats{}.count(static_cast<int>(rows)); };
    QStringList said;
    if (unread > 0)
        said.append(tr("Rows of the table “%1” that stood where the file cannot be read: %2.")
                        .arg(name, count(unread)));
    if (endUnread)
        said.append(
            tr("How many rows of the table “%1” were lost behind the damage cannot be told.").arg(name));
    if (refused > 0)
        said.append(tr("Rows of the table “%1” that are none any more: %2.").arg(name, count(refused)));
    if (lost > 0)
        said.append(tr("Rows of the table “%1” left out because what they belong to was lost: %2.")
                        .arg(name, count(lost)));
    return said;
}

QString FileWords::exported(const QString& folder, const QStringList& files)
{
    return tr("Written to %1: %2.").arg(folder, files.join(tr(", ", "between file names")));
}

QString FileWords::foundBeforePrint(std::int64_t facts, const QString& whereItStands)
{
    return tr("%1 %2", "what was found in the file, where that stands")
        .arg(ChainWords::faults(facts), whereItStands);
}

QString FileWords::standsInReport()
{
    return tr("The report says so on its first page and lists them under “%1”.").arg(ChainWords::heading());
}

QString FileWords::standsInRecord()
{
    return tr("The print says so below its heading. “rigband-file check” lists them.");
}

QString FileWords::standsInCheck()
{
    return tr("The print tells nothing of them. “rigband-file check” lists them.");
}

QString FileWords::tablesOfChanged()
{
    return tr("Facts in this file were changed by another program. The tables tell them as they stand now, "
              "and cannot "
              "tell which they are: “rigband-file check” does.");
}

QStringList FileWords::nameless()
{
    return {tr("Letters stand for persons, numbers for airframes and gauges."),
            tr("Left out: notes, reasons, what was found and done, how a coupling is reached, roles, phone "
               "numbers, and how gauges were checked."),
            tr("Names of couplings stand as they were typed: look whether one of them names somebody. Days "
               "stay too, and whoever knows who rigged on a day can tell who a letter is.")};
}

QString FileWords::notThere(const QString& file)
{
    return tr("%1 is not there. Look whether its name, and that of its folder, are written rightly.")
        .arg(file);
}

QString FileWords::noFile(const QString& path)
{
    return tr("%1 is no file but a folder, a pipe or a device, so it was not read. Save what it holds as a "
              "file and name that.")
        .arg(path);
}

QString FileWords::noFolderFor(const QString& file)
{
    return tr("%1 cannot be made: its folder is not there. Look whether the name of the folder is written "
              "rightly, or make it first.")
        .arg(file);
}

QString FileWords::noFolder(const QString& path)
{
    return tr("%1 is no folder but a file, and was left as it is. Name a folder, or one that is to be made.")
        .arg(path);
}

QString FileWords::nothingToSalvage(const QString& damaged)
{
    return tr("Nothing could be read in %1, so no file was made. Open the latest copy from the folder beside "
              "it.")
        .arg(damaged);
}

QString FileWords::cannotMakeFolder(const QString& folder)
{
    return tr("The folder %1 is not there and cannot be made. Choose a place where you may write.")
        .arg(folder);
}

QString FileWords::cannotWrite(const QString& file)
{
    return tr("%1 cannot be written, so no table was kept. Look whether the folder may be written to and the "
              "disk has room, then try again.")
        .arg(file);
}

QString FileWords::cannotRead(const QString& file)
{
    return tr("%1 cannot be read, so nothing was imported. Look whether it is there and you may read it.")
        .arg(file);
}

QString FileWords::tableTooLarge(const QString& file)
{
    return tr("%1 is larger than a table may be, 20 MB, so nothing was imported. Part it into several.")
        .arg(file);
}

QString FileWords::made(const QString& file) { return tr("%1 was not there, and was made.").arg(file); }

QString FileWords::cannotBeMade(const QString& file)
{
    return tr("%1 is not there, and there is nothing to make it from. Name a file that is there, or give a "
              "table "
              "with --couplings, --people or --gauges too.")
        .arg(file);
}

QString FileWords::notKept(const QString& file)
{
    return tr("No file was made: %1 was not there before, and is not there now.").arg(file);
}

QString FileWords::noDay(const QString& day)
{
    return tr("“%1” is no day. Write it as 2026-06-14.").arg(day);
}

QString FileWords::futureDay(const QString& day)
{
    return tr("%1 is still to come: nothing is known of it yet. Name today or an earlier day.").arg(day);
}

QString FileWords::noSuchAirframe(const QString& file, const QString& registration)
{
    return tr("%1 knows no airframe %2. “rigband-file check” names those it knows.").arg(file, registration);
}

QString FileWords::daysReversed(const QString& from, const QString& to)
{
    return tr("%1 comes after %2: a period ends on the day it begins, or later.").arg(from, to);
}

QString FileWords::reportWritten(const QString& pdf, const QString& folder)
{
    return tr("Written: %1. Everything it rests on as tables: %2.").arg(pdf, folder);
}

QString FileWords::nothingRead(const QString& registration)
{
    return tr("No gap of %1 was read at a rigging in that period, and the report says so.").arg(registration);
}

QString FileWords::noRecord(const QString& registration)
{
    return tr("There is no such rigging record of %1. Without a day it is the last one that was closed.")
        .arg(registration);
}

QString FileWords::noRecordAt(const QString& registration, const QString& time, const QStringList& times)
{
    return tr("No rigging record of %1 began at %2 on that day. Those of the day began at %3.")
        .arg(registration, time, times.join(tr(", ", "between times")));
}

QString FileWords::recordsOfDay(const QStringList& times, const QString& printed)
{
    return tr("The day has %n rigging record(s), begun at %1. The one begun at %2 was written; add --time "
              "hh:mm for "
              "another.",
              nullptr, static_cast<int>(times.size()))
        .arg(times.join(tr(", ", "between times")), printed);
}

QString FileWords::noTime(const QString& time)
{
    return tr("%1 is no time. Write the hour and the minute, as in 08:05.").arg(time);
}

QString FileWords::noSuchGauge(const QString& file, const QString& gauge)
{
    return tr("%1 knows no leaf set or gauge in use with the name %2. It is the name on the case.")
        .arg(file, gauge);
}

QString FileWords::nothingToRig(const QString& registration)
{
    return tr("%1 has no couplings yet, so there is nothing to put on a sheet.").arg(registration);
}

QString FileWords::nothingOnCard(const QString& registration)
{
    return tr("%1 has no couplings yet, so there is nothing to put on a card.").arg(registration);
}

QString FileWords::salvaged(int facts, const QString& into)
{
    return tr("Facts read and kept in %2: %1. The damaged file was left as it is. Not all may have been "
              "readable: "
              "look over what the new file holds before going on.")
        .arg(Formats{}.count(facts), into);
}

QString FileWords::demoWritten(const QString& file)
{
    return tr("%1 now holds the invented hangar. None of its airframes and people exist.").arg(file);
}

} // namespace rig
