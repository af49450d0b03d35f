#pragma once

#include "core/lesson/own_practice.h"
#include "core/lesson/study_plan.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Sentences of practising to measure and of the crossed study.
class StudyWords
{
    Q_DECLARE_TR_FUNCTIONS(StudyWords)

public:
    // Measuring
    static QString measuringTitle();
    static QString measuringWhat();
    static QString measureAt(const QString& coupling);
    static QString gauge();
    static QString chooseGauge();
    static QString chooseGaugeFirst();
    static QString noGap();
    static QString kept(int count);
    static QString keptAt(const QString& person, int read, int of); // in a study; never what was read
    static QString chooseReading();
    static QString oneReading(const QString& what, const QString& when); // a coupling, a time
    static QString showOwn();
    static QString hideOwn();
    static QString isPrivate(const QString& person);
    static QString share();
    static QString noneOwn();
    static QString ownCount(int readings);
    static QString tooFew();
    static QString repeats(double sd, const numbers::Interval& interval);
    static QString limitedByStep();
    static QString offset(double offset, const numbers::Interval& interval);
    static QString noOffset();

    // The study
    static QString studyTitle();
    static QString studyWhat();
    static QString whichCouplings();
    static QString whichPersons();
    static QString repeatsEach();
    static QString begin();
    static QString beginAnother();
    static QString twoOfEach();
    static QString wanted(int couplings, int persons, int repeats);
    static QString progress(int read, int of);
    static QString next(const QString& person, const QString& coupling);
    static QString nextHint();
    static QString handOver(const QString& person);
    static QString handOverHint();
    static QString iAm(const QString& person);
    static QString takeLastBack(const QString& person, const QString& coupling);
    static QString leave();
    static QString left(int read, int of);
    static QString goOn();
    static QString whole();
    static QString result(const numbers::MeasurerStudy& study, int persons);
    static QString noResult(const StudyResult& result);
    static QString columnWhat();
    static QString columnMm();
    static QString rowRepeat();
    static QString rowReproduced();
    static QString rowPersons();
    static QString rowInteraction();
    static QString rowCouplings();
    static QString rowRepeatLimit();
    static QString rowReproducedLimit();
    static QString meaning();
};

} // namespace rig
