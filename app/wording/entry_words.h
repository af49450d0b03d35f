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
    static QString notOnThisPage() { return tr("Choose a leaf set or gauge first."); }

    // What a reading says: "0.60 enters, 0.65 does not".
    static QString meaning(const GaugeReading& reading);
    // `typed` and what Enter will make of it.
    static QString enterTakes(const GaugeReading& reading);

    static QString leaf(const GaugeStep& step);     // "0.60"; a stack on two lines
    static QString leafName(const GaugeStep& step); // "0.60 millimetres enters"
    static QString noLeafEnters() { return tr("No leaf enters"); }
    static QString noPinEnters() { return tr("No pin enters"); }
    static QString thickestLoose() { return tr("Thickest leaf still loose"); }
    static QString thickestPinLoose() { return tr("Thickest pin still loose"); }
    static QString thinner() { return tr("Thinner leaves"); }
    static QString thicker() { return tr("Thicker leaves"); }
    static QString thinnerArrow() { return QString{QChar{0x2039}}; }
    static QString thickerArrow() { return QString{QChar{0x203A}}; }

    static QString typedName() { return tr("Figure typed, in millimetres"); }
    static QString typed(const QString& figure) { return tr("%1 mm").arg(figure); }
    static QString typeHint() { return tr("Or type the figure in mm, then Enter."); }
    static QString typeValueHint() { return tr("Type the value read in mm, then Enter."); }

private:
    static QString notASize(const GaugeRefusal& refusal, Gap asked);
};

} // namespace rig
