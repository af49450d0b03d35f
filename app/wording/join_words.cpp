#include "app/wording/join_words.h"

#include "app/wording/chain_words.h"
#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"
#include "core/clock.h"

#include <map>

namespace rig {

namespace {

QString number(std::int64_t facts) { return Formats{}.count(static_cast<int>(facts)); }

QString found(const QString& file, const FaultyFact& fact)
{
    return JoinWords::tr("%1: %2", "the name of a file, and what was found in it")
        .arg(file, ChainWords::fault(fact));
}

} // namespace

QString JoinWords::kind(const std::string& table)
{
    const std::map<std::string, QString> kinds{
        {"person", tr("People")},
        {"airframe", tr("Airframes")},
        {"gauge", tr("Leaf sets and gauges")},
        {"gauge_check", tr("Checks of gauges")},
        {"coupling", tr("Couplings")},
        {"fitting", tr("Fittings")},
        {"event", tr("Events")},
        {"rigging_record", tr("Rigging records")},
        {"answer", tr("Looks and pulls")},
        {"reading", tr("Readings")},
        {"exclusion", tr("Readings struck or left out")},
        {"baseline", tr("Frozen baselines")},
        {"closing", tr("Closings of records")},
        {"surface", tr("Control surfaces")},
        {"question", tr("Questions")},
        {"resolution", tr("Answers to questions")},
        {"photo", tr("Photos")},
    };
    const auto known = kinds.find(table);
    return known == kinds.end() ? tr("Other facts") : known->second;
}

QStringList JoinWords::findings(const QString& file, const ChainState& chain)
{
    QStringList lines;
    for (const FaultyFact& fact : chain.told)
        lines << found(file, fact);
    if (const auto more = chain.faults - static_cast<std::int64_t>(chain.told.size()); more > 0)
        lines << tr("%1: %2 more are not listed.").arg(file, number(more));
    return lines;
}

QString JoinWords::lookFirst()
{
    return tr(
        "Nothing was written. Look at these facts, compare them with the copies beside the file and with "
        "prints, and ask who changed them. To go on with the files as they were found, add --as-found.");
}

QString JoinWords::wholeInstead()
{
    return tr("Nothing was written: a part has a chain of its own, which would no longer show what was "
              "changed. Look at "
              "these facts, compare them with the copies beside the file and with prints, or hand the whole "
              "file on.");
}

QString JoinWords::leftOut(const FaultyFact& fact)
{
    return tr("Changed by another program in one of the files, and taken as the other has it: %1. It said: "
              "%2.")
        .arg(ChainWords::fact(fact), ChainWords::says(fact));
}

QString JoinWords::undecided(const FaultyFact& ours, const FaultyFact& theirs)
{
    return tr("The files say different things of one fact, and nothing tells which was saved: %1. The first "
              "says: %2. The other says: %3.")
        .arg(ChainWords::fact(ours), ChainWords::says(ours), ChainWords::says(theirs));
}

QString JoinWords::nothingJoined()
{
    return tr(
        "Nothing was joined. Find out which of these is right, from the copies beside the files and from "
        "prints, and join the copy that has it.");
}

QString JoinWords::onlyIn(const QString& file, std::int64_t facts)
{
    return tr("Facts that stand in %1 alone: %2.").arg(file, number(facts));
}

QString JoinWords::joined(const QString& out, const FileEnd& end)
{
    return tr("Written to %1: %2 facts, end %3.")
        .arg(out, number(end.facts), QString::fromStdString(shortForm(end.hash)));
}

QString JoinWords::takeIn() { return tr("Take in another file …"); }
QString JoinWords::openOneFirst() { return tr("Open your own file first, then take another one in."); }
QString JoinWords::takeInTitle() { return tr("Take in another file"); }
QString JoinWords::takeInYes() { return tr("Take it in"); }

QString JoinWords::nothingNew(const QString& file)
{
    return tr("All that stands in %1 is in this file already. Nothing was taken in.").arg(file);
}

QString JoinWords::kinds(const QStringList& kinds) { return kinds.join(tr("; ", "between kinds of facts")); }

QString JoinWords::kindCount(const std::string& table, std::int64_t facts)
{
    return tr("%1: %2", "a kind of facts and how many").arg(kind(table), number(facts));
}

QString JoinWords::whatIsNew(const QString& file, const QString& kinds)
{
    return tr("New in %1: %2.").arg(file, kinds);
}

QString JoinWords::readingsOf(const QStringList& couplings, Day first, Day last)
{
    const QString names = SentenceParts::list(couplings);
    return first == last ? tr("The readings are of %1, on %2.").arg(names, Formats{}.day(first))
                         : tr("The readings are of %1, from %2 to %3.")
                               .arg(names, Formats{}.day(first), Formats{}.day(last));
}

QString JoinWords::stillFound(std::int64_t faults)
{
    return tr("Another program has changed what was saved. Facts that are in question: %1.")
        .arg(number(faults));
}

QString JoinWords::conflictsArise(const QStringList& titles)
{
    return tr("What a person has to decide afterwards: %1.").arg(kinds(titles));
}

QString JoinWords::copyIsKept()
{
    return tr("A copy of this file as it is now is kept in the folder of copies beside it. The other file is "
              "only read.");
}

QString JoinWords::cameIn(const QString& file, std::int64_t facts, const FileEnd& end)
{
    return tr("Taken in from %1: %2 facts. This file now holds %3 facts and ends with %4.")
        .arg(file, number(facts), number(end.facts), QString::fromStdString(shortForm(end.hash)));
}

QString JoinWords::nothingTakenIn()
{
    return tr("Nothing was taken in. Find out which of these is right, from the copies beside the files and "
              "from prints, and take in the copy that has it.");
}

QString JoinWords::handedOn(const QString& airframe, const QString& out, const FileEnd& end)
{
    return tr("Written to %1: %2 with all that belongs to it, %3 facts, end %4.")
        .arg(out, airframe, number(end.facts), QString::fromStdString(shortForm(end.hash)));
}

QString JoinWords::handedOnFrom(const QString& file, const FileEnd& original)
{
    return tr("They were taken over from %1, which held %2 facts and ended with %3 then. Write that down: "
              "the "
              "new file cannot show that nothing was changed before.")
        .arg(file, number(original.facts), QString::fromStdString(shortForm(original.hash)));
}

} // namespace rig
