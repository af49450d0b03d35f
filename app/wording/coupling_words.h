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
    static QString title();
    static QString none();
    static QString add();
    static QString moveUp();
    static QString moveDown();
    static QString newFitting();
    static QString usual();
    static QString takeOut();
    static QString putBack();
    static QString line(int number, const QString& name);
    static QString lineOutOfUse(const QString& name);
    static QString fittingSince(const QString& day, const QString& reason);
    static QString bandThere();
    static QString noBandYet();
    static QString layoutShort(Layout layout);
    static QString joined(const QString& one, const QString& two);

    // One coupling
    static QString newTitle();
    static QString changeTitle(const QString& name);
    static QString name();
    static QString nameHint();
    static QString circuit();
    // The circuit in words, and what somebody typed as the circuit it names.
    static QString circuitOf(const Coupling& coupling);
    static void setCircuit(Coupling& coupling, const QString& typed);
    static QString circuitName(Circuit circuit); // empty for Other
    static QString circuitHint();
    static QString side();
    static QString sideName(Side side);
    static QString access();
    static QString accessHint();
    static QString layout();
    static QString layoutName(Layout layout);
    static QString layoutSentence(Layout layout);
    static QString leafPlace();
    static QString leafPlaceHint();
    static QString kind();
    static QString kindName(CouplingKind kind);
    static QString kindSentence(CouplingKind kind);
    static QString pullThere();
    static QString securingThere();
    static QString gapThere();
    static QString noGap();
    static QString place();
    static QString note();
    static QString placeNotGiven();
    static QString wingRootLeft();
    static QString wingRootRight();
    static QString outerWingLeft();
    static QString outerWingRight();
    static QString fuselage();
    static QString tailBoom();
    static QString finFoot();
    static QString finTop();
    static QString nameMissing();
    static QString nameTaken(const QString& name);

    // Taking out of use
    static QString takeOutTitle(const QString& name);
    static QString takeOutQuestion();
    static QString takeOutYes();

    // New fitting
    static QString fittingTitle(const QString& name);
    static QString fittingMeaning();
    static QString fittingDay();
    static QString fittingKind();
    static QString fittingKindName(FittingKind kind);
    static QString fittingReason();
    static QString fittingReasonHint();
    static QString startFitting();
    static QString reasonMissing();
    static QString beforeLastFitting(const QString& day);
    // Why it began: what was done, or else its kind; empty when neither says anything.
    static QString whyFitted(FittingKind kind, const std::string& reason);
    static QString whyFitted(const Fitting& fitting) { return whyFitted(fitting.kind, fitting.reason); }

    // Usual couplings
    static QString usualTitle();
    static QString usualMeaning();
    static QString allOfThese();
    static QString addChosen();
    static QString tickOne();
    static QString alreadyThere(const QString& name);
    static QString leftAileron();
    static QString rightAileron();
    static QString leftAirbrake();
    static QString rightAirbrake();
    static QString leftFlap();
    static QString rightFlap();
    static QString elevator();
    static QString trim();
};

} // namespace rig
