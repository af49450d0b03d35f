#include "app/wording/trend_words.h"

#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/verdict_words.h"
#include "core/views/trend_series.h"

#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cmath>

namespace rig {

namespace {

QString whatWasDone(const TrendEvent& event)
{
    if (event.play)
        return TrendWords::saidBy(JointPlayWords::found(*event.play), QString::fromStdString(event.person));
    const QString what = TrendsPageWords::event(event.kind, QString::fromStdString(event.note),
                                                QString::fromStdString(event.done));
    return event.person.empty() ? what.simplified()
                                : TrendWords::saidBy(what, QString::fromStdString(event.person)).simplified();
}

QDate dateOf(const Moment& moment)
{
    return QDate{1970, 1, 1}.addDays(moment.localDay().time_since_epoch().count());
}

bool counts(const TrendReading& reading)
{
    return reading.state == SeatState::Locked && !reading.setAside && !reading.inDoubt;
}

constexpr std::array kWorstFirst = {Verdict::Outside, Verdict::CannotTell, Verdict::NearEdge,
                                    Verdict::NoBandYet, Verdict::Inside};

struct Counts
{
    std::array<int, kWorstFirst.size()> verdicts{}; // in the order of Verdict
    int partSeated = 0;
    int notSecured = 0;
    int setAside = 0;
    int inDoubt = 0;
};

// One walk over the readings: a long history has a hundred thousand.
Counts countsOf(const TrendSeries& series)
{
    Counts all;
    for (const TrendReading& reading : series.readings) {
        all.partSeated += reading.state == SeatState::PartSeated ? 1 : 0;
        all.notSecured += reading.state == SeatState::NotSecured ? 1 : 0;
        all.setAside += reading.setAside ? 1 : 0;
        all.inDoubt += reading.inDoubt && !reading.setAside ? 1 : 0;
        if (counts(reading))
            ++all.verdicts[static_cast<std::size_t>(reading.verdict)];
    }
    return all;
}

} // namespace

QString TrendWords::millimetreTick(double mm) { return QLocale{}.toString(mm, 'f', 2); }

QString TrendWords::riggingTick(long long rigging)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator); // a number in a row, not an amount
    return locale.toString(rigging);
}

QString TrendWords::dayTick(QDate day)
{
    return QLocale{}.toString(day, tr("d MMM yyyy", "QLocale date format"));
}

QString TrendWords::shortDayTick(QDate day)
{
    return QLocale{}.toString(day, tr("d MMM", "QLocale date format"));
}

QString TrendWords::monthTick(QDate day)
{
    return QLocale{}.toString(day, tr("MMM yyyy", "QLocale date format"));
}

QString TrendWords::shortMonthTick(QDate day)
{
    return QLocale{}.toString(day, tr("MMM", "QLocale date format"));
}

QString TrendWords::yearTick(QDate day) { return QLocale{}.toString(day, tr("yyyy", "QLocale date format")); }

QString TrendWords::unit() { return tr("mm"); }
QString TrendWords::riggingAxis() { return tr("rigging number"); }
QString TrendWords::events() { return tr("events"); }
QString TrendWords::firstBand() { return tr("first band"); }
QString TrendWords::annual(const Moment& due) { return tr("annual, %1", "date").arg(dayTick(dateOf(due))); }

QString TrendWords::annualLater(const Moment& due)
{
    return tr("annual, %1 →", "date; lies to the right of the chart").arg(dayTick(dateOf(due)));
}

QString TrendWords::fitting(FittingKind kind, const std::string& reason)
{
    const QString why = CouplingWords::whyFitted(kind, reason).simplified();
    return why.isEmpty() ? tr("new fitting") : tr("new fitting: %1", "reason").arg(why);
}

QString TrendWords::onset(const TrendPlace& onset, TrendAxis axis)
{
    if (axis == TrendAxis::ByDate)
        return tr("drift from about %1", "date").arg(dayTick(dateOf(onset.when)));
    return tr("drift from about rigging %1").arg(riggingTick(std::llround(onset.rigging)));
}

QString TrendWords::change(const TrendPlace& change, TrendAxis axis)
{
    if (axis == TrendAxis::ByDate)
        return tr("step about %1", "date").arg(dayTick(dateOf(change.when)));
    return tr("step about rigging %1").arg(riggingTick(std::llround(change.rigging)));
}

QString TrendWords::either(const TrendPlace& either, TrendAxis axis)
{
    if (axis == TrendAxis::ByDate)
        return tr("step or drift from about %1", "date").arg(dayTick(dateOf(either.when)));
    return tr("step or drift from about rigging %1").arg(riggingTick(std::llround(either.rigging)));
}

QString TrendWords::event(const TrendEvent& event)
{
    return tr("%1 %2", "date, what was done").arg(dayTick(dateOf(event.when)), whatWasDone(event));
}

QString TrendWords::saidBy(const QString& what, const QString& person)
{
    return tr("%1 (%2)", "a finding, who found it").arg(what, person);
}

QString TrendWords::eventWithoutDate(const TrendEvent& event) { return whatWasDone(event); }

QString TrendWords::gap(const GapInterval& interval)
{
    const Formats formats;
    if (!interval.refuses)
        return tr("above %1", "gap without unit").arg(formats.gap(interval.enters));
    if (interval.enters == Gap{})
        return tr("below %1", "gap without unit").arg(formats.gap(*interval.refuses));
    return tr("%1–%2", "from–to").arg(formats.gap(interval.enters), formats.gap(*interval.refuses));
}

QString TrendWords::apart(const QString& partSeated, const QString& notSecured)
{
    if (notSecured.isEmpty())
        return tr("part-seated, on a scale of its own: %1 mm", "range of gaps").arg(partSeated);
    if (partSeated.isEmpty())
        return tr("found not secured, on a scale of its own: %1 mm", "range of gaps").arg(notSecured);
    return tr("on a scale of its own, part-seated: %1 mm; found not secured: %2 mm", "two ranges of gaps")
        .arg(partSeated, notSecured);
}

QString TrendWords::apartShort(const QString& partSeated, const QString& notSecured)
{
    if (notSecured.isEmpty())
        return tr("part-seated: %1 mm", "range of gaps").arg(partSeated);
    if (partSeated.isEmpty())
        return tr("not secured: %1 mm", "range of gaps").arg(notSecured);
    return tr("part-seated: %1; not secured: %2 mm", "two ranges of gaps").arg(partSeated, notSecured);
}

QString TrendWords::nothingYet()
{
    return tr("No readings yet. The first one starts this coupling's history.");
}

QString TrendWords::noGap() { return tr("No gap to measure."); }
QString TrendWords::nothingYetShort() { return tr("No readings yet."); }

QString TrendWords::readingPlace(const TrendReading& reading)
{
    const QString when =
        reading.isTimeKnown ? Formats{}.moment(reading.when) : Formats{}.day(reading.when.localDay());
    if (std::abs(reading.rigging - std::round(reading.rigging)) > 1e-9)
        return when; // between two riggings
    return tr("Rigging %1, %2", "number, day and time").arg(riggingTick(std::llround(reading.rigging)), when);
}

QString TrendWords::seenAs(const TrendReading& reading)
{
    switch (reading.state) {
    case SeatState::PartSeated:
        return tr("part-seated");
    case SeatState::NotSecured:
        return tr("found not secured");
    case SeatState::Locked:
        break;
    }
    return VerdictWords::shortWord(reading.verdict);
}

QString TrendWords::reading(const TrendReading& reading)
{
    const QString what = seenAs(reading);
    QStringList sentences;
    sentences << tr("%1: %2, %3.", "where and when: gap, verdict")
                     .arg(readingPlace(reading), Formats{}.interval(reading.interval), what);
    const QString person = QString::fromStdString(reading.person);
    const QString gauge = QString::fromStdString(reading.gauge);
    if (!person.isEmpty() && gauge.isEmpty())
        sentences << tr("Read by %1.").arg(person);
    else if (!person.isEmpty())
        sentences << tr("Read by %1 with %2.", "person, gauge").arg(person, gauge);
    if (reading.ofBaseline)
        sentences << tr("The band is made of this one among others.");
    if (reading.setAside)
        sentences << tr("Corrected, struck or left out: it does not count.");
    else if (reading.inDoubt)
        sentences << tr("In doubt, because of the gauge: it does not count.");
    if (!reading.note.empty())
        sentences << tr("Note: %1.").arg(QString::fromStdString(reading.note).simplified());
    sentences << tr("One sign only.");
    return sentences.join(QLatin1Char(' '));
}

QString TrendWords::verdictCounts(const TrendSeries& series)
{
    const Counts counted = countsOf(series);
    QStringList verdicts;
    for (const Verdict verdict : kWorstFirst)
        if (const int count = counted.verdicts[static_cast<std::size_t>(verdict)]; count > 0)
            verdicts << tr("%1 %2", "number, verdict")
                            .arg(Formats{}.count(count), VerdictWords::shortWord(verdict));
    QStringList sentences;
    if (!verdicts.isEmpty())
        sentences << tr("Of the locked ones: %1.").arg(verdicts.join(tr(", ", "between parts of a list")));
    if (counted.partSeated > 0)
        sentences << tr("%n part-seated reading(s) stand apart.", nullptr, counted.partSeated);
    if (counted.notSecured > 0)
        sentences << tr("%n reading(s) found not secured stand apart.", nullptr, counted.notSecured);
    if (counted.setAside > 0)
        sentences << tr("%n reading(s) corrected, struck or left out.", nullptr, counted.setAside);
    if (counted.inDoubt > 0)
        sentences << tr("%n reading(s) in doubt, because of the gauge.", nullptr, counted.inDoubt);
    return sentences.join(QLatin1Char(' '));
}

QString TrendWords::movement(const TrendSeries& series)
{
    QStringList sentences;
    if (series.onset)
        sentences << tr("Drift from about rigging %1, %2.", "number, date")
                         .arg(riggingTick(std::llround(series.onset->rigging)),
                              dayTick(dateOf(series.onset->when)));
    if (series.change)
        sentences << tr("A step at about rigging %1, %2.", "number, date")
                         .arg(riggingTick(std::llround(series.change->rigging)),
                              dayTick(dateOf(series.change->when)));
    if (series.either)
        sentences << tr("A step or a drift from about rigging %1, %2.", "number, date")
                         .arg(riggingTick(std::llround(series.either->rigging)),
                              dayTick(dateOf(series.either->when)));
    if (!series.forecast.empty()) {
        const TrendPoint& end = series.forecast.back();
        sentences << tr("If it goes on so, the line reaches %1 mm by %2, 95 % interval %3.",
                        "gap, date, from–to with unit")
                         .arg(Formats{}.millimetres(end.middle), dayTick(dateOf(end.when)),
                              Formats{}.band({end.lower, end.upper}));
    }
    return sentences.join(QLatin1Char(' '));
}

QString TrendWords::summary(const TrendSeries& series)
{
    if (series.readings.empty())
        return nothingYet();
    const Formats formats;
    QStringList sentences;
    sentences << tr("%n reading(s) from %1 to %2.", nullptr, static_cast<int>(series.readings.size()))
                     .arg(formats.day(series.readings.front().when.localDay()),
                          formats.day(series.readings.back().when.localDay()))
              << verdictCounts(series);
    const auto last = std::find_if(series.readings.rbegin(), series.readings.rend(), counts);
    if (last != series.readings.rend())
        sentences << tr("The last one is %1, %2.", "gap, verdict")
                         .arg(formats.interval(last->interval), VerdictWords::shortWord(last->verdict));
    if (series.fittings.size() > 1)
        sentences << tr("%n fitting(s), each with a band of its own.", nullptr,
                        static_cast<int>(series.fittings.size()));
    if (!series.fittings.empty() && series.fittings.back().band)
        sentences << tr("The band now is %1.").arg(formats.band(series.fittings.back().band->inner));
    sentences << period(series) << movement(series) << tr("Each verdict is one sign only.");
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

QString TrendWords::smallSummary(const TrendSeries& series, std::size_t shown)
{
    if (shown == 0)
        return series.hasGap ? nothingYetShort() : noGap();
    const auto last = std::find_if(series.readings.rbegin(), series.readings.rend(), counts);
    if (last == series.readings.rend())
        return tr("The last %n reading(s), all in doubt because of the gauge.", nullptr,
                  static_cast<int>(shown));
    return tr("The last %n reading(s); the newest is %1, %2. One sign only.", nullptr,
              static_cast<int>(shown))
        .arg(Formats{}.interval(last->interval), VerdictWords::shortWord(last->verdict));
}

QString TrendWords::offTheSmallScale(const std::vector<GapInterval>& gaps)
{
    constexpr std::size_t kMostTold = 3;
    QStringList told;
    for (std::size_t i = 0; i < std::min(kMostTold, gaps.size()); ++i)
        told << Formats{}.interval(gaps[i]);
    const QString list = SentenceParts::list(told);
    return gaps.size() > kMostTold
               ? tr("%n reading(s) off this small scale, the newest %1.", nullptr,
                    static_cast<int>(gaps.size()))
                     .arg(list)
               : tr("%n reading(s) off this small scale: %1.", nullptr, static_cast<int>(gaps.size()))
                     .arg(list);
}

QString TrendWords::periodBegins(const Moment& day)
{
    return tr("period from %1", "day").arg(Formats{}.day(day.localDay()));
}

QString TrendWords::periodEnds(const Moment& day)
{
    return tr("period to %1", "day").arg(Formats{}.day(day.localDay()));
}

QString TrendWords::period(const TrendSeries& series)
{
    if (!series.period)
        return {};
    return tr("The period looked back on is %1 to %2; what lies outside it is shaded.")
        .arg(Formats{}.day(series.period->begins.when.localDay()),
             Formats{}.day(series.period->ends.when.localDay()));
}

QString TrendWords::keysHint()
{
    return tr("Left and Right move, plus and minus zoom, Home and End go to the ends, 0 shows everything, "
              "Up and Down go from reading to reading.");
}

} // namespace rig
