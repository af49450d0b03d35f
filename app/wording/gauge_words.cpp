#include "app/wording/gauge_words.h"

#include "app/wording/entry_words.h"
#include "app/wording/formats.h"

namespace rig {

QString GaugeWords::title() { return tr("Leaf sets and gauges"); }

QString GaugeWords::none()
{
    return tr("No leaf set yet. Most people start with the usual one of 20 leaves.");
}

QString GaugeWords::add() { return tr("Add a set or gauge"); }
QString GaugeWords::addUsual() { return tr("Usual 20-leaf set 0.05 to 1.00"); }
QString GaugeWords::check() { return tr("Note a check"); }
QString GaugeWords::takeOut() { return tr("Take out of use"); }
QString GaugeWords::putBack() { return tr("Put back in use"); }
QString GaugeWords::lineOutOfUse(const QString& name) { return tr("%1 (out of use)").arg(name); }

QString GaugeWords::line(const QString& name, const QString& kind)
{
    return tr("%1 · %2", "name, kind").arg(name, kind);
}

QString GaugeWords::checkedOn(const QString& day) { return tr("last checked %1").arg(day); }
QString GaugeWords::neverChecked() { return tr("no check noted"); }

QString GaugeWords::doubtedSince(const QString& day)
{
    return tr("in doubt from %1 on: readings show “cannot tell”").arg(day);
}

QString GaugeWords::joined(const QString& one, const QString& two) { return tr("%1 · %2").arg(one, two); }

QString GaugeWords::newTitle() { return tr("A new set or gauge"); }
QString GaugeWords::changeTitle(const QString& name) { return tr("Change: %1").arg(name); }
QString GaugeWords::name() { return tr("&Name on its case"); }
QString GaugeWords::nameHint() { return tr("Short: A, B, pins."); }
QString GaugeWords::kind() { return tr("&Kind"); }

QString GaugeWords::kindName(GaugeKind kind)
{
    switch (kind) {
    case GaugeKind::Leaves:
        return tr("Feeler leaves");
    case GaugeKind::Pins:
        return tr("Pins or wires");
    case GaugeKind::GoNoGo:
        return tr("Go/no-go block");
    case GaugeKind::Taper:
        break;
    }
    return tr("Taper gauge");
}

QString GaugeWords::sizes() { return tr("Si&zes, mm"); }

QString GaugeWords::sizesHint()
{
    return tr("Like 0.05-1.00 step 0.05, or one by one: 0.05, 0.10, 0.15. With a decimal comma put "
              "semicolons between: "
              "0,05; 0,10; 0,15.");
}

QString GaugeWords::readTo(const QString& resolution) { return tr("read to %1 mm").arg(resolution); }

QString GaugeWords::sizesRead(int count, const QString& first, const QString& last)
{
    if (count == 1)
        return tr("one size, %1 mm").arg(first);
    return tr("%1 sizes from %2 to %3 mm").arg(count).arg(first, last);
}

QString GaugeWords::resolution() { return tr("Reso&lution, mm"); }
QString GaugeWords::resolutionHint() { return tr("The smallest step its scale can be read to, like 0.05."); }
QString GaugeWords::tolerance() { return tr("&Tolerance per leaf, ± mm"); }

QString GaugeWords::toleranceHint()
{
    return tr("As printed with the set. May stay empty when it is not known.");
}

QString GaugeWords::note() { return tr("N&ote"); }
QString GaugeWords::nameMissing() { return tr("Type the name that stands on the case."); }

QString GaugeWords::nameTaken(const QString& name)
{
    return tr("There is already a gauge “%1”. Two sets need two names.").arg(name);
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

QString GaugeWords::resolutionZero() { return tr("A resolution of 0 can measure nothing."); }

QString GaugeWords::twoEnds()
{
    return tr(
        "A go/no-go block has two sizes: the one that is to enter and the one that is not, like 0.40, 0.60.");
}

QString GaugeWords::knownGap() { return tr("Tried on a &gap of known width, mm"); }

QString GaugeWords::knownGapHint()
{
    return tr(
        "A stamped block or a ring, read once each rigging day. Leave it empty if it was not tried on one.");
}

QString GaugeWords::knownEnters() { return tr("Thickest that &entered there"); }
QString GaugeWords::knownRefuses() { return tr("Thinnest that did &not"); }
QString GaugeWords::knownGapZero() { return tr("A gap of 0 cannot be read."); }

QString GaugeWords::knownGapReversed()
{
    return tr("The one that did not enter has to be thicker than the one that did.");
}

namespace {

QString howFar(Gap by) { return Formats{}.gap(std::max(by, Gap{} - by)); }

} // namespace

QString GaugeWords::missesKnownGap(Gap by)
{
    const QString far = howFar(by);
    return by > Gap{}
               ? tr("The set reads at least %1 mm high on the known gap, so it is not usable: choose “In "
                    "doubt”.")
                     .arg(far)
               : tr("The set reads at least %1 mm low on the known gap, so it is not usable: choose “In "
                    "doubt”.")
                     .arg(far);
}

QString GaugeWords::checkKnown(const QString& line, const KnownGapRead& known)
{
    const Formats formats;
    const QString width = formats.gap(known.width);
    const QString read = formats.interval(known.read);
    const Gap by = known.missedBy();
    if (by > Gap{})
        return tr("%1 Known gap %2 mm: read %3, at least %4 mm high.").arg(line, width, read, howFar(by));
    if (by < Gap{})
        return tr("%1 Known gap %2 mm: read %3, at least %4 mm low.").arg(line, width, read, howFar(by));
    return tr("%1 Known gap %2 mm: read %3.").arg(line, width, read);
}

QString GaugeWords::checkTitle(const QString& name) { return tr("A check of %1").arg(name); }

QString GaugeWords::checkMeaning()
{
    return tr("Worn leaves read high, burred or dirty ones read low, on every coupling alike. A check stays "
              "as it was "
              "saved; a later one stands beside it.");
}

QString GaugeWords::checkDay() { return tr("&Day of the check"); }
QString GaugeWords::how() { return tr("&How it was checked"); }
QString GaugeWords::howHint() { return tr("Micrometer at three places, reference block …"); }
QString GaugeWords::found() { return tr("What was &found"); }
QString GaugeWords::foundHint() { return tr("Every leaf as marked; 0.40 worn by 0.02 …"); }
QString GaugeWords::usable() { return tr("&Usable: readings with it are judged"); }
QString GaugeWords::doubted() { return tr("&In doubt: readings with it cannot be judged"); }
QString GaugeWords::doubtedFrom() { return tr("In doubt fro&m"); }
QString GaugeWords::howMissing() { return tr("Say how it was checked."); }
QString GaugeWords::foundMissing() { return tr("Say what was found, also when it was as expected."); }

QString GaugeWords::afterCheck()
{
    return tr("The doubt cannot begin after the check. Type the day of the check or an earlier one.");
}

QString GaugeWords::checks(const QString& name) { return tr("Checks of %1").arg(name); }

QString GaugeWords::noChecks()
{
    return tr("No check noted yet. Once a month in the season, and after every drop, is common practice.");
}

QString GaugeWords::checkLine(const QString& day, const QString& how, const QString& found)
{
    return tr("%1 · %2 · %3", "day, how, found").arg(day, how, found);
}

QString GaugeWords::checkDoubts(const QString& line, const QString& day)
{
    return tr("%1 · in doubt from %2").arg(line, day);
}

} // namespace rig
