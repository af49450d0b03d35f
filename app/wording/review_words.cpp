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
    // Never none and never certain.
    const int inHundred = std::clamp(static_cast<int>(std::lround(100 * chance)), 0, 100);
    if (inHundred < 1)
        return tr("under 1 in 100", "a chance");
    if (inHundred > 99)
        return tr("over 99 in 100", "a chance");
    return tr("%1 in 100", "a chance").arg(Formats{}.count(inHundred));
}

QString ReviewWords::chance(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->forecast)
        return {};
    return chanceOf(coupling.movement->forecast->chanceOutside);
}

QString ReviewWords::whyNoDrift(const CouplingReview& coupling)
{
    if (!hasGap(coupling.coupling))
        return noGap();
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

QString ReviewWords::noGap() { return tr("no gap to measure"); }

QString ReviewWords::noBand(const CouplingReview& coupling)
{
    if (!hasGap(coupling.coupling))
        return noGap();
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
    return QStringList{said, tr("The start was found in these same readings."),
                       tr("The interval is somewhat too narrow for that.")}
        .join(QLatin1Char(' '));
}

QString ReviewWords::forecastSentence(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->forecast)
        return {};
    const DriftForecast& forecast = *coupling.movement->forecast;
    return tr("Going on like this, the chance that a reading at the annual of %1, at about rigging %2, lies "
              "outside the band is %3.")
        .arg(Formats{}.day(forecast.day), Formats{}.number(forecast.rigging, 0),
             chanceOf(forecast.chanceOutside));
}

QString ReviewWords::scatterSentence(const CouplingReview& coupling)
{
    const ScatterNow* scatter = scatterOf(coupling);
    if (!scatter)
        return {};
    return tr("The last %n reading(s), from rigging %1 on, scatter by %2 mm, those of the baseline by %3 mm.",
              nullptr, scatter->readings)
        .arg(riggingAt(*coupling.movement, scatter->from), figure(scatter->now), figure(scatter->baseline));
}

QString ReviewWords::stepSentence(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->hasStep())
        return {};
    return tr("The average changed at about rigging %1.").arg(riggingNumber(*coupling.movement->stepAt()));
}

} // namespace rig
