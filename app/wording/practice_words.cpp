#include "app/wording/practice_words.h"

#include "app/wording/learn_words.h"

namespace rig {

QString PracticeWords::title() { return tr("Practice"); }
QString PracticeWords::what()
{
    return tr(
        "You are shown a joint as it can be seen through the access, and say how it stands. Say first, then "
        "see. Faults come more often here than in life, and “cannot tell from here” can be the right "
        "answer.");
}
QString PracticeWords::practiseOne(const QString& coupling)
{
    return tr("Practise %1  (O)", "a coupling, and the key").arg(coupling);
}
QString PracticeWords::practiseAll() { return tr("Practise all couplings  (A)", "with its key"); }
QString PracticeWords::keyOne() { return tr("O", "key for: practise this coupling"); }
QString PracticeWords::keyAll() { return tr("A", "key for: practise all couplings"); }
QString PracticeWords::noneToPractise()
{
    return tr("This airframe has no ball joint that could be practised.");
}
QString PracticeWords::refreshDue()
{
    return tr("Your last rigging here was long ago: everything is asked again.");
}
QString PracticeWords::roundDone(int right, int asked)
{
    return tr("The round is done: %1 of %2 right.").arg(right).arg(asked);
}
QString PracticeWords::tally(int right, int asked)
{
    return tr("So far: %1 of %2 right", "all rounds of a person").arg(right).arg(asked);
}
QString PracticeWords::missedPartSeated(int count) { return tr("Part-seated, called locked: %n", "", count); }
QString PracticeWords::missedNotSecured(int count) { return tr("Not secured, called locked: %n", "", count); }
QString PracticeWords::missedEmpty(int count) { return tr("Empty socket, called locked: %n", "", count); }

QString PracticeWords::question(int number, int of) { return tr("Question %1 of %2").arg(number).arg(of); }
QString PracticeWords::ask(const QString& coupling)
{
    return tr("%1: this is what you see. Is it locked?", "a coupling").arg(coupling);
}

QStringList PracticeWords::lookedWith(const LookedWith& with, AccessSide side)
{
    return {youLook(side), with.mirror && with.torch ? tr("You have a torch and a mirror.")
                           : with.mirror             ? tr("You have a mirror, and no torch.")
                           : with.torch              ? tr("You have a torch, and no mirror.")
                                                     : tr("You have no torch and no mirror.")};
}

QString PracticeWords::youLook(AccessSide side)
{
    switch (side) {
    case AccessSide::Below:
        return tr("You look from below.");
    case AccessSide::Front:
        return tr("You look from the front.");
    case AccessSide::Rear:
        return tr("You look from the rear.");
    case AccessSide::Left:
        return tr("You look from the left.");
    case AccessSide::Right:
        return tr("You look from the right.");
    case AccessSide::Above:
    case AccessSide::Unknown: // drawn so
        break;
    }
    return tr("You look from above.");
}

QString PracticeWords::call(SeatingCall call)
{
    switch (call) {
    case SeatingCall::Locked:
        return tr("Locked");
    case SeatingCall::NotLocked:
        return tr("Not locked");
    case SeatingCall::CannotTell:
        break;
    }
    return tr("Cannot tell from here");
}

QString PracticeWords::choice(const QString& text, int number)
{
    return tr("%1  (%2)", "an answer and its key").arg(text).arg(number);
}
QString PracticeWords::howSure() { return tr("How sure are you?"); }
QString PracticeWords::sure() { return tr("Sure  (S)", "with its key"); }
QString PracticeWords::notSure() { return tr("Not sure  (N)", "with its key"); }
QString PracticeWords::keySure() { return tr("S", "key for: sure"); }
QString PracticeWords::keyNotSure() { return tr("N", "key for: not sure"); }
QString PracticeWords::next() { return tr("Next  (Enter)"); }
QString PracticeWords::keys()
{
    return tr("Number keys: your answer. Then S: sure, N: not sure. Enter: next.");
}

QString PracticeWords::stateWas(JointState state)
{
    switch (state) {
    case JointState::Locked:
        return tr("It was locked.");
    case JointState::PartSeated:
        return tr("It was part-seated.");
    case JointState::NotSecured:
        return tr("It was not secured: ball and plunger in place, and nothing held the plunger.");
    case JointState::NotConnected:
        break;
    }
    return tr("The socket was empty.");
}

QString PracticeWords::right() { return tr("Right"); }
QString PracticeWords::wrong() { return tr("Not right"); }
QString PracticeWords::rightNotSure() { return tr("Right, and you were not sure: it comes again soon"); }
QString PracticeWords::missedPartSeated() { return tr("Part-seated, called locked"); }
QString PracticeWords::missedNotSecured() { return tr("Not secured, called locked"); }
QString PracticeWords::missedEmpty() { return tr("Empty socket, called locked"); }
QString PracticeWords::sureButWrong() { return tr("You were sure, so it comes again first."); }

QString PracticeWords::cannotTell(const SeatingAnswer& answer)
{
    if (!answer.mirror && !answer.torch)
        return tr(
            "What is in view does not tell it. Bring a torch and a mirror. If it still cannot be seen, stop "
            "and call.");
    if (!answer.mirror)
        return tr(
            "What is in view does not tell it. Bring a mirror. If it still cannot be seen, stop and call.");
    if (!answer.torch)
        return tr(
            "What is in view does not tell it. Bring a torch. If it still cannot be seen, stop and call.");
    return tr("What is in view does not tell it, with torch and mirror too: stop and call.");
}

QString PracticeWords::reason(const SeatingAnswer& answer)
{
    if (answer.expected == SeatingCall::CannotTell)
        return cannotTell(answer);
    switch (answer.shown) {
    case JointState::Locked:
        return tr(
            "Ball in the socket, plunger home, sleeve at its stop. On the real joint the gap is then read "
            "and the rod pulled: each is one sign only.");
    case JointState::PartSeated:
        return tr(
            "The ball is not at the bottom, so the plunger stands back and its tab stands differently. It "
            "may still move the control, and can let go in flight.");
    case JointState::NotSecured:
        return tr(
            "The ball is home, but nothing stops the plunger from being pressed: look for bare thread, a "
            "sleeve that is back, a pin that is out.");
    case JointState::NotConnected:
        break;
    }
    return tr(
        "There is no ball. Plunger, sleeve and gap may all look as if locked, so the look begins with the "
        "ball.");
}

QString PracticeWords::recallTitle() { return tr("Calls and order"); }
QString PracticeWords::recallWhat()
{
    return tr("A short round in words: what each surface does when the control is moved, which coupling "
              "comes next, "
              "whom to call, and when to stop.");
}
QString PracticeWords::beginRecall() { return tr("Begin a round  (B)", "with its key"); }
QString PracticeWords::keyBegin() { return tr("B", "key for: begin a round in words"); }
QString PracticeWords::nothingToRecall() { return tr("There is nothing to ask yet on this airframe."); }
QString PracticeWords::askCall(const QString& surface, const QString& command)
{
    return tr("%2 What does this surface do: %1?", "a surface, what the cockpit moves").arg(surface, command);
}
QString PracticeWords::askOrder(const QString& coupling)
{
    return tr("Which coupling comes after this one in the order of rigging: %1?").arg(coupling);
}
QString PracticeWords::askWhom() { return tr("A reading lies outside its band. Whom do you call?"); }

QString PracticeWords::askStop(StopCase what)
{
    switch (what) {
    case StopCase::PlungerNotHome:
        return tr("The plunger is not home. The control moves freely. What do you do?");
    case StopCase::PlungerNotSeen:
        return tr("You cannot see the plunger. What do you do?");
    case StopCase::OutsideTheBand:
        return tr("The gap lies outside this coupling's band. The look was in order. What do you do?");
    case StopCase::PullLetsGo:
        return tr("The joint lets go in the pull. What do you do?");
    case StopCase::HandAfterControlCheck:
        return tr("After the control check somebody had a hand on a joint. What do you do?");
    case StopCase::CalledAway:
        break;
    }
    return tr("You were called away in the middle of a joint. What do you do when you come back?");
}

QString PracticeWords::act(StopAct act)
{
    switch (act) {
    case StopAct::StopAndCall:
        return tr("Stop, leave it as it is, call");
    case StopAct::MirrorOrLight:
        return tr("Fetch a mirror or a light");
    case StopAct::TrySurfaceAgain:
        return tr("Look at that joint again, then try its surfaces again");
    case StopAct::LookAgain:
        return tr("Begin this joint again at the look");
    case StopAct::GoOn:
        break;
    }
    return tr("Go on with the next step");
}

QString PracticeWords::expected(const QString& choice) { return tr("Expected: %1").arg(choice); }

QString PracticeWords::whyAct(StopCase what)
{
    switch (what) {
    case StopCase::PlungerNotHome:
        return tr(
            "A part-seated joint can still move the control. Connecting it again without finding out why is "
            "not a fix.");
    case StopCase::PlungerNotSeen:
        return tr("What nobody has seen counts as not done. If it still cannot be seen, stop and call.");
    case StopCase::OutsideTheBand:
        return tr(
            "The band is this coupling's own past. Something differs, and the look alone does not say what.");
    case StopCase::PullLetsGo:
        return tr("Whatever gap and look say: do not fly, leave it as it is, and call.");
    case StopCase::HandAfterControlCheck:
        return tr("A hand may have moved the joint, and the control check alone would not show it.");
    case StopCase::CalledAway:
        break;
    }
    return tr("After an interruption nobody can be sure what was done.");
}

} // namespace rig
