#include "app/wording/gauge_words.h"

#include "app/wording/entry_words.h"

namespace rig {

QString GaugeWords::kindName(GaugeKind kind)
{
    switch (kind) {
    case GaugeKind::Leaves:
        return tr("Feeler leaves");
    case GaugeKind::Pins:
        return tr("Pins or wires");
    case GaugeKind::Taper:
        break;
    }
    return tr("Taper gauge");
}

QString GaugeWords::sizesHint()
{
    return tr("Like 0.05-1.00 step 0.05, or one by one: 0.05, 0.10, 0.15. With a decimal comma put "
              "semicolons between: "
              "0,05; 0,10; 0,15.");
}

QString GaugeWords::sizesRead(int count, const QString& first, const QString& last)
{
    if (count == 1)
        return tr("one size, %1 mm").arg(first);
    return tr("%1 sizes from %2 to %3 mm").arg(count).arg(first, last);
}

QString GaugeWords::refused(const SizeListRefusal& refusal, const QString& size)
{
    const QString piece = QString::fromStdString(refusal.piece);
    switch (refusal.problem) {
    case SizeListProblem::Empty:
        return tr("A set without leaves can measure nothing. Type its sizes, like 0.05-1.00 step 0.05.");
    case SizeListProblem::NotASize:
        if (refusal.entry == EntryProblem::Empty)
            return tr("A figure is missing in “%1”. Type it like 0.05-1.00 step 0.05.").arg(piece);
        return EntryWords::refusal(refusal.entry, piece);
    case SizeListProblem::NoThickness:
        return tr("A leaf of 0 mm has no thickness. Leave it out.");
    case SizeListProblem::Repeated:
        return tr("%1 mm is there twice. Type each size once.").arg(size);
    case SizeListProblem::StepMissing:
        return tr("From “%1” the step is missing. Type it like 0.05-1.00 step 0.05.").arg(piece);
    case SizeListProblem::StepDoesNotFit:
        return tr("In “%1” the step passes over the last size. Which one is meant?").arg(piece);
    case SizeListProblem::StepTooSmall:
        return tr("A step of 0 leads nowhere. Type it like 0.05-1.00 step 0.05.");
    case SizeListProblem::Backwards:
        return tr("In “%1” the first size has to be the smaller one.").arg(piece);
    case SizeListProblem::CommaOrSeparator:
        return tr("Does the comma part two leaves or the decimals? Put semicolons between the sizes: 0,05; "
                  "0,10; 0,15.");
    case SizeListProblem::TooMany:
        break;
    }
    return tr("That would be more than %1 sizes. Is the step right?").arg(kMostSizes);
}

QString GaugeWords::checkMeaning()
{
    return tr("Worn leaves read high, burred or dirty ones read low, on every coupling alike. A check stays "
              "as it was "
              "saved; a later one stands beside it.");
}

} // namespace rig
