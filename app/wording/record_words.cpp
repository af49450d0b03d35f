#include "app/wording/record_words.h"

#include "app/wording/sentence_parts.h"

namespace rig {

QString RecordWords::title(const QString& day) { return tr("Rigging record, %1").arg(day); }

QString RecordWords::airframe(const QString& airframe, const QString& serial)
{
    return serial.isEmpty() ? airframe : tr("%1, serial number %2").arg(airframe, serial);
}

QString RecordWords::begun(const QString& when, const QString& leader)
{
    return tr("Begun %1, led by %2.", "moment, person").arg(when, leader);
}

QString RecordWords::recheck()
{
    return tr("Gone through again without having been taken apart: no rigging is counted.");
}

QString RecordWords::closed(const QString& how, const QString& when, const QString& first,
                            const QString& second)
{
    if (first.isEmpty() && second.isEmpty())
        return tr("%1: %2.", "moment: how it was closed").arg(when, how);
    return tr("%1: %2, stated by %3 and %4.", "moment: how it was closed").arg(when, how, first, second);
}

QString RecordWords::notClosed() { return tr("Not closed yet. What stands here can still be added to."); }
QString RecordWords::note(const QString& note) { return tr("Note: %1").arg(note); }

QString RecordWords::temperature(int celsius)
{
    return tr("Temperature at the airframe: %1 °C.").arg(celsius);
}

QString RecordWords::noteMet(const QString& note, const QString& readBy, const QString& readAt)
{
    return readAt.isEmpty()
               ? tr("Note left before: %1 Nobody has noted that it was read.", "day, persons: “note”")
                     .arg(note)
               : tr("Note left before: %1 Read by %2, %3.", "day, persons: “note”; person, moment")
                     .arg(note, readBy, readAt);
}

QString RecordWords::noLog()
{
    return tr("This is none of the official logs: no aircraft or journey log, no technical log or list of "
              "defects, no component logbook, no list of directives. It can support an entry there and "
              "replaces none. A band is a coupling's own past, never a limit.");
}

QString RecordWords::notDone() { return tr("Not done, or open at the close"); }

QString RecordWords::nothingNotDone()
{
    return tr("Nothing on the list was left open. That is what was stated, and no more than that.");
}

QString RecordWords::item(const QString& item) { return tr("•  %1", "one of a list").arg(item); }

QString RecordWords::overview() { return tr("Couplings at a glance"); }
QString RecordWords::couplings() { return tr("Each coupling"); }
QString RecordWords::coupling() { return tr("Coupling"); }
QString RecordWords::readingThatStands() { return tr("Reading that stands"); }
QString RecordWords::stands() { return tr("How it stands"); }
QString RecordWords::verdict() { return tr("Against its band"); }
QString RecordWords::second() { return tr("Second person"); }
QString RecordWords::first() { return tr("First person"); }
QString RecordWords::noReading() { return tr("not read"); }
QString RecordWords::noGap() { return tr("no gap to measure"); }

QString RecordWords::noGapHere(const QString& coupling)
{
    return tr("%1 has no gap to measure.").arg(coupling);
}

QString RecordWords::nobody() { return tr("nobody"); }
QString RecordWords::nothingHere() { return tr("Nothing was answered or read here."); }
QString RecordWords::step() { return tr("Looked at or tried"); }

QString RecordWords::check(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("Ball in the socket");
    case CheckKind::PlungerHome:
        return tr("Plunger home");
    case CheckKind::SleeveAtStop:
        return tr("Sleeve at its stop");
    case CheckKind::PinThrough:
        return tr("Safety pin in and through");
    case CheckKind::Engaged:
        return tr("Engaged all the way");
    case CheckKind::NoStep:
        return tr("Parts meet all round, flush");
    case CheckKind::LineConnected:
        return tr("Water line or rod connected");
    case CheckKind::Connected:
        return tr("Connected");
    case CheckKind::Pull:
        return tr("Pull: nothing moves");
    case CheckKind::Secured:
        break;
    }
    return tr("Secured");
}

QString RecordWords::struck(const QString& by, const QString& when, const QString& reason)
{
    return tr("Struck by %1, %2: %3. Nothing takes its place", "person, moment: reason")
        .arg(by, when, reason);
}

QString RecordWords::struckThrough(const QString& by, const QString& when, const QString& reason)
{
    if (by.isEmpty())
        return tr("Corrected %1: %2", "moment: reason").arg(when, reason);
    return tr("Corrected by %1, %2: %3", "person, moment: reason").arg(by, when, reason);
}

QString RecordWords::found(SeatState as)
{
    return as == SeatState::NotSecured ? tr("found not secured") : tr("found part-seated");
}

QString RecordWords::correction() { return tr("takes the place of the corrected one"); }

QString RecordWords::band(const QString& band, int readings)
{
    return tr("band %1, %n reading(s)", nullptr, readings).arg(band);
}

QString RecordWords::noBand() { return tr("there is no band"); }
QString RecordWords::shownThen(const QString& verdict) { return tr("shown at the time: %1").arg(verdict); }
QString RecordWords::thisRecordAlone(const QString& standing)
{
    return tr("This record by itself: %1").arg(standing);
}
QString RecordWords::nothingShown() { return tr("nothing was shown at the time"); }

QString RecordWords::readingCaution()
{
    return tr("A gap inside the band is one sign only. Finish the look, the pull and the second person.");
}

QString RecordWords::changedOnPaper(Turn turn)
{
    return turn == Turn::First
               ? tr("Another first person was named while the paper was typed in. What had been answered "
                    "before "
                    "does not count; it was asked again from the look.")
               : tr("Another second person was named while the paper was typed in. What had been answered "
                    "before does not count; it was asked again from the look.");
}

QString RecordWords::interrupted(Turn turn, const QString& when, InterruptionReason reason)
{
    const auto why = [reason] {
        switch (reason) {
        case InterruptionReason::Asked:
            return tr("broken off by the person at work");
        case InterruptionReason::PersonChanged:
            return tr("another person took over");
        case InterruptionReason::Idle:
            return tr("nothing was entered for a long time");
        case InterruptionReason::ProgramClosed:
            return tr("the program was closed or went down");
        case InterruptionReason::QuestionClosed:
            break;
        }
        return tr("a question was closed here");
    };
    return turn == Turn::First
               ? tr("First person interrupted at %1: %2. The work began again at the look.").arg(when, why())
               : tr("Second person interrupted at %1: %2. The work began again at the look.")
                     .arg(when, why());
}

QString RecordWords::otherQuestions() { return tr("Other questions"); }
QString RecordWords::question() { return tr("Question"); }

QString RecordWords::question(const Question& question)
{
    if (question.isWrongMovement())
        return question.surfaceSeen == Movement::Nothing ? tr("In the control check it did not move")
                                                         : tr("In the control check it moved the wrong way");
    if (question.kind != QuestionKind::SurfaceDoubt || !question.surfaceAnswer)
        return RecordWords::question(question.kind);
    return question.isStop() ? tr("In the control check “no” was answered")
                             : tr("In the control check it could not be seen");
}

QString RecordWords::question(QuestionKind kind)
{
    switch (kind) {
    case QuestionKind::OutsideReading:
        return tr("A reading lay outside the band");
    case QuestionKind::AnsweredNo:
        return tr("Answered with no");
    case QuestionKind::CannotSee:
        return tr("Answered with cannot see");
    case QuestionKind::ReadingsDisagree:
        return tr("The two persons' readings disagree");
    case QuestionKind::SidesSwapped:
        return tr("Left and right may have been swapped");
    case QuestionKind::SurfaceDoubt:
        return tr("In the control check something was wrong or could not be seen");
    case QuestionKind::BandInDoubt:
        return tr("The band stood on readings that are now in doubt");
    case QuestionKind::ShownPartSeated:
        return tr("It was shown part-seated on purpose");
    case QuestionKind::Asked:
        return tr("Somebody asks");
    case QuestionKind::GaugeQuarantined:
        break;
    }
    return tr("Read with a gauge that is now in doubt");
}

QString RecordWords::stillOpen() { return tr("open"); }
QString RecordWords::found(const QString& found) { return tr("Found: %1").arg(found); }
QString RecordWords::done(const QString& done) { return tr("Done: %1").arg(done); }

QString RecordWords::decided(const QString& by, const QString& when)
{
    return tr("Decided by %1, %2", "person, moment").arg(by, when);
}

QString RecordWords::controlCheck() { return tr("Control check"); }
QString RecordWords::controlCaution() { return tr("A part-seated joint can go unnoticed in this check."); }
QString RecordWords::noSurfaces() { return tr("No surfaces were set up, so no control check is recorded."); }
QString RecordWords::notChecked() { return tr("Not checked."); }
QString RecordWords::calledAloud(const QString& call) { return tr("Called aloud: %1").arg(call); }
QString RecordWords::expected(const QString& call) { return tr("Expected: %1").arg(call); }

QString RecordWords::called(const QString& command)
{
    return tr("%1 What it did", "what the cockpit moved").arg(command);
}

QString RecordWords::seen(const QString& what, const QString& expected)
{
    return expected.isEmpty() ? what : tr("%1 (expected: %2)", "what a surface did").arg(what, expected);
}

QString RecordWords::tried() { return tr("Tried"); }
QString RecordWords::answerHead() { return tr("Answer"); }
QString RecordWords::atSurface() { return tr("At the surface"); }
QString RecordWords::inCockpit() { return tr("In the cockpit"); }

QString RecordWords::asked() { return tr("Asked"); }
QString RecordWords::outcome() { return tr("Found and done"); }

QString RecordWords::check(SurfaceCheckKind kind)
{
    switch (kind) {
    case SurfaceCheckKind::HeldOneWay:
        return tr("Held and resisted, one way");
    case SurfaceCheckKind::HeldOtherWay:
        return tr("Held and resisted, the other way");
    case SurfaceCheckKind::Sense:
        return tr("Moves as expected");
    case SurfaceCheckKind::CalledOneWay:
        return tr("Moves as expected, the control one way");
    case SurfaceCheckKind::CalledOtherWay:
        return tr("Moves as expected, the control the other way");
    case SurfaceCheckKind::FullTravel:
        return tr("Full travel to both stops");
    case SurfaceCheckKind::Neutral:
        return tr("Neutral");
    case SurfaceCheckKind::FreePlay:
        return tr("Free play as it should be");
    case SurfaceCheckKind::Freedom:
        return tr("Moves freely");
    case SurfaceCheckKind::LocksEvenly:
        return tr("Locks with even force, both sides together");
    case SurfaceCheckKind::EveryNotch:
        return tr("Every notch, both equal");
    case SurfaceCheckKind::HoldsSetting:
        return tr("Moves and holds its setting");
    case SurfaceCheckKind::OpensTogether:
        break;
    }
    return tr("Both open, both shut");
}

QString RecordWords::measured() { return tr("Measured"); }
QString RecordWords::figure() { return tr("Figure"); }
QString RecordWords::fromManual() { return tr("From the manual"); }

QString RecordWords::notAskedOfSecond() { return tr("not asked"); }
QString RecordWords::notAsked() { return tr("not answered"); }

QString RecordWords::answer(const QString& answer, const QString& person, const QString& when)
{
    return tr("%1: %2, %3", "answer: person, time").arg(answer, person, when);
}

QString RecordWords::beforeInterruption(const QString& answer)
{
    return tr("%1 (before an interruption)").arg(answer);
}

QString RecordWords::answeredAgain(const QString& answer)
{
    return tr("%1 (answered again later)").arg(answer);
}

QString RecordWords::beforeHand(const QString& answer, const QString& coupling)
{
    return tr("%1 (before somebody was at %2)", "answer, coupling").arg(answer, coupling);
}

QString RecordWords::when() { return tr("When"); }
QString RecordWords::who() { return tr("Measured by"); }
QString RecordWords::with() { return tr("With"); }
QString RecordWords::reading() { return tr("Reading"); }
QString RecordWords::asFirst(const QString& person) { return tr("%1, first").arg(person); }
QString RecordWords::asSecond(const QString& person) { return tr("%1, second person").arg(person); }

QString RecordWords::measure(MeasureKind kind)
{
    switch (kind) {
    case MeasureKind::FreePlay:
        return tr("Free play");
    case MeasureKind::Up:
        return tr("Up");
    case MeasureKind::Down:
        break;
    }
    return tr("Down");
}

QString RecordWords::atDistance(const QString& figure, const QString& mm)
{
    return tr("%1, read %2 mm from the hinge").arg(figure, mm);
}

QString RecordWords::nominal(const QString& nominal, const QString& tolerance, const QString& page)
{
    return tr("%1 ± %2 (%3)", "figure, tolerance, page of the manual").arg(nominal, tolerance, page);
}

QString RecordWords::atMost(const QString& figure, const QString& page)
{
    return tr("at most %1 (%2)", "figure, page of the manual").arg(figure, page);
}

QString RecordWords::noFigure() { return tr("no figure entered"); }

QString RecordWords::lists() { return tr("Counts, and the list for the season's first rigging"); }
QString RecordWords::counts() { return tr("Counts"); }
QString RecordWords::stated() { return tr("Stated by"); }

QString RecordWords::tick(TickKind kind)
{
    switch (kind) {
    case TickKind::SeasonCleaned:
        return tr("Season's first: balls and sockets cleaned, springs snap, sleeves free");
    case TickKind::SeasonGreased:
        return tr("Season's first: thin film of the manual's grease");
    case TickKind::SeasonLeaves:
        return tr("Season's first: leaf sets checked");
    case TickKind::SeasonRefresher:
        return tr("Season's first: everybody has looked at the couplings anew");
    case TickKind::ToolsOut:
        return tr("Leaves, mirror, torch, pins and tools counted back out");
    case TickKind::NoteRead:
        return tr("The note left earlier was read");
    case TickKind::HatchesOn:
        break;
    }
    return tr("Hatches closed and taped");
}

QString RecordWords::notStated() { return tr("not stated"); }

QString RecordWords::byHand() { return tr("Signed by hand"); }

QString RecordWords::leaderSigns(const QString& name)
{
    return name.isEmpty() ? tr("Rigging leader: name, day, signature")
                          : tr("Rigging leader %1: day, signature").arg(name);
}

QString RecordWords::secondSigns(const QString& name)
{
    return name.isEmpty() ? tr("Second person: name, day, signature")
                          : tr("Second person %1: day, signature").arg(name);
}

QString RecordWords::findings()
{
    return tr("Findings of the person who assesses this, with name, day and signature:");
}

QString RecordWords::fileName(const QString& registration, const QString& day)
{
    return tr("%1-%2-rigging.pdf", "a file's name: registration, day")
        .arg(SentenceParts::inFileName(registration), day);
}

} // namespace rig
