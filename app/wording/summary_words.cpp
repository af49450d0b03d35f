#include "app/wording/summary_words.h"

namespace rig {

QString SummaryWords::correctMeaning()
{
    return tr("A closed record takes nothing new. A slip of the pen can be put right: the old reading stays, "
              "struck through, with the reason and the name.");
}

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
    return tr("Corrected to %1. The old reading stays, struck through.").arg(interval);
}

} // namespace rig
