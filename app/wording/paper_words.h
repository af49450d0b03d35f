#pragma once

#include "core/measure/gauge_set.h"
#include "core/rigging/reading.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// A rigging on paper: what stands on the sheet.
class PaperWords
{
    Q_DECLARE_TR_FUNCTIONS(PaperWords)

public:
    static QString title();
    static QString fileName(const QString& registration);
    static QString stop(const QString& callName, const QString& callPhone);
    static QString judgesNothing();
    static QString replacesNoManual();
    static QString foot(const QString& callName, const QString& callPhone); // of every page

    static QString when();
    static QString day();
    static QString begunAt();
    static QString before();
    static QString takenApart();
    static QString stoodRigged();
    static QString firstPerson();
    static QString secondPerson();
    static QString connectedBy();
    static QString left();
    static QString right();
    static QString tail();
    static QString gauge();
    static QString anotherGauge();

    static QString firstHow();
    static QString secondHow();
    static QString plan(); // below it
    static QString numbered(int number, const QString& coupling);
    static QString gap(GaugeKind kind, Turn turn);
    static QString leaf(const GaugeStep& step);
    static QString enters();
    static QString refuses();
    static QString valueRead();

    static QString controlHow();
    static QString whoChecks();
    static QString noSurfaces();
    static QString oneWay();
    static QString otherWay();
    static QString moved();
    static QString itDoes();

    // Where something is printed
    static QString a4();
    static QString letter();
    static QString a5();

    // In Set up
    static QString part();
    static QString partDetail();
    static QString why();
    static QString paper();
    static QString chooseGauge();
    static QString noGauge();
    static QString gaugeHint();
    static QString save();
    static QString pdfFiles();

    // Typing it in
    static QString keyEnter();
    static QString enter();
    static QString enterInSetUp();
    static QString enterWhy();
    static QString enterTitle();
    static QString enterSentence();
    static QString dayOnPaper();
    static QString timeOnPaper();
    static QString timeHint();
    static QString firstOnPaper();
    static QString secondOnPaper();
    static QString typist();
    static QString takenApartKey();
    static QString stoodRiggedKey();
    static QString beginToType();
    static QString back();
    static QString dayMissing();
    static QString noTime(const QString& typed);
    static QString timeMissing();
    static QString dayToCome();
    static QString beforeFirstFitting(const QString& day);
    static QString riggedThatDay(const QString& when, const QString& leader);
    static QString isAnother();
    static QString firstMissing();
    static QString secondMissing();
    static QString twoPeople();
    static QString typistMissing();
    static QString beforeMissing();
    static QString riggingIsOpen();
    static QString headIsNotKept();
    static QString isHalfTyped(const QString& day);
    static QString banner(const QString& day);
    static QString bannerOwn(const QString& day);
    static QString bannerCopied(const QString& day, const QString& typist);
    static QString keySecondTypes();
    static QString secondTypes();

    // In the record
    static QString enteredLater(const QString& by, const QString& when);
    static QString copied(const QString& what, const QString& by);

    static QString done();
    static QString by();
    static QString season();
    static QString notes();
};

} // namespace rig
