#pragma once

#include "core/measure/gap_interval.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of the page on which a closed record is read again.
class SummaryWords
{
    Q_DECLARE_TR_FUNCTIONS(SummaryWords)

public:
    static QString keyPrint();
    static QString keyBack();
    static QString keyLast();

    static QString showLast();
    static QString print();
    static QString back();
    static QString paper();
    static QString pdfFiles();

    static QString correctTitle();
    static QString correctMeaning();
    static QString whichReading();
    static QString chooseReading();
    static QString reading(const QString& coupling, const QString& interval, const QString& person,
                           const QString& time);
    static QString figure();
    static QString figureHint();
    static QString reason();
    static QString reasonHint();
    static QString chooseWho();
    static QString who();
    static QString correct();
    static QString readingMissing();
    static QString reasonMissing();
    static QString whoMissing();
    static QString needsTwoFigures();
    static QString notAnInterval(IntervalProblem problem);
    static QString corrected(const QString& interval);
};

} // namespace rig
