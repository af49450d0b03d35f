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
    static QString keyAtSurface();
    static QString keyInCockpit();
    static QString keyPlay();
    static QString keyUp();
    static QString keyDown();
    static QString keyOf(MeasureKind kind);

    // The record's list, and the surfaces
    static QString place();
    static QString progress(int done, int of);
    static QString noneInList();
    static QString goHere();
    static QString surfaces();
    static QString done(const QString& name);
    static QString begun(const QString& name);
    static QString waiting(const QString& name);
    static QString stopped(const QString& name);
    static QString afterTheStop(); // of the whole check
    static QString open(const QString& name);
    static QString setBack(const QString& name);
    static QString setBackMark(const QString& detail);
    static QString setBackHere(const QString& coupling);
    static QString noSurfaces();
    static QString addOwn();
    static QString addUsual();

    // Who
    static QString atSurface();
    static QString inCockpit();
    static QString choosePeople();
    static QString samePerson();

    // What is tried
    static QString tellCockpit();
    static QString calledAloud();
    static QString besideExpected();
    // What the cockpit is told to move, and nothing of what the surface should do.
    static QString command(SurfaceKind surface, SurfaceCheckKind call);
    static QString spoken(const QString& question, const QString& answer);
    static QString whatItDoes(const QString& command);
    static QString sayThenPress();
    static QString movement(Movement movement);
    static QString movementWithKey(Movement movement);
    static QString keyNothing();
    static QString called(const QString& command, const QString& what);
    static QString calledBesideExpected(const QString& command, const QString& what, const QString& expected);
    static QString expected(const QString& call);
    static QString callKeys();
    static QString question(SurfaceCheckKind kind);
    static QString hint(SurfaceCheckKind kind);
    static QString keys();
    static QString next();

    // Stop
    static QString stop();
    static QString reversed(const QString& surface);
    static QString didNothing(const QString& surface);
    static QString saidNo(const QString& surface, SurfaceCheckKind kind);
    static QString readTheStopFirst();
    static QString leaveAndCall(const QString& name, const QString& phone);
    static QString cannotSeeHere();

    // Figures
    static QString figures();
    static QString figureName(MeasureKind kind, SurfaceKind surface);
    static QString figureLabel(MeasureKind kind, SurfaceKind surface);
    static QString unitOfUpAndDown();
    static QString unitShort(DeflectionUnit unit);
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
