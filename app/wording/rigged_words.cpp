#include "app/wording/rigged_words.h"

#include "app/wording/entry_words.h"
#include "app/wording/formats.h"

#include <cmath>

namespace rig {

QString RiggedWords::keyPerson() { return tr("B", "key for measured by"); }
QString RiggedWords::keyGauge() { return tr("G", "key for the gauge"); }

QString RiggedWords::withKey(const QString& what, const QString& key)
{
    return tr("%1  (%2)", "what is chosen or pressed, and its key").arg(what, key);
}

QString RiggedWords::keyYes() { return tr("Y", "key for the answer yes"); }
QString RiggedWords::keyNo() { return tr("N", "key for the answer no"); }
QString RiggedWords::keyCannotSee() { return tr("C", "key for the answer cannot see"); }
QString RiggedWords::keyFelt() { return tr("F", "key for the answer felt, not seen"); }
QString RiggedWords::keyMeasureAgain() { return tr("M", "key for measure again"); }
QString RiggedWords::keySecondPerson() { return tr("S", "key for second person"); }
QString RiggedWords::keyCorrect() { return tr("W", "key for wrong leaf pressed"); }
QString RiggedWords::keyLook() { return tr("L", "key for show the look"); }
QString RiggedWords::keyStrike() { return tr("X", "key for strike this reading"); }

QString RiggedWords::answer(Answer answer)
{
    switch (answer) {
    case Answer::Yes:
        return tr("Yes");
    case Answer::No:
        return tr("No");
    case Answer::Felt:
        return tr("Felt, not seen");
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
        case Answer::Felt:
            return keyFelt();
        case Answer::CannotSee:
            break;
        }
        return keyCannotSee();
    };
    return tr("%1  (%2)", "answer and its key").arg(answer(which), keyOf());
}

QString RiggedWords::answerTo(const QString& question, Answer answer)
{
    return tr("%1: %2", "question: answer").arg(question, RiggedWords::answer(answer));
}

QString RiggedWords::question(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("Ball in the socket?");
    case CheckKind::PlungerHome:
        return tr("Plunger home?");
    case CheckKind::SleeveAtStop:
        return tr("Sleeve at its stop?");
    case CheckKind::PinThrough:
        return tr("Safety pin in and through?");
    case CheckKind::Engaged:
        return tr("Engaged all the way?");
    case CheckKind::NoStep:
        return tr("Parts meet all round, flush?");
    case CheckKind::LineConnected:
        return tr("Water line or rod connected?");
    case CheckKind::Connected:
        return tr("Connected?");
    case CheckKind::Pull:
        return tr("Pull: nothing moves?");
    case CheckKind::Secured:
        break;
    }
    return tr("Secured?");
}

QString RiggedWords::numbered(int number, const QString& question)
{
    return tr("%1  %2", "number, question of the look").arg(number).arg(question);
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
    case CheckKind::PinThrough:
        return tr("Through the witness hole, its end seen on the other side.");
    case CheckKind::Engaged:
        return tr("Look or feel where the manual says, on every part that joins.");
    case CheckKind::NoStep:
        return tr("The parts meet all along, as the manual says.");
    case CheckKind::LineConnected:
        return tr("As its manual says, at both ends.");
    case CheckKind::Connected:
        return tr("As its manual says.");
    case CheckKind::Pull:
        return pullHint(CouplingKind::Sleeve);
    case CheckKind::Secured:
        break;
    }
    return secureHint(CouplingKind::SleeveAndPin);
}

QString RiggedWords::pullHint(CouplingKind kind)
{
    if (isBallJoint(kind))
        return tr("A firm pull on the rod, away from the ball; then again a little to one side. Fingers off "
                  "plunger and sleeve.");
    return tr("A firm pull by hand, the way it would part. Fingers off whatever holds it.");
}

QString RiggedWords::secureHint(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
        return tr("Sleeve at its stop, by itself. Tape over the hatch is no lock.");
    case CouplingKind::Pin:
        return tr("Pin through the witness hole, and closed.");
    case CouplingKind::SleeveAndPin:
        return tr("Sleeve at its stop, pin through the witness hole.");
    case CouplingKind::ByItself:
        return tr("Its bolt or pin is in and secured, as the manual says. Tape is no lock.");
    case CouplingKind::WaterBallast:
    case CouplingKind::Other:
        break;
    }
    return tr("Pin, clip or nut secured, as its manual says. Tape is no lock.");
}

QString RiggedWords::recordHeading() { return tr("Rigging record"); }

QString RiggedWords::progress(const RecordCount& count)
{
    const auto [done, open, stopped, all] = count;
    if (stopped > 0 && open > 0)
        return tr("%1 of %2 couplings done, %3 stopped, %4 open").arg(done).arg(all).arg(stopped).arg(open);
    if (stopped > 0)
        return tr("%1 of %2 couplings done, %3 stopped").arg(done).arg(all).arg(stopped);
    return open > 0 ? tr("%1 of %2 couplings done, %3 open").arg(done).arg(all).arg(open)
                    : tr("%1 of %2 couplings done").arg(done).arg(all);
}

QString RiggedWords::secondProgress(const RecordCount& count)
{
    const auto [done, open, stopped, all] = count;
    if (stopped > 0 && open > 0)
        return tr("Second person: %1 of %2 done, %3 stopped, %4 open")
            .arg(done)
            .arg(all)
            .arg(stopped)
            .arg(open);
    if (stopped > 0)
        return tr("Second person: %1 of %2 done, %3 stopped").arg(done).arg(all).arg(stopped);
    return open > 0 ? tr("Second person: %1 of %2 done, %3 open").arg(done).arg(all).arg(open)
                    : tr("Second person: %1 of %2 done").arg(done).arg(all);
}

QString RiggedWords::secondNotBegun() { return tr("not begun"); }
QString RiggedWords::secondNotBegunTitle() { return tr("Second inspection not begun"); }

QString RiggedWords::waiting() { return tr("waiting"); }
QString RiggedWords::lookNow() { return tr("look now"); }
QString RiggedWords::measureNow() { return tr("measure now"); }
QString RiggedWords::secureNow() { return tr("secure now"); }
QString RiggedWords::pullNow() { return tr("pull now"); }
QString RiggedWords::begunNotDone() { return tr("begun, not done"); }
QString RiggedWords::interruptedMark(const QString& detail) { return tr("interrupted · %1").arg(detail); }
QString RiggedWords::onceInterruptedMark(const QString& detail)
{
    return tr("%1 · interrupted", "and done since").arg(detail);
}

QString RiggedWords::unresolvedMark(const QString& detail, const QString& standing)
{
    return tr("%2 · %1", "%2: how it stands, in sight when the line is cut; %1: what is done")
        .arg(detail, standing);
}

QString RiggedWords::readLookedPulled(const QString& interval)
{
    return tr("%1 · look · pull").arg(interval);
}

QString RiggedWords::doneWithoutGap(const CouplingParts& parts)
{
    return parts.pull ? tr("no gap to measure · look · pull") : tr("no gap to measure · look");
}

QString RiggedWords::readAndLooked(const QString& interval)
{
    return tr("%1 · look", "reading").arg(interval);
}

QString RiggedWords::noGapHere()
{
    return tr("No gap to measure here: no figure judges this joint. There is only what is asked here, and "
              "the control check.");
}

QString RiggedWords::bothDone(const QString& detail) { return tr("%1 · second person").arg(detail); }
QString RiggedWords::firstPersonDone() { return tr("first person done, result hidden"); }
QString RiggedWords::firstPersonNotDone() { return tr("first person not done yet"); }
QString RiggedWords::secondPersonDone(bool pulls)
{
    return pulls ? tr("own look and pull done") : tr("own look done");
}
QString RiggedWords::secondInspection() { return tr("Second inspection"); }
QString RiggedWords::close() { return tr("Close the record"); }
QString RiggedWords::closeHint() { return tr("two names, leaves counted"); }

QString RiggedWords::startTitle() { return tr("Rigged today?"); }

QString RiggedWords::startSentence()
{
    return tr("One coupling at a time: look, measure, pull, secure, second person. Every answer and every "
              "reading is "
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

QString RiggedWords::riggedAnew() { return tr("Taken apart and rigged &anew"); }
QString RiggedWords::stoodRigged() { return tr("&Stood rigged, gone through once more"); }

QString RiggedWords::chooseSinceThen()
{
    return tr("Say first whether it was taken apart since the last record.");
}

QString RiggedWords::chooseLeaderAndSinceThen()
{
    return tr(
        "Choose first who leads this rigging, and say whether it was taken apart since the last record.");
}

QString RiggedWords::leader() { return tr("Rigging leader"); }
QString RiggedWords::choosePerson() { return tr("Choose a person"); }
QString RiggedWords::chooseGauge() { return tr("Choose a leaf set or gauge"); }
QString RiggedWords::begin() { return tr("Start the rigging record"); }
QString RiggedWords::noAirframe() { return tr("This file knows no airframe yet. Begin in Set up (Ctrl+5)."); }

QString RiggedWords::noCouplings()
{
    return tr("No couplings are set up for this airframe. Add them in Set up (Ctrl+5).");
}

QString RiggedWords::noPeople() { return tr("A record needs two people. Add them in Set up (Ctrl+5)."); }

QString RiggedWords::noGauges()
{
    return tr("No leaf set is set up. Add one in Set up (Ctrl+5) before you measure.");
}

QString RiggedWords::takenApartToday() { return tr("End of the day: it was &taken apart"); }

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
        return tr("closed with every step done and nothing open");
    case Closing::LeftOpen:
        return tr("closed with open items");
    case Closing::Abandoned:
        break;
    }
    return tr("abandoned");
}

QString RiggedWords::measuredBy() { return tr("Measured by"); }
QString RiggedWords::lookedAtBy() { return tr("Looked at by"); }

QString RiggedWords::chooseWhoLooksFirst()
{
    return tr("First choose who is looking. Nobody is filled in for you.");
}

QString RiggedWords::secondLooksBlind() { return tr("Your own look. The first result is hidden."); }
QString RiggedWords::lookedBy() { return tr("Second person"); }
QString RiggedWords::gauge() { return tr("Measured with"); }
QString RiggedWords::lockedGap() { return tr("Locked gap, mm"); }
QString RiggedWords::thickestThatEnters() { return tr("Thickest leaf that enters freely"); }
QString RiggedWords::valueRead() { return tr("Value read on the taper gauge, mm"); }

QString RiggedWords::lookFirst()
{
    return tr("The look comes first: an empty socket can show a normal gap. Measuring opens once the ball is "
              "seen or felt in the socket and nothing is answered with no.");
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

QString RiggedWords::figureNotTaken()
{
    return tr("The figure was not taken. What comes first stands below.");
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

QString RiggedWords::keyNoteRead() { return tr("R", "key for note read"); }
QString RiggedWords::notesTitle() { return tr("Left for you to know"); }

QString RiggedWords::noteLeft(const QString& day, const QString& first, const QString& second,
                              const QString& note)
{
    if (first.isEmpty())
        return tr("%1: “%2”", "day: note").arg(day, note);
    return second.isEmpty()
               ? tr("%1, %2: “%3”", "day, person: note").arg(day, first, note)
               : tr("%1, %2 and %3: “%4”", "day, two persons: note").arg(day, first, second, note);
}

QString RiggedWords::moreNotes(int more)
{
    return tr("%n older note(s) will be shown when these are read.", nullptr, more);
}

QString RiggedWords::noteRead() { return tr("I have read these notes  (%1)").arg(keyNoteRead()); }

QString RiggedWords::noteReadWhy()
{
    return tr("They are shown at every start until somebody notes them as read. They stay in their records.");
}

QString RiggedWords::chooseWhoRead()
{
    return tr("First choose your name as rigging leader, then press this again.");
}
QString RiggedWords::noteIsRead() { return tr("Noted as read."); }

QString RiggedWords::doneOn(EventKind kind, const QString& day)
{
    switch (kind) {
    case EventKind::Cleaned:
        return tr("cleaned %1").arg(day);
    case EventKind::Greased:
        return tr("greased %1").arg(day);
    case EventKind::PartChanged:
        return tr("a part changed %1").arg(day);
    case EventKind::Refitted:
    case EventKind::Annual:
    case EventKind::Note:
    case EventKind::Derigged:
    case EventKind::Finding:
        break;
    }
    return tr("new fitting %1").arg(day);
}

QString RiggedWords::wholeCheckOf(const QStringList& couplings, EventKind kind, const QString& day)
{
    return tr("%1: %2. This asks for the whole check: look, reading, pull, securing, second person.",
              "couplings: what was done on which day")
        .arg(couplings.join(tr(", ", "between couplings")), doneOn(kind, day));
}

QString RiggedWords::wholeCheckHere(EventKind kind, const QString& day)
{
    return tr("This joint: %1. It asks for the whole check; a short one is not enough. Joints that had been "
              "worked on have come apart flights later, though the control check had shown nothing.",
              "what was done on which day")
        .arg(doneOn(kind, day));
}

QString RiggedWords::movement(const QString& sign)
{
    return tr("Its readings have changed: %1. Look closely, whatever today's reading says.",
              "the gap has been growing since …")
        .arg(sign);
}

QString RiggedWords::celsius() { return tr("Te&mperature here, °C (may stay empty)"); }

QString RiggedWords::celsiusWhy()
{
    return tr("Stiff grease can leave a plunger short. The figure is kept in the "
              "record and explains no reading away.");
}

QString RiggedWords::celsiusRefused(const QString& typed)
{
    return tr("“%1” is no temperature from -60 to 60. Type whole degrees, or leave it empty.").arg(typed);
}

QString RiggedWords::chooseLeaderFirst() { return tr("Choose who leads this rigging first."); }

QString RiggedWords::interval(const QString& interval, Technique technique)
{
    switch (technique) {
    case Technique::Stack:
        return tr("%1, %2", "reading, why it is wider").arg(interval, EntryWords::widenedByStacking());
    case Technique::NoLeafEnters:
        return tr("%1: no leaf enters").arg(interval);
    case Technique::ThickestLoose:
        return tr("%1: the thickest leaf is still loose").arg(interval);
    case Technique::Pin:
        return tr("%1 by pin").arg(interval);
    case Technique::Taper:
        return tr("%1 by taper gauge").arg(interval);
    case Technique::GoNoGo:
        return tr("%1 by go/no-go block").arg(interval);
    case Technique::Leaf:
    case Technique::Table:
        break;
    }
    return interval;
}

QString RiggedWords::gaugeChecked(const QString& name, const QString& day)
{
    return tr("Set %1, last checked %2.").arg(name, day);
}

QString RiggedWords::gaugeOverdue(const QString& name, const QString& day)
{
    return tr("Set %1 is overdue a check: last checked %2.").arg(name, day);
}

QString RiggedWords::gaugeNeverChecked(const QString& name)
{
    return tr("Set %1, no check recorded.").arg(name);
}

QString RiggedWords::saving() { return tr("saving …"); }
QString RiggedWords::savedAt(const QString& time) { return tr("saved %1").arg(time); }
QString RiggedWords::notSaved() { return tr("not saved"); }
QString RiggedWords::measureAgain() { return tr("Measure again  (%1)").arg(keyMeasureAgain()); }

QString RiggedWords::measureAgainHint()
{
    return tr("Measure again: a further reading stands beside the first, and the graver of the two counts.");
}

QString RiggedWords::measureAsFound() { return tr("Measure as found  (%1)").arg(keyMeasureAgain()); }

QString RiggedWords::asFoundHint(SeatState kept)
{
    if (kept == SeatState::NotSecured)
        return tr("Measure as found: touch nothing else. It is kept as found not secured.");
    return tr("Measure as found: touch nothing else. It is kept as found part-seated.");
}

QString RiggedWords::saidNo(const QString& coupling, CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("%1: the ball is not in the socket.").arg(coupling);
    case CheckKind::PlungerHome:
        return tr("%1: the plunger is not home.").arg(coupling);
    case CheckKind::SleeveAtStop:
        return tr("%1: the sleeve is not at its stop.").arg(coupling);
    case CheckKind::PinThrough:
        return tr("%1: the safety pin is not in and through.").arg(coupling);
    case CheckKind::Engaged:
        return tr("%1: it is not engaged all the way.").arg(coupling);
    case CheckKind::NoStep:
        return tr("%1: the parts do not meet all round, or are not flush.").arg(coupling);
    case CheckKind::LineConnected:
    case CheckKind::Connected:
        return tr("%1: it is not connected as its manual says.").arg(coupling);
    case CheckKind::Pull:
        return tr("%1: something moved at the pull.").arg(coupling);
    case CheckKind::Secured:
        break;
    }
    return tr("%1: it is not secured.").arg(coupling);
}

QString RiggedWords::readOutside(const QString& coupling)
{
    return tr("%1: a reading lies outside its band, and nobody has said yet what it was.").arg(coupling);
}

QString RiggedWords::isStopped(const QString& coupling)
{
    return tr("%1 is stopped. No hand on it until a named person has resolved it.").arg(coupling);
}

QString RiggedWords::readTheStopFirst()
{
    return tr(
        "Stopped: read what stands below before anything else. Enter once more shows what comes next; this "
        "joint stays stopped, and no hand on it.");
}

QString RiggedWords::stoppedHere() { return tr("It stops here. Nothing else is asked of this joint."); }

QString RiggedWords::stoppedHereMeasure()
{
    return tr("It stops here. Nothing else is asked of this joint. Press %1 to measure it as found.")
        .arg(keyMeasureAgain());
}

QString RiggedWords::stopHere() { return tr("stop, leave it as it is"); }

QString RiggedWords::stopFor(const QString& standing)
{
    return tr("stop · %1", "how it stands").arg(standing);
}

QString RiggedWords::correct() { return tr("Wrong leaf  (%1)").arg(keyCorrect()); }
QString RiggedWords::correctTitle() { return tr("Wrong leaf pressed"); }

QString RiggedWords::correctQuestion(const KeptFigure& wrong)
{
    return tr("%1, read by %2 and kept at %3, stays in the history, with a line through it. Say what went "
              "wrong "
              "with it; then read again. If it was read at another coupling or by another person, strike it "
              "(%4).",
              "reading, person, time, key")
        .arg(wrong.interval, wrong.person, wrong.time, keyStrike());
}

QString RiggedWords::correctNow()
{
    return tr("Read again: the next reading takes the place of the wrong one.");
}

QString RiggedWords::strike() { return tr("Strike  (%1)").arg(keyStrike()); }
QString RiggedWords::strikeTitle() { return tr("Strike this reading"); }

QString RiggedWords::strikeQuestion(const QString& interval, const QString& time)
{
    return tr("%1, kept at %2, stays in the history, with a line through it, and nothing takes its place. A "
              "question "
              "that it opened stays open. Say what went wrong with it.")
        .arg(interval, time);
}

QString RiggedWords::struck(const QString& interval, const QString& time, const QString& by,
                            const QString& reason)
{
    return tr("%1 struck at %2 by %3: %4", "reading, time, person, reason").arg(interval, time, by, reason);
}

QString RiggedWords::nextCoupling() { return tr("Next coupling  (Enter)"); }
QString RiggedWords::goToSecond() { return tr("Second inspection  (Enter)"); }
QString RiggedWords::goToClose() { return tr("To the close  (Enter)"); }
QString RiggedWords::secondHere() { return tr("Second person  (%1)").arg(keySecondPerson()); }
QString RiggedWords::firstHere() { return tr("First person  (%1)").arg(keySecondPerson()); }
QString RiggedWords::escHint()
{
    return tr("Esc interrupts: this coupling then starts again from the look.");
}

QString RiggedWords::escHintOnPaper() { return tr("Esc breaks off the typing: what is typed is kept."); }

QString RiggedWords::begunElsewhere()
{
    return tr("This coupling was half done in another window. What was answered there was not seen here: it "
              "starts again from the look, and the break is kept.");
}

QString RiggedWords::askedAfresh(const QString& person)
{
    return tr("This coupling was half answered for another person, and that is kept. It is asked again from "
              "the look, of %1.")
        .arg(person);
}

QString RiggedWords::halfAnsweredForAnother(const QString& person)
{
    return tr("Half answered for another person. Whatever is pressed here begins it again, from the look, "
              "for "
              "%1.")
        .arg(person);
}

QString RiggedWords::halfDoneElsewhere()
{
    return tr("Half done in another window. Whatever is pressed here begins it again, from the look.");
}

QString RiggedWords::interruptedHere()
{
    return tr("The work on this coupling was interrupted. It starts again here, from the look.");
}

QString RiggedWords::interruptedAt(const QString& time)
{
    return tr("Interrupted at %1. This coupling starts again from the look.").arg(time);
}

QString RiggedWords::keptFromBefore(const QString& reading)
{
    return tr("What was read before the interruption, %1, is kept. The coupling still starts again from the "
              "look.")
        .arg(reading);
}

QString RiggedWords::changedInAnotherWindow()
{
    return tr(
        "Another window has written here meanwhile. Look at what stands now; your last key was not taken.");
}

QString RiggedWords::othersWorked(const QStringList& couplings)
{
    return tr("Another window has worked meanwhile at: %1.", "one or more couplings")
        .arg(couplings.join(tr(", ", "between couplings")));
}

QString RiggedWords::typedAheadIsLost()
{
    return tr("What was typed before this coupling was shown is not taken.");
}

QString RiggedWords::correctedBeforeTheBreak(const QString& interval)
{
    return tr("Saved: %1 stands in place of the wrong reading. This coupling still starts again from the "
              "look.")
        .arg(interval);
}

QString RiggedWords::lastTwelve() { return tr("Last twelve readings"); }
QString RiggedWords::secondBlind() { return tr("Your own look and pull. The first result is hidden."); }

QString RiggedWords::secondOptional(bool isHidden)
{
    if (!isHidden)
        return tr("A reading of your own is welcome and not required.");
    return tr("A reading of your own is welcome and not required. Nothing of the first person's is shown.");
}

QString RiggedWords::passedOver(const QStringList& couplings)
{
    return tr("Left out, because it is stopped: %1. Nobody works on there before its question is closed.",
              "one or more couplings")
        .arg(couplings.join(tr(", ", "between couplings")));
}

QString RiggedWords::keptBack(const QString& coupling)
{
    return tr("The second inspection is under way. What the first person found at %1 is shown again when the "
              "second person is done here or has kept a reading of their own.")
        .arg(coupling);
}

QString RiggedWords::secondIsHalfWay(const QString& coupling)
{
    return tr("The second inspection of %1 is under way and hides what the first person found. Finish it, or "
              "break it off with Esc: that is kept as an interruption. Then the first person can go on here.")
        .arg(coupling);
}

QString RiggedWords::notSeenHere(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("The ball was not seen. Take a mirror or a light, look again, and answer again.");
    case CheckKind::PlungerHome:
        return tr("The plunger was not seen. Take a mirror or a light, look again, and answer again.");
    case CheckKind::SleeveAtStop:
        return tr("The sleeve was not seen. Take a mirror or a light, look again, and answer again.");
    case CheckKind::PinThrough:
        return tr("The safety pin was not seen. Take a mirror or a light, look again, and answer again.");
    case CheckKind::Engaged:
    case CheckKind::NoStep:
    case CheckKind::LineConnected:
    case CheckKind::Connected:
        return tr("The joint was not seen. Take a mirror or a light, look again, and answer again.");
    case CheckKind::Pull:
    case CheckKind::Secured:
        break;
    }
    return tr("The lock was not seen. Take a mirror or a light, look again, and answer again.");
}

QString RiggedWords::looked(CheckKind kind, Answer answer)
{
    return answer == Answer::Felt ? tr("%1 Felt.", "question").arg(question(kind))
                                  : tr("%1 Yes.", "question").arg(question(kind));
}

QString RiggedWords::showLook() { return tr("Show the look  (%1)").arg(keyLook()); }
QString RiggedWords::foldLook() { return tr("Fold the look  (%1)").arg(keyLook()); }

} // namespace rig
