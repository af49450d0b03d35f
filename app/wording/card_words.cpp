#include "app/wording/card_words.h"

#include "app/wording/coupling_words.h"
#include "app/wording/lesson_picture_words.h"
#include "app/wording/sentence_parts.h"

namespace rig {

QString CardWords::title() { return tr("Where its couplings are, and what locked looks like"); }

QString CardWords::fileName(const QString& registration)
{
    return tr("%1-card.pdf", "a file's name: registration").arg(SentenceParts::inFileName(registration));
}

QString CardWords::whatThisIs()
{
    return tr("For whoever stands at the glider and knows it less well. It does not say how any joint stands "
              "today: that takes the look, the gap, the pull and the second person.");
}

QString CardWords::plan(bool hasSquare)
{
    return hasSquare
               ? tr("From above, nose up. Numbers in the order of rigging. L is the left wing, with the "
                    "red light, R the right one, with the green. A square connects by itself.")
               : tr("From above, nose up. Numbers in the order of rigging. L is the left wing, with the "
                    "red light, R the right one, with the green.");
}

QString CardWords::callTitle() { return tr("When something does not stand as it should"); }

QString CardWords::call(const QString& callName)
{
    if (callName.isEmpty())
        return tr("Stop, leave everything as it is, and call the person entitled to decide.");
    return tr("Stop, leave everything as it is, and call %1.").arg(callName);
}

QString CardWords::foot()
{
    return tr("No band and no limit stands on this card. Not an aircraft record, inspection or release. "
              "Manuals, directives and persons entitled to decide prevail.");
}

QString CardWords::inOrder() { return tr("In the order of rigging"); }

QString CardWords::side(Side side) { return side == Side::None ? QString{} : CouplingWords::sideName(side); }

QString CardWords::seenFrom(AccessSide side, AccessSide mirrorFrom)
{
    const bool isSaid = side != AccessSide::Unknown;
    if (mirrorFrom == AccessSide::Unknown)
        return isSaid ? tr("Seen from %1.").arg(LessonPictureWords::sideName(side)) : QString{};
    const QString mirror = LessonPictureWords::sideName(mirrorFrom);
    return isSaid ? tr("Seen from %1, mirror from %2.").arg(LessonPictureWords::sideName(side), mirror)
                  : tr("Mirror from %1.").arg(mirror);
}

QString CardWords::holds(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
        return tr("Held by its sleeve.");
    case CouplingKind::Pin:
        return tr("Held by its safety pin.");
    case CouplingKind::SleeveAndPin:
        return tr("Held by its sleeve and its safety pin.");
    case CouplingKind::ByItself:
        return tr("Connects by itself.");
    case CouplingKind::WaterBallast:
        return tr("Line or rod of the water ballast.");
    case CouplingKind::Other:
        break;
    }
    return tr("Held as its manual says.");
}

QString CardWords::lockedTitle() { return tr("What locked looks like, and what is not locked"); }

QString CardWords::lockedHow()
{
    return tr("Look first, in this order. What cannot be seen takes a mirror or a light. The pictures are "
              "schematic, nothing to scale.");
}

QString CardWords::layout(Layout layout, const QStringList& couplings)
{
    const QString names = SentenceParts::list(couplings);
    switch (layout) {
    case Layout::A:
        return tr("Locking moves the tab away from the sleeve: %1.").arg(names);
    case Layout::B:
        return tr("Locking moves the tab towards the sleeve: %1.").arg(names);
    case Layout::C:
    case Layout::Unknown:
        break;
    }
    return tr("The sleeve slides over the tab: %1.").arg(names);
}

QString CardWords::state(JointState state)
{
    return tr("%1.", "state of a joint").arg(LessonPictureWords::title(state).front());
}

QString CardWords::unlikeEntered(const QStringList& couplings)
{
    return tr("Drawn as it was read, not as its layout was entered: %1. Look at the real one.",
              "names of couplings")
        .arg(SentenceParts::list(couplings));
}

QStringList CardWords::locked(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
    case CouplingKind::Pin:
    case CouplingKind::SleeveAndPin:
        break;
    case CouplingKind::ByItself:
        return {tr("Engaged all the way."), tr("The parts meet all round, flush.")};
    case CouplingKind::WaterBallast:
        return {tr("Line or rod connected, as its manual says.")};
    case CouplingKind::Other:
        return {tr("Connected as its manual says.")};
    }
    QStringList all{tr("Ball in the socket, at the bottom."),
                    tr("Plunger home: the tab at its place, the witness hole clear.")};
    if (kind != CouplingKind::Pin)
        all << tr("Sleeve at its stop, no thread showing.");
    if (kind != CouplingKind::Sleeve)
        all << tr("Safety pin in and through.");
    return all;
}

QString CardWords::layoutNotSaid(const QStringList& couplings)
{
    return tr("Nobody has said how plunger and sleeve stand to each other at: %1. The parts may lie "
              "otherwise there.",
              "names of couplings")
        .arg(SentenceParts::list(couplings));
}

QString CardWords::cautionsTitle() { return tr("To keep in mind"); }

QStringList CardWords::cautions()
{
    return {
        tr("One sign alone says little. Look, gap, pull and second person stand beside each other, and none "
           "replaces another."),
        tr("An empty socket can look locked, and its gap can read like any other. First the ball."),
        tr("A part-seated joint can still move its control, go unnoticed in the control check, and let go "
           "later."),
        tr("Pull: hand on the rod, clear of plunger and sleeve, firmly away from the ball, in the release "
           "direction and "
           "slightly off it. Nothing moves."),
        tr("“Cannot see” is an answer: then the rigging stops until somebody has seen it."),
        tr("Connecting again without finding out why is not a fix."),
        tr("Called away in the middle of a joint: begin it again, at the look."),
        tr("The second person looks and pulls without seeing or hearing the first result, and connected none "
           "of these "
           "joints."),
        tr("After a hand on a joint: look at it again, then the control check of its surfaces again."),
    };
}

} // namespace rig
