#include "app/wording/period_words.h"

#include "app/wording/formats.h"

namespace rig {

QString PeriodWords::key() { return tr("P", "key for the period"); }
QString PeriodWords::label() { return tr("Period (%1)").arg(key()); }
QString PeriodWords::name() { return tr("Period looked back on"); }

QString PeriodWords::byAnnual(const ReviewPeriod& period)
{
    const QString from = Formats{}.day(period.from);
    if (period.isCurrent)
        return period.sinceAnnual ? tr("Since the annual of %1").arg(from)
                                  : tr("Everything, from %1").arg(from);
    return tr("%1 to %2", "days").arg(from, Formats{}.day(period.to));
}

QString PeriodWords::choice(const PeriodOffer& offer, const QString& coupling)
{
    const Formats formats;
    const ReviewPeriod& period = offer.period;
    switch (period.kind) {
    case PeriodKind::BySeason:
        return tr("Season of %1", "year").arg(offer.number);
    case PeriodKind::ByFitting:
        return tr("%1, fitting %2: %3 to %4", "coupling, number, days")
            .arg(coupling, formats.count(offer.number), formats.day(period.from), formats.day(period.to));
    case PeriodKind::LastRiggings:
        return tr("The last %Ln rigging(s)", nullptr, offer.number);
    case PeriodKind::Days:
        return tr("%1 to %2", "days").arg(formats.day(period.from), formats.day(period.to));
    case PeriodKind::ByAnnual:
        break;
    }
    return byAnnual(period);
}

QString PeriodWords::otherDays() { return tr("From one day to another …"); }
QString PeriodWords::otherCount() { return tr("The last riggings, so many as you type …"); }
QString PeriodWords::from() { return tr("From"); }
QString PeriodWords::to() { return tr("To"); }
QString PeriodWords::show() { return tr("Show these days"); }

QString PeriodWords::dayAhead()
{
    return tr("These days lie ahead: nothing was read on them yet. Let them begin today or earlier.");
}

QString PeriodWords::reversed() { return tr("The first day is after the last one. Change one of them."); }

QString PeriodWords::count() { return tr("How many of the last riggings"); }
QString PeriodWords::countHint() { return tr("1 to %1").arg(kMostLastRiggings); }
QString PeriodWords::showCount() { return tr("Show these riggings"); }

QString PeriodWords::countUnread(const QString& typed)
{
    return typed.trimmed().isEmpty()
               ? tr("A number is missing. Type how many riggings, from 1 to %1.").arg(kMostLastRiggings)
               : tr("“%1” is no number of riggings. Type a whole number from 1 to %2.")
                     .arg(typed)
                     .arg(kMostLastRiggings);
}

} // namespace rig
