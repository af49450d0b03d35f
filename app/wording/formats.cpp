#include "app/wording/formats.h"

#include "core/rigging/time_known.h"

#include <QDateTime>
#include <QTimeZone>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kRarestSaid = 10000;

QDateTime localTime(const Moment& moment)
{
    return QDateTime::fromSecsSinceEpoch(moment.utcSeconds, Qt::OffsetFromUTC, moment.offsetSeconds);
}

// Two figures are all that such a share is known to: 370 -> 370, 1234 -> 1200.
double twoFigures(double value)
{
    const double unit = std::pow(10.0, std::floor(std::log10(value)) - 1);
    return unit > 1 ? std::round(value / unit) * unit : std::round(value);
}

} // namespace

QString Formats::gap(Gap gap) const
{
    const int decimals = gap.inMicrometres() % 10 == 0 ? 2 : 3;
    return m_locale.toString(gap.inMillimetres(), 'f', decimals);
}

QString Formats::millimetres(double mm) const { return m_locale.toString(std::max(0.0, mm), 'f', 2); }

QString Formats::interval(const GapInterval& interval) const
{
    if (!interval.refuses)
        return tr("above %1 mm").arg(gap(interval.enters));
    if (interval.enters == Gap{})
        return tr("below %1 mm").arg(gap(*interval.refuses));
    return tr("%1–%2 mm", "from–to").arg(gap(interval.enters), gap(*interval.refuses));
}

QString Formats::band(const BandEdges& edges) const
{
    return tr("%1–%2 mm", "from–to").arg(millimetres(edges.lower), millimetres(edges.upper));
}

QString Formats::day(Day day) const
{
    const QDate date = QDate{1970, 1, 1}.addDays(day.time_since_epoch().count());
    return m_locale.toString(date, tr("d MMMM yyyy", "QLocale date format"));
}

QString Formats::time(const Moment& moment) const
{
    return m_locale.toString(localTime(moment).time(), tr("HH:mm", "QLocale time format"));
}

QString Formats::moment(const Moment& moment) const
{
    return tr("%1, %2", "day, time").arg(day(moment.localDay()), time(moment));
}

QString Formats::whenRead(const Reading& reading) const
{
    return isTimeKnown(reading) ? moment(reading.when) : day(reading.when.localDay());
}

QString Formats::whenBegun(const RiggingRecord& record) const
{
    return isTimeKnown(record) ? moment(record.begins) : day(record.begins.localDay());
}

QString Formats::oneIn(double share) const
{
    if (std::isnan(share))
        return tr("not known");
    if (share > 0.5)
        return tr("more than 1 in 2");
    // A share that vanishes comes from a model's far tail: it is small, never none.
    const double every = share > 0 ? twoFigures(1 / share) : kRarestSaid + 1;
    if (every > kRarestSaid)
        return tr("fewer than 1 in %1").arg(m_locale.toString(static_cast<int>(kRarestSaid)));
    return tr("1 in %1").arg(m_locale.toString(static_cast<int>(every)));
}

} // namespace rig
