#pragma once

#include "core/measure/gauge_set.h"
#include "core/measure/size_list.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of Set up about leaf sets, pins, taper gauges and their checks.
class GaugeWords
{
    Q_DECLARE_TR_FUNCTIONS(GaugeWords)

public:
    // The list
    static QString title() { return tr("Leaf sets and gauges"); }
    static QString none()
    {
        return tr("No leaf set yet. Most people start with the usual one of 20 leaves.");
    }
    static QString add() { return tr("Add a set or gauge"); }
    static QString addUsual() { return tr("Usual 20-leaf set 0.05 to 1.00"); }
    static QString check() { return tr("Note a check"); }
    static QString takeOut() { return tr("Take out of use"); }
    static QString putBack() { return tr("Put back in use"); }
    static QString lineOutOfUse(const QString& name) { return tr("%1 (out of use)").arg(name); }
    static QString line(const QString& name, const QString& kind)
    {
        return tr("%1 · %2", "name, kind").arg(name, kind);
    }
    static QString checkedOn(const QString& day) { return tr("last checked %1").arg(day); }
    static QString neverChecked() { return tr("no check noted"); }
    static QString doubtedSince(const QString& day)
    {
        return tr("in doubt from %1 on: readings show “cannot tell”").arg(day);
    }
    static QString joined(const QString& one, const QString& two) { return tr("%1 · %2").arg(one, two); }

    // One gauge
    static QString newTitle() { return tr("A new set or gauge"); }
    static QString changeTitle(const QString& name) { return tr("Change: %1").arg(name); }
    static QString name() { return tr("&Name on its case"); }
    static QString nameHint() { return tr("Short: A, B, pins."); }
    static QString kind() { return tr("&Kind"); }
    static QString kindName(GaugeKind kind);
    static QString sizes() { return tr("Si&zes, mm"); }
    static QString sizesHint();
    static QString readTo(const QString& resolution) { return tr("read to %1 mm").arg(resolution); }
    static QString sizesRead(int count, const QString& first, const QString& last);
    static QString resolution() { return tr("Reso&lution, mm"); }
    static QString resolutionHint() { return tr("The smallest step its scale can be read to, like 0.05."); }
    static QString tolerance() { return tr("&Tolerance per leaf, ± mm"); }
    static QString toleranceHint()
    {
        return tr("As printed with the set. May stay empty when it is not known.");
    }
    static QString note() { return tr("N&ote"); }
    static QString nameMissing() { return tr("Type the name that stands on the case."); }
    static QString nameTaken(const QString& name)
    {
        return tr("There is already a gauge “%1”. Two sets need two names.").arg(name);
    }
    static QString refused(const SizeListRefusal& refusal, const QString& size);
    static QString resolutionZero() { return tr("A resolution of 0 can measure nothing."); }

    // Checks
    static QString checkTitle(const QString& name) { return tr("A check of %1").arg(name); }
    static QString checkMeaning();
    static QString checkDay() { return tr("&Day of the check"); }
    static QString how() { return tr("&How it was checked"); }
    static QString howHint() { return tr("Micrometer at three places, reference block …"); }
    static QString found() { return tr("What was &found"); }
    static QString foundHint() { return tr("Every leaf as marked; 0.40 worn by 0.02 …"); }
    static QString usable() { return tr("&Usable: readings with it are judged"); }
    static QString doubted() { return tr("&In doubt: readings with it cannot be judged"); }
    static QString doubtedFrom() { return tr("In doubt fro&m"); }
    static QString howMissing() { return tr("Say how it was checked."); }
    static QString foundMissing() { return tr("Say what was found, also when it was as expected."); }
    static QString afterCheck()
    {
        return tr("The doubt cannot begin after the check. Type the day of the check or an earlier one.");
    }
    static QString checks(const QString& name) { return tr("Checks of %1").arg(name); }
    static QString noChecks()
    {
        return tr(
            "No check noted yet. Once a month in the season, and after every drop, is common practice.");
    }
    static QString checkLine(const QString& day, const QString& how, const QString& found)
    {
        return tr("%1 · %2 · %3", "day, how, found").arg(day, how, found);
    }
    static QString checkDoubts(const QString& line, const QString& day)
    {
        return tr("%1 · in doubt from %2").arg(line, day);
    }
};

} // namespace rig
