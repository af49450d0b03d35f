#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/review_report_words.h"

#include <QStringList>

#include <cmath>

// What the report says of one coupling.
namespace rig {

QString ReviewReportWords::placed(const Coupling& coupling)
{
    QStringList parts;
    for (const QString& part : {CouplingWords::circuitOf(coupling), QString::fromStdString(coupling.access),
                                QString::fromStdString(coupling.leafPlace)})
        if (!part.isEmpty())
            parts << part;
    return parts.join(tr(" · ", "between parts"));
}

QString ReviewReportWords::fitting() { return tr("Fitting"); }
QString ReviewReportWords::band() { return tr("Band"); }

QString ReviewReportWords::riggingsSince(int riggings)
{
    return tr("%n rigging(s) since.", nullptr, riggings);
}

QString ReviewReportWords::edges(const Band& band)
{
    const Formats formats;
    return tr("95 of 100 locked readings fall in it, all but 27 in 10 000 between %1; middle %2 mm, scatter "
              "%3 mm.")
        .arg(formats.band(band.outer), formats.number(band.median, 3), formats.number(band.scatter, 3));
}

QString ReviewReportWords::frozenBy(Day day, const QString& first, const QString& second)
{
    return tr("Frozen %1 by %2 and %3: later readings do not move it.")
        .arg(Formats{}.day(day), first, second);
}

QString ReviewReportWords::notFrozen() { return tr("Not frozen: further confirmed readings still move it."); }
QString ReviewReportWords::firstBand() { return tr("First band"); }

QString ReviewReportWords::firstBandWas(const Band& band)
{
    const Formats formats;
    return tr("%1, middle %2 mm, from %3 readings of the first fitting.")
        .arg(formats.band(band.inner), formats.number(band.median, 3), Formats{}.count(band.readings));
}

QString ReviewReportWords::withDoubted(const Band& band)
{
    return tr("With the readings in doubt left in it would be %1, from %2 readings.")
        .arg(Formats{}.band(band.inner), Formats{}.count(band.readings));
}

QString ReviewReportWords::inThePeriod() { return tr("Readings"); }

QString ReviewReportWords::verdicts(const VerdictCounts& counts)
{
    if (counts.all() == 0)
        return tr("None in the period.");
    QStringList parts;
    const auto addIfAny = [&parts](int number, const QString& said) {
        if (number > 0)
            parts << said.arg(Formats{}.count(number));
    };
    addIfAny(counts.outside, tr("%1 outside"));
    addIfAny(counts.nearEdge, tr("%1 near the edge"));
    addIfAny(counts.cannotTell, tr("%1 cannot tell"));
    addIfAny(counts.inside, tr("%1 inside"));
    addIfAny(counts.noBand, tr("%1 without a band to judge them"));
    return tr("%1 in the period: %2.", "readings, by verdict")
        .arg(Formats{}.count(counts.all()), list(parts));
}

QString ReviewReportWords::inDoubt(int readings)
{
    return tr("%n of them with a gauge in doubt on that day.", nullptr, readings);
}

QString ReviewReportWords::missed(int riggings)
{
    return tr("Not read at %n rigging(s).", nullptr, riggings);
}

QString ReviewReportWords::driftHead() { return tr("Drift"); }

QString ReviewReportWords::noBandNoMovement()
{
    return tr("Without a band neither drift nor scatter nor a chance can be told.");
}

QString ReviewReportWords::noDrift(const QString& why)
{
    return tr("No line can be drawn: %1.", "why").arg(why);
}

QString ReviewReportWords::flag(const DriftFlag& flag, double onset, double signal)
{
    const QString from = Formats{}.count(static_cast<int>(std::floor(onset)));
    const QString at = Formats{}.count(static_cast<int>(std::floor(signal)));
    if (!flag.isRaised)
        return tr("The drift flag was raised at rigging %1 and has fallen since; it dates the movement from "
                  "about rigging %2.")
            .arg(at, from);
    return flag.isUp ? tr("The drift flag was raised at rigging %1: the gap grows, from about rigging %2 on.")
                           .arg(at, from)
                     : tr("The drift flag was raised at rigging %1: the gap shrinks, from about rigging %2 "
                          "on.")
                           .arg(at, from);
}

QString ReviewReportWords::noFlag() { return tr("No drift flag in this period. A slow drift shows late."); }

QString ReviewReportWords::sharedOnly()
{
    return tr(
        "It moved, but only together with all the others: see the leaf set, who measured, and the joint "
        "itself.");
}

QString ReviewReportWords::scatterHead() { return tr("Scatter"); }
QString ReviewReportWords::tooFewForScatter() { return tr("Too few readings in this period to compare."); }
QString ReviewReportWords::stepHead() { return tr("Step"); }
QString ReviewReportWords::noStep() { return tr("The average did not change clearly."); }
QString ReviewReportWords::byTheAnnual() { return tr("At the annual"); }

QString ReviewReportWords::restsOn(const DriftForecast& forecast)
{
    return tr("It rests on %n more rigging(s), and on the line going on as it does.", nullptr,
              static_cast<int>(std::lround(forecast.riggings)));
}

QString ReviewReportWords::noForecast(const QString& why)
{
    return tr("No chance can be given: %1.", "why").arg(why);
}

QString ReviewReportWords::partSeated() { return tr("Part-seated"); }

QString ReviewReportWords::doneSince() { return tr("Done to it"); }
QString ReviewReportWords::lookAt() { return tr("To look at"); }
QString ReviewReportWords::openHere() { return tr("Open"); }
QString ReviewReportWords::standsOutHere() { return tr("Stands out"); }

QString ReviewReportWords::nearEdge() { return tr("Near the edge, corrected, struck or left out"); }

QString ReviewReportWords::nearEdgeShort(int shown, int all)
{
    return tr("The last %1 of %2; the others are in readings.csv.")
        .arg(Formats{}.count(shown), Formats{}.count(all));
}

QString ReviewReportWords::why() { return tr("Why it is listed"); }

QString ReviewReportWords::side(Direction direction)
{
    switch (direction) {
    case Direction::Below:
        return tr("near the edge, below");
    case Direction::Above:
        return tr("near the edge, above");
    case Direction::Neither:
        break;
    }
    return tr("near the edge");
}

QString ReviewReportWords::superseded(const QString& reason)
{
    return reason.isEmpty() ? tr("corrected") : tr("corrected: %1").arg(reason);
}

QString ReviewReportWords::struck(const QString& reason) { return tr("struck: %1").arg(reason); }

QString ReviewReportWords::leftOut(const QString& reason)
{
    return reason.isEmpty() ? tr("left out of the band") : tr("left out of the band: %1").arg(reason);
}

QString ReviewReportWords::with(const QString& person, const QString& gauge)
{
    return gauge.isEmpty() ? person : tr("%1, with %2", "person, gauge").arg(person, gauge);
}

QString ReviewReportWords::shared() { return tr("Is it the coupling, the leaf set or the person?"); }

} // namespace rig
