#include "app/wording/aircraft_words.h"

#include "app/wording/formats.h"
#include "app/wording/verdict_words.h"
#include "core/views/aircraft_series.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

// Counted points: one in doubt stands for nothing.
const AircraftPoint* lastOf(const AircraftCoupling& coupling)
{
    const auto last = std::find_if(coupling.points.rbegin(), coupling.points.rend(),
                                   [](const AircraftPoint& point) { return !point.inDoubt; });
    return last == coupling.points.rend() ? nullptr : &*last;
}

} // namespace

QString AircraftWords::title() { return tr("All couplings in their own scatters"); }

QString AircraftWords::nothingYet()
{
    return tr("No coupling has a band with readings to lay beside it yet.");
}

QString AircraftWords::noShiftsYet()
{
    return tr("No rigging day has enough couplings to tell a shift yet.");
}

QString AircraftWords::scores(bool means)
{
    return means ? tr("each coupling in its own scatters; 0 is the middle of its band; lines are means")
                 : tr("each coupling in its own scatters; 0 is the middle of its band");
}

QString AircraftWords::scoresShort() { return tr("in own scatters"); }
QString AircraftWords::shiftLane() { return tr("shared shift of each rigging day, in scatters"); }
QString AircraftWords::shiftLaneShort() { return tr("shared shift"); }

QString AircraftWords::score(double score)
{
    const QString amount = Formats{}.number(std::abs(score), 1);
    if (std::abs(score) < 0.05)
        return amount;
    return score > 0 ? tr("+%1", "scatters above the middle").arg(amount)
                     : tr("−%1", "scatters below the middle").arg(amount);
}

QString AircraftWords::scoreTick(long long scatters)
{
    const QString amount = Formats{}.count(static_cast<int>(std::abs(scatters)));
    if (scatters == 0)
        return amount;
    return scatters > 0 ? tr("+%1", "scatters above the middle").arg(amount)
                        : tr("−%1", "scatters below the middle").arg(amount);
}

QString AircraftWords::name(const std::string& name, Side side)
{
    const QString plain = QString::fromStdString(name);
    switch (side) {
    case Side::Left:
        return tr("%1, left", "coupling").arg(plain);
    case Side::Right:
        return tr("%1, right", "coupling").arg(plain);
    case Side::None:
        break;
    }
    return plain;
}

QString AircraftWords::more(int couplings) { return tr("and %n more", nullptr, couplings); }
QString AircraftWords::day(const ShiftDay& shift) { return Formats{}.day(shift.when.localDay()); }

QString AircraftWords::cause(const ShiftDay& shift)
{
    return shift.cause.empty() ? score(shift.median) : QString::fromStdString(shift.cause).simplified();
}

QString AircraftWords::point(const AircraftCoupling& coupling, const AircraftPoint& point)
{
    const QString what =
        point.inDoubt ? tr("in doubt, because of the gauge") : VerdictWords::shortWord(point.verdict);
    return tr("%1, %2: %3 scatters from the middle of its band, %4. One sign only.",
              "coupling, day: signed number, verdict")
        .arg(QString::fromStdString(coupling.name), Formats{}.day(point.when.localDay()), score(point.score),
             what);
}

QString AircraftWords::shift(const ShiftDay& shift)
{
    const QString day = Formats{}.day(shift.when.localDay());
    QStringList sentences;
    sentences << tr("%1: %2 scatters, the median of %n coupling(s).", "day, signed number", shift.couplings)
                     .arg(day, score(shift.median));
    if (shift.isCalled)
        sentences << (shift.cause.empty() ? tr("A shared shift.")
                                          : tr("A shared shift, with this in common: %1.", "gauge or person")
                                                .arg(QString::fromStdString(shift.cause).simplified()));
    return sentences.join(QLatin1Char(' '));
}

QString AircraftWords::shifts(const std::vector<ShiftDay>& shifts)
{
    if (shifts.empty())
        return noShiftsYet();
    QStringList sentences;
    sentences << tr("Shared shift of %n rigging day(s).", nullptr, static_cast<int>(shifts.size()));
    for (const ShiftDay& one : shifts)
        if (one.isCalled)
            sentences << shift(one);
    if (sentences.size() == 1)
        sentences << tr("On none did all couplings move together.");
    return sentences.join(QLatin1Char(' '));
}

QString AircraftWords::keysHint()
{
    return tr("Left and Right move, plus and minus zoom, Home and End go to the ends, 0 shows everything, "
              "Up and Down go from coupling to coupling.");
}

QString AircraftWords::aircraft(const AircraftSeries& series, std::optional<std::size_t> chosen)
{
    QStringList sentences;
    for (const AircraftCoupling& coupling : series.couplings)
        if (const AircraftPoint* last = lastOf(coupling))
            sentences << tr("%1 %2 scatters, %3.", "coupling, signed number, verdict")
                             .arg(QString::fromStdString(coupling.name), score(last->score),
                                  VerdictWords::shortWord(last->verdict));
    if (sentences.isEmpty())
        return nothingYet();
    sentences.push_front(
        tr("The last reading of each coupling in its own scatters from the middle of its band."));
    if (chosen && *chosen < series.couplings.size())
        sentences << tr("Chosen: %1.").arg(QString::fromStdString(series.couplings[*chosen].name));
    if (!series.shifts.empty())
        sentences << shifts(series.shifts);
    sentences << tr("Each verdict is one sign only.");
    return sentences.join(QLatin1Char(' '));
}

} // namespace rig
