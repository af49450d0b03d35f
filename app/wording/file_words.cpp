#include "app/wording/file_words.h"

#include "app/wording/formats.h"

namespace rig {

QString FileWords::usage()
{
    return tr(
        "Use one of these:\n"
        "  rigband-file demo OUT.rigband                 writes an invented hangar to look around in\n"
        "  rigband-file check FILE                       says what is in a file, or what is wrong with it\n"
        "  rigband-file export FILE --csv FOLDER         writes the file's facts as tables\n"
        "  rigband-file import FILE [--couplings X.csv] [--people X.csv] [--gauges X.csv]\n"
        "                      [--events X.csv] [--joint-play X.csv] [--csv READINGS.csv]\n"
        "                                                adds these tables to a file, all of them or none;\n"
        "                                                where the file is not there yet, --couplings,\n"
        "                                                --people or --gauges makes it\n"
        "  rigband-file record FILE --airframe REG --out X.pdf [--day yyyy-mm-dd] [--letter]\n"
        "                                                a rigging record as pages to print\n"
        "  rigband-file report FILE --airframe REG --out X.pdf [--day yyyy-mm-dd] [--letter]\n"
        "                      [--from yyyy-mm-dd] [--to yyyy-mm-dd] [--without-appendix]\n"
        "                      [--earlier ABCDE-FG234,...]\n"
        "                                                the engineer's report since the last annual, up to\n"
        "                                                a day or between two; its tables come beside it,\n"
        "                                                in the folder X-csv, whole also where the appendix\n"
        "                                                of lists, looks and control checks is left out\n"
        "  rigband-file sheet FILE --airframe REG --out X.pdf [--gauge NAME] [--letter | --a5]\n"
        "                                                boxes to tick by hand at a rigging without the\n"
        "                                                program; the gauge is the one that was last used\n"
        "  rigband-file card FILE --airframe REG --out X.pdf\n"
        "                                                a card to fold once: where the couplings are, what\n"
        "                                                locked looks like, whom to call; A5, both sides\n"
        "  rigband-file salvage FILE OUT.rigband         reads what can be read of a damaged file\n"
        "Nothing that is there already is ever written over.");
}

QString FileWords::unknownVerb(const QString& verb)
{
    return tr("“%1” is nothing that can be done here.").arg(verb);
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

QString FileWords::noAirframes() { return tr("It holds no airframe yet."); }

QString FileWords::airframe(const AirframeTally& tally)
{
    return tr("Airframe %1. Couplings: %2. Riggings: %3. Readings: %4.")
        .arg(tally.registration, Formats{}.count(tally.couplings), Formats{}.count(tally.riggings),
             Formats{}.count(tally.readings));
}

QString FileWords::cannotStand(const QString& what)
{
    return tr("This cannot stand in a file, and was not written by Rigband: %1.").arg(what);
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

QString FileWords::exported(const QString& folder, const QStringList& files)
{
    return tr("Written to %1: %2.").arg(folder, files.join(tr(", ", "between file names")));
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
