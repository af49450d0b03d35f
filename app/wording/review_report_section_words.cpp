#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/review_report_words.h"
#include "app/wording/sentence_parts.h"

#include <QStringList>

#include <cmath>

// What the report says of one coupling, and of its readings outside.
namespace rig {

namespace {

QString withoutStop(const QString& text)
{
    QString plain = text.trimmed();
    while (plain.endsWith(QLatin1Char('.')))
        plain.chop(1);
    return plain;
}

} // namespace

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

QString ReviewReportWords::gapAxis() { return tr("Locked gap, mm"); }
QString ReviewReportWords::riggingAxis() { return tr("Number of the rigging"); }
QString ReviewReportWords::stripAxis() { return tr("Last gap, mm; hatched: part-seated was seen there"); }
QString ReviewReportWords::looked() { return tr("looked at"); }
QString ReviewReportWords::foundByHand() { return tr("Found"); }
QString ReviewReportWords::doneByHand() { return tr("Done"); }
QString ReviewReportWords::initials() { return tr("Initials"); }

QString ReviewReportWords::bandInShort(const Band& band, bool isFrozen)
{
    const Formats formats;
    const QString edges = formats.band(band.inner);
    if (band.isThin())
        return tr("%1, thin: from %n reading(s).", nullptr, band.readings).arg(edges);
    return isFrozen ? tr("%1, from %n reading(s), frozen.", nullptr, band.readings).arg(edges)
                    : tr("%1, from %n reading(s), not frozen.", nullptr, band.readings).arg(edges);
}

QString ReviewReportWords::scatterInShort(const QString& scatter)
{
    return tr("%1 mm.", "scatter now and before").arg(scatter);
}

QString ReviewReportWords::chanceInShort(const QString& chance)
{
    return tr("Chance of a reading outside: %1.").arg(chance);
}

QString ReviewReportWords::riggingsSince(int riggings)
{
    return tr("%n rigging(s) since.", nullptr, riggings);
}

QString ReviewReportWords::edges(const Band& band)
{
    const Formats formats;
    return tr("Outer edges %1, middle %2 mm, scatter %3 mm.")
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

QString ReviewReportWords::ofThoseOutside(const QString& together)
{
    return tr("Outside: %1.", "how many of them on which days").arg(together);
}

QString ReviewReportWords::inDoubt(int readings)
{
    return tr("%n of them with a gauge in doubt on that day.", nullptr, readings);
}

QString ReviewReportWords::missed(int riggings)
{
    return tr("Not read at %n rigging(s).", nullptr, riggings);
}

QString ReviewReportWords::driftHead() { return tr("Movement"); }

QString ReviewReportWords::noBandNoMovement()
{
    return tr("Without a band neither drift nor scatter nor a chance can be told.");
}

QString ReviewReportWords::noMovementShown()
{
    return tr("The readings show no movement, which is not to say that nothing moved.");
}

QString ReviewReportWords::noDrift(const QString& why)
{
    return tr("Whether it moved cannot be told: %1.", "why").arg(why);
}

QString ReviewReportWords::flag(const DriftFlag& flag, double signal)
{
    const QString at = Formats{}.count(static_cast<int>(std::floor(signal)));
    if (!flag.isRaised)
        return tr("From rigging %1 on its readings gave an early sign of a movement; they do so no more.")
            .arg(at);
    return flag.isUp ? tr("Since rigging %1 its readings give an early sign that the gap grows.").arg(at)
                     : tr("Since rigging %1 its readings give an early sign that the gap shrinks.").arg(at);
}

QString ReviewReportWords::noFlag()
{
    return tr(
        "Its last readings show no early sign of a movement in this period. A slow drift shows late, and no "
        "sign is not to say that nothing moved.");
}

QString ReviewReportWords::scatterHead() { return tr("Scatter"); }
QString ReviewReportWords::tooFewForScatter() { return tr("Too few readings in this period to compare."); }
QString ReviewReportWords::byTheAnnual() { return tr("At the annual"); }

QString ReviewReportWords::restsOn(const AnnualForecast& forecast)
{
    return tr("It rests on %n more rigging(s), and on the gap going on as the readings say.", nullptr,
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

QString ReviewReportWords::riggingNumbers(double first, double last)
{
    const auto number = [](double rigging) { return static_cast<int>(std::floor(rigging)); };
    if (number(first) != number(last))
        return tr("riggings %1 to %2").arg(Formats{}.count(number(first)), Formats{}.count(number(last)));
    return first == std::floor(first) ? tr("rigging %1").arg(Formats{}.count(number(first)))
                                      : tr("between riggings");
}

QString ReviewReportWords::readingsFromTo(int readings, const QString& least, const QString& most)
{
    if (least == most)
        return tr("%n reading(s), %1", nullptr, readings).arg(least);
    return tr("%n reading(s), from %1 to %2", nullptr, readings).arg(least, most);
}

QString ReviewReportWords::outsideOf(const QString& edges, Direction direction)
{
    switch (direction) {
    case Direction::Below:
        return tr("outside, below %1", "outer edges of a band").arg(edges);
    case Direction::Above:
        return tr("outside, above %1", "outer edges of a band").arg(edges);
    case Direction::Neither:
        break;
    }
    return tr("outside %1", "outer edges of a band").arg(edges);
}

QString ReviewReportWords::readBy(const QString& persons, const QString& gauges)
{
    return gauges.isEmpty() ? tr("Read by %1.").arg(persons) : tr("Read by %1 with %2.").arg(persons, gauges);
}

QString ReviewReportWords::ofDays(const std::vector<Day>& days, const QString& whatCame)
{
    return tr("%1: %2", "days, what came of it").arg(SentenceParts::days(days), whatCame);
}

QString ReviewReportWords::enteredAfterwards()
{
    return tr("Nothing was shown then: it was entered afterwards.");
}

QString ReviewReportWords::shownThen(const QString& verdict) { return tr("Shown then: %1.").arg(verdict); }

QString ReviewReportWords::correctedTo(const QString& reading, const QString& reason)
{
    if (reason.isEmpty())
        return tr("Corrected: %1.").arg(reading);
    return tr("Corrected: %1, “%2.”", "reading, reason").arg(reading, withoutStop(reason));
}

QString ReviewReportWords::stillOpen() { return tr("Still open: nobody has said what was found."); }

QString ReviewReportWords::allEnteredAfterwards()
{
    return tr("Nothing was shown at the time of any of them: they were entered afterwards.");
}

QString ReviewReportWords::noneAsked()
{
    return tr("No question was asked of any of them, and nothing is noted of what was found.");
}

QString ReviewReportWords::neverAsked()
{
    return tr("No question was asked, and nothing is noted of what was found.");
}

QString ReviewReportWords::readAfterwards(const QStringList& readings)
{
    return tr("Read afterwards, on the same rigging: %1.").arg(SentenceParts::list(readings));
}

QString ReviewReportWords::readBesides(const QStringList& readings)
{
    return tr("Also read on the same rigging, before or after it: %1. The table did not tell when.")
        .arg(SentenceParts::list(readings));
}

QString ReviewReportWords::readingBy(const QString& interval, const QString& person)
{
    return tr("%1 by %2", "interval, person").arg(interval, person);
}

QString ReviewReportWords::sentence(const QString& phrase)
{
    return phrase.endsWith(QLatin1Char('.')) ? SentenceParts::capital(phrase)
                                             : SentenceParts::capital(phrase) + QLatin1Char('.');
}

QString ReviewReportWords::note() { return tr("Noted"); }
QString ReviewReportWords::noted(const QString& note) { return tr("Noted: “%1.”").arg(withoutStop(note)); }

QString ReviewReportWords::notedOf(const QString& gauge, const QString& note)
{
    return tr("%1: “%2.”", "gauge, what is noted of it").arg(gauge, withoutStop(note));
}

} // namespace rig
