#pragma once

#include "core/measure/gap_entry.h"
#include "core/measure/gauge_set.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What is said while a length or a leaf is being entered.
class EntryWords
{
    Q_DECLARE_TR_FUNCTIONS(EntryWords)

public:
    // Why a typed figure is no length. `typed` as it stands in the line.
    static QString refusal(EntryProblem problem, const QString& typed);
    // Why a length is no reading of this gauge.
    static QString refusal(const GaugeRefusal& refusal, Gap asked);

    // What a reading says: "0.60 enters, 0.65 does not".
    static QString meaning(const GaugeReading& reading);
    // `typed` and what Enter will make of it.
    static QString widenedByStacking(); // by the film between two leaves
    static QString enterTakes(const GaugeReading& reading);

    static QString leaf(const GaugeStep& step);     // "0.60"; a stack on two lines
    static QString leafName(const GaugeStep& step); // "0.60 millimetres enters"
    static QString nothingEnters(GaugeKind kind);
    static QString allEnter(GaugeKind kind);
    static QString goNoGo(Gap go, Gap noGo);
    static QString noLeafEnters();
    static QString noPinEnters();
    static QString thickestLoose();
    static QString thickestPinLoose();
    static QString thinner();
    static QString thicker();
    static QString thinnerArrow();
    static QString thickerArrow();

    static QString typedName();
    static QString typed(const QString& figure);
    static QString typeHint();
    static QString typeValueHint();

private:
    static QString notASize(const GaugeRefusal& refusal, Gap asked);
};

} // namespace rig
