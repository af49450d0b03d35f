#include "app/wording/review_words.h"

#include "app/wording/formats.h"
#include "app/wording/picture_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/verdict_words.h"
#include "core/numbers/interval_trend.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

QString signedMm(double mm) { return PictureWords::signedMillimetres(mm, 2); }

QString figure(double mm) { return Formats{}.number(mm, 3); }

const ScatterNow* scatterOf(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->scatter ? &*coupling.movement->scatter : nullptr;
}

const numbers::IntervalTrend* trendOf(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->line ? &*coupling.movement->line : nullptr;
}

} // namespace

QString ReviewWords::nameOf(const CouplingReview& coupling)
{
    return QString::fromStdString(coupling.coupling.name);
}

QString ReviewWords::riggingNumber(double rigging)
{
    return Formats{}.count(static_cast<int>(std::floor(rigging)));
}

QString ReviewWords::riggingAt(const FittingMovement& movement, std::size_t index)
{
    return riggingNumber(movement.readings[index].rigging);
}

QString ReviewWords::ratio(const ScatterNow& scatter)
{
    return Formats{}.number(scatter.now / scatter.baseline, 1);
}

QString ReviewWords::drift(const CouplingReview& coupling)
{
    return trendOf(coupling)
               ? tr("%1 (%2)", "drift, its interval").arg(driftFigure(coupling), driftInterval(coupling))
               : QString{};
}

QString ReviewWords::driftFigure(const CouplingReview& coupling)
{
    const auto* line = trendOf(coupling);
    return line ? signedMm(line->slope) : QString{};
}

QString ReviewWords::driftInterval(const CouplingReview& coupling)
{
    const auto* line = trendOf(coupling);
    return line ? tr("%1 to %2", "ends of an interval")
                      .arg(signedMm(line->slope95.lower), signedMm(line->slope95.upper))
                : QString{};
}

QString ReviewWords::scatter(const CouplingReview& coupling)
{
    return scatterOf(coupling) ? tr("%1 (%2)", "scatter now, of the baseline")
                                     .arg(scatterNow(coupling), scatterBefore(coupling))
                               : QString{};
}

QString ReviewWords::scatterNow(const CouplingReview& coupling)
{
    const ScatterNow* scatter = scatterOf(coupling);
    return scatter ? figure(scatter->now) : QString{};
}

QString ReviewWords::scatterBefore(const CouplingReview& coupling)
{
    const ScatterNow* scatter = scatterOf(coupling);
    return scatter ? tr("was %1", "scatter of the baseline").arg(figure(scatter->baseline)) : QString{};
}

QString ReviewWords::chanceOf(double chance)
{
    constexpr double kLeastSaid = 0.01;
    const Formats formats;
    if (chance < kLeastSaid)
        return tr("< %1", "a chance smaller than").arg(formats.number(kLeastSaid, 2));
    if (chance > 1 - kLeastSaid)
        return tr("> %1", "a chance larger than").arg(formats.number(1 - kLeastSaid, 2));
    return formats.number(chance, 2);
}

QString ReviewWords::chance(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->forecast)
        return {};
    return chanceOf(coupling.movement->forecast->chanceOutside);
}

QString ReviewWords::whyNoDrift(const CouplingReview& coupling)
{
    if (!coupling.band)
        return tr("no band yet");
    if (!coupling.latest)
        return tr("not read");
    return tr("too few readings");
}

QString ReviewWords::whyNoChance(const CouplingReview& coupling, const ReviewPeriod& period)
{
    if (!trendOf(coupling))
        return whyNoDrift(coupling);
    return period.annual ? tr("annual overdue") : tr("no annual date");
}

QString ReviewWords::noBand(const CouplingReview& coupling)
{
    if (!coupling.fitting)
        return tr("no band yet: no fitting has begun");
    if (coupling.baselineReadings == 0)
        return tr("no band yet: no confirmed reading");
    return tr("no band yet: %n confirmed reading(s)", nullptr, coupling.baselineReadings);
}

QString ReviewWords::driftSentence(const CouplingReview& coupling)
{
    const auto* line = trendOf(coupling);
    if (!line)
        return {};
    const FittingMovement& movement = *coupling.movement;
    const QString said =
        tr("%1 mm per %2 riggings (95 % interval %3 to %4), from %n reading(s) since rigging %5.", nullptr,
           line->readings)
            .arg(signedMm(line->slope), Formats{}.number(kDriftUnit, 0), signedMm(line->slope95.lower),
                 signedMm(line->slope95.upper), riggingAt(movement, movement.lineFrom));
    if (!movement.drift || !movement.drift->isRaised || movement.lineFrom != movement.drift->onset)
        return said;
    return tr("%1 The same readings dated the beginning, so the interval is somewhat too narrow.", "drift")
        .arg(said);
}

QString ReviewWords::forecastSentence(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->forecast)
        return {};
    const DriftForecast& forecast = *coupling.movement->forecast;
    return tr("Going on like this, a reading at the annual of %1, at about rigging %2, would lie outside the "
              "band with a chance of %3.")
        .arg(Formats{}.day(forecast.day), Formats{}.number(forecast.rigging, 0),
             chanceOf(forecast.chanceOutside));
}

QString ReviewWords::scatterSentence(const CouplingReview& coupling)
{
    const ScatterNow* scatter = scatterOf(coupling);
    if (!scatter)
        return {};
    return tr("The last %1 readings, from rigging %2 on, scatter by %3 mm, those of the baseline by %4 mm: "
              "%5 times as much, larger with a chance of %6.")
        .arg(SentenceParts::number(scatter->readings), riggingAt(*coupling.movement, scatter->from),
             figure(scatter->now), figure(scatter->baseline), ratio(*scatter),
             chanceOf(scatter->chanceLarger));
}

QString ReviewWords::stepSentence(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->hasStep())
        return {};
    const numbers::ChangePoint& change = *coupling.movement->change;
    const QString rigging = riggingNumber(*coupling.movement->stepAt());
    const QString p = change.p < 0.001 ? tr("p < %1").arg(Formats{}.number(0.001, 3))
                                       : tr("p = %1").arg(Formats{}.number(change.p, 3));
    return tr("Its readings have another mean from about rigging %1 on (%2 when there is no step).")
        .arg(rigging, p);
}

} // namespace rig
