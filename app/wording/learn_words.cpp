#include "app/wording/learn_words.h"

namespace rig {

QString LearnWords::thisAirframe() { return tr("This airframe"); }
QString LearnWords::whoLearns() { return tr("Wh&o learns"); }
QString LearnWords::choosePerson() { return tr("Choose a person"); }
QString LearnWords::chooseWhoLearns()
{
    return tr("Choose who learns, at the left. What is practised is kept under that name.");
}
QString LearnWords::noAirframe() { return tr("There is no airframe yet. Add one in Set up."); }
QString LearnWords::noCouplings() { return tr("This airframe has no couplings yet. Add them in Set up."); }
QString LearnWords::couplings() { return tr("Couplings in the order of rigging"); }
QString LearnWords::grantsNothing()
{
    return tr(
        "Practice grants nothing. Who may rig, inspect or fly is decided by the rules that apply and the "
        "persons entitled to decide.");
}
QString LearnWords::saveCard() { return tr("Card to print and &fold …"); }
QString LearnWords::listKeys() { return tr("Up and Down: another coupling."); }

QString LearnWords::partCoupling() { return tr("&Look at it"); }
QString LearnWords::partPractice() { return tr("&Practice"); }
QString LearnWords::partRecall() { return tr("&Calls and order"); }
QString LearnWords::partSignOff() { return tr("&Riggings and sign-off"); }
QString LearnWords::partMeasuring() { return tr("&Measuring"); }
QString LearnWords::partStudy() { return tr("Crossed st&udy"); }

QString LearnWords::notAsked() { return tr("not practised yet"); }

QString LearnWords::asked(const LastRound& last)
{
    if (last.missedPartSeated > 0)
        return tr("part-seated missed: %n", "", last.missedPartSeated);
    if (last.missedNotSecured > 0)
        return tr("not secured missed: %n", "", last.missedNotSecured);
    if (last.missedEmpty > 0)
        return tr("empty socket missed: %n", "", last.missedEmpty);
    return tr("%1 of %2 right").arg(last.right).arg(last.asked);
}

QString LearnWords::notPractised(CouplingKind kind)
{
    return kind == CouplingKind::ByItself ? tr("connects by itself") : tr("no ball joint");
}

QString LearnWords::heading(const QString& coupling)
{
    return tr("%1: seated and part-seated", "a coupling").arg(coupling);
}
QString LearnWords::schematic()
{
    return tr(
        "Schematic. Only the gap is to scale: the middle of this coupling’s own readings, no limit and no "
        "aim.");
}
QString LearnWords::lockedHere() { return tr("How locked looks here: a drawing, not today’s joint"); }
QString LearnWords::tryIt() { return tr("Try it"); }
QString LearnWords::sliderKeys(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Pin:
        return tr("Drag the ball, or press Left and Right. P: pin. B: the ball away and back.");
    case CouplingKind::SleeveAndPin:
        return tr("Drag the ball, or press Left and Right. S: sleeve. P: pin. B: the ball away and back.");
    case CouplingKind::Sleeve:
    case CouplingKind::ByItself:
    case CouplingKind::WaterBallast:
    case CouplingKind::Other:
        break;
    }
    return tr("Drag the ball, or press Left and Right. S: sleeve. B: the ball away and back.");
}
QString LearnWords::whatIsSeen() { return tr("What can be seen from the access"); }

namespace {

QString mirrorHelps(AccessSide side)
{
    switch (side) {
    case AccessSide::Above:
        return LearnWords::tr("A mirror helps from above.");
    case AccessSide::Below:
        return LearnWords::tr("A mirror helps from below.");
    case AccessSide::Front:
        return LearnWords::tr("A mirror helps from the front.");
    case AccessSide::Rear:
        return LearnWords::tr("A mirror helps from the rear.");
    case AccessSide::Left:
        return LearnWords::tr("A mirror helps from the left.");
    case AccessSide::Right:
        return LearnWords::tr("A mirror helps from the right.");
    case AccessSide::Unknown:
        break;
    }
    return {};
}

QString seenFromSide(AccessSide side)
{
    switch (side) {
    case AccessSide::Above:
        return LearnWords::tr("Seen from above.");
    case AccessSide::Below:
        return LearnWords::tr("Seen from below.");
    case AccessSide::Front:
        return LearnWords::tr("Seen from the front.");
    case AccessSide::Rear:
        return LearnWords::tr("Seen from the rear.");
    case AccessSide::Left:
        return LearnWords::tr("Seen from the left.");
    case AccessSide::Right:
        return LearnWords::tr("Seen from the right.");
    case AccessSide::Unknown:
        break;
    }
    return LearnWords::tr(
        "Nobody has said from which side this coupling is seen; it is drawn as seen from above. "
        "Set up, Couplings.");
}

} // namespace

QStringList LearnWords::seenFrom(AccessSide side, AccessSide mirror)
{
    QStringList sentences{seenFromSide(side), mirrorHelps(mirror)};
    sentences.removeAll(QString{});
    return sentences;
}

QString LearnWords::withTorch() { return tr("With a &torch"); }
QString LearnWords::withMirror() { return tr("With a m&irror"); }
QString LearnWords::access(const QString& access) { return tr("Access: %1").arg(access); }
QString LearnWords::leafGoes(const QString& place) { return tr("The leaf goes in: %1").arg(place); }

QString LearnWords::allReadings(int locked, int partSeated)
{
    if (partSeated == 0)
        return tr("%n locked reading(s) of this fitting", "", locked);
    return tr("Locked readings of this fitting: %1. Part-seated on purpose: %2.").arg(locked).arg(partSeated);
}
QString LearnWords::neverShown()
{
    return tr("Part-seated was never shown on this coupling: how wide its gap is then is not known.");
}
QString LearnWords::gapTellsNothing()
{
    return tr(
        "On this coupling the gap cannot tell locked from part-seated: they overlap. Here the gap is no "
        "sign at all.");
}
QString LearnWords::noReadings()
{
    return tr("There is no reading of this coupling yet: how wide its gap is when locked is not known.");
}
QString LearnWords::photos() { return tr("Photos"); }

QString LearnWords::photoOf(PhotoOf of)
{
    switch (of) {
    case PhotoOf::Locked:
        return tr("Locked");
    case PhotoOf::PartSeated:
        return tr("Part-seated on purpose");
    case PhotoOf::Empty:
        return tr("Empty");
    case PhotoOf::Access:
        break;
    }
    return tr("Access");
}
QString LearnWords::photoNoted(PhotoOf of, const QString& note)
{
    return tr("%1: %2", "what a photo shows, its note").arg(photoOf(of), note);
}
QString LearnWords::noPhotos()
{
    return tr("No photo of this coupling yet. Set up, Couplings, takes one in.");
}
QString LearnWords::byItself()
{
    return tr(
        "This one connects by itself when the parts are rigged: there is no ball, no plunger and no gap. Its "
        "manual says how to see that it is engaged and locked. Look, let a second person look, then the "
        "control check.");
}
QString LearnWords::otherKind()
{
    return tr(
        "This is no ball joint. Its manual says how it stands when it is connected. Look and pull, let a "
        "second person do the same, then the control check.");
}

} // namespace rig
