#include "app/wording/control_words.h"

#include "app/wording/formats.h"
#include "app/wording/surface_words.h"

#include <cstdlib>

namespace rig {

QString ControlWords::keyOf(MeasureKind kind)
{
    switch (kind) {
    case MeasureKind::FreePlay:
        return keyPlay();
    case MeasureKind::Up:
        return keyUp();
    case MeasureKind::Down:
        break;
    }
    return keyDown();
}

QString ControlWords::place() { return tr("Control check"); }
QString ControlWords::progress(int done, int of) { return tr("%1 of %2 surfaces").arg(done).arg(of); }
QString ControlWords::noneInList() { return tr("no surfaces set up yet"); }
QString ControlWords::goHere() { return tr("Control check  (Enter)"); }
QString ControlWords::surfaces() { return tr("Surfaces of the control check"); }
QString ControlWords::done(const QString& name) { return tr("%1: done").arg(name); }
QString ControlWords::begun(const QString& name) { return tr("%1: begun").arg(name); }
QString ControlWords::waiting(const QString& name) { return tr("%1: waiting").arg(name); }
QString ControlWords::stopped(const QString& name) { return tr("%1: stop").arg(name); }

QString ControlWords::afterTheStop()
{
    return tr(
        "Tag the cockpit. Close the record with this open (last line of the list), or say under Questions "
        "(Ctrl+6) what was found, once a person entitled to decide has found it.");
}

QString ControlWords::open(const QString& name) { return tr("%1: open question").arg(name); }

QString ControlWords::setBack(const QString& name) { return tr("%1: try again").arg(name); }
QString ControlWords::setBackMark(const QString& detail) { return tr("to be tried again · %1").arg(detail); }

QString ControlWords::setBackHere(const QString& coupling)
{
    return tr("Somebody was at %1 after this was tried. Try all of it again.").arg(coupling);
}

QString ControlWords::noSurfaces()
{
    return tr(
        "Nobody has set up yet what the control check goes through. Without surfaces the record cannot be "
        "closed as complete.");
}

QString ControlWords::addOwn() { return tr("Others are added in Set up (Ctrl+5)."); }
QString ControlWords::addUsual() { return tr("Add the usual surfaces  (Enter)"); }

QString ControlWords::atSurface() { return tr("At the surface"); }
QString ControlWords::inCockpit() { return tr("In the cockpit"); }

QString ControlWords::choosePeople()
{
    return tr(
        "Choose who stands at the surface and who moves the control: two people. Nobody is filled in for "
        "you.");
}

QString ControlWords::samePerson()
{
    return tr("One person cannot stand at the surface and sit in the cockpit. Choose two.");
}

QString ControlWords::tellCockpit() { return tr("Tell the cockpit what to move"); }
QString ControlWords::calledAloud() { return tr("Called aloud, from the surface"); }
QString ControlWords::besideExpected() { return tr("What was seen, beside what was expected"); }

QString ControlWords::command(SurfaceKind surface, SurfaceCheckKind call)
{
    const bool isOneWay = call == SurfaceCheckKind::CalledOneWay;
    switch (surface) {
    case SurfaceKind::Aileron:
        return isOneWay ? tr("Stick to the left.") : tr("Stick to the right.");
    case SurfaceKind::Elevator:
        return isOneWay ? tr("Stick back.") : tr("Stick forward.");
    case SurfaceKind::Rudder:
        return isOneWay ? tr("Left pedal.") : tr("Right pedal.");
    case SurfaceKind::Flap:
        return isOneWay ? tr("Flaps to positive.") : tr("Flaps to negative.");
    case SurfaceKind::Airbrake:
        return isOneWay ? tr("Airbrake lever back.") : tr("Airbrake lever forward.");
    case SurfaceKind::Trim:
        return isOneWay ? tr("Trim nose-up.") : tr("Trim nose-down.");
    case SurfaceKind::WaterDump:
        return isOneWay ? tr("Dump lever to open.") : tr("Dump lever to shut.");
    case SurfaceKind::Other:
        break;
    }
    return isOneWay ? tr("Move the control one way.") : tr("Move the control the other way.");
}

QString ControlWords::whatItDoes(const QString& command)
{
    return tr("%1 What does the surface do?", "what the cockpit moves").arg(command);
}

QString ControlWords::spoken(const QString& question, const QString& answer)
{
    return tr("%1 %2", "question, answer").arg(question, answer);
}

QString ControlWords::sayThenPress() { return tr("Say it aloud, then press it."); }

QString ControlWords::movement(Movement movement)
{
    switch (movement) {
    case Movement::Up:
        return tr("Up", "what a surface does");
    case Movement::Down:
        return tr("Down", "what a surface does");
    case Movement::Left:
        return tr("Pilot's left", "what a surface does");
    case Movement::Right:
        return tr("Pilot's right", "what a surface does");
    case Movement::Out:
        return tr("Out", "what a surface does");
    case Movement::In:
        return tr("In", "what a surface does");
    case Movement::Opens:
        return tr("Opens", "what a surface does");
    case Movement::Shuts:
        return tr("Shuts", "what a surface does");
    case Movement::Nothing:
        break;
    }
    return tr("Nothing", "what a surface does");
}

QString ControlWords::keyNothing() { return tr("N", "key for: the surface does nothing"); }

QString ControlWords::movementWithKey(Movement which)
{
    const auto keyOf = [which] {
        switch (which) {
        case Movement::Up:
        case Movement::Out:
        case Movement::Opens:
            return QStringLiteral("↑");
        case Movement::Down:
        case Movement::In:
        case Movement::Shuts:
            return QStringLiteral("↓");
        case Movement::Left:
            return QStringLiteral("←");
        case Movement::Right:
            return QStringLiteral("→");
        case Movement::Nothing:
            break;
        }
        return keyNothing();
    };
    return tr("%1  (%2)", "answer and its key").arg(movement(which), keyOf());
}

QString ControlWords::called(const QString& command, const QString& what)
{
    return tr("%1 Seen: %2.", "what the cockpit moved, what the surface did").arg(command, what);
}

QString ControlWords::calledBesideExpected(const QString& command, const QString& what,
                                           const QString& expected)
{
    return tr("%1 Seen: %2. Expected: %3.", "what the cockpit moved, what the surface did, what it had to do")
        .arg(command, what, expected);
}

QString ControlWords::expected(const QString& call) { return tr("Expected: %1").arg(call); }
QString ControlWords::callKeys() { return tr("Arrow keys: which way it moved. N: nothing. C: cannot see."); }

QString ControlWords::question(SurfaceCheckKind kind)
{
    switch (kind) {
    case SurfaceCheckKind::HeldOneWay:
        return tr("Held: resists one way?");
    case SurfaceCheckKind::HeldOtherWay:
        return tr("Held: resists the other way?");
    case SurfaceCheckKind::Sense:
        return tr("Is that what it should do?");
    case SurfaceCheckKind::FullTravel:
        return tr("Full travel, to both stops?");
    case SurfaceCheckKind::Neutral:
        return tr("Neutral with the control?");
    case SurfaceCheckKind::FreePlay:
        return tr("Free play as it should be?");
    case SurfaceCheckKind::Freedom:
        return tr("Free, no rubbing?");
    case SurfaceCheckKind::LocksEvenly:
        return tr("Both lock, with even force?");
    case SurfaceCheckKind::EveryNotch:
        return tr("Every notch, both equal?");
    case SurfaceCheckKind::HoldsSetting:
        return tr("Moves, and stays where it is set?");
    case SurfaceCheckKind::CalledOneWay:
        return tr("What does the surface do, one way?");
    case SurfaceCheckKind::CalledOtherWay:
        return tr("What does the surface do, the other way?");
    case SurfaceCheckKind::OpensTogether:
        break;
    }
    return tr("Both open, both shut?");
}

QString ControlWords::hint(SurfaceCheckKind kind)
{
    switch (kind) {
    case SurfaceCheckKind::HeldOneWay:
        return tr("Palm near the drive; the cockpit pushes.");
    case SurfaceCheckKind::HeldOtherWay:
        return tr("The same, the cockpit pulls.");
    case SurfaceCheckKind::Sense:
        return tr("Compare what it did with what is expected.");
    case SurfaceCheckKind::FullTravel:
        return tr("Hand off; nothing stops it early.");
    case SurfaceCheckKind::Neutral:
        return tr("Control centred: surface in line.");
    case SurfaceCheckKind::FreePlay:
        return tr("Cockpit held: no click, no more than ever.");
    case SurfaceCheckKind::Freedom:
        return tr("No rubbing, no change of friction.");
    case SurfaceCheckKind::LocksEvenly:
        return tr("Over centre; both rise together.");
    case SurfaceCheckKind::EveryNotch:
        return tr("Left and right stand alike in each.");
    case SurfaceCheckKind::HoldsSetting:
        return tr("Through its whole travel.");
    case SurfaceCheckKind::CalledOneWay:
    case SurfaceCheckKind::CalledOtherWay:
        return sayThenPress();
    case SurfaceCheckKind::OpensTogether:
        break;
    }
    return tr("Together, and tight when shut.");
}

QString ControlWords::keys() { return tr("Y, N, C answer the framed question. P, U, D go to a figure."); }
QString ControlWords::readTheStopFirst()
{
    return tr("Stopped: read what stands here before anything else. Enter once more goes on; this surface "
              "stays stopped, and nothing further is tried on it.");
}

QString ControlWords::next() { return tr("Next surface  (Enter)"); }

QString ControlWords::stop() { return tr("Stop"); }

QString ControlWords::reversed(const QString& surface)
{
    return tr("%1 did not move as expected. Crossed or reversed controls have led to loss of control at "
              "lift-off. Nothing this check can find is worse. Stop the whole check here.")
        .arg(surface);
}

QString ControlWords::didNothing(const QString& surface)
{
    return tr("%1 did nothing while its control was moved. A surface that is not connected has led to loss "
              "of control at lift-off. Nothing this check can find is worse. Stop the whole check here.")
        .arg(surface);
}

QString ControlWords::saidNo(const QString& surface, SurfaceCheckKind kind)
{
    return tr("%1: “%2” was answered with no. Try nothing further on it.").arg(surface, question(kind));
}

QString ControlWords::leaveAndCall(const QString& name, const QString& phone)
{
    if (name.isEmpty() && phone.isEmpty())
        return tr("Leave it as it is, and call the person entitled to decide. Whom to call is not set up yet "
                  "(Ctrl+5).");
    if (name.isEmpty() || phone.isEmpty())
        return tr("Leave it as it is, and call %1.").arg(name + phone);
    return tr("Leave it as it is, and call %1 (%2).").arg(name, phone);
}

QString ControlWords::cannotSeeHere()
{
    return tr("“Cannot see” was answered here. It stands, and the record cannot be closed as complete until "
              "a named "
              "person has said what was found.");
}

QString ControlWords::figures() { return tr("Measured, where you measure"); }

QString ControlWords::figureName(MeasureKind kind, SurfaceKind surface)
{
    const bool isRudder = surface == SurfaceKind::Rudder;
    switch (kind) {
    case MeasureKind::FreePlay:
        return tr("Free play at the trailing edge");
    case MeasureKind::Up:
        return isRudder ? tr("To the left") : tr("Up");
    case MeasureKind::Down:
        break;
    }
    return isRudder ? tr("To the right") : tr("Down");
}

QString ControlWords::figureLabel(MeasureKind kind, SurfaceKind surface)
{
    return tr("%1  (%2)", "what is measured, and its key").arg(figureName(kind, surface), keyOf(kind));
}

QString ControlWords::unitOfUpAndDown() { return tr("Up and down in"); }

QString ControlWords::unitShort(DeflectionUnit unit)
{
    return unit == DeflectionUnit::Degrees ? tr("degrees") : tr("mm");
}

QString ControlWords::measured(const SurfaceMeasure& measure)
{
    const QString typed = SurfaceWords::figure(measure.value, measure.unit);
    const auto degrees = inUnit(measure, DeflectionUnit::Degrees);
    if (measure.unit == DeflectionUnit::Degrees || !degrees)
        return tr("Measured: %1.").arg(typed);
    return tr("Measured: %1, which is %2.")
        .arg(typed, SurfaceWords::workedOut(*degrees, DeflectionUnit::Degrees));
}

namespace {

const std::optional<ManualDeflection>& manualOf(const Surface& surface, MeasureKind kind)
{
    return kind == MeasureKind::Up ? surface.up : surface.down;
}

} // namespace

QString ControlWords::keyAtSurface() { return tr("A", "key for who is at the surface"); }
QString ControlWords::keyInCockpit() { return tr("I", "key for who is in the cockpit"); }
QString ControlWords::keyPlay() { return tr("P", "key for free play"); }
QString ControlWords::keyUp() { return tr("U", "key for the deflection up"); }
QString ControlWords::keyDown() { return tr("D", "key for the deflection down"); }

QString ControlWords::fromManual(const Surface& surface, MeasureKind kind)
{
    const QString reference = QString::fromStdString(surface.manualReference);
    if (kind == MeasureKind::FreePlay)
        return surface.mostPlay ? tr("From the manual, %1: at most %2.")
                                      .arg(reference, SurfaceWords::figure(*surface.mostPlay, surface.unit))
                                : QString{};
    const auto& manual = manualOf(surface, kind);
    if (!manual)
        return {};
    return tr("From the manual, %1: %2, plus or minus %3.")
        .arg(reference, SurfaceWords::figure(manual->nominal, surface.unit),
             SurfaceWords::figure(manual->tolerance, surface.unit));
}

QString ControlWords::besideManual(const Surface& surface, const SurfaceMeasure& measure)
{
    const bool isPlay = measure.kind == MeasureKind::FreePlay;
    const QString said = fromManual(surface, measure.kind);
    if (said.isEmpty())
        return {};
    const auto figure = inUnit(measure, surface.unit);
    if (!figure)
        return tr("%1 The distance from the hinge is not set up, so the two cannot be compared.").arg(said);
    // At most so much is a range from 0.
    const Deflection half = isPlay ? *surface.mostPlay : Deflection{};
    const ManualDeflection range = isPlay ? ManualDeflection{{}, half} : *manualOf(surface, measure.kind);
    const Deflection beyond = beyondRange(*figure, range);
    const Deflection apart{std::abs(beyond.thousandths)};
    const QString by = measure.unit == surface.unit ? SurfaceWords::figure(apart, surface.unit)
                                                    : SurfaceWords::workedOut(apart, surface.unit);
    if (beyond > Deflection{})
        return isPlay ? tr("%1 This is %2 more than the manual's most.").arg(said, by)
                      : tr("%1 This is %2 more than the manual's range.").arg(said, by);
    if (beyond < Deflection{})
        return tr("%1 This is %2 less than the manual's range.").arg(said, by);
    return isPlay ? tr("%1 This is no more than that.").arg(said)
                  : tr("%1 This lies in that range.").arg(said);
}

QString ControlWords::ratio(double upOverDown)
{
    return tr("Up is %1 times down. About two to one is common practice, not a limit; the manual's figures "
              "decide.")
        .arg(Formats{}.number(upOverDown, 1));
}

QString ControlWords::leftAndRight(const QString& direction, const QString& left, const QString& right)
{
    return tr("%1: left %2, right %3.", "direction, figures").arg(direction, left, right);
}

QString ControlWords::leftAndRightApart(const QString& direction, const QString& left, const QString& right,
                                        const QString& apart)
{
    return tr("%1: left %2, right %3, %4 apart.", "direction, figures").arg(direction, left, right, apart);
}

} // namespace rig
