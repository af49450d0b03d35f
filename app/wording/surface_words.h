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
    static QString part();
    static QString why();
    static QString count(int surfaces);
    static QString title();
    static QString none();
    static QString add();
    static QString usual();
    static QString usualMeaning();
    static QString usualThere();
    static QString noFigures();
    static QString figuresFrom(const QString& reference);

    // One surface
    static QString newTitle();
    static QString name();
    static QString nameHint();
    static QString kind();
    static QString kindHint();
    static QString side();
    static QString senseCall();
    static QString senseCallHint(const QString& usual);
    static QString unit();
    static QString measuredAt();
    static QString measuredAtHint();
    static QString upNominal();
    static QString upTolerance();
    static QString downNominal();
    static QString downTolerance();
    static QString figureHint();
    static QString mostPlay();
    static QString reference();
    static QString referenceHint();
    static QString nameMissing();
    static QString nameTaken(const QString& name);
    static QString toleranceMissing();
    static QString nominalMissing();
    static QString referenceMissing();
    static QString referenceLacksPage();
    static QString distanceZero();
    static QString takeOutQuestion();

    // Names of the usual ones
    static QString leftAileron();
    static QString rightAileron();
    static QString leftFlap();
    static QString rightFlap();
    static QString leftAirbrake();
    static QString rightAirbrake();
    static QString elevator();
    static QString rudder();
    static QString trim();
};

} // namespace rig
