#include "app/wording/rigged_words.h"

#include "app/wording/formats.h"

#include <cmath>

namespace rig {

QString RiggedWords::answer(Answer answer)
{
    switch (answer) {
    case Answer::Yes:
        return tr("Yes");
    case Answer::No:
        return tr("No");
    case Answer::CannotSee:
        break;
    }
    return tr("Cannot see");
}

QString RiggedWords::answerWithKey(Answer which)
{
    const auto keyOf = [which] {
        switch (which) {
        case Answer::Yes:
            return keyYes();
        case Answer::No:
            return keyNo();
        case Answer::CannotSee:
            break;
        }
        return keyCannotSee();
    };
    return tr("%1  (%2)", "answer and its key").arg(answer(which), keyOf());
}

QString RiggedWords::question(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("1  Ball in the socket?");
    case CheckKind::PlungerHome:
        return tr("2  Plunger home?");
    case CheckKind::SleeveAtStop:
        return tr("3  Sleeve at its stop?");
    case CheckKind::Pull:
        return tr("Pull: nothing moves?");
    case CheckKind::Secured:
        break;
    }
    return tr("Secured?");
}

QString RiggedWords::hint(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("See the ball itself.");
    case CheckKind::PlungerHome:
        return tr("Tab in its place, witness hole clear.");
    case CheckKind::SleeveAtStop:
        return tr("No thread showing, hand off.");
    case CheckKind::Pull:
        return tr("A firm pull on the rod away from the ball, and slightly off it. Fingers off plunger and "
                  "sleeve.");
    case CheckKind::Secured:
        break;
    }
    return secureHint(Securing::SleeveAndPin);
}

QString RiggedWords::secureHint(Securing securing)
{
    switch (securing) {
    case Securing::Sleeve:
        return tr("Sleeve at its stop, by itself. Tape over the hatch is no lock.");
    case Securing::Pin:
        return tr("Pin through the witness hole, and closed.");
    case Securing::SleeveAndPin:
        break;
    }
    return tr("Sleeve at its stop, pin through the witness hole.");
}

QString RiggedWords::startSentence()
{
    return tr("One coupling at a time: look, measure, pull, second person. Every answer and every reading is "
              "kept the moment it is given.");
}

QString RiggedWords::takenApartWhy()
{
    return tr("Notes the de-rigging with today's date, so that riggings are counted and not guessed.");
}

QString RiggedWords::sinceThen()
{
    return tr("Since the last record: was it taken apart? A rigging is counted only when it was.");
}

QString RiggedWords::chooseSinceThen()
{
    return tr("Say first whether it was taken apart since the last record.");
}

QString RiggedWords::seasonSentence()
{
    return tr("The first record of the year. After a winter the hands and the joints are out of practice: go "
              "through this before the first coupling. Each tick is kept at once, with the leader's name.");
}

QString RiggedWords::seasonDetail(int left)
{
    return left == 0 ? tr("done") : tr("%n step(s) to do", nullptr, left);
}

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
    case TickKind::HatchesOn:
        break;
    }
    return tr("Hatches closed and taped, nothing loose inside");
}

QString RiggedWords::otherHandsSuggested(const QString& who, const QString& otherSide)
{
    return tr("%1 did %2 as well. Where two are present, let another person do this side.")
        .arg(who, otherSide);
}

QString RiggedWords::readingsAgree(const QString& smallest, const QString& limit)
{
    return tr("Both readings agree: at least %1 mm apart, and measuring alone explains %2 mm.")
        .arg(smallest, limit);
}

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
    const int together = static_cast<int>(std::lround(shift.sameSignShare * shift.scores));
    const QString many = Formats{}.count(together);
    const QString all = Formats{}.count(shift.scores);
    return shift.mean > 0 ? tr("%1 of %2 couplings read high together today. Doubt the leaf set, whoever "
                               "measures and the cold before any coupling.")
                                .arg(many, all)
                          : tr("%1 of %2 couplings read low together today. Doubt the leaf set, whoever "
                               "measures and the cold before any coupling.")
                                .arg(many, all);
}

QString RiggedWords::looksSwapped(const QString& otherSide)
{
    return tr("This reading fits the band of %1, and the reading there fits this one. Was a side taken for "
              "the "
              "other, or are the rods crossed? A question is open.")
        .arg(otherSide);
}

QString RiggedWords::noAirframe()
{
    return tr("This file knows no airframe yet. Begin in Set up (Ctrl+5).");
}

QString RiggedWords::noCouplings()
{
    return tr("No couplings are set up for this airframe. Add them in Set up (Ctrl+5).");
}

QString RiggedWords::noPeople()
{
    return tr("A record needs two people. Add them in Set up (Ctrl+5).");
}

QString RiggedWords::noGauges()
{
    return tr("No leaf set is set up. Add one in Set up (Ctrl+5) before you measure.");
}

QString RiggedWords::leftFromAnotherDay(const QString& day)
{
    return tr("The record begun on %1 was never closed. Nothing is carried over: a new record starts whole, "
              "and "
              "the old one stays, marked as abandoned.")
        .arg(day);
}

QString RiggedWords::lastRecord(const QString& day, Closing how, const QString& first, const QString& second)
{
    if (first.isEmpty())
        return tr("Last record: %1, %2.").arg(day, closing(how));
    return tr("Last record: %1, %2, stated by %3 and %4.").arg(day, closing(how), first, second);
}

QString RiggedWords::closing(Closing closing)
{
    switch (closing) {
    case Closing::Complete:
        return tr("closed with all steps done");
    case Closing::LeftOpen:
        return tr("closed with open items");
    case Closing::Abandoned:
        break;
    }
    return tr("abandoned");
}

QString RiggedWords::lookFirst()
{
    return tr("The look comes first: an empty socket can show a normal gap. Measuring opens once the ball is "
              "seen in the socket and plunger and sleeve are answered for.");
}

QString RiggedWords::readNow()
{
    return tr(
        "Clean leaf, square to the faces, no force. Press the thickest leaf that enters freely, or type its "
        "size.");
}

QString RiggedWords::choosePersonFirst()
{
    return tr("Choose who measures first. Nobody is filled in for you.");
}

QString RiggedWords::chooseSecondFirst()
{
    return tr("Choose the second person first. Nobody is filled in for you.");
}

QString RiggedWords::chooseGaugeFirst()
{
    return tr("Choose the leaf set or gauge you hold before you read.");
}

QString RiggedWords::alreadyRead()
{
    return tr("This coupling is read already. Press %1 to measure again, or %2 when the leaf was wrong.")
        .arg(keyMeasureAgain(), keyCorrect());
}

QString RiggedWords::chooseWhoTookApart()
{
    return tr("Choose your name first: the history says who took it apart.");
}

QString RiggedWords::begunInAnotherWindow(const QString& time)
{
    return tr("This rigging was begun in another window at %1. It goes on here: both windows write into the "
              "same "
              "record.")
        .arg(time);
}

QString RiggedWords::interval(const QString& interval, Technique technique)
{
    switch (technique) {
    case Technique::Stack:
        return tr("%1, two leaves stacked").arg(interval);
    case Technique::NoLeafEnters:
        return tr("%1: no leaf enters").arg(interval);
    case Technique::ThickestLoose:
        return tr("%1: the thickest leaf is still loose").arg(interval);
    case Technique::Pin:
        return tr("%1 by pin").arg(interval);
    case Technique::Taper:
        return tr("%1 by taper gauge").arg(interval);
    case Technique::Leaf:
    case Technique::Table:
        break;
    }
    return interval;
}

QString RiggedWords::correctQuestion()
{
    return tr(
        "The reading just kept stays in the history, struck through. Say what went wrong with it; then read "
        "again.");
}

QString RiggedWords::correctNow()
{
    return tr("Read again: the next reading takes the place of the wrong one.");
}

QString RiggedWords::secondOptional()
{
    return tr("An own reading is welcome and not required. Nothing of the first person's is shown.");
}

QString RiggedWords::secondMustDiffer()
{
    return tr("The second person has to be somebody who did not do this coupling first.");
}

QString RiggedWords::doubtHere()
{
    return tr(
        "“No” or “cannot see” was answered here. It stands, and the record cannot be closed as complete. "
        "Leave the joint as it is until a person entitled to decide has looked at it.");
}

QString RiggedWords::nothingOpen()
{
    return tr("Every coupling was looked at, read, pulled, and looked at and pulled by a second person. That "
              "is what "
              "was stated here and no more than that.");
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
        return tr("%1: no second person's look and pull").arg(name);
    case OpenItemKind::Doubted:
        return tr("%1: “no” or “cannot see” was answered").arg(name);
    case OpenItemKind::OutsideReading:
        return tr("%1: a reading outside its band").arg(name);
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
    case OpenItemKind::SurfaceDoubted:
        return tr("%1: the control check found something that is not yet explained").arg(name);
    case OpenItemKind::NoSurfaces:
        return tr("Control check: no surfaces are set up yet");
    case OpenItemKind::SeasonList:
        break;
    }
    return tr("The list for the first rigging of the season is not finished");
}

QString RiggedWords::twoNames()
{
    return tr("Two different people state this record. Nobody is filled in for you.");
}

QString RiggedWords::namesMustDiffer()
{
    return tr("Both names are the same. The second person has to be somebody else.");
}

QString RiggedWords::namesMissing()
{
    return tr("Choose both names to close the record.");
}

QString RiggedWords::toolsMissing()
{
    return tr("Count leaves, mirror, torch and tools back out and look at the hatches, then tick both.");
}

QString RiggedWords::cautionLast()
{
    return tr(
        "These are the owner's measurements and statements, not an aircraft record, inspection or release. "
        "Manuals, directives, local rules and persons entitled to decide prevail.");
}

} // namespace rig
