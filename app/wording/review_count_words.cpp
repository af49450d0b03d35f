#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/review_words.h"
#include "app/wording/trend_words.h"
#include "app/wording/trends_page_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

QString ReviewWords::title(const ReviewPeriod& period)
{
    if (!period.annual)
        return tr("Before the annual");
    const QString day = Formats{}.day(*period.annual);
    if (period.isCurrent && *period.annual < period.to)
        return tr("Before the annual that was due on %1").arg(day);
    return tr("Before the annual of %1").arg(day);
}

QString ReviewWords::period(const ReviewPeriod& period)
{
    const QString from = Formats{}.day(period.from);
    const QString to = Formats{}.day(period.to);
    if (period.kind != PeriodKind::ByAnnual)
        return tr("%1 to %2", "days").arg(from, to);
    if (period.isCurrent && period.sinceAnnual)
        return tr("Since the last annual: %1 to %2", "days").arg(from, to);
    if (period.isCurrent)
        return tr("The whole file: %1 to %2", "days").arg(from, to);
    if (period.sinceAnnual)
        return tr("Annual to annual: %1 to %2", "days").arg(from, to);
    return tr("Up to the first annual: %1 to %2", "days").arg(from, to);
}

namespace {

// Whether everything in the period was read with leaves, so that "leaf sets" can be said of all of them.
bool allAreLeaves(const std::vector<GaugeReview>& gauges)
{
    return std::ranges::all_of(gauges, [](const GaugeReview& one) {
        return one.readings == 0 || one.gauge.set.kind() == GaugeKind::Leaves;
    });
}

} // namespace

QString ReviewWords::riggingsIn(const ReviewPeriod& period, int riggings)
{
    if (period.kind != PeriodKind::ByAnnual)
        return tr("In these days: %Ln rigging(s).", nullptr, riggings);
    if (period.sinceAnnual)
        return period.isCurrent ? tr("Since the last annual: %Ln rigging(s).", nullptr, riggings)
                                : tr("From annual to annual: %Ln rigging(s).", nullptr, riggings);
    return period.isCurrent ? tr("In the whole file: %Ln rigging(s).", nullptr, riggings)
                            : tr("Up to the first annual: %Ln rigging(s).", nullptr, riggings);
}

QString ReviewWords::closedToSecond(const std::vector<std::string>& couplings)
{
    QStringList names;
    for (const std::string& name : couplings)
        names << QString::fromStdString(name);
    if (names.isEmpty())
        return {};
    return tr("What the first person found is hidden here: %1. The second person works without seeing it. It "
              "is shown when they have kept a reading of their own, or have looked and pulled without one.",
              "couplings")
        .arg(names.join(tr(", ", "between couplings")));
}

QString ReviewWords::counted(const AirframeReview& review)
{
    const RiggingCounts& counts = review.counts;
    QStringList sentences{riggingsIn(review.period, counts.riggings)};
    if (counts.readings == 0)
        return (sentences << tr("There is no reading.")).join(QLatin1Char(' '));
    sentences << tr("%Ln reading(s).", nullptr, counts.readings)
              << tr("Read by %n person(s).", nullptr, counts.persons);
    if (allAreLeaves(review.gauges))
        sentences << tr("Read with %n leaf set(s).", nullptr, counts.gauges);
    else
        sentences << tr("Read with %n gauge(s).", nullptr, counts.gauges);
    return sentences.join(QLatin1Char(' '));
}

// Gauges, fittings, events

QStringList ReviewWords::gaugeStory(const GaugeReview& review) const
{
    const Formats formats;
    QStringList sentences;
    if (review.readings == 0)
        sentences << tr("Not read with in this period.");
    else if (review.inDoubt == 0)
        sentences << tr("%Ln reading(s) in this period.", nullptr, review.readings);
    else
        sentences << tr("%Ln reading(s) in this period, %1 of them in doubt: those do not count for band, "
                        "drift and scatter.",
                        nullptr, review.readings)
                         .arg(formats.count(review.inDoubt));
    if (!review.lastCheck)
        return sentences << tr("No check of it is noted.");
    const GaugeCheck& last = *review.lastCheck;
    const QString day = formats.day(last.day);
    const QString found = QString::fromStdString(last.found);
    if (review.checks.empty())
        sentences << tr("Not checked in this period; last on %1: %2", "day, what was found").arg(day, found);
    else
        sentences << tr("%n check(s), the last on %1: %2", "day, what was found",
                        static_cast<int>(review.checks.size()))
                         .arg(day, found);
    for (const GaugeCheck& check : review.checks)
        if (check.id != last.id && check.quarantineFrom)
            sentences << tr("The check of %1 put it in doubt from %2 on: %3")
                             .arg(formats.day(check.day), formats.day(*check.quarantineFrom),
                                  QString::fromStdString(check.found));
    if (last.quarantineFrom)
        sentences << tr("In doubt from %1 on, until a later check finds it usable.")
                         .arg(formats.day(*last.quarantineFrom));
    return sentences;
}

QString ReviewWords::fitting(const FittingChange& change) const
{
    const Formats formats;
    const auto bandIn = [&formats](const std::optional<Band>& band) {
        return band ? formats.band(band->inner) : tr("none yet");
    };
    const QString reason = CouplingWords::whyFitted(change.fitting);
    const QString day = formats.day(change.fitting.begins);
    const QString coupling = couplingName(change.coupling);
    QStringList sentences;
    sentences << (reason.isEmpty()
                      ? tr("%1, %2: new fitting.", "day, coupling").arg(day, coupling)
                      : tr("%1, %2: new fitting, %3.", "day, coupling, reason").arg(day, coupling, reason));
    if (!change.before)
        sentences << tr("Its band: %1.").arg(bandIn(change.band));
    else
        sentences << tr("Band before: %1.").arg(bandIn(change.bandBefore))
                  << tr("Band after: %1.").arg(bandIn(change.band));
    return sentences.join(QLatin1Char(' '));
}

QString ReviewWords::event(const Event& event) const
{
    QString what = TrendsPageWords::event(event.kind, QString::fromStdString(event.note),
                                          QString::fromStdString(event.done));
    if (event.kind == EventKind::Finding && event.person)
        what = TrendWords::saidBy(what, personName(*event.person));
    const QString day = Formats{}.day(event.day);
    if (!event.coupling)
        return tr("%1: %2", "day, what was done").arg(day, what);
    return tr("%1, %2: %3", "day, coupling, what was done").arg(day, couplingName(*event.coupling), what);
}

QString ReviewWords::noChange() { return tr("No new fitting, and nothing noted as done."); }

// Too few readings; riggings

QStringList ReviewWords::tooFew(const AirframeReview& review)
{
    QStringList sentences;
    bool isAnyWithoutGap = false;
    for (const CouplingReview& one : review.couplings) {
        if (!hasGap(one.coupling)) {
            isAnyWithoutGap = true;
            continue;
        }
        QStringList said;
        if (!one.latest)
            said << sign(Sign::NotRead, one);
        else if (one.riggingsMissed > 0)
            said << tr("%1 of %2 riggings without a reading")
                        .arg(Formats{}.count(one.riggingsMissed), Formats{}.count(review.counts.riggings));
        if (!one.band)
            said << noBand(one);
        else if (one.band->isThin())
            said << sign(Sign::ThinBand, one);
        if (!said.isEmpty())
            sentences << tr("%1: %2.", "coupling, what is missing")
                             .arg(QString::fromStdString(one.coupling.name), said.join(tr("; ")));
    }
    if (sentences.isEmpty())
        sentences << (isAnyWithoutGap
                          ? tr("Every coupling with a gap has a band and was read at every rigging.")
                          : tr("Every coupling has a band and was read at every rigging."));
    return sentences;
}

// By the year, then by how long it had stood: the longest first.
QStringList ReviewWords::layoffs(const AirframeReview& review)
{
    const Formats formats;
    QStringList sentences;
    std::vector<StoodBefore> years;
    QStringList stood;
    for (const StoodBefore& one : review.stood) {
        if (one.isFirstOfYear && one.since)
            years.push_back(one);
        if (one.isAfterLayoff())
            stood << tr("%1 (%n week(s))", "day of the rigging after a layoff", one.weeks())
                         .arg(formats.day(one.day));
    }
    std::ranges::sort(years, {}, &StoodBefore::day);
    for (const StoodBefore& one : years)
        sentences << tr("First rigging of the year: %1, after %n week(s).", nullptr, one.weeks())
                         .arg(formats.day(one.day));
    if (!stood.isEmpty())
        sentences << tr("First riggings after a layoff, the longest first: %1.")
                         .arg(stood.join(tr("; ", "between riggings")));
    return sentences;
}

QString ReviewWords::typedIn(const std::vector<Day>& onPaper)
{
    QStringList days;
    for (const Day day : onPaper)
        days << Formats{}.day(day);
    return tr("%n record(s) written on paper and typed in afterwards: %1.", "days",
              static_cast<int>(onPaper.size()))
        .arg(days.join(tr("; ", "between riggings")));
}

QStringList ReviewWords::riggings(const AirframeReview& review)
{
    const RiggingCounts& counts = review.counts;
    const Formats formats;
    QStringList sentences;
    if (counts.riggings == 0)
        sentences << tr("No rigging in this period.");
    else
        sentences << tr("%Ln rigging(s) in this period; the last has number %1.", nullptr, counts.riggings)
                         .arg(formats.count(counts.lastNumber));
    const auto addIfAny = [&sentences](int count, const QString& sentence) {
        if (count > 0)
            sentences << sentence;
    };
    addIfAny(counts.leftOpen, tr("%n record(s) closed with something not done.", nullptr, counts.leftOpen));
    addIfAny(counts.stillOpen, tr("%n record(s) not closed.", nullptr, counts.stillOpen));
    addIfAny(counts.abandoned,
             tr("%n record(s) abandoned and begun anew, not counted.", nullptr, counts.abandoned));
    addIfAny(counts.rechecks, tr("%n time(s) gone through again without being taken apart, not counted.",
                                 nullptr, counts.rechecks));
    if (!counts.fromPaper.empty())
        sentences << typedIn(counts.fromPaper);
    sentences << layoffs(review);
    if (!review.period.isCurrent || !review.period.annual)
        return sentences;
    if (!review.riggingsToCome)
        sentences
            << tr("How many more until the annual is not known yet: that takes %1 riggings and %2 days.")
                   .arg(formats.count(kRiggingsForPace), formats.count(kDaysForPace));
    else if (*review.riggingsToCome > 0)
        sentences << tr("About %1 more until the annual, at the pace of the last year.")
                         .arg(formats.number(std::max(1.0, *review.riggingsToCome), 0));
    return sentences;
}

} // namespace rig
