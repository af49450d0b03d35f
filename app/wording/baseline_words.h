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
    static QString keyCorrect();
    static QString keyExclude();
    static QString keyFreeze();

    // Which coupling, who, with what
    static QString title();
    static QString whatFor();
    static QString couplings();
    static QString noAirframe();
    static QString noCouplings();
    static QString noneWithGap();
    static QString withoutGap(const QStringList& names);
    static QString noPeople();
    static QString noGauges();
    static QString chooseCoupling();
    static QString noFitting();
    static QString confirmed(int readings);
    static QString confirmedThin(int readings);
    static QString confirmedFrozen(int readings);
    static QString noFittingShort();
    static QString measuredBy();
    static QString choosePerson();
    static QString measuredWith();
    static QString chooseGauge();
    static QString gaugeInDoubt(const QString& gauge);

    // The cycle
    static QString reconnected();
    static QString reconnectedHint();
    static QString locked();
    static QString lockedHint();
    static QString choosePersonFirst();
    static QString chooseGaugeFirst();
    static QString gaugeInDoubtFirst();
    static QString personChanged();
    static QString answerFirst();
    static QString confirmFirst();
    static QString notReconnected();
    static QString notLocked();
    static QString readNow();
    static QString correctNow(const QString& interval, const QString& time, const QString& person);
    static QString dropCorrection();
    static QString inWhoseName(const QString& measuredBy, const QString& correctedBy);
    static QString readElsewhere(); // what a correction does not put right
    static QString kept(const QString& interval, const QString& time);
    static QString corrected(const QString& interval, const QString& time);
    static QString notKept();

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
    static QString neverALimit();

    // The list
    static QString readingsSoFar();
    static QString columnWhen();
    static QString columnReading();
    static QString columnPerson();
    static QString today(const QString& time);
    static QString columnGauge();
    static QString columnState();
    static QString inTheBand();
    static QString correctedBecause(const QString& reason);
    static QString correctionBecause(const QString& reason);
    static QString leftOutBecause(const QString& person, const QString& reason);
    static QString unlikeTheOthers();
    static QString inDoubt(const QString& day);
    static QString doesNotCount();
    static QString inOneLine(const QString& first, const QString& second);
    static QString gaugeNotKnown();
    static QString correct();
    static QString exclude();
    static QString excludedBy();
    static QString chooseRow();
    static QString rowIsDone();
    static QString rowIsFrozen();
    static QString chooseExcluder();
    static QString chooseCorrector();
    static QString correctTitle();
    static QString correctQuestion(const QString& interval, const QString& time);
    static QString excludeTitle();
    static QString excludeQuestion(const QString& interval, const QString& time);

    // The freeze
    static QString freezeTitle();
    static QString freezeSentence();
    static QString firstName();
    static QString secondName();
    static QString freeze();
    static QString freezeYes();
    static QString freezeQuestion(const QString& coupling, int readings, const QString& first,
                                  const QString& second);
    static QString tooFewToFreeze(int readings, int needed);
    static QString outlierBlocks();
    static QString scatterBlocks();
    static QString namesFirst();
    static QString frozen(const QString& when, const QString& first, const QString& second);
    static QString frozenStays();
};

} // namespace rig
