#include "app/wording/review_report_words.h"

#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"

#include <QStringList>

#include <cmath>

namespace rig {

namespace {

QString count(int number)
{
    return Formats{}.count(number);
}

} // namespace

QString ReviewReportWords::checked(const std::vector<Day>& days, const QString& how, const QString& found)
{
    QString ended = found.trimmed();
    if (!ended.endsWith(QLatin1Char('.')))
        ended += QLatin1Char('.');
    return tr("%1, %2: %3", "days, how, found").arg(SentenceParts::days(days), how, ended);
}

QString ReviewReportWords::running(const ReviewPeriod& period)
{
    return tr("Engineer’s report, %1", "days").arg(fromTo(period.from, period.to));
}

QString ReviewReportWords::fileName(const QString& registration, const QString& lastDay)
{
    QString name = registration;
    for (QChar& letter : name)
        if (!letter.isLetterOrNumber())
            letter = QLatin1Char('-');
    return tr("%1-%2-review.pdf", "registration, last day; a file's name").arg(name, lastDay);
}

QString ReviewReportWords::whatThisIs()
{
    return tr("What the locked gap of each coupling read in this period, against that coupling’s own past. A "
              "band is that past, never a limit. What stands out comes first; a coupling on which nothing "
              "stands out has its section like any other, and unknown is said to be unknown.");
}

QString ReviewReportWords::fromTo(Day from, Day to)
{
    const Formats formats;
    return tr("%1 to %2", "days").arg(formats.day(from), formats.day(to));
}

QString ReviewReportWords::annualDue(Day day, double riggingsToCome)
{
    const QString due = Formats{}.day(day);
    const int riggings = static_cast<int>(std::lround(riggingsToCome));
    if (riggings <= 0)
        return due;
    return tr("%1; about %n more rigging(s) until then at the pace of the year before", "day, how many",
              riggings)
        .arg(due);
}

QString ReviewReportWords::riggingsCounted(const RiggingCounts& counts)
{
    return tr("%1 in the period; the last one has number %2")
        .arg(count(counts.riggings), count(counts.lastNumber));
}

QString ReviewReportWords::methodVersion(int version)
{
    return tr("version %1; every verdict here is worked out anew by it").arg(count(version));
}

QString ReviewReportWords::readingsOf(int readings, int inDoubt)
{
    if (inDoubt == 0)
        return tr("%1 at riggings, those that stand").arg(count(readings));
    return tr("%1 at riggings, those that stand; %2 of them with a gauge in doubt")
        .arg(count(readings), count(inDoubt));
}

QString ReviewReportWords::noReadings()
{
    return tr("No gap was read at a rigging in this period. Nothing can be said of any coupling by its gap.");
}

QString ReviewReportWords::withCount(const QString& name, int readings)
{
    return tr("%1 (%2)", "name, how many readings").arg(name, count(readings));
}

QString ReviewReportWords::rankingIntro()
{
    return tr("What asks for attention first. The shaded middle of each bar is the coupling’s own band, the "
              "dark bar its last reading.");
}

QString ReviewReportWords::openAtTheEnd(Day day)
{
    return tr("Nobody has said yet, by %1, what was found here.").arg(Formats{}.day(day));
}

QString ReviewReportWords::outsideIntro()
{
    return tr(
        "All of them, those explained since among them. What was superseded is struck through and stays "
        "to be read.");
}

QString ReviewReportWords::rigging(double rigging)
{
    const bool isWhole = rigging == std::floor(rigging);
    return isWhole ? tr("rigging %1").arg(count(static_cast<int>(rigging))) : tr("between riggings");
}

QString ReviewReportWords::eachIntro()
{
    return tr(
        "In the same order. Trends run by rigging number. The first band is drawn in every one, so that "
        "a band that moved is seen to have moved.");
}

QString ReviewReportWords::placed(const Coupling& coupling)
{
    QStringList parts;
    for (const std::string* part : {&coupling.circuit, &coupling.access, &coupling.leafPlace})
        if (!part->empty())
            parts << QString::fromStdString(*part);
    return parts.join(tr(" · ", "between parts"));
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

QString ReviewReportWords::firstBandWas(const Band& band)
{
    const Formats formats;
    return tr("%1, middle %2 mm, from %3 readings of the first fitting.")
        .arg(formats.band(band.inner), formats.number(band.median, 3), count(band.readings));
}

QString ReviewReportWords::withDoubted(const Band& band)
{
    return tr("With the readings in doubt left in it would be %1, from %2 readings.")
        .arg(Formats{}.band(band.inner), count(band.readings));
}

QString ReviewReportWords::verdicts(const VerdictCounts& counts)
{
    if (counts.all() == 0)
        return tr("None in the period.");
    QStringList parts;
    const auto addIfAny = [&parts](int number, const QString& said) {
        if (number > 0)
            parts << said.arg(count(number));
    };
    addIfAny(counts.outside, tr("%1 outside"));
    addIfAny(counts.nearEdge, tr("%1 near the edge"));
    addIfAny(counts.cannotTell, tr("%1 cannot tell"));
    addIfAny(counts.inside, tr("%1 inside"));
    addIfAny(counts.noBand, tr("%1 without a band to judge them"));
    return tr("%1 in the period: %2.", "readings, by verdict").arg(count(counts.all()), list(parts));
}

QString ReviewReportWords::inDoubt(int readings)
{
    return tr("%n of them with a gauge in doubt on that day.", nullptr, readings);
}

QString ReviewReportWords::missed(int riggings)
{
    return tr("Not read at %n rigging(s).", nullptr, riggings);
}

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
    const QString from = count(static_cast<int>(std::floor(onset)));
    const QString at = count(static_cast<int>(std::floor(signal)));
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

QString ReviewReportWords::noFlag()
{
    return tr("No drift flag in this period. A slow drift shows late.");
}

QString ReviewReportWords::sharedOnly()
{
    return tr("It moved, but only together with all the others: see the leaf set, the person and the cold "
              "first.");
}

QString ReviewReportWords::tooFewForScatter()
{
    return tr("Too few readings in this period to compare.");
}

QString ReviewReportWords::noStep()
{
    return tr("None that chance would not make as well.");
}

QString ReviewReportWords::restsOn(const DriftForecast& forecast)
{
    return tr("It rests on %n more rigging(s), and on the line going on as it does.", nullptr,
              static_cast<int>(std::lround(forecast.riggings)));
}

QString ReviewReportWords::noForecast(const QString& why)
{
    return tr("No chance can be given: %1.", "why").arg(why);
}

QString ReviewReportWords::witness(const WitnessFinding& witness, int seen)
{
    if (witness.witness == Witness::NeverShown || seen == 0)
        return tr("Never shown on this coupling: which way it moves the gap is not known.");
    const QString shown = tr("Seen %n time(s).", nullptr, seen);
    if (!witness.miss)
        return tr("%1 How many would fall unseen inside the band cannot be worked out.").arg(shown);
    const QString miss = tr("Part-seated readings that would not fall outside the band: %1.", "1 in 40")
                             .arg(Formats{}.oneIn(*witness.miss));
    if (witness.witness == Witness::None)
        return tr("%1 %2 The gap cannot tell the two apart here.").arg(shown, miss);
    return tr("%1 %2", "sentences").arg(shown, miss);
}

QString ReviewReportWords::nearEdgeShort(int shown, int all)
{
    return tr("The last %1 of %2; the others are in readings.csv.").arg(count(shown), count(all));
}

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
    return reason.isEmpty() ? tr("superseded") : tr("superseded: %1").arg(reason);
}

QString ReviewReportWords::leftOut(const QString& reason)
{
    return reason.isEmpty() ? tr("left out of the band") : tr("left out of the band: %1").arg(reason);
}

QString ReviewReportWords::with(const QString& person, const QString& gauge)
{
    return gauge.isEmpty() ? person : tr("%1, with %2", "person, gauge").arg(person, gauge);
}

QString ReviewReportWords::sharedIntro()
{
    return tr(
        "One bar for each rigging: the middle of all couplings’ readings, each against its own band, in "
        "that band’s scatters. When all move together on one day, look at the leaf set, the person and "
        "the cold before any coupling.");
}

QString ReviewReportWords::measurersIntro()
{
    return tr(
        "Each one’s readings against the mean of all, the couplings and the days allowed for; under ten "
        "readings nothing is said. The spread is that of one’s own readings about the bands.");
}

QString ReviewReportWords::enoughEverywhere()
{
    return tr("Every coupling in use has a band from ten confirmed readings or more, and was read at every "
              "rigging.");
}

QString ReviewReportWords::methodLines()
{
    return tr(
        "Readings are intervals between the leaf that entered and the one that refused; every figure uses "
        "them as intervals. The band is predictive: where the next locked reading of this fitting falls, "
        "from confirmed baseline readings alone, frozen by two persons.\n"
        "Outside: the whole reading lies beyond the outer band (99.73 %). Near the edge: beyond the inner "
        "one (95 %). Cannot tell: the reading reaches beyond the outer band, its gauge was in doubt, or the "
        "gap is no witness on this coupling. So about 1 in 20 readings of an unchanged coupling falls near "
        "the edge and about 1 in 370 outside, more with a thin band.\n"
        "Drift: maximum likelihood line through the intervals; its flag is an EWMA of scores less what all "
        "couplings of the day share, dated by a CUSUM. Scatter: last ten readings of the period against the "
        "baseline’s. Step: likelihood ratio for one change of the mean, p corrected for all its places.");
}

QString ReviewReportWords::tables(const QString& folder)
{
    return tr("Every reading and figure of this report as tables: %1 beside it.", "folder").arg(folder);
}

QString ReviewReportWords::findings()
{
    return tr("Findings of the person entitled to decide. Left blank by the program.");
}

} // namespace rig
