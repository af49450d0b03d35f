#pragma once

#include "core/baseline/band.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Every sentence of baseline day.
class BaselineWords
{
    Q_DECLARE_TR_FUNCTIONS(BaselineWords)

public:
    static QString keyCorrect() { return tr("W", "key for wrong leaf pressed"); }
    static QString keyExclude() { return tr("X", "key for leave out of the band"); }
    static QString keyFreeze() { return tr("F", "key for freeze the baseline"); }

    // Which coupling, who, with what
    static QString title() { return tr("Baseline day"); }
    static QString whatFor();
    static QString couplings() { return tr("Couplings"); }
    static QString noAirframe() { return tr("No airframe is chosen. Enter one under Airframe first."); }
    static QString noCouplings() { return tr("This airframe has no couplings yet. Enter them first."); }
    static QString noPeople() { return tr("Nobody is entered yet. Enter the people first."); }
    static QString noGauges() { return tr("No leaf set is entered yet. Enter one first."); }
    static QString chooseCoupling() { return tr("Choose a coupling."); }
    static QString noFitting();
    static QString confirmed(int readings) { return tr("%n confirmed reading(s)", nullptr, readings); }
    static QString confirmedThin(int readings)
    {
        return tr("%n confirmed reading(s), thin band", nullptr, readings);
    }
    static QString confirmedFrozen(int readings)
    {
        return tr("%n confirmed reading(s), frozen", nullptr, readings);
    }
    static QString noFittingShort() { return tr("no fitting yet"); }
    static QString measuredBy() { return tr("Measured by"); }
    static QString choosePerson() { return tr("Choose a person"); }
    static QString measuredWith() { return tr("Measured with"); }
    static QString chooseGauge() { return tr("Choose a leaf set or gauge"); }
    static QString gaugeInDoubt(const QString& gauge) { return tr("%1 (in doubt)", "leaf set").arg(gauge); }

    // The cycle
    static QString reconnected() { return tr("1  Disconnected, cleaned and connected again?"); }
    static QString reconnectedHint()
    {
        return tr("Before every reading. Without it the band comes out too narrow.");
    }
    static QString locked() { return tr("2  Locked, confirmed otherwise than by the gap?"); }
    static QString lockedHint();
    static QString choosePersonFirst() { return tr("First choose who measures."); }
    static QString chooseGaugeFirst() { return tr("First choose what is measured with."); }
    static QString gaugeInDoubtFirst();
    static QString personChanged() { return tr("Another person measures: the cycle starts anew."); }
    static QString answerFirst()
    {
        return tr("Disconnect, clean and connect again; then answer the first question.");
    }
    static QString confirmFirst()
    {
        return tr("Confirm that it is locked; then answer the second question.");
    }
    static QString notReconnected();
    static QString notLocked();
    static QString readNow();
    static QString correctNow(const QString& interval, const QString& time, const QString& person);
    static QString dropCorrection() { return tr("Leave it as it was  (Esc)"); }
    static QString kept(const QString& interval, const QString& time);
    static QString corrected(const QString& interval, const QString& time);
    static QString notKept() { return tr("Not saved."); }

    // What the readings say
    static QString sources(int readings, int people, int gauges, int days);
    static QString splitAdvice();
    static QString noBandYet(int readings, int needed);
    static QString noBandFromThese();
    static QString thin(int readings, int needed);
    static QString enough(int readings);
    static QString widths(const Band& band);
    static QString narrowing(double now, double withOneMore);
    static QString outerShare();
    static QString neverALimit() { return tr("The band is this coupling's own past, never a limit."); }

    // The list
    static QString readingsSoFar() { return tr("Readings so far"); }
    static QString columnWhen() { return tr("When"); }
    static QString columnReading() { return tr("Reading"); }
    static QString columnPerson() { return tr("Who"); }
    static QString today(const QString& time) { return tr("today, %1").arg(time); }
    static QString columnGauge() { return tr("With"); }
    static QString columnState() { return tr("What became of it"); }
    static QString inTheBand() { return tr("counts for the band"); }
    static QString correctedBecause(const QString& reason) { return tr("corrected: %1").arg(reason); }
    static QString correctionBecause(const QString& reason) { return tr("corrects another: %1").arg(reason); }
    static QString leftOutBecause(const QString& person, const QString& reason)
    {
        return tr("left out by %1: %2").arg(person, reason);
    }
    static QString unlikeTheOthers()
    {
        return tr("unlike the others: measure again, or leave it out with a reason");
    }
    static QString inDoubt(const QString& day)
    {
        return tr("its gauge is in doubt from %1: does not count").arg(day);
    }
    static QString doesNotCount() { return tr("came after the freeze, does not count"); }
    static QString inOneLine(const QString& first, const QString& second)
    {
        return tr("%1; %2").arg(first, second);
    }
    static QString gaugeNotKnown() { return tr("not known"); }
    static QString correct() { return tr("Wrong leaf pressed  (%1)").arg(keyCorrect()); }
    static QString exclude() { return tr("Leave out of the band  (%1)").arg(keyExclude()); }
    static QString excludedBy() { return tr("Left out by"); }
    static QString chooseRow() { return tr("Choose a reading in the list first."); }
    static QString rowIsDone()
    {
        return tr("That reading was corrected or left out before. It stays as it is.");
    }
    static QString rowIsFrozen();
    static QString chooseExcluder()
    {
        return tr("Choose who leaves it out first. The name stands beside it.");
    }
    static QString chooseCorrector()
    {
        return tr("Choose who corrects it first. The correction stands in that person's name.");
    }
    static QString correctTitle() { return tr("Wrong leaf pressed"); }
    static QString correctQuestion(const QString& interval, const QString& time);
    static QString excludeTitle() { return tr("Leave out of the band"); }
    static QString excludeQuestion(const QString& interval, const QString& time);

    // The freeze
    static QString freezeTitle() { return tr("Freeze this baseline"); }
    static QString freezeSentence();
    static QString firstName() { return tr("First name"); }
    static QString secondName() { return tr("Second name, another person"); }
    static QString freeze() { return tr("Freeze  (%1)").arg(keyFreeze()); }
    static QString freezeYes() { return tr("Freeze it"); }
    static QString freezeQuestion(const QString& coupling, int readings, const QString& first,
                                  const QString& second);
    static QString tooFewToFreeze(int readings, int needed);
    static QString outlierBlocks();
    static QString scatterBlocks();
    static QString namesFirst() { return tr("Choose two different people. Nobody is filled in."); }
    static QString frozen(const QString& when, const QString& first, const QString& second);
    static QString frozenStays();
};

} // namespace rig
