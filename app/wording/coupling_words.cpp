#include "app/wording/coupling_words.h"

namespace rig {

QString CouplingWords::title() { return tr("Couplings in rigging order"); }
QString CouplingWords::none() { return tr("No coupling yet. Start from the usual ones, or add your own."); }
QString CouplingWords::add() { return tr("Add a coupling"); }
QString CouplingWords::moveUp() { return tr("Move up  (Alt+Up)"); }
QString CouplingWords::moveDown() { return tr("Move down  (Alt+Down)"); }
QString CouplingWords::newFitting() { return tr("New fitting"); }
QString CouplingWords::usual() { return tr("Usual couplings"); }
QString CouplingWords::takeOut() { return tr("Take out of use"); }
QString CouplingWords::putBack() { return tr("Put back in use"); }

QString CouplingWords::line(int number, const QString& name)
{
    return tr("%1  %2", "order, coupling").arg(number).arg(name);
}

QString CouplingWords::lineOutOfUse(const QString& name) { return tr("%1 (out of use)").arg(name); }

QString CouplingWords::fittingSince(const QString& day, const QString& reason)
{
    return tr("fitting since %1: %2").arg(day, reason);
}

QString CouplingWords::bandThere() { return tr("band drawn"); }
QString CouplingWords::noBandYet() { return tr("no band yet"); }

QString CouplingWords::layoutShort(Layout layout)
{
    switch (layout) {
    case Layout::A:
        return tr("layout A");
    case Layout::B:
        return tr("layout B");
    case Layout::C:
        return tr("layout C");
    case Layout::Unknown:
        break;
    }
    return tr("layout not known");
}

QString CouplingWords::joined(const QString& one, const QString& two) { return tr("%1 · %2").arg(one, two); }

QString CouplingWords::newTitle() { return tr("A new coupling"); }
QString CouplingWords::changeTitle(const QString& name) { return tr("Change: %1").arg(name); }
QString CouplingWords::name() { return tr("&Name"); }
QString CouplingWords::nameHint() { return tr("As you say it at the wing: Left aileron, wing root."); }
QString CouplingWords::circuit() { return tr("&Circuit"); }
QString CouplingWords::circuitHint() { return tr("Aileron, airbrake, flap, elevator, trim …"); }
QString CouplingWords::side() { return tr("&Side"); }

QString CouplingWords::sideName(Side side)
{
    switch (side) {
    case Side::Left:
        return tr("Left");
    case Side::Right:
        return tr("Right");
    case Side::None:
        break;
    }
    return tr("Neither");
}

QString CouplingWords::access() { return tr("&How it is reached"); }
QString CouplingWords::accessHint() { return tr("From above by the hatch, mirror needed, fin top …"); }
QString CouplingWords::layout() { return tr("&Layout of tab and sleeve"); }

QString CouplingWords::layoutName(Layout layout)
{
    switch (layout) {
    case Layout::A:
        return tr("A: tab moves away from the sleeve");
    case Layout::B:
        return tr("B: tab moves towards the sleeve");
    case Layout::C:
        return tr("C: sleeve rides over the tab");
    case Layout::Unknown:
        break;
    }
    return tr("Not known");
}

// docs/terms.md, layouts A, B and C
QString CouplingWords::layoutSentence(Layout layout)
{
    switch (layout) {
    case Layout::A:
        return tr(
            "Locking moves the plunger tab away from the sleeve. Part-seated leaves the tab nearer: "
            "the gap is "
            "smaller, or the sleeve does not come to its stop and the gap is larger. The leaf goes between "
            "tab and sleeve.");
    case Layout::B:
        return tr("Locking moves the plunger tab towards the sleeve. Part-seated leaves the tab short of its "
                  "place: "
                  "the gap is larger. The leaf goes between tab and sleeve.");
    case Layout::C:
        return tr(
            "The sleeve slides over the plunger tab. A part-seated tab stops the sleeve early: the gap is "
            "larger. The leaf goes between the edge of the socket and the sleeve.");
    case Layout::Unknown:
        break;
    }
    return tr("Leave it so until somebody has looked. Readings are watched on both sides in any case.");
}

QString CouplingWords::leafPlace() { return tr("Where the lea&f goes"); }
QString CouplingWords::leafPlaceHint() { return tr("Always the same place, from the same side."); }
QString CouplingWords::kind() { return tr("&Kind"); }

QString CouplingWords::kindName(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
        return tr("Ball joint with sleeve");
    case CouplingKind::Pin:
        return tr("Ball joint with safety pin");
    case CouplingKind::SleeveAndPin:
        return tr("Ball joint with sleeve and pin");
    case CouplingKind::ByItself:
        return tr("Connects by itself");
    case CouplingKind::WaterBallast:
        return tr("Water ballast");
    case CouplingKind::Other:
        break;
    }
    return tr("Other");
}

QString CouplingWords::kindSentence(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
        return tr("Asked: ball, plunger, sleeve at its stop; gap, pull, secured.");
    case CouplingKind::Pin:
        return tr("Asked: ball, plunger, safety pin in and through; gap, pull, secured.");
    case CouplingKind::SleeveAndPin:
        return tr("Asked: ball, plunger, sleeve at its stop, safety pin in and through; gap, pull, secured.");
    case CouplingKind::ByItself:
        return tr("As tailplane or wing root go on. Asked: engaged all the way, parts meet all round, flush. "
                  "No leaf goes in, so there is no gap to measure.");
    case CouplingKind::WaterBallast:
        return tr("Asked: line or rod connected, and what there is below.");
    case CouplingKind::Other:
        break;
    }
    return tr("Asked: connected as its manual says, and what there is below.");
}

QString CouplingWords::pullThere() { return tr("So&mething to pull"); }
QString CouplingWords::securingThere() { return tr("Something to sec&ure: bolt, pin or clip"); }
QString CouplingWords::gapThere() { return tr("A &gap to measure with a leaf"); }
QString CouplingWords::noGap() { return tr("no gap to measure"); }

QString CouplingWords::place() { return tr("&Place on the plan"); }
QString CouplingWords::note() { return tr("N&ote"); }
QString CouplingWords::placeNotGiven() { return tr("Not given"); }
QString CouplingWords::wingRootLeft() { return tr("Left wing root"); }
QString CouplingWords::wingRootRight() { return tr("Right wing root"); }
QString CouplingWords::outerWingLeft() { return tr("Left outer wing"); }
QString CouplingWords::outerWingRight() { return tr("Right outer wing"); }
QString CouplingWords::fuselage() { return tr("Fuselage"); }
QString CouplingWords::tailBoom() { return tr("Tail boom"); }
QString CouplingWords::finFoot() { return tr("Fin foot"); }
QString CouplingWords::finTop() { return tr("Fin top"); }
QString CouplingWords::nameMissing() { return tr("Type a name for the coupling."); }

QString CouplingWords::nameTaken(const QString& name)
{
    return tr("This airframe already has a coupling “%1”. Say left or right, or where it is.").arg(name);
}

QString CouplingWords::takeOutTitle(const QString& name) { return tr("Take out of use: %1").arg(name); }

QString CouplingWords::takeOutQuestion()
{
    return tr("It leaves the rigging order and new records. Its readings, fittings and bands stay in the "
              "file, and it "
              "can be put back at any time.");
}

QString CouplingWords::takeOutYes() { return tr("Take it out of use"); }

QString CouplingWords::fittingTitle(const QString& name) { return tr("New fitting: %1").arg(name); }

QString CouplingWords::fittingMeaning()
{
    return tr(
        "A new fitting ends the old baseline: from that day on this coupling has no band until new baseline "
        "readings are taken. Older readings stay with the fitting they were taken on. Use it after a refit, "
        "an "
        "adjustment or a changed part, and only then.");
}

QString CouplingWords::fittingDay() { return tr("Fitted &on"); }
QString CouplingWords::fittingKind() { return tr("Why it &begins"); }

QString CouplingWords::fittingKindName(FittingKind kind)
{
    switch (kind) {
    case FittingKind::First:
        return tr("First fitting");
    case FittingKind::Refitted:
        return tr("Refitted");
    case FittingKind::PartChanged:
        return tr("Part changed");
    case FittingKind::Other:
        break;
    }
    return tr("Something else");
}

QString CouplingWords::fittingReason() { return tr("&What was done, and by whom"); }
QString CouplingWords::fittingReasonHint() { return tr("Ball and plunger replaced; sleeve readjusted …"); }
QString CouplingWords::startFitting() { return tr("Start the new fitting  (Enter)"); }

QString CouplingWords::reasonMissing()
{
    return tr("Say what was done: the reason stands beside every later band.");
}

QString CouplingWords::beforeLastFitting(const QString& day)
{
    return tr("The fitting before began on %1. Type that day or a later one.").arg(day);
}

QString CouplingWords::usualTitle() { return tr("Usual couplings"); }

QString CouplingWords::usualMeaning()
{
    return tr("Tick what this airframe has. Each is added with its first fitting from today. What is not on "
              "the list you add yourself, and every name can be changed.");
}

QString CouplingWords::allOfThese() { return tr("All of these"); }

QString CouplingWords::addChosen() { return tr("Add the ticked ones  (Enter)"); }
QString CouplingWords::tickOne() { return tr("Tick at least one coupling."); }
QString CouplingWords::alreadyThere(const QString& name) { return tr("%1 (already there)").arg(name); }
QString CouplingWords::leftAileron() { return tr("Left aileron, wing root"); }
QString CouplingWords::rightAileron() { return tr("Right aileron, wing root"); }
QString CouplingWords::leftAirbrake() { return tr("Left airbrake, wing root"); }
QString CouplingWords::rightAirbrake() { return tr("Right airbrake, wing root"); }
QString CouplingWords::leftFlap() { return tr("Left flap, wing root"); }
QString CouplingWords::rightFlap() { return tr("Right flap, wing root"); }
QString CouplingWords::elevator() { return tr("Elevator, fin top"); }
QString CouplingWords::trim() { return tr("Trim, fin top"); }

QString CouplingWords::circuitName(Circuit circuit)
{
    switch (circuit) {
    case Circuit::Aileron:
        return tr("aileron");
    case Circuit::Elevator:
        return tr("elevator");
    case Circuit::Rudder:
        return tr("rudder");
    case Circuit::Flap:
        return tr("flap");
    case Circuit::Airbrake:
        return tr("airbrake");
    case Circuit::Trim:
        return tr("trim");
    case Circuit::WaterDump:
        return tr("water dump");
    case Circuit::Other:
        break;
    }
    return {};
}

QString CouplingWords::circuitOf(const Coupling& coupling)
{
    return coupling.circuit == Circuit::Other ? QString::fromStdString(coupling.otherCircuit)
                                              : circuitName(coupling.circuit);
}

void CouplingWords::setCircuit(Coupling& coupling, const QString& typed)
{
    const QString words = typed.simplified();
    coupling.circuit = Circuit::Other;
    for (int i = 0; i < static_cast<int>(Circuit::Other); ++i)
        if (words.compare(circuitName(static_cast<Circuit>(i)), Qt::CaseInsensitive) == 0)
            coupling.circuit = static_cast<Circuit>(i);
    coupling.otherCircuit = coupling.circuit == Circuit::Other ? words.toStdString() : std::string{};
}

QString CouplingWords::whyFitted(FittingKind kind, const std::string& reason)
{
    if (!reason.empty())
        return QString::fromStdString(reason);
    switch (kind) {
    case FittingKind::First:
        return tr("first fitting");
    case FittingKind::Refitted:
        return tr("refitted");
    case FittingKind::PartChanged:
        return tr("part changed");
    case FittingKind::Other:
        break;
    }
    return {};
}

} // namespace rig
