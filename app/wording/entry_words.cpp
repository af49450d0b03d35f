#include "app/wording/entry_words.h"

#include "app/wording/formats.h"

#include <algorithm>

namespace rig {

namespace {

// "60" may have meant 0.60; a longer or a shorter figure may have meant several things, so nothing is offered
// for it.
bool isTwoFigures(const QString& typed)
{
    return typed.size() == 2 && std::all_of(typed.begin(), typed.end(), [](QChar c) { return c.isDigit(); });
}

} // namespace

QString EntryWords::refusal(EntryProblem problem, const QString& typed)
{
    const QString figure = typed.trimmed();
    const QString widest = Formats{}.count(kWidestGap.inMicrometres() / 1000);
    switch (problem) {
    case EntryProblem::Empty:
        return tr("Nothing is typed yet. Type millimetres, such as %1.").arg(Formats{}.millimetres(0.6));
    case EntryProblem::NotANumber:
        return tr("“%1” is not a length. Type millimetres with a point or a comma, such as %2.")
            .arg(figure, Formats{}.millimetres(0.6));
    case EntryProblem::TwoSeparators:
        return tr("“%1” has more than one point or comma. Type one of them only, such as %2.")
            .arg(figure, Formats{}.millimetres(0.6));
    case EntryProblem::TooManyDecimals:
        return tr("“%1” is finer than a micrometre. Three figures after the point or comma at most.")
            .arg(figure);
    case EntryProblem::Negative:
        return tr("“%1” is below zero. A length cannot be.").arg(figure);
    case EntryProblem::TooLarge:
        break;
    }
    if (isTwoFigures(figure))
        return tr("%1 mm is wider than any gap, %2 mm at most. If you meant %3, type it with a point or a "
                  "comma.")
            .arg(figure, widest, Formats{}.millimetres(figure.toInt() / 100.0));
    return tr("%1 mm is wider than any gap, %2 mm at most. Type millimetres with a point or a comma.")
        .arg(figure, widest);
}

QString EntryWords::notASize(const GaugeRefusal& refusal, Gap asked)
{
    const Formats formats;
    const QString figure = formats.gap(asked);
    if (refusal.below && refusal.above)
        return tr("%1 mm is not in this set: its neighbours are %2 and %3.")
            .arg(figure, formats.gap(*refusal.below), formats.gap(*refusal.above));
    if (refusal.above)
        return tr("%1 mm is not in this set: the thinnest it has is %2. If that does not enter, press “%3”.")
            .arg(figure, formats.gap(*refusal.above), noLeafEnters());
    if (refusal.below)
        return tr("%1 mm is not in this set: the most it can offer is %2.")
            .arg(figure, formats.gap(*refusal.below));
    return tr("%1 mm is not in this set.").arg(figure);
}

QString EntryWords::refusal(const GaugeRefusal& refusal, Gap asked)
{
    switch (refusal.problem) {
    case GaugeProblem::NoSizes:
        return tr("This set has no leaves written down, so nothing can be read with it. Add them in Set up.");
    case GaugeProblem::NotASize:
        return notASize(refusal, asked);
    case GaugeProblem::NoNextSize:
        break;
    }
    return tr("%1 mm is the most this set can offer, so nothing says where the gap ends. If it enters, press "
              "“%2”.")
        .arg(Formats{}.gap(asked), thickestLoose());
}

QString EntryWords::meaning(const GaugeReading& reading)
{
    const Formats formats;
    const GapInterval& interval = reading.interval;
    if (reading.technique == Technique::Taper && interval.refuses)
        return tr("between %1 and %2").arg(formats.gap(interval.enters), formats.gap(*interval.refuses));
    if (!interval.refuses)
        return tr("%1 is still loose").arg(formats.gap(interval.enters));
    if (interval.enters == Gap{})
        return tr("%1 does not enter").arg(formats.gap(*interval.refuses));
    const QString both =
        tr("%1 enters, %2 does not").arg(formats.gap(interval.enters), formats.gap(*interval.refuses));
    return reading.technique == Technique::Stack
               ? tr("%1 (%2)", "what a reading says, why it is wider").arg(both, widenedByStacking())
               : both;
}

QString EntryWords::widenedByStacking()
{
    return tr("stacked leaves: widened by %1 mm").arg(Formats{}.gap(kStackFilm));
}

QString EntryWords::enterTakes(const GaugeReading& reading)
{
    return tr("%1. Enter takes it.", "what a reading says").arg(meaning(reading));
}

QString EntryWords::leaf(const GaugeStep& step)
{
    const Formats formats;
    if (!step.isStacked())
        return formats.gap(step.size);
    return tr("%1\n+ %2", "two leaves stacked")
        .arg(formats.gap(step.size - step.second), formats.gap(step.second));
}

QString EntryWords::leafName(const GaugeStep& step)
{
    const Formats formats;
    if (!step.isStacked())
        return tr("%1 millimetres enters").arg(formats.gap(step.size));
    return tr("%1 and %2 millimetres stacked enter")
        .arg(formats.gap(step.size - step.second), formats.gap(step.second));
}

QString EntryWords::nothingEnters(GaugeKind kind)
{
    if (kind == GaugeKind::GoNoGo)
        return tr("Thin end does not enter");
    return kind == GaugeKind::Pins ? noPinEnters() : noLeafEnters();
}

QString EntryWords::allEnter(GaugeKind kind)
{
    if (kind == GaugeKind::GoNoGo)
        return tr("Thick end enters");
    return kind == GaugeKind::Pins ? thickestPinLoose() : thickestLoose();
}

QString EntryWords::goNoGo(Gap go, Gap noGo)
{
    return tr("%1 enters, %2 does not").arg(Formats{}.gap(go), Formats{}.gap(noGo));
}

QString EntryWords::noLeafEnters() { return tr("No leaf enters"); }
QString EntryWords::noPinEnters() { return tr("No pin enters"); }
QString EntryWords::thickestLoose() { return tr("Thickest leaf still loose"); }
QString EntryWords::thickestPinLoose() { return tr("Thickest pin still loose"); }
QString EntryWords::thinner() { return tr("Thinner leaves"); }
QString EntryWords::thicker() { return tr("Thicker leaves"); }
QString EntryWords::thinnerArrow() { return QString{QChar{0x2039}}; }
QString EntryWords::thickerArrow() { return QString{QChar{0x203A}}; }

QString EntryWords::typedName() { return tr("Figure typed, in millimetres"); }
QString EntryWords::typed(const QString& figure) { return tr("%1 mm").arg(figure); }
QString EntryWords::typeHint() { return tr("Or type the figure in mm, then Enter."); }
QString EntryWords::typeValueHint() { return tr("Type the value read in mm, then Enter."); }

} // namespace rig
