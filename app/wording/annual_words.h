#pragma once

#include "core/review/review_period.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Columns of the ranked table, in their order.
enum class AnnualColumn { Coupling, Band, Drift, Scatter, Chance, Questions, StandsOut, Last_ };
inline constexpr int kAnnualColumns = static_cast<int>(AnnualColumn::Last_);

// What stands around the figures on the page Before the annual. The figures' own sentences are ReviewWords.
class AnnualWords
{
    Q_DECLARE_TR_FUNCTIONS(AnnualWords)

public:
    // One letter each, as shown on the buttons.
    static QString keyPeriod() { return tr("P", "key for the period"); }
    static QString keyReport() { return tr("R", "key for write the report"); }
    static QString keyMeaning() { return tr("M", "key for what the columns mean"); }

    static QString period() { return tr("Period (%1)").arg(keyPeriod()); }
    static QString choice(const ReviewPeriod& period); // of the periods to choose from
    static QString periodName() { return tr("Period looked back on"); }
    static QString report() { return tr("Write the report (%1)").arg(keyReport()); }
    static QString meaning() { return tr("What the columns mean (%1)").arg(keyMeaning()); }
    static QString noAirframe() { return tr("This file knows no airframe yet. Begin in Set up (Ctrl+5)."); }
    static QString noCouplings()
    {
        return tr(
            "This airframe has no coupling yet. Add them in Set up (Ctrl+5); then every rigging adds to "
            "this page.");
    }

    // What stands out
    static QString standsOutTitle() { return tr("What stands out"); }
    static QString moreBelow(int more) { return tr("And %n more in the list below.", nullptr, more); }

    // The table
    static QString tableName() { return tr("Couplings, what stands out first"); }
    static QString tableKeys();
    static QString heading(AnnualColumn column);
    static QString meaningOf(AnnualColumn column);
    static QString meaningOfMarks();
    static QString spoken(AnnualColumn column, const QString& figure, const QString& beside);
    static QString signs(const QStringList& signs);
    static QString questionsOpen(int open) { return tr("%n open", "questions", open); }

    // The panels
    static QString shiftsTitle() { return tr("Is it the coupling, the leaf set or the person?"); }
    static QString shiftsLegend()
    {
        return tr("What all couplings share on each rigging day, in their own scatters");
    }
    static QString measurersTitle() { return tr("Who measures like whom"); }
    static QString measurersLegend()
    {
        return tr("Distance from the mean of all, mm, with its 95 % interval; spread at the right");
    }
    static QString outsideTitle() { return tr("Outside its band"); }
    static QString questionsTitle() { return tr("Open questions"); }
    static QString questionsHint() { return tr("Ctrl+6 shows and closes them."); }
    static QString gaugesTitle() { return tr("Leaf sets and other gauges"); }
    static QString changesTitle() { return tr("Fittings and what changed"); }
    static QString tooFewTitle() { return tr("Too few readings"); }
    static QString riggingsTitle() { return tr("Riggings"); }
    static QString noGauge() { return tr("No gauge in use."); }
    static QString stillOpen() { return tr("open"); }
    static QString inDoubt() { return tr("in doubt"); }
    static QString titleOf(const QString& title, const QString& state)
    {
        return state.isEmpty() ? title : tr("%1 (%2)", "a story's title, its state").arg(title, state);
    }
};

} // namespace rig
