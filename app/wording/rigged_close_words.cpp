#include "app/wording/cause_words.h"
#include "app/wording/formats.h"
#include "app/wording/record_words.h"
#include "app/wording/rigged_words.h"

namespace rig {

QString RiggedWords::seasonTitle(bool isNotKnown)
{
    return isNotKnown ? tr("First rigging in this file") : tr("First rigging of the season");
}

QString RiggedWords::seasonNotKnown(int riggingsBefore)
{
    return tr(
        "%n rigging(s) before this file are stated in Set up, and not when they were: whether this is the "
        "first of the season is not known here. Where it is, go through this before the first coupling; "
        "where it is not, go on without it. Each tick is kept at once, with the leader's name.",
        nullptr, riggingsBefore);
}

QString RiggedWords::afterLayoff(int weeks, const QString& since)
{
    return tr("First rigging after a layoff: none in this file for %n week(s), since %1.", nullptr, weeks)
        .arg(since);
}

QString RiggedWords::seasonSentence(bool isFirstOfYear)
{
    if (!isFirstOfYear)
        return tr("After so long hands are out of practice and grease may have set: go through this before "
                  "the first coupling. Each tick is kept at once, with the leader's name.");
    return tr(
        "The first record of the year. After a winter hands are out of practice and grease may have set: go "
        "through this before the first coupling. Each tick is kept at once, with the leader's name.");
}

QString RiggedWords::seasonDetail(int left)
{
    return left == 0 ? tr("done") : tr("%n step(s) to do", nullptr, left);
}

QString RiggedWords::seasonNext() { return tr("To the couplings  (Enter)"); }

QString RiggedWords::tick(TickKind kind)
{
    switch (kind) {
    case TickKind::SeasonCleaned:
        return tr("Balls and sockets cleaned; plungers snap home, sleeves move freely");
    case TickKind::SeasonGreased:
        return tr("Greased as the manual says, a thin film");
    case TickKind::SeasonLeaves:
        return tr(
            "Leaf sets checked against a micrometer or a block, and looked at for bent or burred leaves");
    case TickKind::SeasonRefresher:
        return tr("Everybody who rigs has looked at every coupling locked, part-seated and empty again");
    case TickKind::ToolsOut:
        return tr("Leaves, mirror, torch, cloth, pins and tools counted back out");
    case TickKind::NoteRead:
        return tr("The note left earlier was read");
    case TickKind::HatchesOn:
        break;
    }
    return tr("Hatches closed and taped, nothing loose inside");
}

QString RiggedWords::otherHandsSuggested(const QString& who, const QString& otherSide)
{
    return tr("%1 did %2 as well. Where two are present, let each do one side.").arg(who, otherSide);
}

QString RiggedWords::readingsAgree(const QString& smallest, const QString& limit)
{
    return tr("Both readings agree: at least %1 mm apart, and measuring alone explains %2 mm.")
        .arg(smallest, limit);
}

QString RiggedWords::readingsAreSame() { return tr("Both readings agree: the same interval."); }

QString RiggedWords::readingsDisagree(const QString& smallest, const QString& limit, int pairs)
{
    const QString found =
        tr("The two readings lie at least %1 mm apart; measuring alone explains %2 mm. Both "
           "stand, neither is averaged, and a question is open.")
            .arg(smallest, limit);
    return pairs > 0 ? found
                     : found + QLatin1Char{' '} +
                           tr("(The figure is common practice, until ten pairs of your own are there.)");
}

QString RiggedWords::readingsUnresolved(const QString& limit)
{
    return tr("The two readings may or may not differ by more than measuring explains (%1 mm). Both stand.")
        .arg(limit);
}

QString RiggedWords::sharedShift(const numbers::SharedShift& shift)
{
    const QString many = Formats{}.count(static_cast<int>(std::lround(shift.sameSignShare * shift.scores)));
    const QString all = Formats{}.count(shift.scores);
    const QString together = shift.mean > 0
                                 ? tr("%1 of %2 couplings read high together today.").arg(many, all)
                                 : tr("%1 of %2 couplings read low together today.").arg(many, all);
    return QStringList{together, CauseWords::whenTogether(), CauseWords::stiffGrease()}.join(
        QLatin1Char(' '));
}

QString RiggedWords::looksSwapped(const QString& otherSide)
{
    return tr("This reading fits the band of %1, and the reading there fits this one. Was a side taken for "
              "the "
              "other, or are the rods crossed? A question is open.")
        .arg(otherSide);
}

QString RiggedWords::closeTitle() { return tr("Close the rigging record"); }
QString RiggedWords::openHeading() { return tr("Still open"); }
QString RiggedWords::listedHeading() { return tr("Stays in the record"); }

QString RiggedWords::nothingOpen(bool everythingEverywhere)
{
    if (!everythingEverywhere)
        return tr("Every coupling was looked at, read where there is a gap, pulled where there is something "
                  "to pull, and looked at by a second person likewise. That is what was stated here and no "
                  "more than that.");
    return tr("Every coupling was looked at, read, pulled, and looked at and pulled by a second person. That "
              "is what "
              "was stated here and no more than that.");
}

QString RiggedWords::notSeen(const QString& coupling, CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("%1: the ball was not seen").arg(coupling);
    case CheckKind::PlungerHome:
        return tr("%1: the plunger was not seen").arg(coupling);
    case CheckKind::SleeveAtStop:
        return tr("%1: the sleeve was not seen").arg(coupling);
    case CheckKind::PinThrough:
        return tr("%1: the safety pin was not seen").arg(coupling);
    case CheckKind::Engaged:
    case CheckKind::NoStep:
    case CheckKind::LineConnected:
    case CheckKind::Connected:
        return tr("%1: the joint was not seen").arg(coupling);
    case CheckKind::Pull:
    case CheckKind::Secured:
        break;
    }
    return tr("%1: the lock was not seen").arg(coupling);
}

QString RiggedWords::openItem(const OpenItem& item, const QString& name)
{
    switch (item.kind) {
    case OpenItemKind::NotLooked:
        return tr("%1: the look is not finished").arg(name);
    case OpenItemKind::NotMeasured:
        return tr("%1: not measured").arg(name);
    case OpenItemKind::NotPulled:
        return tr("%1: not pulled").arg(name);
    case OpenItemKind::NotSecured:
        return tr("%1: not secured").arg(name);
    case OpenItemKind::NoSecondPerson:
        return item.pulls ? tr("%1: no second person's look and pull").arg(name)
                          : tr("%1: no second person's look").arg(name);
    case OpenItemKind::SecondInParts:
        return item.pulls
                   ? tr("%1: several persons looked and pulled as the second, and none of them did all of it")
                         .arg(name)
                   : tr("%1: several persons looked as the second, and none of them saw all of it").arg(name);
    case OpenItemKind::NotSeen:
        return notSeen(name, item.check.value_or(CheckKind::BallInSocket));
    case OpenItemKind::Doubted:
        return tr("%1: “no” was answered").arg(name);
    case OpenItemKind::OutsideReading:
        return item.isSlip ? tr("%1: a reading outside its band, taken back since as a slip; the stop stays "
                                "until a named person has said what was found")
                                 .arg(name)
                           : tr("%1: a reading outside its band").arg(name);
    case OpenItemKind::ReadingsDisagree:
        return tr("%1: the two persons' readings disagree").arg(name);
    case OpenItemKind::SidesSwapped:
        return tr("%1: left and right look swapped").arg(name);
    case OpenItemKind::NotJudged:
        return tr("%1: no band yet, the reading could not be judged").arg(name);
    case OpenItemKind::CannotTell:
        return tr("%1: the gap could not tell").arg(name);
    case OpenItemKind::SurfaceNotChecked:
        return tr("%1: the control check is not finished").arg(name);
    case OpenItemKind::SurfaceSetBack:
        return tr("%1: to be tried again, somebody was at %2 after the control check", "surface, coupling")
            .arg(name, QString::fromStdString(item.by));
    case OpenItemKind::SurfaceDoubted:
        return tr("%1. %2. Nobody has said what was found.", "surface; what happened there")
            .arg(name, item.question ? RecordWords::question(*item.question)
                                     : RecordWords::question(QuestionKind::SurfaceDoubt));
    case OpenItemKind::NoSurfaces:
        return tr("Control check: no surfaces are set up yet");
    case OpenItemKind::SeasonList:
        break;
    }
    return tr("The list for the first rigging of the season is not finished");
}

QStringList RiggedWords::openLines(std::span<const OpenItem> items,
                                   const std::function<QString(const std::string&)>& named)
{
    QStringList lines;
    for (auto one = items.begin(); one != items.end();) {
        QStringList names;
        const OpenItem& said = *one;
        for (; one != items.end() && (&*one == &said || one->isLike(said)); ++one)
            names << named(one->name);
        lines << openItem(said, names.join(tr(", ", "between names")));
    }
    return lines;
}

QString RiggedWords::ledByAnother(const QString& leader)
{
    return tr("%1 began this record as its rigging leader. The printed record names both.").arg(leader);
}

QString RiggedWords::twoNames()
{
    return tr("Two different people state this record. Nobody is filled in for you.");
}

QString RiggedWords::firstName() { return tr("Rigging leader"); }
QString RiggedWords::secondName() { return tr("Second person"); }

QString RiggedWords::namesMustDiffer()
{
    return tr("Both names are the same. The second person has to be somebody else.");
}

QString RiggedWords::namesMissing() { return tr("Choose both names to close the record."); }

QString RiggedWords::toolsMissing()
{
    return tr("Count leaves, mirror, torch and tools back out and look at the hatches, then tick both.");
}

QString RiggedWords::closeComplete() { return tr("Close the record, every step done and nothing open"); }
QString RiggedWords::closeLeftOpen() { return tr("Close with the open items listed"); }
QString RiggedWords::noteLabel() { return tr("Note"); }
QString RiggedWords::noteHint() { return tr("What the next person ought to know"); }

QString RiggedWords::cautionLast()
{
    return tr(
        "These are the owner's measurements and statements, not an aircraft record, inspection or release. "
        "Manuals, directives, local rules and persons entitled to decide prevail.");
}

} // namespace rig
