#include "app/wording/doubt_words.h"

#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/verdict_words.h"
#include "core/baseline/baseline.h"

namespace rig {

QString DoubtWords::gauge(GaugeKind kind, const QString& name)
{
    switch (kind) {
    case GaugeKind::Leaves:
        return tr("leaf set %1").arg(name);
    case GaugeKind::Pins:
        return tr("pin set %1").arg(name);
    case GaugeKind::GoNoGo:
        return tr("go/no-go block %1").arg(name);
    case GaugeKind::Taper:
        break;
    }
    return tr("taper gauge %1").arg(name);
}

QString DoubtWords::reading(const QString& gauge, Day from)
{
    return tr("%1 in doubt from %2").arg(gauge, Formats{}.day(from));
}

QString DoubtWords::readingWithNote(const QString& note, const QString& doubt)
{
    return tr("%1 (%2)", "note, in doubt").arg(note, doubt);
}

QString DoubtWords::otherVersion(const Left& left)
{
    if (!left.with)
        return tr("It is made without %Ln reading(s) of %1 in doubt; with what is in doubt there would be no "
                  "band either.",
                  nullptr, left.readings)
            .arg(left.gauges);
    const QString band = Formats{}.band(left.with->inner);
    return left.hasBand
               ? tr("With the %Ln reading(s) of %1 in doubt it would be %2.", nullptr, left.readings)
                     .arg(left.gauges, band)
               : tr("With the %Ln reading(s) of %1 in doubt there would be one: %2.", nullptr, left.readings)
                     .arg(left.gauges, band);
}

QString DoubtWords::gauges(const std::vector<Gauge>& gauges)
{
    QStringList named;
    for (const Gauge& one : gauges)
        named << gauge(one.set.kind(), QString::fromStdString(one.name));
    return SentenceParts::list(named);
}

QString DoubtWords::otherVersion(const DoubtedVersion& version, bool hasBand)
{
    return otherVersion({version.readings, gauges(version.gauges), hasBand, version.band});
}

QString DoubtWords::stayInFrozenList(int readings, const QString& gauges)
{
    return tr("%n reading(s) of %1 in doubt stay in the frozen list; the band is worked out without them.",
              nullptr, readings)
        .arg(gauges);
}

QString DoubtWords::notFrozen(int readings, const QString& gauges)
{
    return tr("%n reading(s) of %1 in doubt are not frozen with it.", nullptr, readings).arg(gauges);
}

QString DoubtWords::afterGoodCheck(Day good)
{
    return tr("Proposed: the day after its last good check, %1. What was read since then was read with a "
              "set of which nothing is known.")
        .arg(Formats{}.day(good));
}

QString DoubtWords::onDayOfGoodCheck(Day good)
{
    return tr("Proposed: the day of this check, as the set was found usable on %1.").arg(Formats{}.day(good));
}

QString DoubtWords::fromFirstReading(Day first)
{
    return tr("Proposed: the day of its first reading, %1. The file has no good check of it before this one.")
        .arg(Formats{}.day(first));
}

QString DoubtWords::neverRead()
{
    return tr("Proposed: the day of this check. No reading was taken with the set.");
}

QString DoubtWords::readingsSince(int readings, int airframes)
{
    if (readings == 0)
        return tr("No reading was taken with it from that day on.");
    return airframes == 1 ? tr("That concerns %n reading(s) on one airframe.", nullptr, readings)
                          : tr("That concerns %n reading(s) on %1 airframes.", nullptr, readings)
                                .arg(Formats{}.count(airframes));
}

QString DoubtWords::effectTitle() { return tr("What saving this does"); }

QString DoubtWords::beforeGoodCheck(Day good)
{
    return tr("That is before its last good check, %1: readings which that check spoke for come in doubt "
              "too.")
        .arg(Formats{}.day(good));
}

QString DoubtWords::effectNeedsDay() { return tr("Type the day from which the set is in doubt."); }

QString DoubtWords::marks(int readings, int airframes)
{
    const QString marked = airframes == 1
                               ? tr("It marks %n reading(s) on one airframe as in doubt", nullptr, readings)
                               : tr("It marks %n reading(s) on %1 airframes as in doubt", nullptr, readings)
                                     .arg(Formats{}.count(airframes));
    return tr("%1: they make no band, and show “cannot tell” unless they lie outside.", "so many are marked")
        .arg(marked);
}

QString DoubtWords::marksNothing() { return tr("No further reading comes in doubt."); }

QString DoubtWords::ofFitting(const QString& coupling, Day begins)
{
    return tr("%1 (fitting begun %2)", "coupling, day").arg(coupling, Formats{}.day(begins));
}

QString DoubtWords::band(const Change& change)
{
    const Formats formats;
    const QString where = tr("%1, %2", "registration, coupling").arg(change.registration, change.coupling);
    if (change.before && change.after)
        return tr("%1: the band %2 becomes %3, from %n reading(s).", nullptr, change.left)
            .arg(where, formats.band(change.before->inner), formats.band(change.after->inner));
    if (change.before)
        return tr("%1: the band %2 goes. No band: %n reading(s) left, %3 are needed.", nullptr, change.left)
            .arg(where, formats.band(change.before->inner), formats.count(kReadingsForBand));
    return tr("%1: no band, before and after: %n reading(s) left.", nullptr, change.left).arg(where);
}

QString DoubtWords::judgedOtherwise(const QString& registration, const QString& coupling, int readings)
{
    const QString where = tr("%1, %2", "registration, coupling").arg(registration, coupling);
    return readings == 1 ? tr("%1: one reading taken with another gauge is then judged otherwise.").arg(where)
                         : tr("%1: %2 readings taken with other gauges are then judged otherwise.")
                               .arg(where, Formats{}.count(readings));
}

QString DoubtWords::noBandChanges() { return tr("No band changes: none of them made a band."); }

QString DoubtWords::opens(const QStringList& questions)
{
    const QString all = questions.join(tr("; ", "between questions"));
    return questions.size() == 1 ? tr("It opens a question. %1.").arg(all)
                                 : tr("It opens %1 questions. %2.")
                                       .arg(Formats{}.count(static_cast<int>(questions.size())), all);
}

QString DoubtWords::question(const QString& registration, const QString& asked)
{
    return tr("%1: %2", "registration, what is asked").arg(registration, asked);
}

QString DoubtWords::isOpenAlready() { return tr("What there is to ask is open already."); }

QString DoubtWords::bandNow(const QString& coupling, const std::optional<Band>& without, const Left& left)
{
    const QString now =
        without
            ? tr("Without the %Ln reading(s) of %1 in doubt the band of %2 is %3.", nullptr, left.readings)
                  .arg(left.gauges, coupling, Formats{}.band(without->inner))
            : tr("Without the %Ln reading(s) of %1 in doubt there is no band of %2.", nullptr, left.readings)
                  .arg(left.gauges, coupling);
    if (!left.with)
        return now;
    return QStringList{now, tr("With what is in doubt it was %1.").arg(Formats{}.band(left.with->inner))}
        .join(QLatin1Char(' '));
}

QString DoubtWords::verdicts(int readings)
{
    return readings == 1 ? tr("One reading taken with another gauge is judged otherwise now.")
                         : tr("%1 readings taken with other gauges are judged otherwise now.")
                               .arg(Formats{}.count(readings));
}

QString DoubtWords::verdict(const QString& interval, Day day, Verdict before, Verdict after)
{
    return tr("The last of them, %1 on %2: “%3”, with the readings in doubt “%4”.")
        .arg(interval, Formats{}.day(day), VerdictWords::word(after), VerdictWords::word(before));
}

QString DoubtWords::staysSo(const QString& gauge)
{
    return tr("Closing it brings no reading back into the band: what was read with %1 in that time stays in "
              "doubt.")
        .arg(gauge);
}

} // namespace rig
