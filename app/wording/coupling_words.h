#pragma once

#include "core/airframe/coupling.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of Set up about couplings and their fittings.
class CouplingWords
{
    Q_DECLARE_TR_FUNCTIONS(CouplingWords)

public:
    // The list
    static QString title() { return tr("Couplings in rigging order"); }
    static QString none() { return tr("No coupling yet. Start from the usual ones, or add your own."); }
    static QString add() { return tr("Add a coupling"); }
    static QString moveUp() { return tr("Move up  (Alt+Up)"); }
    static QString moveDown() { return tr("Move down  (Alt+Down)"); }
    static QString newFitting() { return tr("New fitting"); }
    static QString usual() { return tr("Usual couplings"); }
    static QString takeOut() { return tr("Take out of use"); }
    static QString putBack() { return tr("Put back in use"); }
    static QString line(int number, const QString& name)
    {
        return tr("%1  %2", "order, coupling").arg(number).arg(name);
    }
    static QString lineOutOfUse(const QString& name) { return tr("%1 (out of use)").arg(name); }
    static QString fittingSince(const QString& day, const QString& reason)
    {
        return tr("fitting since %1: %2").arg(day, reason);
    }
    static QString bandThere() { return tr("band drawn"); }
    static QString noBandYet() { return tr("no band yet"); }
    static QString layoutShort(Layout layout);
    static QString joined(const QString& one, const QString& two) { return tr("%1 · %2").arg(one, two); }

    // One coupling
    static QString newTitle() { return tr("A new coupling"); }
    static QString changeTitle(const QString& name) { return tr("Change: %1").arg(name); }
    static QString name() { return tr("&Name"); }
    static QString nameHint() { return tr("As you say it at the wing: Left aileron, wing root."); }
    static QString circuit() { return tr("&Circuit"); }
    static QString circuitHint() { return tr("Aileron, airbrake, flap, elevator, trim …"); }
    static QString side() { return tr("&Side"); }
    static QString sideName(Side side);
    static QString access() { return tr("&How it is reached"); }
    static QString accessHint() { return tr("From above by the hatch, mirror needed, fin top …"); }
    static QString layout() { return tr("&Layout of tab and sleeve"); }
    static QString layoutName(Layout layout);
    static QString layoutSentence(Layout layout);
    static QString leafPlace() { return tr("Where the lea&f goes"); }
    static QString leafPlaceHint() { return tr("Always the same place, from the same side."); }
    static QString securing() { return tr("Secured &by"); }
    static QString securingName(Securing securing);
    static QString place() { return tr("&Place on the plan"); }
    static QString note() { return tr("N&ote"); }
    static QString placeNotGiven() { return tr("Not given"); }
    static QString wingRootLeft() { return tr("Left wing root"); }
    static QString wingRootRight() { return tr("Right wing root"); }
    static QString outerWingLeft() { return tr("Left outer wing"); }
    static QString outerWingRight() { return tr("Right outer wing"); }
    static QString fuselage() { return tr("Fuselage"); }
    static QString tailBoom() { return tr("Tail boom"); }
    static QString finFoot() { return tr("Fin foot"); }
    static QString finTop() { return tr("Fin top"); }
    static QString nameMissing() { return tr("Type a name for the coupling."); }
    static QString nameTaken(const QString& name)
    {
        return tr("This airframe already has a coupling “%1”. Say left or right, or where it is.").arg(name);
    }

    // Taking out of use
    static QString takeOutTitle(const QString& name) { return tr("Take out of use: %1").arg(name); }
    static QString takeOutQuestion();
    static QString takeOutYes() { return tr("Take it out of use"); }

    // New fitting
    static QString fittingTitle(const QString& name) { return tr("New fitting: %1").arg(name); }
    static QString fittingMeaning();
    static QString fittingDay() { return tr("Fitted &on"); }
    static QString fittingReason() { return tr("&What was done, and by whom"); }
    static QString fittingReasonHint() { return tr("Ball and plunger replaced; sleeve readjusted …"); }
    static QString startFitting() { return tr("Start the new fitting  (Enter)"); }
    static QString reasonMissing()
    {
        return tr("Say what was done: the reason stands beside every later band.");
    }
    static QString beforeLastFitting(const QString& day)
    {
        return tr("The fitting before began on %1. Type that day or a later one.").arg(day);
    }
    static QString firstFitting() { return tr("first fitting"); }

    // Usual couplings
    static QString usualTitle() { return tr("Usual couplings"); }
    static QString usualMeaning();
    static QString addChosen() { return tr("Add the ticked ones  (Enter)"); }
    static QString tickOne() { return tr("Tick at least one coupling."); }
    static QString alreadyThere(const QString& name) { return tr("%1 (already there)").arg(name); }
    static QString leftAileron() { return tr("Left aileron, wing root"); }
    static QString rightAileron() { return tr("Right aileron, wing root"); }
    static QString leftAirbrake() { return tr("Left airbrake, wing root"); }
    static QString rightAirbrake() { return tr("Right airbrake, wing root"); }
    static QString leftFlap() { return tr("Left flap, wing root"); }
    static QString rightFlap() { return tr("Right flap, wing root"); }
    static QString elevator() { return tr("Elevator, fin top"); }
    static QString trim() { return tr("Trim, fin top"); }
    static QString circuitAileron() { return tr("aileron"); }
    static QString circuitAirbrake() { return tr("airbrake"); }
    static QString circuitFlap() { return tr("flap"); }
    static QString circuitElevator() { return tr("elevator"); }
    static QString circuitTrim() { return tr("trim"); }
};

} // namespace rig
