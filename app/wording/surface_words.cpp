#include "app/wording/surface_words.h"

#include "app/wording/formats.h"

#include <QLocale>

#include <cstdlib>

namespace rig {

namespace {

// No more decimals than the figure has.
int decimalsOf(Deflection figure)
{
    if (figure.thousandths % 1000 == 0)
        return 0;
    if (figure.thousandths % 100 == 0)
        return 1;
    return figure.thousandths % 10 == 0 ? 2 : 3;
}

} // namespace

QString SurfaceWords::number(Deflection figure)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator); // 1,000 would be read as one
    return locale.toString(figure.inUnits(), 'f', decimalsOf(figure));
}

QString SurfaceWords::figure(Deflection figure, DeflectionUnit unit)
{
    return unit == DeflectionUnit::Degrees ? tr("%1°", "an angle").arg(number(figure))
                                           : tr("%1 mm", "a length").arg(number(figure));
}

QString SurfaceWords::workedOut(Deflection given, DeflectionUnit unit)
{
    constexpr int kSmall = 5000;
    const int step = std::abs(given.thousandths) < kSmall ? 10 : 100;
    const int half = given.thousandths < 0 ? -step / 2 : step / 2;
    return figure({(given.thousandths + half) / step * step}, unit);
}

QString SurfaceWords::refusal(EntryProblem problem, const QString& typed, DeflectionUnit unit)
{
    const QString text = typed.trimmed();
    const QString example = Formats{}.number(28.5, 1);
    switch (problem) {
    case EntryProblem::Empty:
        return tr("Nothing is typed yet. Type a figure, such as %1.").arg(example);
    case EntryProblem::NotANumber:
        return tr("“%1” is not a figure. Type digits with a point or a comma, such as %2.")
            .arg(text, example);
    case EntryProblem::TwoSeparators:
        return tr("“%1” has more than one point or comma. Type one of them only, such as %2.")
            .arg(text, example);
    case EntryProblem::TooManyDecimals:
        return tr("“%1” is finer than anybody can measure here. Three figures after the point at most.")
            .arg(text);
    case EntryProblem::Negative:
        return tr("“%1” is below zero. Type how far it moves, without a sign.").arg(text);
    case EntryProblem::TooLarge:
        break;
    }
    return unit == DeflectionUnit::Degrees
               ? tr("%1 degrees is more than half a turn. Was it millimetres?").arg(text)
               : tr("%1 mm is more than a metre. Type millimetres with a point or a comma.").arg(text);
}

QString SurfaceWords::fartherThanItTurns(Gap measuredAt)
{
    return tr("At %1 from the hinge nothing can move that far. Look at the figure and at the distance in Set "
              "up.")
        .arg(figure({measuredAt.inMicrometres()}, DeflectionUnit::Millimetres));
}

QString SurfaceWords::unitName(DeflectionUnit unit)
{
    return unit == DeflectionUnit::Degrees ? tr("degrees") : tr("millimetres in a straight line");
}

QString SurfaceWords::kindName(SurfaceKind kind)
{
    switch (kind) {
    case SurfaceKind::Aileron:
        return tr("Aileron");
    case SurfaceKind::Elevator:
        return tr("Elevator");
    case SurfaceKind::Rudder:
        return tr("Rudder");
    case SurfaceKind::Flap:
        return tr("Flap");
    case SurfaceKind::Airbrake:
        return tr("Airbrake");
    case SurfaceKind::Trim:
        return tr("Trim");
    case SurfaceKind::WaterDump:
        return tr("Water dump");
    case SurfaceKind::Other:
        break;
    }
    return tr("Something else");
}

// docs/terms.md, control check
QString SurfaceWords::usualCall(SurfaceKind kind)
{
    switch (kind) {
    case SurfaceKind::Aileron:
        return tr("Stick left: left aileron up, right down.");
    case SurfaceKind::Elevator:
        return tr("Stick back: trailing edge up.");
    case SurfaceKind::Rudder:
        return tr("Left pedal: rudder to the left.");
    case SurfaceKind::Flap:
        return tr("Flaps positive: both down.");
    case SurfaceKind::Airbrake:
        return tr("Airbrake lever back: both out. Lever forward: both in and locked.");
    case SurfaceKind::Trim:
        return tr("Trim nose-down: it moves as the manual says.");
    case SurfaceKind::WaterDump:
        return tr("Lever open: both open. Lever shut: both shut.");
    case SurfaceKind::Other:
        break;
    }
    return tr("Say aloud how it moves.");
}

QString SurfaceWords::call(const Surface& surface)
{
    return surface.senseCall.empty() ? usualCall(surface.kind) : QString::fromStdString(surface.senseCall);
}

QString SurfaceWords::part() { return tr("Surfaces"); }

QString SurfaceWords::why()
{
    return tr(
        "The control check goes through these one by one: held and resisted, called both ways, full "
        "travel, play. Also one that connects by itself belongs here. What the manual says of deflections "
        "stands beside what you measure, with its page.");
}

QString SurfaceWords::count(int surfaces)
{
    return surfaces == 1 ? tr("1 surface") : tr("%1 surfaces").arg(surfaces);
}

QString SurfaceWords::title() { return tr("Surfaces in the order of the control check"); }
QString SurfaceWords::none() { return tr("No surface yet. Start from the usual ones, or add your own."); }
QString SurfaceWords::add() { return tr("Add a surface"); }
QString SurfaceWords::usual() { return tr("Add the usual surfaces"); }

QString SurfaceWords::usualMeaning()
{
    return tr(
        "Ailerons, airbrakes, elevator, rudder and trim; flaps where a coupling of a flap is set up. What "
        "this airframe does not have is taken out of use again, and every name can be changed.");
}

QString SurfaceWords::usualThere() { return tr("All the usual surfaces are there already."); }
QString SurfaceWords::noFigures() { return tr("no figures from the manual"); }
QString SurfaceWords::figuresFrom(const QString& reference) { return tr("figures from %1").arg(reference); }

QString SurfaceWords::newTitle() { return tr("A new surface"); }
QString SurfaceWords::name() { return tr("&Name"); }
QString SurfaceWords::nameHint() { return tr("As you call it aloud: Left aileron."); }
QString SurfaceWords::kind() { return tr("&Kind"); }
QString SurfaceWords::kindHint() { return tr("It says what is tried in the control check."); }
QString SurfaceWords::side() { return tr("&Side"); }
QString SurfaceWords::senseCall() { return tr("What is expe&cted, in words"); }
QString SurfaceWords::senseCallHint(const QString& usual)
{
    return tr("Empty: “%1” In words of your own it is asked whether it does that.").arg(usual);
}
QString SurfaceWords::unit() { return tr("The manual &gives"); }
QString SurfaceWords::measuredAt() { return tr("&Hinge to ruler, mm"); }

QString SurfaceWords::measuredAtHint()
{
    return tr(
        "From the hinge to the trailing edge, square to the hinge line, where the ruler is held. It turns "
        "millimetres into degrees.");
}

QString SurfaceWords::upNominal() { return tr("&Up; on a rudder, left"); }
QString SurfaceWords::upTolerance() { return tr("Up or left, plus or minus"); }
QString SurfaceWords::downNominal() { return tr("&Down; on a rudder, right"); }
QString SurfaceWords::downTolerance() { return tr("Down or right, plus or minus"); }
QString SurfaceWords::figureHint() { return tr("From the manual, never from memory. May stay empty."); }
QString SurfaceWords::mostPlay() { return tr("Most free &play"); }
QString SurfaceWords::reference() { return tr("&Manual, page and revision"); }
QString SurfaceWords::referenceHint() { return tr("Where the figures stand: page 4-12, revision 3."); }
QString SurfaceWords::nameMissing() { return tr("Type a name for the surface."); }

QString SurfaceWords::nameTaken(const QString& name)
{
    return tr("This airframe already has a surface “%1”. Say left or right.").arg(name);
}

QString SurfaceWords::toleranceMissing()
{
    return tr("Type the manual's plus or minus too; 0 when it gives none.");
}

QString SurfaceWords::nominalMissing() { return tr("A plus or minus needs the deflection it belongs to."); }

QString SurfaceWords::referenceMissing()
{
    return tr("Say on which page of which revision the figures stand: without it nobody can look them up.");
}

QString SurfaceWords::referenceLacksPage()
{
    return tr("A page and a revision have a number, such as: page 4-12, revision 3.");
}

QString SurfaceWords::distanceZero()
{
    return tr("A distance of 0 turns nothing into degrees. Measure it, or leave the line empty.");
}

QString SurfaceWords::takeOutQuestion()
{
    return tr(
        "It leaves the control check of new records. What was answered and measured stays in the file, and "
        "it can be put back at any time.");
}

QString SurfaceWords::leftAileron() { return tr("Left aileron"); }
QString SurfaceWords::rightAileron() { return tr("Right aileron"); }
QString SurfaceWords::leftFlap() { return tr("Left flap"); }
QString SurfaceWords::rightFlap() { return tr("Right flap"); }
QString SurfaceWords::leftAirbrake() { return tr("Left airbrake"); }
QString SurfaceWords::rightAirbrake() { return tr("Right airbrake"); }
QString SurfaceWords::elevator() { return tr("Elevator"); }
QString SurfaceWords::rudder() { return tr("Rudder"); }
QString SurfaceWords::trim() { return tr("Trim"); }

} // namespace rig
