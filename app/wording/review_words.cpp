#include "app/wording/review_words.h"

#include "app/wording/formats.h"
#include "app/wording/picture_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/verdict_words.h"

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

const PathChangeTold* changeOf(const CouplingReview& coupling)
{
    return coupling.movement ? coupling.movement->told() : nullptr;
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

QString ReviewWords::ratio(const ScatterNow& scatter)
{
    return Formats{}.number(scatter.now / scatter.before, 1);
}

bool ReviewWords::isMoving(const CouplingReview& coupling)
{
    const PathChangeTold* change = changeOf(coupling);
    return change && !change->endedAt;
}

QString ReviewWords::movement(const CouplingReview& coupling)
{
    return changeOf(coupling) ? tr("%1 (%2)", "movement, its interval")
                                    .arg(movementFigure(coupling), movementInterval(coupling))
                              : QString{};
}

QString ReviewWords::movementFigure(const CouplingReview& coupling)
{
    const PathChangeTold* change = changeOf(coupling);
    if (!change)
        return {};
    switch (change->kind) {
    case ChangeKind::Step:
        return tr("step %1", "signed mm").arg(signedMm(change->step->estimate));
    case ChangeKind::Drift:
        return change->endedAt
                   ? tr("drift that ended, %1", "signed mm per 100").arg(signedMm(change->rate->estimate))
                   : tr("drift %1", "signed mm per 100").arg(signedMm(change->rate->estimate));
    case ChangeKind::StepOrDrift:
        break;
    }
    return change->isUp() ? tr("step or drift, larger") : tr("step or drift, smaller");
}

QString ReviewWords::movementInterval(const CouplingReview& coupling)
{
    const PathChangeTold* change = changeOf(coupling);
    if (!change)
        return {};
    const QString since = riggingNumber(change->at);
    if (change->kind == ChangeKind::StepOrDrift)
        return tr("since rigging %1").arg(since);
    const numbers::Interval& ends = (change->step ? *change->step : *change->rate).interval;
    return tr("%1 to %2, since rigging %3", "ends of an interval")
        .arg(signedMm(ends.lower), signedMm(ends.upper), since);
}

QString ReviewWords::excursion(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->excursion ? signedMm(*coupling.movement->excursion)
                                                             : QString{};
}

QString ReviewWords::scatter(const CouplingReview& coupling)
{
    return scatterOf(coupling)
               ? tr("%1 (%2)", "scatter now, before").arg(scatterNow(coupling), scatterBefore(coupling))
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
    return scatter ? tr("was %1", "scatter before").arg(figure(scatter->before)) : QString{};
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

QString ReviewWords::whyNoMovement(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->path ? tr("none told") : whyNoFigure(coupling);
}

QString ReviewWords::whyNoFigure(const CouplingReview& coupling)
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
    if (!coupling.movement || !coupling.movement->path)
        return whyNoFigure(coupling);
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

QString ReviewWords::stepOf(const PathChangeTold& change)
{
    const numbers::EstimateWithInterval& step = *change.step;
    return tr("%1 mm (95 % interval %2 to %3)", "size of a step")
        .arg(signedMm(step.estimate), signedMm(step.interval.lower), signedMm(step.interval.upper));
}

QString ReviewWords::rateOf(const PathChangeTold& change)
{
    const numbers::EstimateWithInterval& rate = *change.rate;
    return tr("%1 mm per %2 riggings (95 % interval %3 to %4)", "rate of a drift")
        .arg(signedMm(rate.estimate), Formats{}.number(numbers::kRateUnit, 0), signedMm(rate.interval.lower),
             signedMm(rate.interval.upper));
}

QString ReviewWords::placeOf(const PathChangeTold& change)
{
    const QString at = riggingNumber(change.at);
    if (change.atLower >= change.atUpper)
        return tr("The readings put its beginning at rigging %1, %2.", "number, day")
            .arg(at, Formats{}.day(change.day));
    return tr("It began at about rigging %1 (%2); 95 in 100 that it was from rigging %3 (%5) to rigging %4 "
              "(%6).",
              "number, day, the ends as numbers and as days")
        .arg(at, Formats{}.day(change.day), riggingNumber(change.atLower), riggingNumber(change.atUpper),
             Formats{}.day(change.dayLower), Formats{}.day(change.dayUpper));
}

QString ReviewWords::movementSentence(const CouplingReview& coupling)
{
    const PathChangeTold* change = changeOf(coupling);
    if (!change)
        return {};
    QStringList said;
    if (change->kind == ChangeKind::StepOrDrift && change->step && change->rate)
        said << tr("As a step it is %1, as a drift %2.").arg(stepOf(*change), rateOf(*change));
    else if (change->kind == ChangeKind::Step)
        said << tr("The step is %1.", "size").arg(stepOf(*change));
    else if (change->endedAt)
        said << tr("The drift was %1.", "rate").arg(rateOf(*change));
    else
        said << tr("The drift is %1.", "rate").arg(rateOf(*change));
    said << placeOf(*change);
    if (change->endedAt)
        said << tr("It has ended at about rigging %1, %2.", "number, day")
                    .arg(riggingNumber(*change->endedAt), Formats{}.day(change->endedOn));
    return said.join(QLatin1Char(' '));
}

QString ReviewWords::excursionSentence(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->excursion)
        return {};
    const double away = *coupling.movement->excursion;
    const QString amount = Formats{}.number(std::abs(away), 2);
    if (amount == Formats{}.number(0, 2))
        return {};
    return away > 0
               ? tr("Apart from the scatter between riggings, the gap came %1 mm above the middle of the "
                    "band in this period, at the farthest; single readings may lie farther off.")
                     .arg(amount)
               : tr("Apart from the scatter between riggings, the gap came %1 mm below the middle of the "
                    "band in this period, at the farthest; single readings may lie farther off.")
                     .arg(amount);
}

QString ReviewWords::forecastSentence(const CouplingReview& coupling)
{
    if (!coupling.movement || !coupling.movement->forecast)
        return {};
    const AnnualForecast& forecast = *coupling.movement->forecast;
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
    const QString compared = tr("The last %n reading(s), taken together, scatter by %1 mm, those of this "
                                "fitting before them by %2 mm.",
                                nullptr, scatter->readings)
                                 .arg(figure(scatter->now), figure(scatter->before));
    if (!scatter->hasGrown && !scatter->hasShrunk)
        return compared;
    return tr("%1 Since when is not told by this.", "scatter compared").arg(compared);
}

QString ReviewWords::earlySign(const DriftFlag& flag)
{
    return flag.isUp ? tr("An early sign: the last readings lie rather high on this coupling’s band; they "
                          "are too few "
                          "yet to tell whether the gap moves. Look closely, whatever today’s reading says.")
                     : tr("An early sign: the last readings lie rather low on this coupling’s band; they are "
                          "too few "
                          "yet to tell whether the gap moves. Look closely, whatever today’s reading says.");
}

} // namespace rig
