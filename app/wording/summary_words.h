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
    static QString keyPrint() { return tr("P", "key for write as PDF"); }
    static QString keyBack() { return tr("B", "key for back"); }
    static QString keyLast() { return tr("L", "key for the last record"); }

    static QString showLast() { return tr("Show the last record  (%1)").arg(keyLast()); }
    static QString print() { return tr("Write it as PDF  (%1)").arg(keyPrint()); }
    static QString back() { return tr("Back  (%1)").arg(keyBack()); }
    static QString paper() { return tr("Paper"); }
    static QString a4() { return tr("A4"); }
    static QString letter() { return tr("Letter"); }
    static QString pdfFiles() { return tr("PDF files (*.pdf)"); }

    static QString correctTitle() { return tr("Correct a reading"); }
    static QString correctMeaning();
    static QString whichReading() { return tr("Reading to correct"); }
    static QString chooseReading() { return tr("Choose a reading"); }
    static QString reading(const QString& coupling, const QString& interval, const QString& person,
                           const QString& time)
    {
        return tr("%1: %2, %3, %4", "coupling: interval, person, time").arg(coupling, interval, person, time);
    }
    static QString figure() { return tr("What was read, mm"); }
    static QString figureHint() { return tr("0.50 0.55, or the leaf that entered"); }
    static QString reason() { return tr("Why"); }
    static QString reasonHint() { return tr("What went wrong with the first one"); }
    static QString chooseWho() { return tr("Choose a person"); }
    static QString who() { return tr("Corrected by"); }
    static QString correct() { return tr("Correct this reading"); }
    static QString readingMissing() { return tr("Choose the reading that is wrong first."); }
    static QString reasonMissing()
    {
        return tr("Say why it is wrong: the reason stands beside it for good.");
    }
    static QString whoMissing() { return tr("Choose who corrects it. Nobody is filled in for you."); }
    static QString needsTwoFigures();
    static QString notAnInterval(IntervalProblem problem);
    static QString corrected(const QString& interval);
};

} // namespace rig
