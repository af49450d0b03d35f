#pragma once

#include "core/airframe/surface.h"
#include "core/measure/gap_entry.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences about control surfaces: in Set up, and how their figures are written everywhere.
class SurfaceWords
{
    Q_DECLARE_TR_FUNCTIONS(SurfaceWords)

public:
    // Figures
    static QString number(Deflection figure); // as it would be typed: "28.5", with no group separator
    static QString figure(Deflection figure, DeflectionUnit unit); // as typed: "28.5 mm", "20°"
    // Worked out from another: rounded, "20.2°", and below 5 "0.95°".
    static QString workedOut(Deflection figure, DeflectionUnit unit);
    static QString refusal(EntryProblem problem, const QString& typed, DeflectionUnit unit);
    static QString fartherThanItTurns(Gap measuredAt);
    static QString unitName(DeflectionUnit unit);
    static QString kindName(SurfaceKind kind);
    // What is called aloud where the owner wrote nothing else.
    static QString usualCall(SurfaceKind kind);
    static QString call(const Surface& surface);

    // The list in Set up
    static QString part() { return tr("Surfaces"); }
    static QString why();
    static QString count(int surfaces);
    static QString title() { return tr("Surfaces in the order of the control check"); }
    static QString none();
    static QString add() { return tr("Add a surface"); }
    static QString usual() { return tr("Add the usual surfaces"); }
    static QString usualMeaning();
    static QString usualThere() { return tr("All the usual surfaces are there already."); }
    static QString noFigures() { return tr("no figures from the manual"); }
    static QString figuresFrom(const QString& reference) { return tr("figures from %1").arg(reference); }

    // One surface
    static QString newTitle() { return tr("A new surface"); }
    static QString name() { return tr("&Name"); }
    static QString nameHint() { return tr("As you call it aloud: Left aileron."); }
    static QString kind() { return tr("&Kind"); }
    static QString kindHint() { return tr("It says what is tried in the control check."); }
    static QString side() { return tr("&Side"); }
    static QString senseCall() { return tr("What is &called aloud"); }
    static QString senseCallHint(const QString& usual) { return tr("Empty: “%1”").arg(usual); }
    static QString unit() { return tr("The manual &gives"); }
    static QString measuredAt() { return tr("&Hinge to ruler, mm"); }
    static QString measuredAtHint();
    static QString upNominal() { return tr("&Up; on a rudder, left"); }
    static QString upTolerance() { return tr("Up or left, plus or minus"); }
    static QString downNominal() { return tr("&Down; on a rudder, right"); }
    static QString downTolerance() { return tr("Down or right, plus or minus"); }
    static QString figureHint() { return tr("From the manual, never from memory. May stay empty."); }
    static QString mostPlay() { return tr("Most free &play"); }
    static QString reference() { return tr("&Manual, page and revision"); }
    static QString referenceHint() { return tr("Where the figures stand: page 4-12, revision 3."); }
    static QString nameMissing() { return tr("Type a name for the surface."); }
    static QString nameTaken(const QString& name);
    static QString toleranceMissing();
    static QString nominalMissing();
    static QString referenceMissing();
    static QString referenceLacksPage();
    static QString distanceZero();
    static QString takeOutQuestion();

    // Names of the usual ones
    static QString leftAileron() { return tr("Left aileron"); }
    static QString rightAileron() { return tr("Right aileron"); }
    static QString leftFlap() { return tr("Left flap"); }
    static QString rightFlap() { return tr("Right flap"); }
    static QString leftAirbrake() { return tr("Left airbrake"); }
    static QString rightAirbrake() { return tr("Right airbrake"); }
    static QString elevator() { return tr("Elevator"); }
    static QString rudder() { return tr("Rudder"); }
    static QString trim() { return tr("Trim"); }
};

} // namespace rig
