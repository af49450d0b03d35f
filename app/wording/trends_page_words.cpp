#include "app/wording/trends_page_words.h"

#include "app/wording/formats.h"
#include "app/wording/trend_words.h"
#include "core/rigging/time_known.h"

namespace rig {

QString TrendsPageWords::noAirframe()
{
    return tr("This file knows no airframe yet. Set up begins with one.");
}

QString TrendsPageWords::noCouplings()
{
    return tr("This airframe has no couplings yet. Set up lists them in rigging order.");
}

QString TrendsPageWords::noReadingsOf(const QString& coupling)
{
    return tr("%1 has no readings yet. They come from a baseline day in Set up and from every rigging.")
        .arg(coupling);
}

QString TrendsPageWords::noGapOf(const QString& coupling)
{
    return tr("%1 has no gap to measure. What was looked at and tried stands in each rigging record.")
        .arg(coupling);
}

QString TrendsPageWords::kindWithoutGap(const QString& kind)
{
    return tr("%1: no gap to measure, so there is no band.").arg(kind);
}

QString TrendsPageWords::noGapSentence()
{
    return tr("Nothing is told of it by a figure. What was looked at stands in each rigging record.");
}

QString TrendsPageWords::hoverHint()
{
    return tr("Point at a reading, or go there with Up and Down. Plus, minus, Left, Right: look around. 0: "
              "everything.");
}

QString TrendsPageWords::daysOf(const BandSource& source)
{
    const Formats formats;
    if (!source.firstDay || !source.lastDay)
        return {};
    if (*source.firstDay == *source.lastDay)
        return formats.day(*source.firstDay);
    return tr("%1 to %2", "days").arg(formats.day(*source.firstDay), formats.day(*source.lastDay));
}

QString TrendsPageWords::confirmedReadings(const BandSource& source)
{
    const QString days = daysOf(source);
    return source.isFrozen
               ? tr("From %n confirmed reading(s) of %1, frozen.", "a band", source.confirmedReadings)
                     .arg(days)
               : tr("From %n confirmed reading(s) of %1.", "a band", source.confirmedReadings).arg(days);
}

QString TrendsPageWords::band(const Band& band, const BandSource& source)
{
    QStringList sentences;
    const QString edges = Formats{}.band(band.inner);
    sentences << (band.isThin() ? tr("Thin band %1.").arg(edges) : tr("Band %1.").arg(edges))
              << confirmedReadings(source);
    if (band.scatterAtCap)
        sentences << tr("They scatter more than the method can follow.");
    else if (band.isThin())
        sentences << tr("A thin band can mislead either way.");
    return sentences.join(QLatin1Char(' '));
}

QString TrendsPageWords::noBandYet(int confirmedReadings, int needed)
{
    const Formats formats;
    if (confirmedReadings == 0)
        return tr("No band yet: no confirmed reading on this fitting, %1 are needed.")
            .arg(formats.count(needed));
    return tr("No band yet: %n confirmed reading(s) on this fitting, %1 are needed.", nullptr,
              confirmedReadings)
        .arg(formats.count(needed));
}

QString TrendsPageWords::noBandFromOpenReadings()
{
    return tr("No band yet: every confirmed reading was beyond the reach of its gauge. Use a gauge that "
              "reaches.");
}

QString TrendsPageWords::fitting(int number, Day begins, const QString& reason)
{
    const Formats formats;
    if (reason.isEmpty())
        return tr("Fitting %1, begun %2.").arg(formats.count(number), formats.day(begins));
    return tr("Fitting %1, begun %2: %3.").arg(formats.count(number), formats.day(begins), reason);
}

QString TrendsPageWords::noFitting() { return tr("No band yet: no fitting has begun. Set up begins one."); }

QString TrendsPageWords::latestTitle(const QString& verdictWord) { return tr("Latest: %1").arg(verdictWord); }
QString TrendsPageWords::noReadingsTitle() { return tr("No readings yet"); }

QString TrendsPageWords::noReadingsSentence()
{
    return tr("Nothing can be said of this coupling by its gap.");
}

QString TrendsPageWords::latest(const Latest& latest)
{
    const Formats formats;
    const QString day = formats.day(latest.day);
    const QString interval = formats.interval(latest.interval);
    QStringList sentences;
    if (latest.rigging)
        sentences << tr("%1 at rigging %2 on %3.", "reading, number, day")
                         .arg(interval, TrendWords::riggingTick(*latest.rigging), day);
    else
        sentences << tr("%1 on %2, outside a rigging.", "reading, day").arg(interval, day);
    sentences << (latest.gauge.isEmpty()
                      ? tr("Read by %1.").arg(latest.person)
                      : tr("Read by %1 with gauge %2.", "person, gauge").arg(latest.person, latest.gauge));
    if (latest.rigging && latest.among > 1)
        sentences << tr("The gravest of %n reading(s).", nullptr, latest.among);
    return sentences.join(QLatin1Char(' '));
}

namespace {

void addIfAny(QStringList& sentences, int count, const QString& one, const QString& several)
{
    if (count > 0)
        sentences << (count == 1 ? one : several.arg(Formats{}.count(count)));
}

} // namespace

QString TrendsPageWords::keyByDate() { return tr("D", "key for by date"); }
QString TrendsPageWords::keyByRigging() { return tr("R", "key for by rigging"); }
QString TrendsPageWords::keyTable() { return tr("T", "key for the table of readings"); }
QString TrendsPageWords::keyAircraft() { return tr("A", "key for all couplings together"); }
QString TrendsPageWords::byDate() { return tr("By date (%1)").arg(keyByDate()); }
QString TrendsPageWords::byRigging() { return tr("By rigging (%1)").arg(keyByRigging()); }
QString TrendsPageWords::table() { return tr("Table (%1)").arg(keyTable()); }

QString TrendsPageWords::lastReadings(int count) { return tr("last %1 readings").arg(count); }

QString TrendsPageWords::aircraft() { return tr("All together (%1)").arg(keyAircraft()); }

QString TrendsPageWords::aircraftTitle(const QString& registration)
{
    return tr("All couplings of %1").arg(registration);
}

QString TrendsPageWords::counts(const Counts& counts)
{
    const Formats formats;
    QStringList sentences;
    if (counts.judged == 0)
        sentences << tr("On this fitting: no reading yet beside those of the band.");
    else if (counts.noBand == counts.judged)
        sentences << tr("On this fitting, readings kept without a band to judge them: %1.")
                         .arg(formats.count(counts.judged));
    else
        sentences << tr("On this fitting, of all %1 readings beside those of the band: %2 near the edge, %3 "
                        "outside, "
                        "%4 cannot tell.")
                         .arg(formats.count(counts.judged), formats.count(counts.nearEdge),
                              formats.count(counts.outside), formats.count(counts.cannotTell));
    addIfAny(sentences, counts.outsideTogether,
             tr("One of those outside was read when all or nearly all couplings went the same way."),
             tr("%1 of those outside were read when all or nearly all couplings went the same way."));
    addIfAny(sentences, counts.outsideSetAside,
             tr("One more was outside and was corrected, struck or left out later; it happened."),
             tr("%1 more were outside and were corrected, struck or left out later; they happened."));
    addIfAny(sentences, counts.partSeatedAtRigging, tr("Found part-seated at a rigging once."),
             tr("Found part-seated at a rigging %1 times."));
    addIfAny(sentences, counts.notSecuredAtRigging, tr("Found not secured at a rigging once."),
             tr("Found not secured at a rigging %1 times."));
    return sentences.join(QLatin1Char(' '));
}

QString TrendsPageWords::annualDue(Day day, Day today)
{
    if (day < today)
        return tr("The annual was due on %1.").arg(Formats{}.day(day));
    return tr("The annual is due on %1.").arg(Formats{}.day(day));
}

QString TrendsPageWords::caution()
{
    return tr("A band is this coupling's own past, never a limit. The gap is one sign only: look, pull and "
              "control check stand beside it.");
}

QString TrendsPageWords::aircraftAbout()
{
    return tr("Each in its own scatters from the middle of its own band. What moves alone stands apart. When "
              "all move together on one day, check the leaf set, read again with another person, and look at "
              "each joint: stiff grease leaves plungers short.");
}

QString TrendsPageWords::aircraftEmpty()
{
    return tr("No coupling has a reading from a rigging that can be held against a band yet.");
}

QString TrendsPageWords::aircraftHint()
{
    return tr(
        "Up and Down go from coupling to coupling, Enter shows it alone. Plus, minus, Left, Right: look "
        "around. 0: everything.");
}

QString TrendsPageWords::moved(const QStringList& signs)
{
    const QString all = signs.join(tr("; ", "between signs"));
    return all.left(1).toUpper() + all.mid(1);
}

QString TrendsPageWords::noMovementShown(int riggings)
{
    return tr("No drift, step or change of scatter shows in %n rigging(s), one reading each", nullptr,
              riggings);
}

QString TrendsPageWords::movementNotKnown()
{
    return tr("Too few readings against a band to tell how it moves");
}

QString TrendsPageWords::lookingBack(const QString& period) { return tr("Looking back. %1").arg(period); }
QString TrendsPageWords::backToToday() { return tr("Back to today"); }
QString TrendsPageWords::backToTodayOnEscape() { return tr("Back to today (Esc)"); }
QString TrendsPageWords::backToTheAnnual() { return tr("Back to Before the annual (Esc or Alt+Left)"); }

QString TrendsPageWords::event(EventKind kind, const QString& note, const QString& done)
{
    QString what;
    switch (kind) {
    case EventKind::Cleaned:
        what = tr("cleaned");
        break;
    case EventKind::Greased:
        what = tr("greased");
        break;
    case EventKind::Refitted:
        what = tr("refitted");
        break;
    case EventKind::PartChanged:
        what = tr("part changed");
        break;
    case EventKind::Annual:
        what = tr("annual");
        break;
    case EventKind::Derigged:
        what = tr("taken apart");
        break;
    case EventKind::Note:
        return note.isEmpty() ? tr("note") : note;
    case EventKind::Finding:
        return tr("found: %1; done: %2").arg(note, done);
    }
    return note.isEmpty() ? what : tr("%1: %2", "what was done, note").arg(what, note);
}

QString TrendsPageWords::tableName(const QString& coupling) { return tr("Readings of %1").arg(coupling); }
QString TrendsPageWords::tableHint() { return tr("Ctrl+C copies the chosen rows."); }

QString TrendsPageWords::whenRead(const Reading& reading)
{
    const QDate date = QDate{1970, 1, 1}.addDays(reading.when.localDay().time_since_epoch().count());
    const QString day = TrendWords::dayTick(date);
    return isTimeKnown(reading) ? tr("%1, %2", "day, time").arg(day, Formats{}.time(reading.when)) : day;
}

QString TrendsPageWords::when() { return tr("When"); }
QString TrendsPageWords::riggingNumber() { return tr("Rigging"); }
QString TrendsPageWords::enters() { return tr("Enters mm"); }
QString TrendsPageWords::refuses() { return tr("Refuses mm"); }
QString TrendsPageWords::verdict() { return tr("Verdict"); }
QString TrendsPageWords::kind() { return tr("Kind"); }
QString TrendsPageWords::person() { return tr("By"); }
QString TrendsPageWords::gauge() { return tr("Gauge"); }
QString TrendsPageWords::note() { return tr("Note"); }
QString TrendsPageWords::noRigging() { return tr("–", "a reading outside every rigging"); }
QString TrendsPageWords::nothingEntered() { return tr("none", "no leaf entered"); }
QString TrendsPageWords::nothingRefused() { return tr("none", "the thickest was still loose"); }
QString TrendsPageWords::notJudged() { return tr("not judged"); }

QString TrendsPageWords::kindOf(SeatState state, Purpose purpose, Turn turn)
{
    const bool isLocked = state == SeatState::Locked;
    switch (purpose) {
    case Purpose::Baseline:
        return isLocked ? tr("locked, baseline") : tr("part-seated, baseline");
    case Purpose::Demonstration:
        return isLocked ? tr("locked, demonstration") : tr("part-seated, demonstration");
    case Purpose::Rigging:
        break;
    }
    if (state == SeatState::NotSecured)
        return turn == Turn::Second ? tr("not secured, rigging, second person") : tr("not secured, rigging");
    if (turn == Turn::Second)
        return isLocked ? tr("locked, rigging, second person") : tr("part-seated, rigging, second person");
    return isLocked ? tr("locked, rigging") : tr("part-seated, rigging");
}

QString TrendsPageWords::superseded(const QString& note, const QString& reason)
{
    if (note.isEmpty())
        return tr("corrected: %1").arg(reason);
    return tr("%1 (corrected: %2)").arg(note, reason);
}

QString TrendsPageWords::struck(const QString& note, const QString& reason)
{
    if (note.isEmpty())
        return tr("struck: %1").arg(reason);
    return tr("%1 (struck: %2)").arg(note, reason);
}

QString TrendsPageWords::leftOut(const QString& note, const QString& reason)
{
    if (note.isEmpty())
        return tr("left out of the band: %1").arg(reason);
    return tr("%1 (left out of the band: %2)").arg(note, reason);
}

} // namespace rig
