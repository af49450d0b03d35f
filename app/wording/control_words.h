#pragma once

#include "core/rigging/control_check.h"
#include "core/rigging/deflection_figures.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of the control check. A figure is more than the manual's range, less, or in it, and never more is
// said of it.
class ControlWords
{
    Q_DECLARE_TR_FUNCTIONS(ControlWords)

public:
    // One letter each, as shown.
    static QString keyPlay() { return tr("P", "key for free play"); }
    static QString keyUp() { return tr("U", "key for the deflection up"); }
    static QString keyDown() { return tr("D", "key for the deflection down"); }
    static QString keyOf(MeasureKind kind);

    // The record's list, and the surfaces
    static QString place() { return tr("Control check"); }
    static QString progress(int done, int of) { return tr("%1 of %2 surfaces").arg(done).arg(of); }
    static QString noneInList() { return tr("no surfaces set up yet"); }
    static QString goHere() { return tr("Control check  (Enter)"); }
    static QString surfaces() { return tr("Surfaces of the control check"); }
    static QString done(const QString& name) { return tr("%1: done").arg(name); }
    static QString begun(const QString& name) { return tr("%1: begun").arg(name); }
    static QString waiting(const QString& name) { return tr("%1: waiting").arg(name); }
    static QString stopped(const QString& name) { return tr("%1: stop").arg(name); }
    static QString open(const QString& name) { return tr("%1: open question").arg(name); }
    static QString noSurfaces();
    static QString addOwn() { return tr("Others are added in Set up (Ctrl+5)."); }
    static QString addUsual() { return tr("Add the usual surfaces  (Enter)"); }

    // Who
    static QString atSurface() { return tr("At the surface"); }
    static QString inCockpit() { return tr("In the cockpit"); }
    static QString choosePeople();
    static QString samePerson();

    // What is tried
    static QString callAloud() { return tr("Call aloud, from the surface"); }
    static QString question(SurfaceCheckKind kind);
    static QString hint(SurfaceCheckKind kind);
    static QString partSeatedCanPass() { return tr("A joint that is part-seated can pass this check."); }
    static QString keys();
    static QString next() { return tr("Next surface  (Enter)"); }

    // Stop
    static QString stop() { return tr("Stop"); }
    static QString reversed(const QString& surface);
    static QString saidNo(const QString& surface, SurfaceCheckKind kind);
    static QString leaveAndCall(const QString& name, const QString& phone);
    static QString cannotSeeHere();

    // Figures
    static QString figures() { return tr("Measured, where you measure"); }
    static QString figureName(MeasureKind kind, SurfaceKind surface);
    static QString figureLabel(MeasureKind kind, SurfaceKind surface);
    static QString unitOfUpAndDown() { return tr("Up and down in"); }
    static QString unitShort(DeflectionUnit unit);
    static QString typeThenEnter() { return tr("Type it, then Enter."); }
    static QString measured(const SurfaceMeasure& measure);
    // Beside what the manual says; empty where it says nothing.
    static QString besideManual(const Surface& surface, const SurfaceMeasure& measure);
    // What the manual says before anything is measured; empty where it says nothing.
    static QString fromManual(const Surface& surface, MeasureKind kind);
    static QString ratio(double upOverDown);
    static QString leftAndRight(const QString& direction, const QString& left, const QString& right);
    static QString leftAndRightApart(const QString& direction, const QString& left, const QString& right,
                                     const QString& apart);
};

} // namespace rig
