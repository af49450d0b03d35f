#include "app/wording/summary_words.h"

namespace rig {

QString SummaryWords::keyPrint() { return tr("P", "key for write as PDF"); }
QString SummaryWords::keyBack() { return tr("B", "key for back"); }
QString SummaryWords::keyLast() { return tr("L", "key for the last record"); }

QString SummaryWords::showLast() { return tr("Show the last record  (%1)").arg(keyLast()); }
QString SummaryWords::print() { return tr("Write it as PDF  (%1)").arg(keyPrint()); }
QString SummaryWords::back() { return tr("Back  (%1)").arg(keyBack()); }
QString SummaryWords::paper() { return tr("Paper"); }
QString SummaryWords::pdfFiles() { return tr("PDF files (*.pdf)"); }

QString SummaryWords::correctTitle() { return tr("Correct a reading"); }

QString SummaryWords::correctMeaning()
{
    return tr("A closed record takes nothing new. A slip of the pen can be put right: the old reading stays, "
              "with a line through it, the reason and the name.");
}

QString SummaryWords::whichReading() { return tr("Reading to correct"); }
QString SummaryWords::chooseReading() { return tr("Choose a reading"); }

QString SummaryWords::reading(const QString& coupling, const QString& interval, const QString& person,
                              const QString& time)
{
    return tr("%1: %2, %3, %4", "coupling: interval, person, time").arg(coupling, interval, person, time);
}

QString SummaryWords::figure() { return tr("What was read, mm"); }
QString SummaryWords::figureHint() { return tr("0.50 0.55, or the leaf that entered"); }
QString SummaryWords::reason() { return tr("Why"); }
QString SummaryWords::reasonHint() { return tr("What went wrong with the first one"); }
QString SummaryWords::chooseWho() { return tr("Choose a person"); }
QString SummaryWords::who() { return tr("Corrected by"); }
QString SummaryWords::correct() { return tr("Correct this reading"); }
QString SummaryWords::readingMissing() { return tr("Choose the reading that is wrong first."); }

QString SummaryWords::reasonMissing()
{
    return tr("Say why it is wrong: the reason stands beside it for good.");
}

QString SummaryWords::whoMissing() { return tr("Choose who corrects it. Nobody is filled in for you."); }

QString SummaryWords::needsTwoFigures()
{
    return tr("Type two figures, the leaf that entered and the one that did not, such as 0.50 0.55.");
}

QString SummaryWords::notAnInterval(IntervalProblem problem)
{
    switch (problem) {
    case IntervalProblem::Reversed:
        return tr("The leaf that entered has to be thinner than the one that did not. Type the thinner one "
                  "first.");
    case IntervalProblem::TooWide:
        return tr("That is wider than any gap here. Type millimetres with a point or a comma.");
    case IntervalProblem::Negative:
    case IntervalProblem::None:
        break;
    }
    return needsTwoFigures();
}

QString SummaryWords::corrected(const QString& interval)
{
    return tr("Corrected to %1. The old reading stays, with a line through it.").arg(interval);
}

} // namespace rig
